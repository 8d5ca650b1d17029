import { and, eq, gt, isNull, lt, or } from "drizzle-orm";
import type { Store } from "../db/open.ts";
import { keepsakes } from "../db/tables.ts";
import type { Log } from "../log.ts";
import type { KeptFiles } from "./files.ts";
import { keepingOf, tooOldBefore } from "./keeping.ts";

/** Long enough for a server to be started again after a crash. */
const LATELY_MS = 7 * 86_400_000;
/** By then nobody is still writing it. */
const HALF_AFTER_MS = 86_400_000;

/**
 * Removes the sound that its site no longer keeps, signed for or not. The rows stay, marked. A site that has since chosen to keep none lets those it has grow old by the days it gave.
 */
export async function expire(store: Store, kept: KeptFiles, at: Date = new Date()): Promise<number> {
  const held = and(eq(keepsakes.kind, "clip"), isNull(keepsakes.removedAt));
  const sites = await store.db.selectDistinct({ site: keepsakes.site }).from(keepsakes).where(held);
  let count = 0;
  for (const { site } of sites) {
    const before = tooOldBefore(await keepingOf(store.db, site), at);
    if (before === undefined) continue;
    // whichever is earlier: a device whose clock runs ahead does not make its sound last longer
    const old = or(lt(keepsakes.takenAt, before), lt(keepsakes.receivedAt, before));
    const removed = await store.write((tx) =>
      tx
        .update(keepsakes)
        .set({ removedAt: utcOf(at) })
        .where(and(held, eq(keepsakes.site, site), old))
        .returning({ id: keepsakes.id }),
    );
    count += removed.length;
  }
  for (const sha256 of await markedLately(store, at)) await kept.drop(sha256, () => isWanted(store, sha256));
  await kept.clearHalves(at.getTime() - HALF_AFTER_MS);
  return count;
}

const EVERY_MS = 3_600_000;

/** Removes what is too old now and every hour, until stopped. A run that fails is told in the log; the next tries again. */
export function keepExpiring(store: Store, kept: KeptFiles, log: Log): { stop(): Promise<void> } {
  const run = () =>
    expire(store, kept).then(
      (count) => {
        if (count > 0) log.info("sound removed that its site keeps no longer", { count });
      },
      (cause: unknown) => log.error("sound that is too old could not be removed", { problem: String(cause) }),
    );
  let running = run();
  const timer = setInterval(() => {
    running = running.then(run);
  }, EVERY_MS);
  return {
    async stop() {
      clearInterval(timer);
      await running;
    },
  };
}

/** Rows marked lately whose file a crash may have left behind. What no row ever named is not touched: it may be another database's. */
async function markedLately(store: Store, at: Date): Promise<string[]> {
  const since = utcOf(new Date(at.getTime() - LATELY_MS));
  const rows = await store.db
    .selectDistinct({ sha256: keepsakes.sha256 })
    .from(keepsakes)
    .where(and(eq(keepsakes.kind, "clip"), gt(keepsakes.removedAt, since)));
  return rows.map((row) => row.sha256);
}

/** As moments are stored. */
const utcOf = (at: Date) => `${at.toISOString().slice(0, 23)}000000Z`;

async function isWanted(store: Store, sha256: string): Promise<boolean> {
  const [row] = await store.db
    .select({ id: keepsakes.id })
    .from(keepsakes)
    .where(and(eq(keepsakes.sha256, sha256), isNull(keepsakes.removedAt)))
    .limit(1);
  return row !== undefined;
}

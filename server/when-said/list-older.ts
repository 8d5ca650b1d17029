import { and, desc, eq, inArray, type SQL } from "drizzle-orm";
import type { Entry } from "../../core/index.ts";
import type { Store } from "../db/open.ts";
import { corrections, daysToList, entries, phrases } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import type { Log } from "../log.ts";
import { listNoted, listWords } from "./list-days.ts";
import { AFTER_ALL, isBefore, placeOf } from "./places.ts";

/** Phrases of one commit: others write in between. */
const AT_ONCE = 250;
const REST_MS = 5;

/** All that was said at a site is to be listed: its rows came by another way than from devices. */
export async function listAnew(tx: Tx, site: string): Promise<void> {
  const all = { before: AFTER_ALL };
  await tx
    .insert(daysToList)
    .values({ site, ...all })
    .onConflictDoUpdate({ target: daysToList.site, set: all });
}

/** Lists the days of what was stored without, the latest first, site by site. Says how many phrases it looked at. */
export async function listOlder(store: Store, isOver: () => boolean = () => false): Promise<number> {
  for (let count = 0; ; ) {
    const [next] = isOver() ? [] : await store.db.select().from(daysToList).limit(1);
    if (!next) return count;
    count += await store.write((tx) => listSome(tx, next.site));
    await new Promise((wake) => setTimeout(wake, REST_MS));
  }
}

async function listSome(tx: Tx, site: string): Promise<number> {
  const ofSite = eq(daysToList.site, site);
  const [todo] = await tx.select().from(daysToList).where(ofSite);
  if (!todo) return 0;
  const said = await tx
    .select({ id: phrases.id, job: phrases.job, site: phrases.site, saidAt: phrases.saidAt, text: phrases.text })
    .from(phrases)
    .where(and(eq(phrases.site, site), isBefore(todo.before)))
    .orderBy(desc(phrases.saidAt), desc(phrases.id))
    .limit(AT_ONCE);
  const last = said.at(-1);
  if (!last) await tx.delete(daysToList).where(ofSite);
  else
    await tx
      .update(daysToList)
      .set({ before: placeOf(last) })
      .where(ofSite);
  await listWords(tx, [...said, ...(await readInstead(tx, said))]);
  await listNoted(tx, await notedIn(tx, said));
  return said.length;
}

/** Phrases of one site. */
type Said = readonly { id: string; job: string; site: string; saidAt: string }[];

/** The words that are read in the place of these phrases. */
async function readInstead(tx: Tx, said: Said) {
  const rows = await tx
    .select({ phrase: corrections.phrase, text: corrections.text })
    .from(corrections)
    .where(ofJobs(corrections, said));
  return thenOf(said, rows).flatMap(({ text, ...then }) => (text === null ? [] : { ...then, text }));
}

/** The entries that stand of these phrases. */
async function notedIn(tx: Tx, said: Said) {
  const rows = await tx
    .select({ phrase: entries.phrase, body: entries.body })
    .from(entries)
    .where(ofJobs(entries, said));
  return thenOf(said, rows).map(({ body, ...then }) => ({ ...then, entry: JSON.parse(body) as Entry }));
}

function ofJobs(table: typeof corrections | typeof entries, said: Said): SQL | undefined {
  const [site = "", jobs] = [said[0]?.site, new Set(said.map((one) => one.job))];
  return and(eq(table.site, site), inArray(table.job, [...jobs]));
}

/** Each with where and when its phrase was said; what is of other phrases is left out. */
function thenOf<T extends { phrase: string | null }>(said: Said, rows: readonly T[]) {
  const byId = new Map(said.map((one) => [one.id, one]));
  return rows.flatMap((row) => {
    const then = byId.get(row.phrase ?? "");
    return then ? { ...row, site: then.site, saidAt: then.saidAt } : [];
  });
}

/** Rows may come at any time, by a command beside this server that moves a site here. */
const EVERY_MS = 60_000;

/** Lists now and every minute what is left to list, until stopped. A run that fails is told in the log; the next goes on. */
export function keepListing(store: Store, log: Log): { stop(): Promise<void> } {
  let over = false;
  const run = () =>
    listOlder(store, () => over).then(
      (count) => {
        if (count > 0) log.info("days of older phrases listed for the search", { count });
      },
      (cause: unknown) => log.error("days of older phrases could not be listed", { problem: String(cause) }),
    );
  let running = run();
  const timer = setInterval(() => {
    running = running.then(run);
  }, EVERY_MS);
  return {
    async stop() {
      over = true;
      clearInterval(timer);
      await running;
    },
  };
}

import { and, asc, eq } from "drizzle-orm";
import { EVERY_SITE, ofSites, type SitesSeen } from "../accounts/sites-seen.ts";
import type { Store } from "../db/open.ts";
import { jobs } from "../db/tables.ts";
import { weighJob } from "./weigh-job.ts";

const AT_ONCE = 20;

/**
 * Weighs again every job whose phrases, reading or decisions changed since, so that the queue is one look-up. Done when
 * somebody looks, not when a phrase comes in: a phrase must not wait for it.
 */
export async function weighChanged(store: Store, seen: SitesSeen = EVERY_SITE): Promise<void> {
  for (;;) {
    const any = and(eq(jobs.unweighed, 1), ofSites(seen, jobs.site));
    const [first] = await store.db.select({ site: jobs.site }).from(jobs).where(any).limit(1);
    if (!first) return;
    await store.write(async (tx) => {
      // of one site: no transaction spans two
      const at = and(eq(jobs.site, first.site), eq(jobs.unweighed, 1));
      for (const job of await tx.select().from(jobs).where(at).orderBy(asc(jobs.startedAt)).limit(AT_ONCE)) {
        await weighJob(tx, job);
        await tx.update(jobs).set({ unweighed: 0 }).where(eq(jobs.id, job.id));
      }
    });
    // many at once take seconds: others are answered in between
    await new Promise((turn) => setImmediate(turn));
  }
}

import { createHash } from "node:crypto";
import { and, asc, eq, inArray } from "drizzle-orm";
import type { Store } from "../db/open.ts";
import { corrections, phrases } from "../db/tables.ts";
import { jobsOfDays } from "./jobs-of-days.ts";

/** The digest of a day on which nothing was said. */
export const NOTHING_SAID = createHash("sha256").digest("hex");

/** What the record holds of a site's day, to tell whether it was added to or amended since. */
export interface RecordOfDay {
  jobs: number;
  /** changes with every phrase and correction, not with how the reader reads them: a new reader amends nothing */
  digest: string;
}

/** The site's days among `from` to `to` on which something was said, with what the record holds of each. */
export async function recordOfDays(
  store: Store,
  site: string,
  from: string,
  to: string,
): Promise<Map<string, RecordOfDay>> {
  const days = await jobsOfDays(store, site, from, to);
  const record = new Map<string, RecordOfDay>();
  for (const [day, of] of days) {
    record.set(day, { jobs: of.length, digest: await digestOf(store, site, of) });
  }
  return record;
}

async function digestOf(store: Store, site: string, of: { id: string; tag: string | null }[]): Promise<string> {
  const hash = createHash("sha256");
  for (const { id, tag } of of) hash.update(JSON.stringify([id, tag]));
  const ids = of.map((one) => one.id);
  // a statement takes a limited number of values at once
  for (let at = 0; at < ids.length; at += 200) {
    const some = ids.slice(at, at + 200);
    const said = await store.db
      .select({ id: phrases.id })
      .from(phrases)
      .where(and(eq(phrases.site, site), inArray(phrases.job, some)))
      .orderBy(asc(phrases.id));
    const later = await store.db
      .select({ id: corrections.id })
      .from(corrections)
      .where(and(eq(corrections.site, site), inArray(corrections.job, some)))
      .orderBy(asc(corrections.id));
    hash.update(JSON.stringify([said.map((one) => one.id), later.map((one) => one.id)]));
  }
  return hash.digest("hex");
}

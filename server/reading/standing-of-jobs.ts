import { and, asc, eq, inArray } from "drizzle-orm";
import type { Entry } from "../../core/index.ts";
import { entries } from "../db/tables.ts";
import type { Reads } from "./what-is-known.ts";

/** What stands of a job: each entry with its valve, in order. */
export type StandingOf = ReadonlyMap<string, { job: string; tag: string; entry: Entry }[]>;

/** The entries that stand of several jobs of a site, by job. */
export async function standingOfJobs(db: Reads, site: string, ids: readonly string[]): Promise<StandingOf> {
  const rows = await db
    .select({ job: entries.job, tag: entries.tag, body: entries.body })
    .from(entries)
    .where(and(eq(entries.site, site), inArray(entries.job, [...ids])))
    .orderBy(asc(entries.job), asc(entries.n));
  return byJob(rows.map(({ job, tag, body }) => ({ job, tag, entry: JSON.parse(body) as Entry })));
}

/** Rows of several jobs, job by job, each in the order given. */
export function byJob<T extends { job: string }>(rows: readonly T[]): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    const group = groups.get(row.job);
    if (group) group.push(row);
    else groups.set(row.job, [row]);
  }
  return groups;
}

import { and, asc, between, eq } from "drizzle-orm";
import type { Store } from "../db/open.ts";
import { jobs } from "../db/tables.ts";
import { aroundDay, localDay } from "../moments.ts";
import { zoneOf } from "../reading/what-is-known.ts";

/** The jobs that started on a site's days between these two, both counted in, day by day, oldest first. */
export async function jobsOfDays(
  store: Store,
  site: string,
  from: string,
  to: string,
): Promise<Map<string, { id: string; tag: string | null }[]>> {
  const zone = await zoneOf(store.db, site);
  const rows = await store.db
    .select({ id: jobs.id, tag: jobs.tag, utc: jobs.startedAt, offset: jobs.startedOffset })
    .from(jobs)
    .where(and(eq(jobs.site, site), between(jobs.startedAt, aroundDay(from)[0], aroundDay(to)[1])))
    .orderBy(asc(jobs.startedAt), asc(jobs.id));
  const days = new Map<string, { id: string; tag: string | null }[]>();
  for (const { id, tag, ...started } of rows) {
    const day = localDay(started, zone);
    if (day < from || day > to) continue;
    const of = days.get(day);
    if (of) of.push({ id, tag });
    else days.set(day, [{ id, tag }]);
  }
  return days;
}

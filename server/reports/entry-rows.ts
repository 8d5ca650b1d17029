import { and, asc, between, eq, gte, lte } from "drizzle-orm";
import type { Entry } from "../../core/index.ts";
import type { Store } from "../db/open.ts";
import { entries, jobs, phrases } from "../db/tables.ts";
import { aroundDay, localDay, writeMoment } from "../moments.ts";
import { zoneOf } from "../reading/what-is-known.ts";

/** An entry that stands, with where it comes from. */
export interface EntryRow {
  site: string;
  /** the site's day on which its job started */
  day: string;
  tag: string;
  job: string;
  /** id of the phrase it was read from, when that was said, and its words as heard */
  phrase: string | null;
  saidAt: string;
  said: string;
  /** the reader that made it */
  reader: string;
  entry: Entry;
}

/** A page of what stands at a site between two days, both counted in, in the order of the jobs. */
export async function entryRows(store: Store, site: string, from: string, to: string): Promise<EntryRow[]> {
  const zone = await zoneOf(store.db, site);
  const rows = await store.db
    .select({ entry: entries, offset: jobs.startedOffset, said: phrases })
    .from(entries)
    .innerJoin(jobs, eq(jobs.id, entries.job))
    .leftJoin(phrases, eq(phrases.id, entries.phrase))
    .where(
      and(
        eq(entries.site, site),
        gte(entries.startedAt, aroundDay(from)[0]),
        lte(entries.startedAt, aroundDay(to)[1]),
        between(jobs.startedAt, aroundDay(from)[0], aroundDay(to)[1]),
      ),
    )
    .orderBy(asc(entries.startedAt), asc(entries.job), asc(entries.n));
  return rows.flatMap(({ entry, offset, said }) => {
    const day = localDay({ utc: entry.startedAt, offset }, zone);
    if (day < from || day > to) return [];
    return {
      site,
      day,
      tag: entry.tag,
      job: entry.job,
      phrase: entry.phrase,
      saidAt: said ? writeMoment({ utc: said.saidAt, offset: said.saidOffset }) : "",
      said: said?.text ?? "",
      reader: entry.reader,
      entry: JSON.parse(entry.body) as Entry,
    };
  });
}

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
    .select({
      tag: entries.tag,
      job: entries.job,
      startedAt: entries.startedAt,
      offset: jobs.startedOffset,
      reader: entries.reader,
      body: entries.body,
      phrase: entries.phrase,
      saidAt: phrases.saidAt,
      saidOffset: phrases.saidOffset,
      said: phrases.text,
    })
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
  // entries of a job lie one behind the other, and its day is one
  let of = { job: "", day: "" };
  return rows.flatMap((row) => {
    if (of.job !== row.job) of = { job: row.job, day: localDay({ utc: row.startedAt, offset: row.offset }, zone) };
    if (of.day < from || of.day > to) return [];
    return {
      site,
      day: of.day,
      tag: row.tag,
      job: row.job,
      phrase: row.phrase,
      saidAt: row.saidAt === null ? "" : writeMoment({ utc: row.saidAt, offset: row.saidOffset ?? 0 }),
      said: row.said ?? "",
      reader: row.reader,
      entry: JSON.parse(row.body) as Entry,
    };
  });
}

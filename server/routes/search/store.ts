import { and, asc, between, desc, eq, inArray, or, type SQL, sql } from "drizzle-orm";
import type { Entry, Found, Search } from "../../../core/index.ts";
import { namesOf } from "../../accounts/people.ts";
import { ofSites, type SitesSeen } from "../../accounts/sites-seen.ts";
import type { Store } from "../../db/open.ts";
import { corrections, entries, jobs, phrases } from "../../db/tables.ts";
import { aroundDay, localDay, writeMoment } from "../../moments.ts";
import { zoneOf } from "../../reading/what-is-known.ts";
import { sitesWith } from "../valves/store.ts";

/** Phrases of these sites in which all that is asked for holds, the latest first, page by page. */
export async function search(
  store: Store,
  wish: Search,
  seen: SitesSeen,
  { most, after }: { most: number; after?: string },
): Promise<{ found: Found[]; next?: string }> {
  const rows = await rowsOf(store, wish, seen, most + 1, after);
  const shown = rows.slice(0, most);
  const ofShown = (named: (row: Row) => string) => [...new Set(shown.map(named))];
  const standing = await store.db
    .select()
    .from(entries)
    .where(
      and(
        // by the key of the table, or all entries there are would be looked through
        inArray(
          entries.site,
          ofShown((row) => row.phrase.site),
        ),
        inArray(
          entries.job,
          ofShown((row) => row.job.id),
        ),
        inArray(
          entries.phrase,
          ofShown((row) => row.phrase.id),
        ),
      ),
    )
    .orderBy(asc(entries.n));
  const names = await namesOf(store.db);
  const found: Found[] = [];
  for (const { phrase, job } of shown) {
    const own = standing.filter((entry) => entry.phrase === phrase.id);
    const tag = own[0]?.tag || job.tag || "";
    const by = phrase.person === null ? undefined : names.get(phrase.person);
    const zone = await zoneOf(store.db, job.site);
    found.push({
      phrase: phrase.id,
      job: job.id,
      ...(job.site ? { site: job.site } : {}),
      ...(tag ? { tag } : {}),
      day: localDay({ utc: job.startedAt, offset: job.startedOffset }, zone),
      saidAt: writeMoment({ utc: phrase.saidAt, offset: phrase.saidOffset }),
      text: phrase.text,
      ...(by === undefined ? {} : { by }),
      entries: own.map((entry) => JSON.parse(entry.body) as Entry),
    });
  }
  const last = shown.at(-1)?.phrase;
  return { found, ...(rows.length > most && last ? { next: `${last.saidAt}~${last.id}` } : {}) };
}

interface Row {
  phrase: typeof phrases.$inferSelect;
  job: typeof jobs.$inferSelect;
}

/** Phrases looked through at a time: a seldom word among millions takes seconds, and others are answered in between. */
const STRETCH = 10_000;

async function rowsOf(
  store: Store,
  wish: Search,
  seen: SitesSeen,
  most: number,
  after: string | undefined,
): Promise<Row[]> {
  const { db } = store;
  const [first] = wish.from ? aroundDay(wish.from) : [""];
  const ofValve = wish.tag ? await jobsOfValve(store, wish.tag.toUpperCase(), wish.site, seen) : undefined;
  const rows: Row[] = [];
  for (let place = after; ; ) {
    const before = place === undefined ? undefined : sql`(${phrases.saidAt}, ${phrases.id}) < ${placeOf(place)}`;
    const [edge] = ofValve
      ? []
      : await db
          .select({ saidAt: phrases.saidAt, id: phrases.id })
          .from(phrases)
          .where(before)
          .orderBy(desc(phrases.saidAt), desc(phrases.id))
          .limit(1)
          .offset(STRETCH);
    const end = edge && `${edge.saidAt}~${edge.id}`;
    const found = await db
      .select({ phrase: phrases, job: jobs })
      .from(phrases)
      .innerJoin(jobs, eq(jobs.id, phrases.job))
      .where(
        and(
          ofValve,
          ofSites(seen, phrases.site),
          ...holds(wish),
          before,
          end === undefined ? undefined : sql`(${phrases.saidAt}, ${phrases.id}) >= ${placeOf(end)}`,
        ),
      )
      .orderBy(desc(phrases.saidAt), desc(phrases.id))
      .limit(most - rows.length);
    rows.push(...found);
    if (rows.length >= most || edge === undefined || edge.saidAt < first) return rows;
    // the edge itself was looked at
    place = end;
    await new Promise((turn) => setImmediate(turn));
  }
}

function placeOf(place: string): SQL {
  const [saidAt = "", id = ""] = place.split("~");
  return sql`(${saidAt}, ${id})`;
}

/** Narrows to the jobs that name the valve: those few are looked up, where all phrases would have to be looked through. */
async function jobsOfValve(
  store: Store,
  tag: string,
  site: string | undefined,
  seen: SitesSeen,
): Promise<SQL | undefined> {
  const at = site === undefined ? await sitesWith(store, tag, seen) : seen;
  const { db } = store;
  const opened = db
    .select({ id: jobs.id })
    .from(jobs)
    .where(and(ofSites(at, jobs.site), eq(jobs.tag, tag)));
  const named = db
    .selectDistinct({ id: entries.job })
    .from(entries)
    .where(and(ofSites(at, entries.site), eq(entries.tag, tag)));
  const ids = [...new Set([...(await opened), ...(await named)].map((row) => row.id))];
  return and(ofSites(at, phrases.site), inArray(phrases.job, ids));
}

/** What must hold of a phrase, one condition each. */
function holds({ tag, words, part, condition, from, to }: Search): (SQL | undefined)[] {
  const standing = (what: SQL | undefined) =>
    sql`exists (select 1 from ${entries} where ${and(eq(entries.site, phrases.site), eq(entries.job, phrases.job), eq(entries.phrase, phrases.id), what)})`;
  const key = (name: string, value: string) => sql`json_extract(${entries.body}, ${`$.${name}`}) = ${value}`;
  return [
    tag ? or(eq(jobs.tag, tag.toUpperCase()), standing(eq(entries.tag, tag.toUpperCase()))) : undefined,
    ...(words ?? "").split(/\s+/).filter(Boolean).map(said),
    part || condition
      ? standing(and(part ? key("part", part) : undefined, condition ? key("condition", condition) : undefined))
      : undefined,
    from || to ? between(phrases.saidAt, from ? aroundDay(from)[0] : "", to ? aroundDay(to)[1] : "9999") : undefined,
  ];
}

/** The word stands in the phrase as heard, or in what was read in its place. */
function said(word: string): SQL | undefined {
  const pattern = `%${word.toLowerCase().replace(/[\\%_]/g, (sign) => `\\${sign}`)}%`;
  const corrected = sql`exists (select 1 from ${corrections} where ${and(eq(corrections.site, phrases.site), eq(corrections.job, phrases.job), eq(corrections.phrase, phrases.id))} and lower(${corrections.text}) like ${pattern} escape '\\')`;
  return or(sql`lower(${phrases.text}) like ${pattern} escape '\\'`, corrected);
}

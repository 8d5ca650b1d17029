import { and, asc, between, desc, eq, inArray, or, type SQL, sql } from "drizzle-orm";
import type { Entry, Found, FoundList, Search } from "../../../core/index.ts";
import { namesOf } from "../../accounts/people.ts";
import { ofSites, type SitesSeen } from "../../accounts/sites-seen.ts";
import type { Store } from "../../db/open.ts";
import { corrections, entries, jobs, phrases } from "../../db/tables.ts";
import { aroundDay, localDay, writeMoment } from "../../moments.ts";
import { zoneOf } from "../../reading/what-is-known.ts";
import { dayOf } from "../../when-said/list-days.ts";
import { AFTER_ALL, isBefore, placeOf } from "../../when-said/places.ts";
import { stretches } from "../../when-said/stretches.ts";
import { holding } from "../../when-said/words-in.ts";
import { sitesWith } from "../valves/store.ts";

/** So long one request looks: what takes longer is told how far back it came, and is gone on with by the next. */
const LONGEST_LOOK_MS = 700;

interface Page {
  most: number;
  after?: string | undefined;
  forMs?: number;
}

/**
 * Phrases of these sites in which all that is asked for holds, the latest first, page by page: as many as asked for, or
 * those that were found in the time there is.
 */
export async function search(store: Store, wish: Search, seen: SitesSeen, page: Page): Promise<FoundList> {
  const { most } = page;
  const { rows, stopped } = await rowsOf(store, wish, seen, { ...page, most: most + 1 });
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
  if (rows.length > most && last) return { found, next: placeOf(last) };
  return { found, ...(stopped === undefined ? {} : { next: stopped, lookedTo: dayOf(stopped) }) };
}

interface Row {
  phrase: typeof phrases.$inferSelect;
  job: typeof jobs.$inferSelect;
}

/** `stopped`: the place before which there was no time to look. */
async function rowsOf(
  store: Store,
  wish: Search,
  seen: SitesSeen,
  { most, after = AFTER_ALL, forMs = LONGEST_LOOK_MS }: Page,
): Promise<{ rows: Row[]; stopped?: string }> {
  const found = (where: SQL | undefined) =>
    store.db
      .select({ phrase: phrases, job: jobs })
      .from(phrases)
      .innerJoin(jobs, eq(jobs.id, phrases.job))
      .where(and(ofSites(seen, phrases.site), ...holds(wish), where));
  if (wish.tag) {
    // put in order here: asked for that, libSQL would go through the site's phrases in time instead of the valve's jobs
    const all = await found(await jobsOfValve(store, wish.tag.toUpperCase(), wish.site, seen));
    const placed = all.map((row) => ({ row, place: placeOf(row.phrase) })).filter(({ place }) => place < after);
    return { rows: placed.sort((one, other) => (one.place < other.place ? 1 : -1)).map(({ row }) => row) };
  }
  const from = wish.from ? aroundDay(wish.from)[0] : "";
  const end = wish.to ? aroundDay(wish.to)[1] : after;
  const span = { from, before: end < after ? end : after };
  const rows: Row[] = [];
  const until = performance.now() + forMs;
  for await (const { holds: within, begins } of stretches(store.db, { ...wish, words: wordsOf(wish) }, seen, span)) {
    const some = await found(and(isBefore(after), within))
      .orderBy(desc(phrases.saidAt), desc(phrases.id))
      .limit(most - rows.length);
    rows.push(...some);
    if (rows.length >= most || begins <= from) break;
    if (performance.now() >= until) return { rows, stopped: begins };
    // others are answered in between
    await new Promise((turn) => setImmediate(turn));
  }
  return { rows };
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
  // each job once, but not by DISTINCT: for its order libSQL would go through all entries of the site
  const named = db
    .select({ id: entries.job })
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
    ...wordsOf({ words }).map(said),
    part || condition
      ? standing(and(part ? key("part", part) : undefined, condition ? key("condition", condition) : undefined))
      : undefined,
    from || to ? between(phrases.saidAt, from ? aroundDay(from)[0] : "", to ? aroundDay(to)[1] : "9999") : undefined,
  ];
}

const wordsOf = ({ words = "" }: Pick<Search, "words">): string[] => words.split(/\s+/).filter(Boolean);

/** The word stands in the phrase as heard, or in what was read in its place. */
function said(word: string): SQL | undefined {
  const pattern = holding(word.toLowerCase());
  const corrected = sql`exists (select 1 from ${corrections} where ${and(eq(corrections.site, phrases.site), eq(corrections.job, phrases.job), eq(corrections.phrase, phrases.id))} and lower(${corrections.text}) like ${pattern} escape '\\')`;
  return or(sql`lower(${phrases.text}) like ${pattern} escape '\\'`, corrected);
}

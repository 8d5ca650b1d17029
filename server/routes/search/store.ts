import { and, asc, between, desc, eq, inArray, or, type SQL, sql } from "drizzle-orm";
import type { Entry, Found, Search } from "../../../core/index.ts";
import { namesOf } from "../../accounts/people.ts";
import type { Store } from "../../db/open.ts";
import { corrections, entries, jobs, phrases } from "../../db/tables.ts";
import { aroundDay, localDay, writeMoment } from "../../moments.ts";
import { zoneOf } from "../../reading/what-is-known.ts";

/** Phrases in which all that is asked for holds, the latest first, page by page. */
export async function search(
  store: Store,
  wish: Search,
  { most, after }: { most: number; after?: string },
): Promise<{ found: Found[]; next?: string }> {
  const [saidAt = "", id = ""] = after?.split("~") ?? [];
  const rows = await store.db
    .select({ phrase: phrases, job: jobs })
    .from(phrases)
    .innerJoin(jobs, eq(jobs.id, phrases.job))
    .where(and(...holds(wish), after ? sql`(${phrases.saidAt}, ${phrases.id}) < (${saidAt}, ${id})` : undefined))
    .orderBy(desc(phrases.saidAt), desc(phrases.id))
    .limit(most + 1);
  const shown = rows.slice(0, most);
  const standing = await store.db
    .select()
    .from(entries)
    .where(
      inArray(
        entries.phrase,
        shown.map((row) => row.phrase.id),
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

/** What must hold of a phrase, one condition each. */
function holds({ site, tag, words, part, condition, from, to }: Search): (SQL | undefined)[] {
  const standing = (what: SQL | undefined) =>
    sql`exists (select 1 from ${entries} where ${and(eq(entries.site, phrases.site), eq(entries.job, phrases.job), eq(entries.phrase, phrases.id), what)})`;
  const key = (name: string, value: string) => sql`json_extract(${entries.body}, ${`$.${name}`}) = ${value}`;
  return [
    site === undefined ? undefined : eq(phrases.site, site),
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

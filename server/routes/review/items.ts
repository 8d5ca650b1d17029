import { and, asc, eq, inArray } from "drizzle-orm";
import type { Answered, Decision, ReviewItem } from "../../../core/index.ts";
import { momentOut } from "../../accounts/lifetimes.ts";
import { namesOf } from "../../accounts/people.ts";
import { ofSites, type SitesSeen } from "../../accounts/sites-seen.ts";
import { answers, decisions, reviewItems } from "../../db/review-tables.ts";
import { jobs, keepsakes, phrases, readings } from "../../db/tables.ts";
import { localDay, writeMoment } from "../../moments.ts";
import { type Reads, zoneOf } from "../../reading/what-is-known.ts";
import { clipViews, photoViews } from "../keepsakes/store.ts";

type ItemRow = typeof reviewItems.$inferSelect;

/** Items with all that a person wants to see of them, in the order given. */
export async function itemsOf(db: Reads, rows: readonly ItemRow[]): Promise<ReviewItem[]> {
  if (rows.length === 0) return [];
  const ids = rows.map((row) => row.phrase);
  const said = await db
    .select({ phrase: phrases, marks: readings.marks, unread: readings.unread, job: jobs })
    .from(phrases)
    .innerJoin(readings, eq(readings.phrase, phrases.id))
    .innerJoin(jobs, eq(jobs.id, phrases.job))
    .where(inArray(phrases.id, ids));
  const about = new Map(said.map((one) => [one.phrase.id, one]));
  const names = await namesOf(db);
  const zones = new Map<string, string | undefined>();
  for (const { site } of rows) if (!zones.has(site)) zones.set(site, await zoneOf(db, site));
  const decided = await decisionsOf(db, rows, names);
  const answered = await answersOf(db, ids, names);
  const beside = await besideOf(db, rows);
  const items: ReviewItem[] = [];
  for (const row of rows) {
    const one = about.get(row.phrase);
    if (!one) continue;
    const { phrase, job } = one;
    const own = decided.get(row.phrase) ?? [];
    const kept = beside.filter((keep) => keep.phrase === row.phrase && keep.removedAt === null);
    const by = phrase.person === null ? undefined : names.get(phrase.person);
    items.push({
      phrase: row.phrase,
      job: row.job,
      ...(row.site ? { site: row.site } : {}),
      ...(row.tag ? { tag: row.tag } : {}),
      day: localDay({ utc: job.startedAt, offset: job.startedOffset }, zones.get(row.site)),
      saidAt: writeMoment({ utc: phrase.saidAt, offset: phrase.saidOffset }),
      said: phrase.text,
      text: row.text,
      how: phrase.how,
      ...(phrase.confidence === null ? {} : { confidence: phrase.confidence }),
      ...(by === undefined ? {} : { by }),
      marks: JSON.parse(one.marks),
      unread: JSON.parse(one.unread),
      entries: JSON.parse(row.entries),
      reasons: JSON.parse(row.reasons),
      state: row.state,
      decided: own.at(-1)?.n ?? 0,
      meaning: row.meaning,
      decisions: own,
      answers: answered.get(row.phrase) ?? [],
      clips: clipViews(kept),
      photos: photoViews(kept),
      before: JSON.parse(row.before),
    });
  }
  return items;
}

/** What is kept beside these phrases, by way of their jobs: a field keeps millions of sounds and pictures. */
function besideOf(db: Reads, rows: readonly ItemRow[]) {
  const named = (key: "site" | "job" | "phrase") => [...new Set(rows.map((row) => row[key]))];
  return db
    .select()
    .from(keepsakes)
    .where(
      and(
        inArray(keepsakes.site, named("site")),
        inArray(keepsakes.job, named("job")),
        inArray(keepsakes.phrase, named("phrase")),
      ),
    );
}

/** What is to be looked at in a phrase; undefined where there is nothing to see. */
export async function itemOf(db: Reads, phrase: string, seen: SitesSeen): Promise<ReviewItem | undefined> {
  const of = and(eq(reviewItems.phrase, phrase), ofSites(seen, reviewItems.site));
  const rows = await db.select().from(reviewItems).where(of);
  return (await itemsOf(db, rows))[0];
}

/** Every decision made of the phrases of these items, in order. */
async function decisionsOf(
  db: Reads,
  items: readonly ItemRow[],
  names: ReadonlyMap<string, string>,
): Promise<Map<string, Decision[]>> {
  const named = (which: "site" | "phrase") => [...new Set(items.map((one) => one[which]))];
  const rows = await db
    .select()
    .from(decisions)
    .where(and(inArray(decisions.site, named("site")), inArray(decisions.phrase, named("phrase"))))
    .orderBy(asc(decisions.n));
  const byPhrase = new Map<string, Decision[]>();
  for (const row of rows) {
    const by = row.person === null ? undefined : names.get(row.person);
    const all = byPhrase.get(row.phrase) ?? [];
    all.push({
      id: row.id,
      n: row.n,
      what: row.what,
      ...(row.words === null ? {} : { words: row.words }),
      ...(by === undefined ? {} : { by }),
      at: momentOut(row.madeAt),
    });
    byPhrase.set(row.phrase, all);
  }
  return byPhrase;
}

async function answersOf(
  db: Reads,
  ids: readonly string[],
  names: ReadonlyMap<string, string>,
): Promise<Map<string, Answered[]>> {
  const rows = await db
    .select()
    .from(answers)
    .where(inArray(answers.phrase, [...ids]))
    .orderBy(asc(answers.madeAt), asc(answers.id));
  const byPhrase = new Map<string, Answered[]>();
  for (const row of rows) {
    const by = row.person === null ? undefined : names.get(row.person);
    const all = byPhrase.get(row.phrase) ?? [];
    const { id, text, how } = row;
    all.push({ id, text, how, ...(by === undefined ? {} : { by }), at: momentOut(row.madeAt) });
    byPhrase.set(row.phrase, all);
  }
  return byPhrase;
}

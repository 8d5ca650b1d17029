import { and, asc, between, desc, inArray, type SQL, sql } from "drizzle-orm";
import type { Search } from "../../core/index.ts";
import { ofSites, type SitesSeen } from "../accounts/sites-seen.ts";
import { daysToList, phrases, wordDays, wordsSaid } from "../db/tables.ts";
import { addDays } from "../moments.ts";
import type { Reads } from "../reading/what-is-known.ts";
import { dayOf } from "./list-days.ts";
import { holding, lookedFor, plain } from "./words-in.ts";

/** A day on which something may have been said, and at which of the sites. */
export interface SaidOn {
  day: string;
  sites: string[];
}

/** What is looked for; all of it must hold. */
export interface Wanted extends Pick<Search, "part" | "condition"> {
  words: readonly string[];
}

/**
 * The days on which all these words were said, each of them or one that holds it, and the part and condition noted; the
 * latest first. A word that was never said has no days, which is known at once. Undefined where no days can be told: nothing
 * of the kind is asked for, or the days of these sites are still being listed.
 */
export async function daysSaid(
  db: Reads,
  { words, part, condition }: Wanted,
  seen: SitesSeen,
  span: { from: string; to: string },
): Promise<AsyncGenerator<SaidOn> | undefined> {
  const [waits] = await db.select().from(daysToList).where(ofSites(seen, daysToList.site)).limit(1);
  if (waits) return undefined;
  const patterns = words.map((word) => sql`${said(holding(lookedFor(word)))} and ${wordsSaid.word} not like '% %'`);
  if (part || condition) patterns.push(said(`${part ? plain(part) : "%"} ${condition ? plain(condition) : "%"}`));
  const marks = await Promise.all(patterns.map((pattern) => markOf(db, pattern, seen)));
  const telling = marks.flatMap((mark) => mark ?? []);
  return telling.length === 0 ? undefined : daysOfAll(db, telling, span);
}

/** What is looked for, as the days between two, both counted in, that have it. */
type Mark = (first: string, last: string) => Promise<{ day: string; site: string }[]>;

/** Letters that stand in more words than this stand in what anybody says: their days are all days. */
const MOST_WORDS = 1_000;

async function markOf(db: Reads, pattern: SQL, seen: SitesSeen): Promise<Mark | undefined> {
  const rows = await db
    .select()
    .from(wordsSaid)
    .where(and(ofSites(seen, wordsSaid.site), pattern))
    .limit(MOST_WORDS + 1);
  if (rows.length > MOST_WORDS) return undefined;
  const words = [...new Set(rows.map((row) => row.word))];
  const sites = [...new Set(rows.map((row) => row.site))];
  return async (first, last) =>
    db
      .selectDistinct({ day: wordDays.day, site: wordDays.site })
      .from(wordDays)
      .where(and(inArray(wordDays.site, sites), inArray(wordDays.word, words), between(wordDays.day, first, last)));
}

const said = (pattern: string): SQL => sql`${wordsSaid.word} like ${pattern} escape '\\'`;

/**
 * Looked up in stretches of time, each twice as long as the one before it: what is said every day is found in the first,
 * and what was said once in years costs a dozen looks.
 */
async function* daysOfAll(
  db: Reads,
  marks: readonly Mark[],
  { from, to }: { from: string; to: string },
): AsyncGenerator<SaidOn> {
  const [latest, earliest] = [await edgeOf(db, desc), await edgeOf(db, asc)];
  if (latest === undefined || earliest === undefined) return;
  const first = earliest > from ? earliest : from;
  let last = latest < to ? latest : to;
  for (let length = 8; last >= first; length *= 2) {
    const begin = [addDays(last, -length), first].sort()[1] as string;
    yield* await daysWithAll(marks, begin, last);
    last = addDays(begin, -1);
  }
}

async function daysWithAll(marks: readonly Mark[], first: string, last: string): Promise<SaidOn[]> {
  let found: { day: string; site: string }[] | undefined;
  for (const mark of marks) {
    const rows = await mark(first, last);
    const before = found && new Set(found.map(nameOf));
    found = before ? rows.filter((row) => before.has(nameOf(row))) : rows;
    if (found.length === 0) return [];
  }
  const days = new Map<string, string[]>();
  for (const { day, site } of found ?? []) days.set(day, [...(days.get(day) ?? []), site]);
  return [...days].map(([day, sites]) => ({ day, sites })).sort((one, other) => (one.day < other.day ? 1 : -1));
}

const nameOf = ({ day, site }: { day: string; site: string }) => `${day} ${site}`;

async function edgeOf(db: Reads, towards: typeof asc): Promise<string | undefined> {
  const [edge] = await db
    .select({ saidAt: phrases.saidAt })
    .from(phrases)
    .orderBy(towards(phrases.saidAt), towards(phrases.id))
    .limit(1);
  return edge && dayOf(edge.saidAt);
}

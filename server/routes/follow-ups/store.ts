import { and, asc, count, eq, inArray, type SQL, sql } from "drizzle-orm";
import { type FollowUp, followUpKey, followUpWords, type Owed, type OwedList } from "../../../core/index.ts";
import { namesOf } from "../../accounts/people.ts";
import { ofSites, type SitesSeen } from "../../accounts/sites-seen.ts";
import type { Store } from "../../db/open.ts";
import { entries, owed, phrases, valveStates } from "../../db/tables.ts";
import { ownersOfSites, ownersOfValves } from "../../owners/owners-of.ts";
import { bySite, ofValves } from "../../reading/of-valves.ts";
import { refreshStates } from "../../reading/valve-states.ts";
import type { Reads } from "../../reading/what-is-known.ts";

/** Of whom: somebody's by his id, or what is nobody's yet. */
export const NOBODYS = "nobody";

/**
 * What every valve's last job left open: what stops everything first, then what is due now, then the rest. `whose`
 * leaves out what is another's.
 */
export async function stillOwed(store: Store, seen: SitesSeen, most: number, whose?: string): Promise<OwedList> {
  await refreshStates(store, seen);
  const { lines, inAll } = await (whose === undefined
    ? linesOfAll(store.db, seen, most)
    : linesOfWhom(store.db, seen, most, whose));
  const owners = await ownersOfValves(store.db, lines);
  const lastJob = await lastJobsOf(store.db, lines);
  const list: Owed[] = [];
  for (const line of lines) {
    const last = lastJob(line);
    list.push({
      ...(await owners.of(line)),
      ...(line.site ? { site: line.site } : {}),
      tag: line.tag,
      do: line.one.do,
      what: followUpWords(line.one),
      when: line.one.when,
      why: line.one.why,
      ...(line.lastOn ? { since: line.lastOn } : {}),
      ...(last ? { job: last.job } : {}),
      loggedBy: last?.loggedBy ?? [],
    });
  }
  return { owed: list, count: inAll };
}

/** A follow-up that is open, with its place among all of them. */
type Line = typeof owed.$inferSelect & { one: FollowUp; key: string };

/** The most urgent, and how many there are. */
interface Lines {
  lines: Line[];
  inAll: number;
}

async function linesOfAll(db: Reads, seen: SitesSeen, most: number): Promise<Lines> {
  const at = ofSites(seen, owed.site);
  return { lines: await linesWhere(db, at, most), inAll: await countOf(db, at) };
}

async function linesOfWhom(db: Reads, seen: SitesSeen, most: number, whose: string): Promise<Lines> {
  const given = await linesGiven(db, seen);
  if (whose !== NOBODYS) {
    const own = given.filter((one) => one.owner === whose).map(({ line }) => line);
    return { lines: own.slice(0, most), inAll: own.length };
  }
  const taken = new Set(given.map(({ line }) => placeOf(line)));
  // no more can have to be left out than are somebody's
  const all = await linesOfAll(db, seen, most + given.length);
  const left = all.lines.filter((line) => !taken.has(placeOf(line)));
  return { lines: left.slice(0, most), inAll: all.inAll - given.length };
}

/** Those that are somebody's, in order; what was given to who has left is nobody's. */
async function linesGiven(db: Reads, seen: SitesSeen): Promise<{ line: Line; owner: string }[]> {
  const owners = await ownersOfSites(db, seen);
  const given: { line: Line; owner: string }[] = [];
  for (const line of await linesWhere(db, ofValves(owners.valves, owed))) {
    const { owner } = await owners.of(line);
    if (owner && !owner.left) given.push({ line, owner: owner.id });
  }
  return given;
}

const placeOf = ({ site, tag, n }: Line) => JSON.stringify([site, tag, n]);

async function countOf(db: Reads, where: SQL | undefined): Promise<number> {
  const [all] = await db.select({ count: count() }).from(owed).where(where);
  return all?.count ?? 0;
}

async function linesWhere(db: Reads, where: SQL | undefined, most?: number): Promise<Line[]> {
  const all = db
    .select({ place: owed, open: valveStates.open })
    .from(owed)
    .innerJoin(valveStates, and(eq(valveStates.site, owed.site), eq(valveStates.tag, owed.tag)))
    .where(where)
    .orderBy(asc(owed.urgency), asc(owed.lastOn), asc(owed.site), asc(owed.tag), asc(owed.n));
  return (await (most === undefined ? all : all.limit(most))).map(({ place, open }) => {
    const one = (JSON.parse(open) as FollowUp[])[place.n];
    if (!one) throw new Error(`what is owed of ${place.tag} is not what its state has open`);
    return { ...place, one, key: followUpKey(one) };
  });
}

interface LastJob {
  job: string;
  /** the names of those who logged it */
  loggedBy: string[];
}

/** The last job of each of these valves. */
async function lastJobsOf(db: Reads, valves: readonly Line[]): Promise<(valve: Line) => LastJob | undefined> {
  // of equal width, a moment stands before its job as it does in the index
  const last = sql<string>`max(${entries.startedAt} || ' ' || ${entries.job})`;
  const rows = await db
    .select({ site: entries.site, tag: entries.tag, last })
    .from(entries)
    .where(ofValves(bySite(valves), entries))
    .groupBy(entries.site, entries.tag);
  const jobs = new Map(rows.map((row) => [nameOf(row), row.last.slice(row.last.indexOf(" ") + 1)]));
  const at = and(
    inArray(phrases.site, [...new Set(rows.map((row) => row.site))]),
    inArray(phrases.job, [...jobs.values()]),
  );
  const said = await db.selectDistinct({ job: phrases.job, person: phrases.person }).from(phrases).where(at);
  const names = await namesOf(db);
  return (valve) => {
    const job = jobs.get(nameOf(valve));
    if (job === undefined) return undefined;
    const by = said.filter((one) => one.job === job);
    return { job, loggedBy: by.flatMap(({ person }) => (person === null ? [] : (names.get(person) ?? []))) };
  };
}

const nameOf = ({ site, tag }: Pick<Line, "site" | "tag">) => JSON.stringify([site, tag]);

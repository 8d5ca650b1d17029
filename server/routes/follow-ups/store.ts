import { and, asc, count, desc, eq, type SQL } from "drizzle-orm";
import { type FollowUp, followUpKey, followUpWords, type Owed, type OwedList } from "../../../core/index.ts";
import { namesOf } from "../../accounts/people.ts";
import { ofSites, type SitesSeen } from "../../accounts/sites-seen.ts";
import type { Store } from "../../db/open.ts";
import { entries, owed, phrases, valveStates } from "../../db/tables.ts";
import { ownersOfSites, ownersOfValves } from "../../owners/owners-of.ts";
import { ofValves } from "../../reading/of-valves.ts";
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
  const names = await namesOf(store.db);
  const lastJobs = new Map<string, { job: string; loggedBy: string[] } | undefined>();
  const list: Owed[] = [];
  for (const line of lines) {
    const of = JSON.stringify([line.site, line.tag]);
    if (!lastJobs.has(of)) lastJobs.set(of, await lastJobOf(store, line, names));
    const last = lastJobs.get(of);
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

/** A valve's last job, and the names of those who logged it. */
async function lastJobOf(
  store: Store,
  { site, tag }: { site: string; tag: string },
  names: ReadonlyMap<string, string>,
): Promise<{ job: string; loggedBy: string[] } | undefined> {
  const [last] = await store.db
    .select({ job: entries.job })
    .from(entries)
    .where(and(eq(entries.site, site), eq(entries.tag, tag)))
    .orderBy(desc(entries.startedAt), desc(entries.job))
    .limit(1);
  if (!last) return undefined;
  const said = await store.db
    .selectDistinct({ person: phrases.person })
    .from(phrases)
    .where(and(eq(phrases.site, site), eq(phrases.job, last.job)));
  const loggedBy = said.flatMap((row) => (row.person === null ? [] : (names.get(row.person) ?? [])));
  return { job: last.job, loggedBy };
}

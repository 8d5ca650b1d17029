import { asc, isNull, type SQL } from "drizzle-orm";
import { type FollowUp, followUpKey, type Owned, type Owner } from "../../core/index.ts";
import { momentOut } from "../accounts/lifetimes.ts";
import { type PersonRow, sitesOfPerson } from "../accounts/people.ts";
import { EVERY_SITE, ofSites, type SitesSeen, seesSite } from "../accounts/sites-seen.ts";
import { people } from "../db/people-tables.ts";
import { followUpOwners } from "../db/review-tables.ts";
import { bySite, ofValves, type ValvesBySite } from "../reading/of-valves.ts";
import { dataOf, ownFamiliesAt } from "../reading/site-families.ts";
import { reckonValve } from "../reading/what-follows.ts";
import { knownValve, type Reads, recordOf, visitsOf, zoneOf } from "../reading/what-is-known.ts";

export type OwnerRow = typeof followUpOwners.$inferSelect;
type Follow = { site: string; tag: string; key: string };
type Named = Pick<PersonRow, "id" | "name" | "leftAt">;

/** Whose the follow-ups of some valves are. */
export interface Owners {
  /** those of which anything is somebody's, or was */
  valves: ValvesBySite;
  /** `day`: as of a job of that day; left out, as the valve stands after its last job */
  of(follow: Follow, day?: string): Promise<Owned>;
}

export const ownersOfSites = (db: Reads, seen: SitesSeen): Promise<Owners> =>
  owners(db, ofSites(seen, followUpOwners.site));

export const ownersOfValves = (db: Reads, valves: Iterable<{ site: string; tag: string }>): Promise<Owners> =>
  owners(db, ofValves(bySite(valves), followUpOwners));

async function owners(db: Reads, where: SQL | undefined): Promise<Owners> {
  const rows = await db.select().from(followUpOwners).where(where).orderBy(asc(followUpOwners.n));
  // of several the last, which is the newest, stays
  const newest = new Map(rows.map((row) => [placeOf(row), row]));
  const all: Named[] = newest.size === 0 ? [] : await db.select().from(people);
  const byId = new Map(all.map((one) => [one.id, one]));
  return {
    valves: bySite(newest.values()),
    async of(follow, day) {
      const row = newest.get(placeOf(follow));
      const { key } = follow;
      if (!row) return { key, given: 0 };
      const owner = (await isSameStill(db, row, day)) ? ownerOf(row, byId) : undefined;
      return { key, ...(owner ? { owner } : {}), given: row.n };
    },
  };
}

const placeOf = ({ site, tag, key }: Follow) => JSON.stringify([site, tag, key]);

function ownerOf(row: OwnerRow, byId: ReadonlyMap<string, Named>): Owner | undefined {
  const person = row.owner === null ? undefined : byId.get(row.owner);
  if (!person) return undefined;
  const by = row.person === null ? undefined : byId.get(row.person)?.name;
  return {
    id: person.id,
    name: person.name,
    since: momentOut(row.madeAt),
    ...(by === undefined ? {} : { by }),
    ...(person.leftAt === null ? {} : { left: true as const }),
  };
}

/**
 * Whether what was given is what is open: it was open after every job between the two. A seat to be replaced again two
 * years after that was done is another thing, and nobody's yet.
 */
async function isSameStill(db: Reads, row: OwnerRow, day = "9999-12-31"): Promise<boolean> {
  if (row.owner === null) return true;
  const visits = await visitsOf(db, row.site, row.tag, await zoneOf(db, row.site));
  const between = visits.flatMap(({ startedAt, on }, at) => {
    const isAfter = startedAt.utc > row.madeAt;
    return isAfter === on <= day ? [at] : [];
  });
  if (between.length === 0) return true;
  const valve = knownValve(row.tag, await recordOf(db, row.site, row.tag), visits);
  const families = dataOf(await ownFamiliesAt(db, row.site));
  return between.every((at) =>
    isOpen(reckonValve(valve, visits.slice(0, at + 1), day, [], families).followUps, row.key),
  );
}

export const isOpen = (followUps: readonly FollowUp[], key: string): boolean =>
  followUps.some((one) => followUpKey(one) === key);

/** Those who can have a follow-up at one of these sites: all who see it and have not left, by name. */
export async function mayOwnAt(db: Reads, at: SitesSeen): Promise<PersonRow[]> {
  const all = await db.select().from(people).where(isNull(people.leftAt)).orderBy(asc(people.nameKey));
  if (at === EVERY_SITE) return all;
  return all.filter((one) => at.some((site) => seesSite(sitesOfPerson(one), site)));
}

import { and, asc, count, eq, max, min } from "drizzle-orm";
import {
  type FollowUp,
  followUpKey,
  type Owned,
  type Valve,
  type ValveSetUp,
  type ValveSummary,
  type ValveView,
} from "../../../core/index.ts";
import type { Who } from "../../access.ts";
import { ofSites, type SitesSeen } from "../../accounts/sites-seen.ts";
import { record } from "../../audit/record.ts";
import type { Store } from "../../db/open.ts";
import { due, valveRecords, valveStates, valveTags } from "../../db/tables.ts";
import { now, writeMoment } from "../../moments.ts";
import { ownersOfValves } from "../../owners/owners-of.ts";
import { markStale } from "../../reading/keep-reading.ts";
import { livesOfLike, serviceOf } from "../../reading/like-valves.ts";
import { dataOf, ownFamiliesAt, ownFamiliesOf, ownFamilyOf } from "../../reading/site-families.ts";
import { noteNamedValves, refreshStates } from "../../reading/valve-states.ts";
import { reckonValve } from "../../reading/what-follows.ts";
import { knownValve, readRecord, recordOf, todayIn, visitsOf, zoneOf } from "../../reading/what-is-known.ts";

/** Those of these sites at which a tag is known. */
export async function sitesWith(store: Store, tag: string, seen: SitesSeen): Promise<string[]> {
  await noteNamedValves(store);
  const rows = await store.db
    .select({ site: valveTags.site })
    .from(valveTags)
    .where(and(eq(valveTags.tag, tag), ofSites(seen, valveTags.site)))
    .orderBy(asc(valveTags.site));
  return rows.map((row) => row.site);
}

export async function valveView(store: Store, site: string, tag: string): Promise<ValveView> {
  const zone = await zoneOf(store.db, site);
  const record = await recordOf(store.db, site, tag);
  const visits = await visitsOf(store.db, site, tag, zone);
  const valve = knownValve(tag, record, visits);
  const like = await livesOfLike(store.db, site, valve, serviceOf(valve, visits));
  const families = await ownFamiliesAt(store.db, site);
  const after = reckonValve(valve, visits, todayIn(zone), like, dataOf(families));
  const ownFamily = ownFamilyOf(valve, families);
  const owners = await ownersOfValves(store.db, [{ site, tag }]);
  const owned: Owned[] = [];
  for (const one of after.followUps) owned.push(await owners.of({ site, tag, key: followUpKey(one) }));
  return {
    ...(site ? { site } : {}),
    tag,
    valve,
    setUp: record !== undefined,
    ...(ownFamily ? { ownFamily } : {}),
    history: visits.map(({ job, on, startedAt, entries }) => ({ job, on, startedAt: writeMoment(startedAt), entries })),
    seat: visits.flatMap(({ job, on, entries }) =>
      entries
        .filter((entry) => (entry.type === "finding" || entry.type === "work") && entry.part === "seat")
        .map((entry) => ({ job, on, entry })),
    ),
    due: after.due,
    open: after.followUps,
    owned,
    fleet: like,
    checks: after.checks,
  };
}

/** Every valve of these sites that was set up or named, by site and tag. */
export async function valvesOf(store: Store, seen: SitesSeen): Promise<ValveSummary[]> {
  await refreshStates(store, seen);
  const newest = store.db
    .select({ site: valveRecords.site, tag: valveRecords.tag, number: max(valveRecords.number).as("newest") })
    .from(valveRecords)
    .where(ofSites(seen, valveRecords.site))
    .groupBy(valveRecords.site, valveRecords.tag)
    .as("newest");
  const next = store.db
    .select({ site: due.site, tag: due.tag, on: min(due.on).as("next_on") })
    .from(due)
    .where(ofSites(seen, due.site))
    .groupBy(due.site, due.tag)
    .as("next");
  const rows = await store.db
    .select({
      site: valveTags.site,
      tag: valveTags.tag,
      known: valveRecords.known,
      state: valveStates,
      nextOn: next.on,
    })
    .from(valveTags)
    .leftJoin(newest, and(eq(newest.site, valveTags.site), eq(newest.tag, valveTags.tag)))
    .leftJoin(
      valveRecords,
      and(eq(valveRecords.site, newest.site), eq(valveRecords.tag, newest.tag), eq(valveRecords.number, newest.number)),
    )
    .leftJoin(valveStates, and(eq(valveStates.site, valveTags.site), eq(valveStates.tag, valveTags.tag)))
    .leftJoin(next, and(eq(next.site, valveTags.site), eq(next.tag, valveTags.tag)))
    .where(ofSites(seen, valveTags.site))
    .orderBy(asc(valveTags.site), asc(valveTags.tag));
  const families = await ownFamiliesOf(store.db, seen);
  return rows.map((row) => {
    const valve: Valve = { ...(row.known ? readRecord(row.known) : {}), tag: row.tag };
    const own = ownFamilyOf(valve, families.get(row.site) ?? new Map());
    return {
      ...(row.site ? { site: row.site } : {}),
      tag: row.tag,
      valve,
      ...(row.state?.lastOn ? { lastOn: row.state.lastOn } : {}),
      open: row.state ? (JSON.parse(row.state.open) as FollowUp[]).length : 0,
      ...(row.nextOn ? { nextOn: row.nextOn } : {}),
      ...(own ? { ownFamily: own.number } : {}),
    };
  });
}

/** Every valve that was set up at a site, by tag. */
export async function knownAt(store: Store, site: string): Promise<Map<string, Valve>> {
  const rows = await store.db
    .select({ tag: valveRecords.tag, known: valveRecords.known })
    .from(valveRecords)
    .where(eq(valveRecords.site, site))
    .orderBy(asc(valveRecords.tag), asc(valveRecords.number));
  return new Map(rows.map((row) => [row.tag, readRecord(row.known)]));
}

/** Sets up a valve. The record before it stays; this one stands. */
export async function setUpValve(store: Store, { site, ...valve }: ValveSetUp, who: Who): Promise<void> {
  const known: Valve = valve;
  await store.write(async (tx) => {
    const [row] = await tx
      .select({ made: count() })
      .from(valveRecords)
      .where(and(eq(valveRecords.site, site), eq(valveRecords.tag, valve.tag)));
    const number = (row?.made ?? 0) + 1;
    await tx
      .insert(valveRecords)
      .values({ site, tag: valve.tag, number, known: JSON.stringify(known), madeAt: now().utc });
    await markStale(tx, site, [valve.tag]);
    await record(tx, who, "valve_set_up", { site, tag: valve.tag, number });
  });
}

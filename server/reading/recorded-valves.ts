import { and, asc, eq, max } from "drizzle-orm";
import type { AnySQLiteColumn } from "drizzle-orm/sqlite-core";
import type { Due, Entry, FollowUp, RecordedValve, Valve } from "../../core/index.ts";
import { ofSites, onlySite, type SitesSeen } from "../accounts/sites-seen.ts";
import type { Store } from "../db/open.ts";
import { due, entries, jobs, sites, valveRecords, valveStates, valveTags } from "../db/tables.ts";
import { localDay } from "../moments.ts";
import { dataOf, ownFamiliesOf } from "./site-families.ts";
import { refreshStates } from "./valve-states.ts";
import { knownValve, readRecord, todayIn, type Visit, zoneOf } from "./what-is-known.ts";

/** The day of one site; over several the latest, so that no job of today is taken for one of tomorrow. */
export async function todayAt(store: Store, seen: SitesSeen): Promise<string> {
  const only = onlySite(seen);
  if (only !== undefined) return todayIn(await zoneOf(store.db, only));
  const zones = await store.db.selectDistinct({ zone: sites.zone }).from(sites).where(ofSites(seen, sites.site));
  const days = [todayIn(undefined), ...zones.map((row) => todayIn(row.zone))];
  return days.sort().at(-1) as string;
}

/**
 * Every valve of these sites with all its jobs and what stands open and due: five look-ups
 * whatever the number of valves, since the reports that ask for this read everything anyway.
 */
export async function recordedValves(store: Store, seen: SitesSeen): Promise<RecordedValve[]> {
  await refreshStates(store, seen);
  const at = (table: { site: AnySQLiteColumn }) => ofSites(seen, table.site);
  const key = (row: { site: string; tag: string }) => `${row.site}\n${row.tag}`;

  const zones = new Map(
    (await store.db.select({ site: sites.site, zone: sites.zone }).from(sites)).map((row) => [row.site, row.zone]),
  );
  const tags = await store.db
    .select({ site: valveTags.site, tag: valveTags.tag, open: valveStates.open })
    .from(valveTags)
    .leftJoin(valveStates, and(eq(valveStates.site, valveTags.site), eq(valveStates.tag, valveTags.tag)))
    .where(at(valveTags))
    .orderBy(asc(valveTags.site), asc(valveTags.tag));
  const newest = store.db
    .select({ site: valveRecords.site, tag: valveRecords.tag, number: max(valveRecords.number).as("newest") })
    .from(valveRecords)
    .groupBy(valveRecords.site, valveRecords.tag)
    .as("newest");
  const set = await store.db
    .select({ site: valveRecords.site, tag: valveRecords.tag, known: valveRecords.known })
    .from(valveRecords)
    .innerJoin(
      newest,
      and(eq(valveRecords.site, newest.site), eq(valveRecords.tag, newest.tag), eq(valveRecords.number, newest.number)),
    )
    .where(at(valveRecords));
  const records = new Map<string, Valve>(set.map((row) => [key(row), readRecord(row.known)]));
  const dues = new Map<string, Due[]>();
  for (const row of await store.db.select({ site: due.site, tag: due.tag, body: due.body }).from(due).where(at(due))) {
    const held = dues.get(key(row)) ?? [];
    held.push(JSON.parse(row.body) as Due);
    dues.set(key(row), held);
  }
  const visits = new Map<string, Visit[]>();
  const rows = await store.db
    .select({
      site: entries.site,
      tag: entries.tag,
      job: entries.job,
      startedAt: entries.startedAt,
      offset: jobs.startedOffset,
      body: entries.body,
    })
    .from(entries)
    .innerJoin(jobs, eq(jobs.id, entries.job))
    .where(at(entries))
    .orderBy(asc(entries.site), asc(entries.tag), asc(entries.startedAt), asc(entries.job), asc(entries.n));
  for (const row of rows) {
    const held = visits.get(key(row)) ?? [];
    let visit = held[held.length - 1];
    if (visit?.job !== row.job) {
      const startedAt = { utc: row.startedAt, offset: row.offset };
      visit = { job: row.job, on: localDay(startedAt, zones.get(row.site)), startedAt, entries: [] };
      held.push(visit);
    }
    visit.entries.push(JSON.parse(row.body) as Entry);
    visits.set(key(row), held);
  }

  const families = await ownFamiliesOf(store.db, seen);
  return tags.map((row) => {
    const own = families.get(row.site);
    const jobsOf = visits.get(key(row)) ?? [];
    return {
      ...(row.site ? { site: row.site } : {}),
      tag: row.tag,
      valve: knownValve(row.tag, records.get(key(row)), jobsOf),
      jobs: jobsOf.map(({ on, entries: heard }) => ({ on, entries: heard })),
      open: row.open ? (JSON.parse(row.open) as FollowUp[]) : [],
      due: dues.get(key(row)) ?? [],
      ...(own ? { families: dataOf(own) } : {}),
    };
  });
}

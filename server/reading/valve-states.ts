import { and, asc, eq } from "drizzle-orm";
import { type Family, type FollowUp, seatLives, type Valve } from "../../core/index.ts";
import { EVERY_SITE, ofSites, type SitesSeen } from "../accounts/sites-seen.ts";
import type { Store } from "../db/open.ts";
import { due, entries, jobs, valveStates, valveTags } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { markStale } from "./keep-reading.ts";
import { livesOfLike, serviceOf } from "./like-valves.ts";
import { keepOwed } from "./owed.ts";
import { dataOf, ownFamiliesAt } from "./site-families.ts";
import { READER } from "./version.ts";
import { history, reckonValve } from "./what-follows.ts";
import { knownValve, recordOf, todayIn, type Visit, visitsOf, zoneOf } from "./what-is-known.ts";

const AT_ONCE = 50;

/**
 * Reckons again the due dates and open follow-ups of every valve whose record changed since, so that the
 * due board is one look-up by date. Done when asked for, not when a phrase comes in: a phrase must not wait for it.
 */
export async function refreshStates(store: Store, at: SitesSeen = EVERY_SITE): Promise<void> {
  await noteNamedValves(store, at);
  for (;;) {
    const stale = await store.db
      .select({ site: valveTags.site, tag: valveTags.tag })
      .from(valveTags)
      .where(and(eq(valveTags.stale, 1), ofSites(at, valveTags.site)))
      .orderBy(asc(valveTags.site), asc(valveTags.tag))
      .limit(AT_ONCE);
    const [first] = stale;
    if (!first) return;
    await store.write(async (tx) => {
      const laid: Laid[] = [];
      // of one site: no transaction spans two
      for (const valve of stale.filter((one) => one.site === first.site))
        laid.push(await keepLives(tx, valve.site, valve.tag));
      for (const one of laid) await reckonAndKeep(tx, one);
    });
  }
}

/** Passes the mark of each job on to the valves it names; only then is a valve that was just named known. */
export async function noteNamedValves(store: Store, of: SitesSeen = EVERY_SITE): Promise<void> {
  for (;;) {
    const any = and(eq(jobs.stale, 1), ofSites(of, jobs.site));
    const [first] = await store.db.select({ site: jobs.site }).from(jobs).where(any).limit(1);
    if (!first) return;
    await store.write(async (tx) => {
      // of one site: no transaction spans two
      const at = and(eq(jobs.site, first.site), eq(jobs.stale, 1));
      const some = await tx.select({ id: jobs.id, site: jobs.site, tag: jobs.tag }).from(jobs).where(at).limit(AT_ONCE);
      for (const job of some) {
        const named = await tx
          .selectDistinct({ tag: entries.tag })
          .from(entries)
          .where(and(eq(entries.site, job.site), eq(entries.job, job.id)));
        await markStale(tx, job.site, [job.tag ?? "", ...named.map((row) => row.tag)]);
        await tx.update(jobs).set({ stale: 0 }).where(eq(jobs.id, job.id));
      }
    });
  }
}

interface Laid {
  site: string;
  tag: string;
  valve: Valve;
  visits: Visit[];
  service: string;
  lastOn: string;
  today: string;
  families: readonly Family[];
}

/**
 * Keeps what a valve can lend to like ones. Done for all that are reckoned at once before any is reckoned. A valve
 * whose own record did not change is not reckoned again for it: it took the lives as they were kept that day.
 */
async function keepLives(tx: Tx, site: string, tag: string): Promise<Laid> {
  const zone = await zoneOf(tx, site);
  const visits = await visitsOf(tx, site, tag, zone);
  const record = await recordOf(tx, site, tag);
  const valve = knownValve(tag, record, visits);
  const lastOn = visits[visits.length - 1]?.on ?? "";
  const service = serviceOf(valve, visits);
  const families = dataOf(await ownFamiliesAt(tx, site));
  const state = {
    reader: READER,
    service,
    lastOn,
    family: valve.family ?? "",
    lives: JSON.stringify(seatLives(record ?? {}, history(visits), lastOn, families)),
  };
  await tx
    .insert(valveStates)
    .values({ site, tag, open: "[]", ...state })
    .onConflictDoUpdate({ target: [valveStates.site, valveStates.tag], set: state });
  return { site, tag, valve, visits, service, lastOn, today: todayIn(zone), families };
}

async function reckonAndKeep(tx: Tx, laid: Laid): Promise<void> {
  const { site, tag, valve, visits, service, today, families } = laid;
  const rank = service === "severe" ? 0 : 1;
  const like = await livesOfLike(tx, site, valve, service);
  const after = reckonValve(valve, visits, today, like, families);
  await tx
    .update(valveStates)
    .set({ open: JSON.stringify(after.followUps satisfies FollowUp[]) })
    .where(and(eq(valveStates.site, site), eq(valveStates.tag, tag)));
  await keepOwed(tx, laid, after.followUps);
  await tx.delete(due).where(and(eq(due.site, site), eq(due.tag, tag)));
  for (const one of after.due) {
    await tx.insert(due).values({ site, tag, task: one.task, on: one.on, body: JSON.stringify(one), rank });
  }
  await tx
    .update(valveTags)
    .set({ stale: 0 })
    .where(and(eq(valveTags.site, site), eq(valveTags.tag, tag)));
}

/** After the reader or the rules changed, everything reckoned by older ones is stale. Called once at start. */
export async function distrustOlderStates(store: Store): Promise<void> {
  await store.write(async (tx) => {
    const old = await tx.selectDistinct({ reader: valveStates.reader }).from(valveStates);
    if (old.every((row) => row.reader === READER)) return;
    await tx.update(valveTags).set({ stale: 1 });
  });
}

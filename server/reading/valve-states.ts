import { and, asc, eq } from "drizzle-orm";
import type { FollowUp } from "../../core/index.ts";
import type { Store } from "../db/open.ts";
import { due, entries, jobs, valveStates, valveTags } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { markStale } from "./keep-reading.ts";
import { READER } from "./version.ts";
import { reckonValve } from "./what-follows.ts";
import { knownValve, recordOf, todayIn, visitsOf, zoneOf } from "./what-is-known.ts";

const AT_ONCE = 50;

/**
 * Reckons again the due dates and open follow-ups of every valve whose record changed since, so that the
 * due board is one look-up by date. Done when asked for, not when a phrase comes in: a phrase must not wait for it.
 */
export async function refreshStates(store: Store, site?: string): Promise<void> {
  await noteNamedValves(store, site);
  for (;;) {
    const stale = await store.db
      .select({ site: valveTags.site, tag: valveTags.tag })
      .from(valveTags)
      .where(and(eq(valveTags.stale, 1), site === undefined ? undefined : eq(valveTags.site, site)))
      .orderBy(asc(valveTags.site), asc(valveTags.tag))
      .limit(AT_ONCE);
    if (stale.length === 0) return;
    await store.write(async (tx) => {
      for (const valve of stale) await reckonAndKeep(tx, valve.site, valve.tag);
    });
  }
}

/** Passes the mark of each job on to the valves it names; only then is a valve that was just named known. */
export async function noteNamedValves(store: Store, site?: string): Promise<void> {
  const at = and(eq(jobs.stale, 1), site === undefined ? undefined : eq(jobs.site, site));
  for (;;) {
    const [any] = await store.db.select({ id: jobs.id }).from(jobs).where(at).limit(1);
    if (!any) return;
    await store.write(async (tx) => {
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

async function reckonAndKeep(tx: Tx, site: string, tag: string): Promise<void> {
  const zone = await zoneOf(tx, site);
  const visits = await visitsOf(tx, site, tag, zone);
  const valve = knownValve(tag, await recordOf(tx, site, tag), visits);
  const said = visits.flatMap((visit) => visit.entries);
  const lastService = said.findLast((entry) => entry.type === "valve" && entry.service !== undefined);
  const after = reckonValve(valve, visits, todayIn(zone));
  const state = {
    reader: READER,
    open: JSON.stringify(after.followUps satisfies FollowUp[]),
    service: (lastService?.type === "valve" && lastService.service) || valve.service || "normal",
    lastOn: visits[visits.length - 1]?.on ?? "",
  };
  await tx
    .insert(valveStates)
    .values({ site, tag, ...state })
    .onConflictDoUpdate({ target: [valveStates.site, valveStates.tag], set: state });
  await tx.delete(due).where(and(eq(due.site, site), eq(due.tag, tag)));
  for (const one of after.due) {
    await tx.insert(due).values({ site, tag, task: one.task, on: one.on, body: JSON.stringify(one) });
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

import type { Keeping, Site, ValveSummary, ValveView } from "../../core/index.ts";
import type { KnownSite, KnownValve, ListedValve } from "../state/state.ts";
import { dayWords } from "../state/time-words.ts";
import type { Shelf } from "../storage/shelf.ts";
import { ask, path } from "./ask.ts";

/** The sites and their valves from the server, kept on the device for when it cannot be had. */
export async function listValves(shelf: Shelf): Promise<{ valves: ListedValve[]; sites: KnownSite[] } | undefined> {
  const [answer, places] = await Promise.all([
    ask<{ valves: ValveSummary[] }>("/api/valves"),
    ask<{ sites: (Site & { keeping: Keeping })[] }>("/api/sites"),
  ]);
  if (!answer.ok || !places.ok) return undefined;
  const sites = places.value.sites.map(({ site, name, zone, keeping }) => ({ site, name, zone, keeping }));
  const valves = answer.value.valves.map((one) => ({
    tag: one.tag,
    site: one.site,
    note: noteOf(one),
    lastOn: one.lastOn,
    ownFamily: one.ownFamily,
  }));
  await shelf.keepListed(valves, sites);
  return { valves, sites };
}

/** One valve and its earlier jobs, without the job `except`: fresh from the server, else as last seen by this device. */
export async function knowValve(
  shelf: Shelf,
  tag: string,
  site?: string,
  except?: string,
): Promise<KnownValve | undefined> {
  const answer = await ask<ValveView>(path(`/api/valves/${encodeURIComponent(tag)}`, { site }));
  if (!answer.ok) return shelf.valve(tag, site);
  const { valve, history, fleet, ownFamily } = answer.value;
  const known: KnownValve = {
    tag,
    site,
    valve: { ...valve, tag },
    history: history.filter((job) => job.job !== except).map(({ on, entries }) => ({ on, entries })),
    fleet,
    ...(ownFamily ? { ownFamily } : {}),
  };
  await shelf.keepValve(known);
  return known;
}

function noteOf(one: ValveSummary): string | undefined {
  const open = one.open ? `${one.open} open` : "";
  const next = one.nextOn ? `due ${dayWords(one.nextOn)}` : "";
  return [next, open].filter(Boolean).join(", ") || undefined;
}

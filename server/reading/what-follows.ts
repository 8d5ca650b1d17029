import {
  type Consequences,
  consequences,
  type Entry,
  type Family,
  type Life,
  type PastJob,
  type Valve,
} from "../../core/index.ts";
import { serviceOf } from "./like-valves.ts";
import type { Past } from "./past.ts";
import { type JobPlace, knownValve, type Visit } from "./what-is-known.ts";

/** One valve's share of a job, with what follows from it. */
export interface ShareReckoned {
  tag: string;
  valve: Valve;
  /** its family, where that is one of the site's own */
  family?: Family;
  entries: Entry[];
  consequences: Consequences;
}

/**
 * What follows from a job, valve by valve, the job's own valve first.
 * `day`: the site's day of the job. What was heard on a valve in later jobs does not count.
 */
export async function reckonJob(
  past: Past,
  job: JobPlace,
  main: string,
  standing: readonly { tag: string; entry: Entry }[],
  day: string,
): Promise<ShareReckoned[]> {
  const byTag = new Map<string, Entry[]>([[main, []]]);
  for (const { tag, entry } of standing) {
    const share = byTag.get(tag);
    if (share) share.push(entry);
    else byTag.set(tag, [entry]);
  }
  const families = await past.families();
  const shares: ShareReckoned[] = [];
  for (const [tag, entries] of byTag) {
    const visits = await past.visits(tag, job);
    const valve = knownValve(tag, await past.record(tag), visits);
    const like = await past.like(valve, serviceOf(valve, [...visits, { entries }]));
    const family = families.find((one) => one.family === valve.family);
    const after = consequences(valve, history(visits), entries, day, like, families);
    shares.push({ tag, valve, ...(family ? { family } : {}), entries, consequences: after });
  }
  return shares;
}

/**
 * What follows for a valve as it stands after its last job. `today` counts only where no job is known; `like`: seat
 * lives of like valves; `families`: the site's own.
 */
export function reckonValve(
  valve: Valve,
  visits: readonly Visit[],
  today: string,
  like: readonly Life[],
  families: readonly Family[],
): Consequences {
  const last = visits[visits.length - 1];
  if (!last) return consequences(valve, [], [], today, like, families);
  return consequences(valve, history(visits.slice(0, -1)), last.entries, last.on, like, families);
}

export const history = (visits: readonly Visit[]): PastJob[] => visits.map(({ on, entries }) => ({ on, entries }));

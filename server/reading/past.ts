import type { Family, Life, Valve } from "../../core/index.ts";
import type { JobRow } from "./keep-reading.ts";
import { livesOfLike } from "./like-valves.ts";
import { dataOf, ownFamiliesAt } from "./site-families.ts";
import type { StandingOf } from "./standing-of-jobs.ts";
import {
  isBefore,
  type JobPlace,
  type Reads,
  recordOf,
  recordsOf,
  type Visit,
  visitsOf,
  visitsOfMany,
} from "./what-is-known.ts";

/** What the log knows of a site's valves, asked valve by valve. */
export interface Past {
  /** what was heard of it in jobs before this one, oldest first */
  visits(tag: string, before: JobPlace): Promise<Visit[]>;
  /** as somebody last set it up */
  record(tag: string): Promise<Valve | undefined>;
  /** seat lives of others like it */
  like(valve: Valve, service: string): Promise<Life[]>;
  /** the site's own families */
  families(): Promise<readonly Family[]>;
}

/** Looked up as it is asked: for one job. */
export const pastOf = (db: Reads, site: string, zone: string | undefined): Past => ({
  visits: (tag, before) => visitsOf(db, site, tag, zone, before),
  record: (tag) => recordOf(db, site, tag),
  like: (valve, service) => livesOfLike(db, site, valve, service),
  families: async () => dataOf(await ownFamiliesAt(db, site)),
});

/** Looked up at once for all that these jobs of a site will ask: a day of hundreds of jobs asks thousands of times. */
export async function pastOfJobs(
  db: Reads,
  site: string,
  zone: string | undefined,
  jobs: readonly JobRow[],
  standing: StandingOf,
): Promise<Past> {
  const heard = jobs.flatMap(({ id, startedAt, startedOffset: offset }) =>
    (standing.get(id) ?? []).map((one) => ({ ...one, startedAt, offset })),
  );
  const tags = [...new Set([...jobs, ...heard].flatMap(({ tag }) => tag || []))];
  const visits = await visitsOfMany(db, site, tags, zone, heard);
  const records = await recordsOf(db, site, tags);
  const families = dataOf(await ownFamiliesAt(db, site));
  return {
    ...pastOf(db, site, zone),
    visits: async (tag, before) => (visits.get(tag) ?? []).filter((visit) => isBefore(visit, before)),
    record: async (tag) => records.get(tag),
    families: async () => families,
  };
}

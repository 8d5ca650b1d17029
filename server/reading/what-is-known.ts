import { and, asc, desc, eq, inArray, lt, notInArray, or, type SQL } from "drizzle-orm";
import type { Entry, Valve } from "../../core/index.ts";
import { valveSchema } from "../../core/shapes/valve.ts";
import { entries, jobs, sites, valveRecords } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { localDay, type Moment, now } from "../moments.ts";

/** Where a job stands among the others of its site. */
export interface JobPlace {
  id: string;
  startedAt: string;
}

/** Reads from the database itself or from inside an open write. */
export type Reads = Pick<Tx, "select" | "selectDistinct">;

/** One earlier (or any) job's share of one valve. */
export interface Visit {
  job: string;
  on: string;
  startedAt: Moment;
  entries: Entry[];
}

/** The site's zone, or undefined for a site that nobody set up: its days then go by the offset said. */
export async function zoneOf(db: Reads, site: string): Promise<string | undefined> {
  if (site === "") return undefined;
  const [row] = await db.select({ zone: sites.zone }).from(sites).where(eq(sites.site, site));
  return row?.zone;
}

/** The site's day at this moment; of a site that nobody set up, the day in UTC. */
export const todayIn = (zone: string | undefined): string => localDay(now(), zone);

/** A valve as a person last set it up; undefined where nobody did. */
export async function recordOf(db: Reads, site: string, tag: string): Promise<Valve | undefined> {
  const [row] = await db
    .select({ known: valveRecords.known })
    .from(valveRecords)
    .where(and(eq(valveRecords.site, site), eq(valveRecords.tag, tag)))
    .orderBy(desc(valveRecords.number))
    .limit(1);
  return row && readRecord(row.known);
}

/** The same of several valves at once. */
export async function recordsOf(db: Reads, site: string, tags: readonly string[]): Promise<Map<string, Valve>> {
  const rows = await db
    .select({ tag: valveRecords.tag, known: valveRecords.known })
    .from(valveRecords)
    .where(and(eq(valveRecords.site, site), inArray(valveRecords.tag, [...tags])))
    .orderBy(asc(valveRecords.tag), asc(valveRecords.number));
  // of several the last, which is the newest, stays
  return new Map([...new Map(rows.map((row) => [row.tag, row.known]))].map(([tag, known]) => [tag, readRecord(known)]));
}

export function readRecord(text: string): Valve {
  const read = valveSchema.safeParse(JSON.parse(text));
  if (!read.success) throw new Error("a stored valve record does not read", { cause: read.error });
  return read.data;
}

/** Everything heard of one valve, oldest job first; `before`: only jobs that started before this one. */
export async function visitsOf(
  db: Reads,
  site: string,
  tag: string,
  zone: string | undefined,
  before?: JobPlace,
): Promise<Visit[]> {
  if (tag === "") return [];
  const earlier = before
    ? or(
        lt(entries.startedAt, before.startedAt),
        and(eq(entries.startedAt, before.startedAt), lt(entries.job, before.id)),
      )
    : undefined;
  const rows = await heardOf(db, and(eq(entries.site, site), eq(entries.tag, tag), earlier));
  return visitsFrom(rows, zone).get(tag) ?? [];
}

/** Everything heard of these valves of a site, each oldest job first. What was heard in jobs `atHand` is not read again. */
export async function visitsOfMany(
  db: Reads,
  site: string,
  tags: readonly string[],
  zone: string | undefined,
  atHand: readonly Heard[],
): Promise<Map<string, Visit[]>> {
  const others = notInArray(entries.job, [...new Set(atHand.map((one) => one.job))]);
  const heard = await heardOf(db, and(eq(entries.site, site), inArray(entries.tag, [...tags]), others));
  const byTag = visitsFrom([...heard, ...atHand], zone);
  for (const visits of byTag.values())
    visits.sort((one, other) => (isBefore(one, { id: other.job, startedAt: other.startedAt.utc }) ? -1 : 1));
  return byTag;
}

/** An entry that stands, with its valve and the job it was heard in. */
export interface Heard {
  tag: string;
  job: string;
  startedAt: string;
  offset: number;
  entry: Entry;
}

async function heardOf(db: Reads, where: SQL | undefined): Promise<Heard[]> {
  const rows = await db
    .select({
      tag: entries.tag,
      job: entries.job,
      startedAt: entries.startedAt,
      offset: jobs.startedOffset,
      body: entries.body,
    })
    .from(entries)
    .innerJoin(jobs, eq(jobs.id, entries.job))
    .where(where)
    .orderBy(asc(entries.tag), asc(entries.startedAt), asc(entries.job), asc(entries.n));
  return rows.map(({ body, ...row }) => ({ ...row, entry: JSON.parse(body) as Entry }));
}

/** What was heard, of each valve job by job. */
function visitsFrom(heard: readonly Heard[], zone: string | undefined): Map<string, Visit[]> {
  const byTag = new Map<string, Visit[]>();
  for (const row of heard) {
    if (row.tag === "") continue;
    const visits = byTag.get(row.tag) ?? [];
    if (visits.length === 0) byTag.set(row.tag, visits);
    let visit = visits[visits.length - 1];
    if (visit?.job !== row.job) {
      const startedAt = { utc: row.startedAt, offset: row.offset };
      visit = { job: row.job, on: localDay(startedAt, zone), startedAt, entries: [] };
      visits.push(visit);
    }
    visit.entries.push(row.entry);
  }
  return byTag;
}

/** Whether a visit lies before a job: it started earlier, or at the same moment and its id comes first. */
export function isBefore(visit: Visit, job: JobPlace): boolean {
  const { utc } = visit.startedAt;
  return utc < job.startedAt || (utc === job.startedAt && visit.job < job.id);
}

/** What is known of a valve: as set up, and where that is silent, as was last said of it in an earlier job. */
export function knownValve(tag: string, record: Valve | undefined, visits: readonly Visit[]): Valve {
  const said: Valve = {};
  for (const { entries: heard } of visits) {
    for (const entry of heard) {
      if (entry.type !== "valve") continue;
      if (entry.size_in !== undefined) said.size_in = entry.size_in;
      if (entry.acts) said.acts = entry.acts;
      if (entry.service) said.service = entry.service;
    }
  }
  return { ...said, ...record, ...(tag === "" ? {} : { tag }) };
}

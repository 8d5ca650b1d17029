import { and, asc, eq, gte, inArray, ne, or, sql } from "drizzle-orm";
import type { Entry } from "../../core/index.ts";
import { decisions } from "../db/review-tables.ts";
import { corrections, entries, jobs, phrases, readings, valveTags } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { listNoted, type Noted } from "../when-said/list-days.ts";
import { eachPhrase, type JobReading, readOn, type Said, type Standing } from "./read-job.ts";
import { type SiteReader, siteReader } from "./site-reader.ts";

export type JobRow = typeof jobs.$inferSelect;

/** A job as last read here, with what the database held then; sound only while the revision agrees. */
export interface Remembered {
  revision: number;
  /** the reader and the words of the site that made it */
  reader: string;
  reading: JobReading;
  /** place of the last phrase: said at, then id */
  last: string;
  /** standing entries as written */
  written: Written[];
}
interface Written {
  tag: string;
  /** the entry itself, where it was read here: the same object needs no comparing */
  entry?: Entry;
  body: string;
}

/**
 * Readings kept in memory, so that a phrase at the end of a long job costs one phrase and not the whole job.
 * Filled only after COMMIT: what a rolled-back write left here would be believed.
 */
export class RecentJobs {
  #kept = new Map<string, Remembered>();
  constructor(readonly most = 300) {}
  get(job: string): Remembered | undefined {
    return this.#kept.get(job);
  }
  set(job: string, what: Remembered): void {
    this.#kept.delete(job);
    this.#kept.set(job, what);
    for (const oldest of this.#kept.keys()) {
      if (this.#kept.size <= this.most) break;
      this.#kept.delete(oldest);
    }
  }
}

/** A job to be read again. `added`: the phrases just stored, if that is all that changed since `before`. */
export interface ToRead {
  job: JobRow;
  before?: Remembered | undefined;
  added?: Said[];
}

/** Reads a job again inside an open write, and keeps what each phrase became and what stands. */
export async function keepReading(tx: Tx, job: JobRow): Promise<void> {
  await keepReadings(tx, [{ job }]);
}

/** The same for many jobs, with as many statements as for one. */
export async function keepReadings(tx: Tx, asked: readonly ToRead[]): Promise<Map<string, Remembered>> {
  const readers = new Map<string, SiteReader>();
  const reread: Reread[] = [];
  for (const one of asked) {
    const reader = readers.get(one.job.site) ?? (await siteReader(tx, one.job.site));
    readers.set(one.job.site, reader);
    reread.push(await readAnew(tx, one, reader));
  }
  await writePhrases(tx, reread);
  const written = await writeStanding(tx, reread);
  for (const some of chunks(reread, 100))
    await markRead(
      tx,
      some.map(({ job }) => job.id),
    );
  return new Map(
    reread.map(({ job, reader, reading, last }, at) => [
      job.id,
      { revision: job.revision + 1, reader, reading, last, written: written[at] ?? [] },
    ]),
  );
}

/**
 * The valves' states are marked by way of the job: one statement instead of one a valve. What is marked already is let be:
 * the marks stand in five indexes, which libSQL writes anew for every row that is set, though to what it was.
 */
async function markRead(tx: Tx, ids: readonly string[]): Promise<void> {
  const these = inArray(jobs.id, [...ids]);
  await tx
    .update(jobs)
    .set({ revision: sql`${jobs.revision} + 1` })
    .where(these);
  const unmarked = or(ne(jobs.stale, 1), ne(jobs.unweighed, 1), ne(jobs.signed, 0));
  await tx.update(jobs).set({ stale: 1, unweighed: 1, signed: 0 }).where(and(these, unmarked));
}

/** A job as it reads now, and what the database still holds of how it read before. */
interface Reread {
  job: JobRow;
  reader: string;
  reading: JobReading;
  last: string;
  /** phrases before this one read as they did */
  from: number;
  written: Written[];
}

async function readAnew(tx: Tx, { job, before, added }: ToRead, { name, nothing }: SiteReader): Promise<Reread> {
  const place = (one: { saidAt: string; id: string }) => `${one.saidAt} ${one.id}`;
  const inOrder = (added ?? []).map((one) => ({ ...one, at: place(one) })).sort((a, b) => (a.at < b.at ? -1 : 1));
  const tag = job.tag ?? undefined;
  const goesOn =
    before !== undefined &&
    before.revision === job.revision &&
    before.reader === name &&
    (inOrder[0]?.at ?? "") > before.last;
  if (goesOn) {
    return {
      job,
      reader: name,
      reading: readOn(before.reading, inOrder, tag),
      last: inOrder[inOrder.length - 1]?.at ?? before.last,
      // a later phrase leaves the readings of earlier ones as they were: only the new ones are written
      from: before.reading.said.length,
      written: before.written,
    };
  }
  // of a job that was never read nothing is here but what was just stored
  if (added && job.revision === 0)
    return {
      job,
      reader: name,
      reading: readOn(nothing, inOrder, tag),
      last: inOrder.at(-1)?.at ?? "",
      from: 0,
      written: [],
    };
  const said = await phrasesToRead(tx, job);
  const rows = await tx
    .select({ tag: entries.tag, body: entries.body, reader: entries.reader })
    .from(entries)
    .where(and(eq(entries.site, job.site), eq(entries.job, job.id)))
    .orderBy(asc(entries.n));
  return {
    job,
    reader: name,
    reading: readOn(nothing, said, tag),
    last: said.length ? place(said[said.length - 1] as (typeof said)[number]) : "",
    from: 0,
    written: rows.map((row) => ({ tag: row.tag, body: row.reader === name ? row.body : "" })),
  };
}

/** A job's phrases in the order said, each with its newest correction in place. */
export async function phrasesToRead(tx: Pick<Tx, "select">, job: { id: string; site: string }) {
  const said = await tx
    .select({ id: phrases.id, text: phrases.text, saidAt: phrases.saidAt, confidence: phrases.confidence })
    .from(phrases)
    .where(and(eq(phrases.site, job.site), eq(phrases.job, job.id)))
    .orderBy(asc(phrases.saidAt), asc(phrases.id));
  const later = await tx
    .select({ phrase: corrections.phrase, text: corrections.text })
    .from(corrections)
    .where(and(eq(corrections.site, job.site), eq(corrections.job, job.id)))
    .orderBy(asc(corrections.madeAt), asc(corrections.id));
  const newest = new Map(later.map((one) => [one.phrase, one.text ?? ""]));
  const decided = await tx
    .select({ phrase: decisions.phrase, what: decisions.what })
    .from(decisions)
    .where(and(eq(decisions.site, job.site), eq(decisions.job, job.id)))
    .orderBy(asc(decisions.n));
  const last = new Map(decided.map((one) => [one.phrase, one.what]));
  return said.map((one) => {
    const text = newest.get(one.id);
    if (last.get(one.id) === "accepted") return { ...one, text: text ?? one.text, confidence: null, accepted: true };
    // what a person wrote in its place is not in doubt
    return text === undefined ? one : { ...one, text, confidence: null };
  });
}

async function writePhrases(tx: Tx, reread: readonly Reread[]): Promise<void> {
  const rows = reread.flatMap(({ job, reader, reading, from }) =>
    eachPhrase(reading, from).map(({ id, reading: one, touched }) => ({
      phrase: id,
      site: job.site,
      job: job.id,
      reader,
      entries: JSON.stringify(one.entries),
      unread: JSON.stringify(one.unread.map(({ text, at }) => ({ text, at }))),
      ask: JSON.stringify(one.ask.map((ask) => ask.question)),
      marks: JSON.stringify(one.marks),
      alerts: JSON.stringify(one.alerts),
      touched: JSON.stringify(touched),
    })),
  );
  for (const some of chunks(rows, 100)) {
    const fresh = (column: string) => sql.raw(`excluded.${column}`);
    await tx
      .insert(readings)
      .values(some)
      .onConflictDoUpdate({
        target: readings.phrase,
        set: {
          reader: fresh("reader"),
          entries: fresh("entries"),
          unread: fresh("unread"),
          ask: fresh("ask"),
          marks: fresh("marks"),
          alerts: fresh("alerts"),
          touched: fresh("touched"),
        },
      });
  }
}

/** Writes the entries that stand from the first that differs, job by job; marks every valve that lost some. */
async function writeStanding(tx: Tx, reread: readonly Reread[]): Promise<Written[][]> {
  const rows: (typeof entries.$inferInsert)[] = [];
  const noted: Noted[] = [];
  const now: Written[][] = [];
  for (const { job, reader, reading, written } of reread) {
    const { standing } = reading;
    let same = 0;
    while (same < standing.length && agree(standing[same], written[same])) same++;
    if (same < written.length) {
      const gone = await tx
        .delete(entries)
        .where(and(eq(entries.site, job.site), eq(entries.job, job.id), gte(entries.n, same)))
        .returning({ tag: entries.tag });
      await markStale(
        tx,
        job.site,
        gone.map((row) => row.tag),
      );
    }
    const fresh: Written[] = [];
    const saidAt = new Map(reading.said.map((one) => [one.id, one.saidAt]));
    standing.slice(same).forEach(({ tag, entry, phrase }, at) => {
      const body = JSON.stringify(entry);
      const { id, site, startedAt } = job;
      rows.push({
        site,
        job: id,
        n: same + at,
        tag,
        startedAt,
        phrase: phrase ?? null,
        type: entry.type,
        body,
        reader,
      });
      fresh.push({ tag, body, entry });
      const then = saidAt.get(phrase ?? "");
      if (then !== undefined) noted.push({ site, saidAt: then, entry });
    });
    now.push([...written.slice(0, same), ...fresh]);
  }
  for (const some of chunks(rows, 100)) await tx.insert(entries).values(some);
  await listNoted(tx, noted);
  return now;
}

function agree(standing: Standing | undefined, written: Written | undefined): boolean {
  if (!standing || !written || standing.tag !== written.tag) return false;
  return standing.entry === written.entry || JSON.stringify(standing.entry) === written.body;
}

/** What follows for these valves must be reckoned again. */
export async function markStale(tx: Tx, site: string, tags: readonly string[]): Promise<void> {
  const named = [...new Set(tags)].filter((tag) => tag !== "");
  if (named.length === 0) return;
  const known = await tx
    .update(valveTags)
    .set({ stale: 1 })
    .where(and(eq(valveTags.site, site), inArray(valveTags.tag, named)))
    .returning({ tag: valveTags.tag });
  const seen = new Set(known.map((row) => row.tag));
  const fresh = named.filter((tag) => !seen.has(tag));
  for (const some of chunks(fresh, 100))
    await tx.insert(valveTags).values(some.map((tag) => ({ site, tag, stale: 1 })));
}

/** Statements take a limited number of values at once. */
function* chunks<T>(rows: readonly T[], size: number): Generator<T[]> {
  for (let at = 0; at < rows.length; at += size) yield rows.slice(at, at + size);
}

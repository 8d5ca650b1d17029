import { and, asc, eq, gte, inArray, sql } from "drizzle-orm";
import { corrections, entries, jobs, phrases, readings, valveTags } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { eachPhrase, type JobReading, nothingHeard, readOn, type Said } from "./read-job.ts";
import { READER } from "./version.ts";

export type JobRow = typeof jobs.$inferSelect;

/** A job as last read here, with what the database held then; sound only while the revision agrees. */
export interface Remembered {
  revision: number;
  reading: JobReading;
  /** place of the last phrase: said at, then id */
  last: string;
  /** standing entries as written, one text each */
  written: string[];
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

/**
 * Reads a job again inside an open write, and keeps what each phrase became and what stands.
 * `added`: the phrases just stored, if that is all that changed since `before`.
 */
export async function keepReading(
  tx: Tx,
  job: JobRow,
  before?: Remembered,
  added?: (Said & { saidAt: string })[],
): Promise<Remembered> {
  const place = (one: { saidAt: string; id: string }) => `${one.saidAt} ${one.id}`;
  const inOrder = (added ?? []).map((one) => ({ ...one, at: place(one) })).sort((a, b) => (a.at < b.at ? -1 : 1));
  const tag = job.tag ?? undefined;
  const goesOn = before !== undefined && before.revision === job.revision && (inOrder[0]?.at ?? "") > before.last;

  let reading: JobReading;
  let last: string;
  let written: string[];
  if (goesOn) {
    reading = readOn(before.reading, inOrder, tag);
    last = inOrder[inOrder.length - 1]?.at ?? before.last;
    written = before.written;
    // a later phrase leaves the readings of earlier ones as they were: only the new ones are written
    await writePhrases(tx, job, reading, before.reading.said.length);
  } else {
    const said = await phrasesToRead(tx, job);
    reading = readOn(nothingHeard, said, tag);
    last = said.length ? place(said[said.length - 1] as (typeof said)[number]) : "";
    written = (
      await tx
        .select({ tag: entries.tag, body: entries.body, reader: entries.reader })
        .from(entries)
        .where(and(eq(entries.site, job.site), eq(entries.job, job.id)))
        .orderBy(asc(entries.n))
    ).map((row) => (row.reader === READER ? `${row.tag}\n${row.body}` : ""));
    await writePhrases(tx, job, reading, 0);
  }
  const now = await writeStanding(tx, job, reading, written);
  const revision = job.revision + 1;
  await tx.update(jobs).set({ revision }).where(eq(jobs.id, job.id));
  return { revision, reading, last, written: now };
}

/** A job's phrases in the order said, each with its newest correction in place. */
export async function phrasesToRead(tx: Pick<Tx, "select">, job: { id: string; site: string }) {
  const said = await tx
    .select({ id: phrases.id, text: phrases.text, saidAt: phrases.saidAt })
    .from(phrases)
    .where(and(eq(phrases.site, job.site), eq(phrases.job, job.id)))
    .orderBy(asc(phrases.saidAt), asc(phrases.id));
  const later = await tx
    .select({ phrase: corrections.phrase, text: corrections.text })
    .from(corrections)
    .where(and(eq(corrections.site, job.site), eq(corrections.job, job.id)))
    .orderBy(asc(corrections.madeAt), asc(corrections.id));
  const newest = new Map(later.map((one) => [one.phrase, one.text ?? ""]));
  return said.map((one) => ({ ...one, text: newest.get(one.id) ?? one.text }));
}

async function writePhrases(tx: Tx, job: JobRow, reading: JobReading, from: number): Promise<void> {
  const rows = eachPhrase(reading)
    .slice(from)
    .map(({ id, reading: one, touched }) => ({
      phrase: id,
      site: job.site,
      job: job.id,
      reader: READER,
      entries: JSON.stringify(one.entries),
      unread: JSON.stringify(one.unread.map(({ text, at }) => ({ text, at }))),
      ask: JSON.stringify(one.ask.map((ask) => ask.question)),
      marks: JSON.stringify(one.marks),
      alerts: JSON.stringify(one.alerts),
      touched: JSON.stringify(touched),
    }));
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

/** Writes the entries that stand from the first that differs; marks every valve whose record changed. */
async function writeStanding(tx: Tx, job: JobRow, reading: JobReading, written: string[]): Promise<string[]> {
  const rows = reading.standing.map(({ tag, entry, phrase }, n) => ({
    site: job.site,
    job: job.id,
    n,
    tag,
    startedAt: job.startedAt,
    phrase: phrase ?? null,
    type: entry.type,
    body: JSON.stringify(entry),
    reader: READER,
  }));
  const texts = rows.map((row) => `${row.tag}\n${row.body}`);
  let same = 0;
  while (same < texts.length && same < written.length && texts[same] === written[same]) same++;
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
  for (const some of chunks(rows.slice(same), 100)) await tx.insert(entries).values(some);
  const tags = rows.slice(same).map((row) => row.tag);
  await markStale(tx, job.site, job.tag ? [...tags, job.tag] : tags);
  return texts;
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

import { and, asc, eq, gt } from "drizzle-orm";
import type { Store } from "../db/open.ts";
import { entries, jobs, readings } from "../db/tables.ts";
import { type JobRow, keepReading, phrasesToRead } from "./keep-reading.ts";
import { meaning } from "./meaning.ts";
import { eachPhrase, readOn } from "./read-job.ts";
import { siteReader } from "./site-reader.ts";

/** A phrase that reads otherwise now, and what stands otherwise in its job. */
export interface Change {
  job: string;
  tag: string;
  phrases: { id: string; text: string; before: string[]; after: string[]; reader: string }[];
  /** entries that no longer stand, and that stand only now */
  gone: string[];
  come: string[];
}

const AT_ONCE = 100;

/**
 * Reads every stored job with the present reader and the words of its site, and hands over what changed, job by job; `apply` stores it.
 * Words, rules and places are kept apart from meaning: only another meaning is a change. A signed job stays as it was
 * signed: what would read otherwise in it is told, and not stored.
 */
export async function readAgain(
  store: Store,
  apply: boolean,
  told: (change: Change) => void,
): Promise<{ jobs: number; changed: number }> {
  let after = "";
  const count = { jobs: 0, changed: 0 };
  for (;;) {
    const some = await store.db.select().from(jobs).where(gt(jobs.id, after)).orderBy(asc(jobs.id)).limit(AT_ONCE);
    if (some.length === 0) return count;
    for (const job of some) {
      const change = await compare(store, job);
      count.jobs++;
      if (change.phrases.length + change.gone.length + change.come.length > 0) {
        count.changed++;
        told(change);
      }
      // also where nothing changed: from now on it counts as read by this reader
      if (apply) await applyTo(store, job.id);
      after = job.id;
    }
  }
}

async function applyTo(store: Store, id: string): Promise<void> {
  await store.write(async (tx) => {
    const [fresh] = await tx.select().from(jobs).where(eq(jobs.id, id));
    if (fresh && !fresh.signed) await keepReading(tx, fresh);
  });
}

async function compare(store: Store, job: JobRow): Promise<Change> {
  const said = await phrasesToRead(store.db, job);
  const { nothing } = await siteReader(store.db, job.site);
  const reading = readOn(nothing, said, job.tag ?? undefined);
  const stored = await store.db
    .select({ phrase: readings.phrase, entries: readings.entries, reader: readings.reader })
    .from(readings)
    .where(and(eq(readings.site, job.site), eq(readings.job, job.id)));
  const byPhrase = new Map(stored.map((row) => [row.phrase, row]));
  const stood = await store.db
    .select({ tag: entries.tag, body: entries.body })
    .from(entries)
    .where(and(eq(entries.site, job.site), eq(entries.job, job.id)))
    .orderBy(asc(entries.n));
  const before = stood.map((row) => meaning(row.tag, JSON.parse(row.body)));
  const now = reading.standing.map(({ tag, entry }) => meaning(tag, entry));
  return {
    job: job.id,
    tag: reading.standing[0]?.tag || job.tag || "",
    phrases: eachPhrase(reading).flatMap(({ id, reading: one }) => {
      const row = byPhrase.get(id);
      const was = row ? (JSON.parse(row.entries) as object[]).map((entry) => meaning("", entry)) : [];
      const is = one.entries.map((entry) => meaning("", entry));
      const same = row !== undefined && was.join("\n") === is.join("\n");
      return same ? [] : [{ id, text: one.text, before: was, after: is, reader: row?.reader ?? "none" }];
    }),
    gone: without(before, now),
    come: without(now, before),
  };
}

/** What of these is not among the others, each counted once. */
function without(these: readonly string[], others: readonly string[]): string[] {
  const left = [...others];
  return these.filter((one) => {
    const at = left.indexOf(one);
    if (at < 0) return true;
    left.splice(at, 1);
    return false;
  });
}

import { and, eq, gt, inArray } from "drizzle-orm";
import type { Who } from "../access.ts";
import { corrections, entries, jobs, phrases } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { type Moment, now } from "../moments.ts";
import { type JobRow, keepReading } from "../reading/keep-reading.ts";
import { listWords } from "../when-said/list-days.ts";

/** A later word on a phrase: other words in its place, or none, which strikes it. */
export interface Amendment {
  id: string;
  phrase: string;
  text: string | null;
  why: string | null;
  madeAt: Moment;
}

/** Keeps an amendment as a record of its own and reads its job again, inside an open write. */
export async function amend(tx: Tx, job: JobRow, { madeAt, ...sent }: Amendment, who: Who): Promise<void> {
  await tx.insert(corrections).values({
    ...sent,
    site: job.site,
    job: job.id,
    person: who.person ?? null,
    madeAt: madeAt.utc,
    madeOffset: madeAt.offset,
    receivedAt: now().utc,
  });
  await listInstead(tx, job.site, sent);
  await keepReading(tx, job);
  await doubtLater(tx, job);
}

/** The words in its place are looked for on the day on which it was said. */
async function listInstead(tx: Tx, site: string, { phrase, text }: Pick<Amendment, "phrase" | "text">): Promise<void> {
  if (text === null) return;
  const said = await tx.select({ saidAt: phrases.saidAt }).from(phrases).where(eq(phrases.id, phrase));
  await listWords(
    tx,
    said.map(({ saidAt }) => ({ site, saidAt, text })),
  );
}

/** What a later job of the same valves seemed to say against the record may say so no longer, or only now. */
async function doubtLater(tx: Tx, job: JobRow): Promise<void> {
  const of = and(eq(entries.site, job.site), eq(entries.job, job.id));
  const named = await tx.selectDistinct({ tag: entries.tag }).from(entries).where(of);
  const tags = named.map((row) => row.tag).filter((tag) => tag !== "");
  if (tags.length === 0) return;
  const later = await tx
    .selectDistinct({ job: entries.job })
    .from(entries)
    .where(and(eq(entries.site, job.site), inArray(entries.tag, tags), gt(entries.startedAt, job.startedAt)));
  for (const row of later) await tx.update(jobs).set({ unweighed: 1 }).where(eq(jobs.id, row.job));
}

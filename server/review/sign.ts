import { and, asc, count, eq } from "drizzle-orm";
import { CERTAIN } from "../../core/shapes/review-reasons.ts";
import type { Who } from "../access.ts";
import { type SitesSeen, seesSite } from "../accounts/sites-seen.ts";
import { record } from "../audit/record.ts";
import { decisions, reviewItems, signatures } from "../db/review-tables.ts";
import { jobs, phrases } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { newId } from "../ids.ts";
import { now } from "../moments.ts";
import type { JobRow } from "../reading/keep-reading.ts";
import { type Decided, freshlyWeighed, frozenWords, newestDecision, refuse } from "./decide.ts";
import { newestSignature } from "./standing.ts";
import { whoAndWhen } from "./who-and-when.ts";

/** Signs a job: what nothing speaks against is accepted with it, and from then on nothing in it changes. */
export async function sign(tx: Tx, id: string, sent: { id: string; phrases: number }, who: Who): Promise<Decided> {
  const job = await jobOf(tx, id, who.sees);
  if (!job) return refuse(404, NO_JOB);
  if (await isKnown(tx, id, sent.id)) return { ok: true, status: "known", job: id };
  if (job.signed) {
    const last = await newestSignature(tx, id);
    return refuse(409, `Signed already, by ${last ? await whoAndWhen(tx, last) : "somebody"}.`);
  }
  const said = await countOf(tx, job);
  if (said > sent.phrases) {
    const more = said - sent.phrases;
    return refuse(
      409,
      `${more === 1 ? "A phrase" : `${more} phrases`} came meanwhile: look at the job again, then sign.`,
    );
  }
  await freshlyWeighed(tx, job);
  const open = await tx
    .select({ state: reviewItems.state, weight: reviewItems.weight })
    .from(reviewItems)
    .where(eq(reviewItems.job, id));
  const asked = open.filter((one) => one.state === "asked").length;
  const doubtful = open.filter((one) => one.state === "open" && one.weight < CERTAIN).length;
  if (doubtful > 0)
    return refuse(409, `${phrasesWords(doubtful)} still to be looked at in this job: decide them first.`);
  if (asked > 0)
    return refuse(409, `${phrasesWords(asked)} still with a technician: wait for the answer, or decide without.`);
  await acceptCertain(tx, job, who);
  await keepSignature(tx, job, { id: sent.id, act: "signed", phrases: said, why: null }, who);
  await tx.update(jobs).set({ signed: 1 }).where(eq(jobs.id, id));
  return { ok: true, status: "stored", job: id };
}

/** Opens a signed job again; the signature stays in the record, and so does the reason. */
export async function reopen(tx: Tx, id: string, sent: { id: string; why: string }, who: Who): Promise<Decided> {
  const job = await jobOf(tx, id, who.sees);
  if (!job) return refuse(404, NO_JOB);
  if (await isKnown(tx, id, sent.id)) return { ok: true, status: "known", job: id };
  if (!job.signed) return refuse(409, "This job is open: it can be changed as it is.");
  await keepSignature(tx, job, { id: sent.id, act: "reopened", phrases: await countOf(tx, job), why: sent.why }, who);
  await tx.update(jobs).set({ signed: 0, unweighed: 1 }).where(eq(jobs.id, id));
  return { ok: true, status: "stored", job: id };
}

/** Accepts every phrase of a job that nothing speaks against; what needs a look stays. */
export async function acceptAll(tx: Tx, id: string, who: Who): Promise<Decided> {
  const job = await jobOf(tx, id, who.sees);
  if (!job) return refuse(404, NO_JOB);
  const frozen = await frozenWords(tx, job);
  if (frozen) return refuse(409, frozen);
  await acceptCertain(tx, await freshlyWeighed(tx, job), who);
  return { ok: true, status: "stored", job: id };
}

async function acceptCertain(tx: Tx, job: JobRow, who: Who): Promise<void> {
  const certain = and(eq(reviewItems.job, job.id), eq(reviewItems.state, "open"), eq(reviewItems.weight, CERTAIN));
  const items = await tx.select().from(reviewItems).where(certain).orderBy(asc(reviewItems.saidAt));
  if (items.length === 0) return;
  const madeAt = now().utc;
  for (const item of items) {
    const n = ((await newestDecision(tx, item.site, item.phrase))?.n ?? 0) + 1;
    const { site, job: of, phrase, meaning } = item;
    const own = { id: newId(), site, job: of, phrase, n, what: "accepted" as const, meaning, words: null };
    await tx.insert(decisions).values({ ...own, correction: null, person: who.person ?? null, by: who.by, madeAt });
  }
  await tx.update(reviewItems).set({ state: "settled" }).where(certain);
  await record(tx, who, "phrases_accepted", { job: job.id, phrases: items.map((one) => one.phrase) });
}

async function keepSignature(
  tx: Tx,
  job: JobRow,
  sent: { id: string; act: "signed" | "reopened"; phrases: number; why: string | null },
  who: Who,
): Promise<void> {
  const n = ((await newestSignature(tx, job.id))?.n ?? 0) + 1;
  const by = { person: who.person ?? null, by: who.by, madeAt: now().utc };
  await tx.insert(signatures).values({ ...sent, ...by, site: job.site, job: job.id, n });
  await record(tx, who, sent.act === "signed" ? "job_signed" : "job_reopened", { job: job.id, n });
}

async function isKnown(tx: Tx, job: string, id: string): Promise<boolean> {
  const [row] = await tx
    .select({ id: signatures.id })
    .from(signatures)
    .where(and(eq(signatures.job, job), eq(signatures.id, id)));
  return row !== undefined;
}

async function countOf(tx: Tx, job: JobRow): Promise<number> {
  const of = and(eq(phrases.site, job.site), eq(phrases.job, job.id));
  const [row] = await tx.select({ said: count() }).from(phrases).where(of);
  return row?.said ?? 0;
}

/** A job by its id; undefined where there is none to see. */
export async function jobOf(db: Pick<Tx, "select">, id: string, seen: SitesSeen): Promise<JobRow | undefined> {
  const [row] = await db.select().from(jobs).where(eq(jobs.id, id));
  return row && seesSite(seen, row.site) ? row : undefined;
}

const NO_JOB = "No such job is stored here. GET /api/jobs?site=&day= lists those that are.";
const phrasesWords = (count: number) => (count === 1 ? "1 phrase is" : `${count} phrases are`);

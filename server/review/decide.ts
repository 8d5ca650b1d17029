import { and, asc, desc, eq } from "drizzle-orm";
import { type DecisionSent, isDoubtful } from "../../core/index.ts";
import type { Who } from "../access.ts";
import { type SitesSeen, seesSite } from "../accounts/sites-seen.ts";
import { record } from "../audit/record.ts";
import { decisions, reviewItems } from "../db/review-tables.ts";
import { corrections, jobs, phrases } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { newId } from "../ids.ts";
import { now } from "../moments.ts";
import { type JobRow, keepReading } from "../reading/keep-reading.ts";
import { nameMeaning } from "../reading/meaning.ts";
import type { Reads } from "../reading/what-is-known.ts";
import { amend } from "./amend.ts";
import { newestSignature } from "./standing.ts";
import { weighJob } from "./weigh-job.ts";
import { DID, whoAndWhen } from "./who-and-when.ts";

export type Refused = { ok: false; status: 404 | 409; problem: string };
export type Decided = { ok: true; status: "stored" | "known"; job: string } | Refused;

type DecisionRow = typeof decisions.$inferSelect;
type PhraseRow = typeof phrases.$inferSelect;

/**
 * Keeps what a person decided of a phrase. Nothing is taken over unseen: where somebody decided meanwhile, or the phrase
 * reads otherwise than it did, it is refused with who did what, and can be decided again knowing that.
 */
export async function decide(tx: Tx, id: string, sent: DecisionSent, who: Who): Promise<Decided> {
  const found = await phraseAndJob(tx, id, who.sees);
  if (!found) return refuse(404, `No phrase ${id} is stored here.`);
  const [before] = await tx.select().from(decisions).where(eq(decisions.id, sent.id));
  if (before) {
    if (before.phrase === id && before.what === sent.what && before.words === (sent.words ?? null))
      return { ok: true, status: "known", job: before.job };
    return refuse(409, "This id is already used by another decision, which stays: use a new id.");
  }
  const { phrase } = found;
  const frozen = await frozenWords(tx, found.job);
  if (frozen) return refuse(409, frozen);
  const job = await freshlyWeighed(tx, found.job);
  const last = await newestDecision(tx, job.site, id);
  if ((last?.n ?? 0) !== sent.seen && last) {
    if (agrees(last, sent)) return { ok: true, status: "known", job: job.id };
    const by = await whoAndWhen(tx, last);
    return refuse(409, `${DID[last.what]} by ${by} meanwhile. Nothing of yours was done: look, and decide again.`);
  }
  if (sent.meaning !== undefined && sent.meaning !== (await meaningOf(tx, id)) && sent.what === "accepted") {
    return refuse(409, "It reads otherwise by now: something was said or amended meanwhile. Look, and decide again.");
  }
  await keepDecision(tx, { job, phrase, last, sent, who });
  return { ok: true, status: "stored", job: job.id };
}

interface Deciding {
  job: JobRow;
  phrase: PhraseRow;
  last: DecisionRow | undefined;
  sent: DecisionSent;
  who: Who;
}

async function keepDecision(tx: Tx, { job, phrase, last, sent, who }: Deciding): Promise<void> {
  const text = await textInPlace(tx, phrase, last, sent);
  const correction = text === undefined ? null : newId();
  if (correction && text !== undefined) {
    const why = sent.what === "struck" ? (sent.words ?? null) : null;
    await amend(tx, job, { id: correction, phrase: phrase.id, text, why, madeAt: now() }, who);
    await weighJob(tx, job);
  }
  await tx.insert(decisions).values({
    id: sent.id,
    site: job.site,
    job: job.id,
    phrase: phrase.id,
    n: (last?.n ?? 0) + 1,
    what: sent.what,
    meaning: await meaningOf(tx, phrase.id),
    words: sent.words ?? null,
    correction,
    person: who.person ?? null,
    by: who.by,
    madeAt: now().utc,
  });
  // what was heard doubtfully counts once a lead has accepted it, and no more where that is taken back
  const bears = sent.what === "accepted" || last?.what === "accepted";
  if (bears && (await standsInDoubt(tx, job, phrase))) await keepReading(tx, await freshRow(tx, job));
  await weighJob(tx, job);
  await tx.update(jobs).set({ unweighed: 0 }).where(eq(jobs.id, job.id));
  await record(tx, who, "phrase_decided", {
    decision: sent.id,
    phrase: phrase.id,
    job: job.id,
    what: sent.what,
    ...(correction ? { correction } : {}),
  });
}

/** Whether how the phrase was heard, or how one that amended it was, decides if its entries count. */
async function standsInDoubt(tx: Tx, job: JobRow, phrase: PhraseRow): Promise<boolean> {
  if (isDoubtful(phrase.confidence ?? undefined)) return true;
  const ofJob = and(eq(phrases.site, job.site), eq(phrases.job, job.id));
  const heard = await tx.select({ confidence: phrases.confidence }).from(phrases).where(ofJob);
  return heard.some((one) => isDoubtful(one.confidence ?? undefined));
}

async function freshRow(tx: Tx, job: JobRow): Promise<JobRow> {
  const [row] = await tx.select().from(jobs).where(eq(jobs.id, job.id));
  return row ?? job;
}

/** The words to read from now on; undefined where they stay; null where the phrase is struck. */
async function textInPlace(
  tx: Tx,
  phrase: PhraseRow,
  last: DecisionRow | undefined,
  sent: DecisionSent,
): Promise<string | null | undefined> {
  if (sent.what === "amended") return sent.words ?? null;
  if (sent.what === "struck") return null;
  if (sent.what !== "returned" || !last?.correction) return undefined;
  // taken back: what was read before that correction
  const all = await tx
    .select()
    .from(corrections)
    .where(eq(corrections.phrase, phrase.id))
    .orderBy(asc(corrections.madeAt), asc(corrections.id));
  const at = all.findIndex((one) => one.id === last.correction);
  return at > 0 ? (all[at - 1]?.text ?? null) : phrase.text;
}

/** Two leads who say the same have said it once. */
const agrees = (last: DecisionRow, sent: DecisionSent) =>
  last.what === sent.what && last.words === (sent.words ?? null) && sent.what !== "returned";

/** A phrase and its job; undefined where there is none to see. */
export async function phraseAndJob(
  tx: Tx,
  id: string,
  seen: SitesSeen,
): Promise<{ phrase: PhraseRow; job: JobRow } | undefined> {
  const [found] = await tx
    .select({ phrase: phrases, job: jobs })
    .from(phrases)
    .innerJoin(jobs, eq(jobs.id, phrases.job))
    .where(eq(phrases.id, id));
  return found && seesSite(seen, found.job.site) ? found : undefined;
}

/** Why nothing may be decided in a job; undefined where it may. */
export async function frozenWords(tx: Tx, job: JobRow): Promise<string | undefined> {
  if (!job.signed) return undefined;
  const signed = await newestSignature(tx, job.id);
  if (!signed) throw new Error(`job ${job.id} is marked as signed and has no signature`);
  return `Signed by ${await whoAndWhen(tx, signed)}: nothing in it changes any more. To change something, open the job again and say why.`;
}

/** The job with its items as they stand at this moment. */
export async function freshlyWeighed(tx: Tx, job: JobRow): Promise<JobRow> {
  if (!job.unweighed) return job;
  await weighJob(tx, job);
  await tx.update(jobs).set({ unweighed: 0 }).where(eq(jobs.id, job.id));
  return { ...job, unweighed: 0 };
}

/** The last that was decided of a phrase of this site. */
export async function newestDecision(db: Reads, site: string, phrase: string): Promise<DecisionRow | undefined> {
  const [row] = await db
    .select()
    .from(decisions)
    .where(and(eq(decisions.site, site), eq(decisions.phrase, phrase)))
    .orderBy(desc(decisions.n))
    .limit(1);
  return row;
}

/** What a phrase means as it was last weighed; of one that left nothing to look at, the name of nothing. */
async function meaningOf(tx: Tx, phrase: string): Promise<string> {
  const [row] = await tx
    .select({ meaning: reviewItems.meaning })
    .from(reviewItems)
    .where(eq(reviewItems.phrase, phrase));
  return row?.meaning ?? nameMeaning("", []);
}

export const refuse = (status: Refused["status"], problem: string): Refused => ({ ok: false, status, problem });

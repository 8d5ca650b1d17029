import { eq, inArray } from "drizzle-orm";
import type { Entry, Phrase, PhraseResult } from "../../../core/index.ts";
import type { Who } from "../../access.ts";
import { addsTo, seesSite } from "../../accounts/sites-seen.ts";
import { phrases, readings } from "../../db/tables.ts";
import type { Tx } from "../../db/writer.ts";
import { now } from "../../moments.ts";
import { type JobRow, keepReadings, type RecentJobs, type Remembered } from "../../reading/keep-reading.ts";
import { READER } from "../../reading/version.ts";
import { listWords } from "../../when-said/list-days.ts";
import {
  atHisSite,
  type JobResult,
  jobsById,
  keepJobs,
  notMoved,
  type SentJob,
  TAKEN,
  takesFrom,
  withoutJob,
} from "./jobs.ts";
import { elsewhere, type MovedSites, movedSites } from "./moved.ts";
import { type PhraseRead, type Read, readJob, readPhrase } from "./sent.ts";

export interface Delivered {
  results: PhraseResult[];
  jobs: JobResult[];
}

/** What one request brought, and who sent it. */
export interface Delivery {
  sent: { jobs: readonly unknown[]; phrases: readonly unknown[] };
  who: Who;
}

/**
 * Keeps what devices sent, several requests with as many statements as one, and answers for each phrase in its place:
 * all in the open transaction, each judged by itself. What was read is for `recent`, and only after COMMIT: before it,
 * it might not have happened.
 */
export async function keepAll(
  tx: Tx,
  recent: RecentJobs,
  deliveries: readonly Delivery[],
): Promise<{ answers: Delivered[]; read: Map<string, Remembered> }> {
  const moved = await movedSites(tx);
  const sentJobs = deliveries.flatMap(({ sent, who }) =>
    sent.jobs.map((raw) => notMoved(atHisSite(readJob(raw), who), moved)),
  );
  const sentPhrases = deliveries.flatMap(({ sent, who }) => sent.phrases.map((raw) => ({ ...readPhrase(raw), who })));
  const jobs = await keepJobs(tx, sentJobs);
  const kept = await keepPhrases(tx, sentPhrases, { sent: sentJobs, here: jobs.here }, moved);
  const toRead = [...kept.added]
    .filter(([job]) => !kept.confirmed.has(job))
    .map(([job, added]) => ({ job, before: recent.get(job.id), added }));
  const read = await keepReadings(tx, [...toRead, ...[...kept.confirmed].map((job) => ({ job }))]);
  const results = await withReadings(tx, kept.results, read.values());
  const answers: Delivered[] = [];
  let [jobsFrom, phrasesFrom] = [0, 0];
  for (const { sent } of deliveries) {
    answers.push({
      results: results.slice(phrasesFrom, phrasesFrom + sent.phrases.length),
      jobs: jobs.results.slice(jobsFrom, jobsFrom + sent.jobs.length),
    });
    jobsFrom += sent.jobs.length;
    phrasesFrom += sent.phrases.length;
  }
  return { answers, read };
}

interface KeptPhrases {
  results: PhraseResult[];
  /** the phrases stored now, of each job that has to be read again */
  added: Map<JobRow, { id: string; text: string; saidAt: string; confidence: number | null }[]>;
  /** jobs in which a phrase heard doubtfully has been confirmed: those are read again whole */
  confirmed: Set<JobRow>;
}

async function keepPhrases(
  tx: Tx,
  sent: readonly (Read<PhraseRead> & { who: Who })[],
  jobs: { sent: readonly SentJob[]; here: ReadonlyMap<string, JobRow> },
  moved: MovedSites,
): Promise<KeptPhrases> {
  const good = sent.flatMap((one) => (one.ok ? [{ ...one.value, who: one.who }] : []));
  const earlier = good.map((one) => one.job).filter((id) => !jobs.here.has(id));
  const found = new Map([...jobs.here, ...(await jobsById(tx, earlier))]);
  const owner = ({ job, who }: { job: string; who: Who }): JobRow | undefined => {
    const row = found.get(job);
    return row && takesFrom(row, who) && !moved.has(row.site) ? row : undefined;
  };
  const fresh = await insertNew(tx, good, owner);
  const known = await phrasesById(
    tx,
    good.map((one) => one.id).filter((id) => !fresh.has(id)),
  );
  const kept: KeptPhrases = { results: [], added: new Map(), confirmed: new Set() };
  for (const one of sent) {
    if (!one.ok) {
      kept.results.push(refused(one.id, one.problem));
      continue;
    }
    const phrase = one.value;
    const before = known.get(phrase.id);
    const job = owner({ job: phrase.job, who: one.who });
    if (before && maySendAgain(before, one.who)) {
      const result = alreadyThere(before, phrase);
      kept.results.push(result);
      if (result.status === "known" && job && (await raise(tx, before.confidence, phrase))) kept.confirmed.add(job);
    } else if (!job) {
      const gone = found.get(phrase.job);
      const to = gone && takesFrom(gone, one.who) ? moved.get(gone.site) : undefined;
      kept.results.push(
        refused(phrase.id, to === undefined ? withoutJob(phrase.job, jobs.sent, one.who) : elsewhere(to)),
      );
    } else if (before) kept.results.push(refused(phrase.id, TAKEN));
    else {
      // the same id again further on in this request is judged against this one
      const { text, confidence = null } = phrase;
      known.set(phrase.id, { text, job: job.id, confidence, site: job.site, person: one.who.person ?? null });
      const added = kept.added.get(job) ?? [];
      added.push({
        id: phrase.id,
        text: phrase.text,
        saidAt: phrase.moment.utc,
        confidence: phrase.confidence ?? null,
      });
      kept.added.set(job, added);
      kept.results.push({ id: phrase.id, status: "stored", entries: [], unread: [] });
    }
  }
  return kept;
}

/** What somebody said himself is his to send again, whatever sites he is kept to by now. */
const maySendAgain = (before: Known, { person, sees }: Who): boolean =>
  seesSite(addsTo(sees), before.site) || (person !== undefined && before.person === person);

/**
 * A phrase sent again with more confidence than before was confirmed by who said it. It only rises: a repeat that
 * arrives late must not bring a doubt back.
 */
async function raise(tx: Tx, before: number | null, { id, confidence }: PhraseRead): Promise<boolean> {
  if (before === null || confidence === undefined || confidence <= before) return false;
  await tx.update(phrases).set({ confidence }).where(eq(phrases.id, id));
  return true;
}

/** Inserts every phrase whose id is new and whose job is known, the first of each id; returns the ids inserted. */
async function insertNew(
  tx: Tx,
  good: readonly (PhraseRead & { who: Who })[],
  owner: (phrase: { job: string; who: Who }) => JobRow | undefined,
): Promise<Set<string>> {
  const rows = new Map<string, typeof phrases.$inferInsert>();
  const receivedAt = now().utc;
  for (const phrase of good) {
    const job = owner(phrase);
    if (!job || rows.has(phrase.id)) continue;
    rows.set(phrase.id, {
      id: phrase.id,
      site: job.site,
      job: job.id,
      device: phrase.who.device ?? null,
      person: phrase.who.person ?? null,
      text: phrase.text,
      saidAt: phrase.moment.utc,
      saidOffset: phrase.moment.offset,
      how: phrase.how,
      confidence: phrase.confidence ?? null,
      reader: READER,
      receivedAt,
    });
  }
  if (rows.size === 0) return new Set();
  const inserted = await tx
    .insert(phrases)
    .values([...rows.values()])
    .onConflictDoNothing()
    .returning({ id: phrases.id });
  const fresh = new Set(inserted.map((row) => row.id));
  await listWords(
    tx,
    [...rows.values()].filter((row) => fresh.has(row.id)),
  );
  return fresh;
}

function alreadyThere(before: { text: string; job: string }, phrase: Phrase): PhraseResult {
  if (before.text !== phrase.text) {
    return refused(
      phrase.id,
      "this id is already used by a phrase with other words, which stays: send yours with a new id",
    );
  }
  if (before.job !== phrase.job) {
    return refused(
      phrase.id,
      "this id is already used by a phrase of another job, which stays: send yours with a new id",
    );
  }
  return { id: phrase.id, status: "known", entries: [], unread: [] };
}

/** What each stored or known phrase became, as the whole job reads. */
async function withReadings(tx: Tx, results: PhraseResult[], justRead: Iterable<Remembered>): Promise<PhraseResult[]> {
  const wanted = new Set(results.flatMap((one) => (one.status === "refused" ? [] : [one.id])));
  const read = new Map<string, Pick<PhraseResult, "entries" | "unread">>();
  for (const { reading } of justRead) {
    reading.said.forEach(({ id }, at) => {
      const one = wanted.has(id) ? reading.heard.phrases[at] : undefined;
      if (one) read.set(id, { entries: one.entries, unread: one.unread.map(({ text, at }) => ({ text, at })) });
    });
  }
  const ids = [...wanted].filter((id) => !read.has(id));
  if (ids.length > 0) for (const [id, one] of await readingsOf(tx, ids)) read.set(id, one);
  return results.map((one) => (one.status === "refused" ? one : { ...one, ...read.get(one.id) }));
}

async function readingsOf(tx: Tx, ids: string[]) {
  const rows = await tx
    .select({ phrase: readings.phrase, entries: readings.entries, unread: readings.unread })
    .from(readings)
    .where(inArray(readings.phrase, ids));
  return rows.map((row): [string, Pick<PhraseResult, "entries" | "unread">] => [
    row.phrase,
    { entries: JSON.parse(row.entries) as Entry[], unread: JSON.parse(row.unread) as PhraseResult["unread"] },
  ]);
}

type Known = Pick<typeof phrases.$inferSelect, "text" | "job" | "confidence" | "site" | "person">;

async function phrasesById(tx: Tx, ids: readonly string[]): Promise<Map<string, Known>> {
  if (ids.length === 0) return new Map();
  const rows = await tx
    .select({
      id: phrases.id,
      text: phrases.text,
      job: phrases.job,
      confidence: phrases.confidence,
      site: phrases.site,
      person: phrases.person,
    })
    .from(phrases)
    .where(inArray(phrases.id, [...new Set(ids)]));
  return new Map(rows.map((row) => [row.id, row]));
}

const refused = (id: string, problem: string): PhraseResult => ({
  id,
  status: "refused",
  entries: [],
  unread: [],
  problem,
});

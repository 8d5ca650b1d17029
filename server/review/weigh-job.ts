import { and, asc, eq } from "drizzle-orm";
import { contradictions, type Entry, familyOf, narrow } from "../../core/index.ts";
import { decisions, reviewItems } from "../db/review-tables.ts";
import { entries, phrases, readings } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { localDay } from "../moments.ts";
import { type JobRow, phrasesToRead } from "../reading/keep-reading.ts";
import { nameMeaning } from "../reading/meaning.ts";
import { pastOf } from "../reading/past.ts";
import { mainTag } from "../reading/read-job.ts";
import { history, reckonJob, type ShareReckoned } from "../reading/what-follows.ts";
import { type Reads, visitsOf, zoneOf } from "../reading/what-is-known.ts";
import { checkSentence } from "../wording/sentences.ts";
import { type Evidence, hasSomething, reasonsOf, weightOf } from "./reasons.ts";
import { answeredQuestions, newestSignature } from "./standing.ts";

/** Phrases said just before, that are shown beside one. */
const BEFORE = 2;

type Row = typeof reviewItems.$inferInsert;

/** What a share of a job says of each entry, by the entry's place among all that stand. */
interface Judged {
  entry: Entry;
  phrase: string | null;
  stops: string[];
  failedChecks: string[];
  contradictions: string[];
}

/** Weighs every phrase of a job anew, inside an open write. */
export async function weighJob(tx: Tx, job: JobRow): Promise<void> {
  const zone = await zoneOf(tx, job.site);
  const day = localDay({ utc: job.startedAt, offset: job.startedOffset }, zone);
  const said = await phrasesToRead(tx, job);
  const standing = (
    await tx
      .select({ tag: entries.tag, phrase: entries.phrase, body: entries.body })
      .from(entries)
      .where(and(eq(entries.site, job.site), eq(entries.job, job.id)))
      .orderBy(asc(entries.n))
  ).map((row) => ({ tag: row.tag, phrase: row.phrase, entry: JSON.parse(row.body) as Entry }));
  const main = mainTag(standing, job.tag);
  const shares = await reckonJob(pastOf(tx, job.site, zone), job, main, standing, day);
  const phraseOf = new Map(standing.map((one) => [one.entry, one.phrase]));
  const judged: Judged[] = [];
  const questions = new Map<string, string>();
  for (const share of shares) {
    const narrowed = await narrowedOf(tx, job, share, zone);
    judged.push(...judge(share, narrowed.entries, phraseOf));
    for (const one of narrowed.ask) {
      const phrase = said[one.phrase]?.id;
      if (phrase) questions.set(phrase, one.question);
    }
  }
  await keepItems(tx, job, main, said, judged, questions);
}

/** General parts taken for the valve's own; the record is only looked up where there is something to narrow. */
async function narrowedOf(db: Reads, job: JobRow, share: ShareReckoned, zone: string | undefined) {
  const bill = familyOf(share.valve.family, share.family && [share.family]).bill.map((line) => line.part);
  const general = share.entries.some((one) => "part" in one && one.part !== undefined && !bill.includes(one.part));
  const past = general ? history(await visitsOf(db, job.site, share.tag, zone, job)) : [];
  return narrow(share.entries, bill, past);
}

function judge(share: ShareReckoned, own: readonly Entry[], phraseOf: ReadonlyMap<Entry, string | null>): Judged[] {
  const { checks, followUps } = share.consequences;
  const all = own.map((entry, at): Judged => {
    const phrase = phraseOf.get(share.entries[at] as Entry) ?? null;
    return { entry, phrase, stops: [], failedChecks: [], contradictions: [] };
  });
  for (const { entry, why } of contradictions(own, followUps)) all[entry]?.contradictions.push(why);
  const torques = all.filter(({ entry }) => entry.type === "reading" && entry.quantity === "torque");
  const leak = all.findLast(({ entry }) => entry.type === "reading" && entry.quantity === "leak_rate");
  let torque = 0;
  for (const check of checks) {
    if (check.check === "torque") {
      const of = torques[torque++];
      if (check.verdict === "below" || check.verdict === "above") of?.failedChecks.push(checkSentence(check));
    } else if (check.check === "seat_leakage" && check.verdict === "fail")
      leak?.failedChecks.push(checkSentence(check));
  }
  for (const one of followUps) {
    if (one.do !== "stop" || one.rule === "hazard_stop") continue;
    all.findLast(({ entry }) => entry.type === "finding" && entry.part === one.part)?.stops.push(`Stop: ${one.why}.`);
  }
  return all;
}

async function keepItems(
  tx: Tx,
  job: JobRow,
  tag: string,
  said: readonly { id: string; text: string; saidAt: string }[],
  judged: readonly Judged[],
  questions: ReadonlyMap<string, string>,
): Promise<void> {
  const rows = await tx
    .select({ phrase: phrases, reading: readings })
    .from(phrases)
    .innerJoin(readings, eq(readings.phrase, phrases.id))
    .where(and(eq(phrases.site, job.site), eq(phrases.job, job.id)));
  const about = new Map(rows.map((row) => [row.phrase.id, row]));
  const signed = await newestSignature(tx, job.id);
  const decided = await newestDecisions(tx, job);
  const answered = await answeredQuestions(
    tx,
    [...decided.values()].map((one) => one.id),
  );
  const touched = new Set(rows.flatMap((row) => JSON.parse(row.reading.touched) as string[]));
  const items: Row[] = [];
  for (const [at, one] of said.entries()) {
    const row = about.get(one.id);
    if (!row) continue;
    const { phrase, reading } = row;
    const own = judged.filter((entry) => entry.phrase === one.id);
    const asks = JSON.parse(reading.ask) as string[];
    const meaning = nameMeaning(
      one.text,
      own.map(({ entry }) => entry),
    );
    const last = decided.get(one.id);
    const settles = last && (last.what === "accepted" || last.what === "amended" || last.what === "struck");
    const evidence: Evidence = {
      // words that a person put there need not be heard again
      heard: one.text === phrase.text ? phrase.confidence : null,
      alerts: JSON.parse(reading.alerts),
      entries: own.map(({ entry }) => entry),
      unread: (JSON.parse(reading.unread) as { text: string }[]).map(({ text }) => text.trim()),
      question: touched.has(one.id) ? undefined : (asks.at(-1) ?? questions.get(one.id)),
      stops: own.flatMap((entry) => entry.stops),
      failedChecks: own.flatMap((entry) => entry.failedChecks),
      contradictions: own.flatMap((entry) => entry.contradictions),
      changed: Boolean(settles && last.meaning !== meaning),
      late: signed?.act === "signed" && phrase.receivedAt > signed.madeAt,
    };
    if (!hasSomething(evidence)) continue;
    const reasons = reasonsOf(evidence);
    const waits = last?.what === "asked" && !answered.has(last.id);
    items.push({
      phrase: one.id,
      site: job.site,
      job: job.id,
      startedAt: job.startedAt,
      saidAt: one.saidAt,
      tag,
      weight: weightOf(reasons),
      reasons: JSON.stringify(reasons),
      text: one.text,
      before: JSON.stringify(said.slice(Math.max(0, at - BEFORE), at).map((earlier) => earlier.text)),
      entries: JSON.stringify(own.map(({ entry }) => entry)),
      meaning,
      state: waits ? "asked" : settles && !evidence.changed ? "settled" : "open",
    });
  }
  await tx.delete(reviewItems).where(eq(reviewItems.job, job.id));
  for (let at = 0; at < items.length; at += 100) await tx.insert(reviewItems).values(items.slice(at, at + 100));
}

async function newestDecisions(db: Reads, { id, site }: JobRow) {
  const ofJob = and(eq(decisions.site, site), eq(decisions.job, id));
  const rows = await db.select().from(decisions).where(ofJob).orderBy(asc(decisions.n));
  return new Map(rows.map((row) => [row.phrase, row]));
}

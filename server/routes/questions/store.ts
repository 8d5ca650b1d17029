import { and, asc, eq } from "drizzle-orm";
import type { Question } from "../../../core/index.ts";
import type { Who } from "../../access.ts";
import { momentOut } from "../../accounts/lifetimes.ts";
import { namesOf } from "../../accounts/people.ts";
import { addsTo, ofSites, seesSite } from "../../accounts/sites-seen.ts";
import { record } from "../../audit/record.ts";
import type { Store } from "../../db/open.ts";
import { answers, decisions, reviewItems } from "../../db/review-tables.ts";
import { jobs, phrases } from "../../db/tables.ts";
import { now, writeMoment } from "../../moments.ts";
import { newestDecision, type Refused, refuse } from "../../review/decide.ts";

/** More at once nobody answers at a valve. */
const MOST = 50;

/** The questions that wait for whoever calls, the oldest first; while nobody is enrolled, all there are. */
export async function questionsFor(store: Store, who: Who): Promise<Question[]> {
  const mine = who.person === undefined ? undefined : eq(phrases.person, who.person);
  const rows = await store.db
    .select({ item: reviewItems, phrase: phrases })
    .from(reviewItems)
    .innerJoin(phrases, eq(phrases.id, reviewItems.phrase))
    .where(and(eq(reviewItems.state, "asked"), ofSites(addsTo(who.sees), reviewItems.site), mine))
    .orderBy(asc(phrases.saidAt), asc(phrases.id))
    .limit(MOST);
  const names = rows.length > 0 ? await namesOf(store.db) : new Map<string, string>();
  const questions: Question[] = [];
  for (const { item, phrase } of rows) {
    const asked = await newestDecision(store.db, phrase.site, phrase.id);
    if (asked?.what !== "asked") continue;
    const by = asked.person === null ? undefined : names.get(asked.person);
    questions.push({
      id: asked.id,
      job: item.job,
      ...(item.tag ? { tag: item.tag } : {}),
      said: phrase.text,
      saidAt: writeMoment({ utc: phrase.saidAt, offset: phrase.saidOffset }),
      question: asked.words ?? "",
      ...(by === undefined ? {} : { by }),
      at: momentOut(asked.madeAt),
    });
  }
  return questions;
}

export type Answering = { ok: true; status: "stored" | "known" } | Refused;

/** Keeps an answer in the answerer's own words; the phrase comes back to the lead with it. */
export async function answer(
  store: Store,
  question: string,
  sent: { id: string; text: string; how: "typed" | "heard" },
  who: Who,
): Promise<Answering> {
  return store.write(async (tx): Promise<Answering> => {
    const [asked] = await tx
      .select({ decision: decisions, said: phrases })
      .from(decisions)
      .innerJoin(phrases, eq(phrases.id, decisions.phrase))
      .where(and(eq(decisions.id, question), eq(decisions.what, "asked")));
    if (!asked || !seesSite(addsTo(who.sees), asked.said.site))
      return refuse(404, "No such question was asked. GET /api/questions lists those that wait for you.");
    // one technician does not answer for another; a lead may, having asked by telephone
    if (who.person !== undefined && asked.said.person !== who.person && !who.rights.includes("review"))
      return refuse(404, "This question is for somebody else. GET /api/questions lists those that wait for you.");
    const [before] = await tx.select().from(answers).where(eq(answers.id, sent.id));
    if (before) {
      if (before.question === question && before.text === sent.text) return { ok: true, status: "known" };
      return refuse(409, "This id is already used by another answer, which stays: use a new id.");
    }
    await tx.insert(answers).values({
      ...sent,
      question,
      phrase: asked.decision.phrase,
      person: who.person ?? null,
      by: who.by,
      madeAt: now().utc,
    });
    await tx.update(jobs).set({ unweighed: 1 }).where(eq(jobs.id, asked.decision.job));
    // so that it is not asked again until the job is weighed
    await tx
      .update(reviewItems)
      .set({ state: "open" })
      .where(and(eq(reviewItems.phrase, asked.decision.phrase), eq(reviewItems.state, "asked")));
    await record(tx, who, "question_answered", { question, answer: sent.id, phrase: asked.decision.phrase });
    return { ok: true, status: "stored" };
  });
}

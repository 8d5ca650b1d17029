import { z } from "zod";
import { entrySchema } from "./entry.ts";
import { clipViewSchema, photoViewSchema } from "./keepsake.ts";
import { REASONS } from "./review-reasons.ts";
import { keepable, markSchema } from "./served.ts";
import { dateSchema } from "./valve.ts";

/** What a lead looks at, what he decides, and what comes of it. Moments are ISO 8601. */

const KEEPABLE = "holds a character that cannot be kept (NUL or half a surrogate pair): send it without";
const words = (most: number) => z.string().trim().min(1).max(most).refine(keepable, KEEPABLE);

export const reasonSchema = z.object({ reason: z.enum(REASONS), why: z.string() });
export type Reason = z.infer<typeof reasonSchema>;

export const DECIDED = ["accepted", "amended", "struck", "asked", "returned"] as const;
const decided = z.enum(DECIDED);

/** One decision as it is kept. */
export const decisionSchema = z.object({
  id: z.string(),
  n: z.number().int(),
  what: decided,
  /** the words put in place, the reason given, or the question */
  words: z.string().optional(),
  /** the name of who decided; absent where nobody is enrolled */
  by: z.string().optional(),
  at: z.string(),
});
export type Decision = z.infer<typeof decisionSchema>;

export const answerSchema = z.object({
  id: z.string(),
  text: z.string(),
  how: z.enum(["typed", "heard"]),
  by: z.string().optional(),
  at: z.string(),
});
export type Answered = z.infer<typeof answerSchema>;

/** A phrase to look at: its words, what each became, the entries proposed, and why it is shown where it is. */
export const reviewItemSchema = z.object({
  phrase: z.string(),
  job: z.string(),
  site: z.string().optional(),
  tag: z.string().optional(),
  day: dateSchema,
  saidAt: z.string(),
  /** as heard: this never changes */
  said: z.string(),
  /** as it is read now: the newest correction, or the words as heard; "" where it was struck */
  text: z.string(),
  how: z.enum(["typed", "heard"]),
  confidence: z.number().optional(),
  by: z.string().optional(),
  marks: z.array(markSchema),
  unread: z.array(z.object({ text: z.string(), at: z.tuple([z.number().int(), z.number().int()]) })),
  /** what it puts into the record, as the whole job reads */
  entries: z.array(entrySchema),
  reasons: z.array(reasonSchema),
  state: z.enum(["open", "asked", "settled"]),
  /** how many decisions were made of it, and what it means: sent back with the next, so that nothing passes unseen */
  decided: z.number().int(),
  meaning: z.string(),
  decisions: z.array(decisionSchema),
  answers: z.array(answerSchema),
  clips: z.array(clipViewSchema),
  photos: z.array(photoViewSchema),
  /** the phrases said just before it, oldest first */
  before: z.array(z.string()),
});
export type ReviewItem = z.infer<typeof reviewItemSchema>;

export const reviewPageSchema = z.object({
  items: z.array(reviewItemSchema),
  /** where the next page goes on; absent on the last */
  next: z.string().optional(),
  /** how many wait, by their gravest reason; `certain` are those with none */
  waiting: z.array(z.object({ reason: z.enum([...REASONS, "certain"]), count: z.number().int() })),
  /** how many are with a technician */
  asked: z.number().int(),
});
export type ReviewPage = z.infer<typeof reviewPageSchema>;

export const decisionSentSchema = z
  .object({
    id: z.uuid(),
    what: decided,
    /** `amended`: the words to read in its place; `asked`: the question */
    words: words(100_000).optional(),
    /** how many decisions were seen on it, and what it meant: where either has changed, nothing is done */
    seen: z.number().int().min(0),
    meaning: z.string().max(100).optional(),
  })
  .refine((one) => one.words !== undefined || (one.what !== "amended" && one.what !== "asked"), {
    path: ["words"],
    message: "say in `words` what to read instead, or what to ask",
  });
export type DecisionSent = z.infer<typeof decisionSentSchema>;

export const decisionResultSchema = z.object({
  status: z.enum(["stored", "known"]),
  /** absent where nothing is left of it to look at */
  item: reviewItemSchema.optional(),
  job: z.lazy(() => jobToSignSchema),
});
export type DecisionResult = z.infer<typeof decisionResultSchema>;

/** One job as it stands before a lead signs it. */
export const jobToSignSchema = z.object({
  id: z.string(),
  site: z.string().optional(),
  tag: z.string().optional(),
  day: dateSchema,
  startedAt: z.string(),
  by: z.array(z.string()),
  phrases: z.number().int(),
  /** those to look at, each by itself */
  doubtful: z.number().int(),
  /** those with no reason to doubt them, not yet accepted */
  certain: z.number().int(),
  /** those with a technician */
  asked: z.number().int(),
  state: z.enum(["open", "signed"]),
  signedBy: z.string().optional(),
  signedAt: z.string().optional(),
  /** phrases that came after it was signed */
  cameAfter: z.number().int(),
  /** who opened it again, and why, where that was the last word */
  reopened: z.object({ by: z.string().optional(), at: z.string(), why: z.string() }).optional(),
});
export type JobToSign = z.infer<typeof jobToSignSchema>;
export const jobsToSignSchema = z.object({ jobs: z.array(jobToSignSchema), next: z.string().optional() });

export const signSchema = z.object({
  id: z.uuid(),
  /** phrases seen: more by now means that something came meanwhile */
  phrases: z.number().int().min(0),
});
export const reopenSchema = z.object({ id: z.uuid(), why: words(2000) });

/** Words tried in place of a phrase's own; nothing is kept. */
export const trySchema = z.object({ phrase: z.uuid(), text: z.string().max(100_000) });
export const triedSchema = z.object({
  text: z.string(),
  entries: z.array(entrySchema),
  marks: z.array(markSchema),
  unread: z.array(z.object({ text: z.string(), at: z.tuple([z.number().int(), z.number().int()]) })),
  ask: z.array(z.string()),
});
export type Tried = z.infer<typeof triedSchema>;

/** A question of a lead to whoever said a phrase. */
export const questionSchema = z.object({
  id: z.string(),
  job: z.string(),
  tag: z.string().optional(),
  said: z.string(),
  saidAt: z.string(),
  question: z.string(),
  by: z.string().optional(),
  at: z.string(),
});
export type Question = z.infer<typeof questionSchema>;
export const questionsSchema = z.object({ questions: z.array(questionSchema) });
export const answerSentSchema = z.object({ id: z.uuid(), text: words(10_000), how: z.enum(["typed", "heard"]) });

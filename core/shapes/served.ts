import { z } from "zod";
import { checkSchema, consequencesSchema, dueSchema, followUpSchema } from "./consequence.ts";
import { askSchema, entrySchema, unreadSchema } from "./entry.ts";
import { keepable } from "./keepable.ts";
import { clipViewSchema, keepingSchema, photoViewSchema } from "./keepsake.ts";
import { ownedSchema } from "./owner.ts";
import { ownFamilySchema } from "./site-family.ts";
import { dateSchema, familySchema, lifeSchema, valveSchema } from "./valve.ts";
import { phraseSchema } from "./wire.ts";

/** What the server answers, and what it is told to set up. Days are the site's own. */

export { keepable };

const KEEPABLE = "holds a character that cannot be kept (NUL or half a surrogate pair): send it without";

export const siteKeySchema = z.string().trim().min(1).max(80).refine(keepable, KEEPABLE);
export const tagKeySchema = z
  .string()
  .trim()
  .min(1)
  .max(40)
  .refine(keepable, KEEPABLE)
  .transform((tag) => tag.toUpperCase());

export const siteSchema = z.object({
  site: siteKeySchema,
  name: z.string().trim().min(1).max(200).refine(keepable, KEEPABLE),
  /** IANA time zone, "America/Denver": the site's day begins and ends by it */
  zone: z.string().min(1).max(80),
});
export type Site = z.infer<typeof siteSchema>;

/** A valve as a person sets it up. */
export const valveSetUpSchema = valveSchema.extend({
  site: siteKeySchema,
  tag: tagKeySchema,
  family: z.string().min(1).max(80).refine(keepable, KEEPABLE).optional(),
});
export type ValveSetUp = z.infer<typeof valveSetUpSchema>;

/** A later word on a phrase: `text` to be read in its place, or none, which strikes it. */
export const correctionSchema = z.object({
  id: z.uuid(),
  phrase: z.uuid(),
  text: z.string().min(1).max(100_000).refine(keepable, KEEPABLE).optional(),
  why: z.string().max(2000).refine(keepable, KEEPABLE).optional(),
  madeAt: z.iso.datetime({ offset: true }),
});
export type Correction = z.infer<typeof correctionSchema>;

export const markSchema = z.object({
  at: z.tuple([z.number().int(), z.number().int()]),
  as: z.enum([
    "part",
    "condition",
    "work",
    "detail",
    "number",
    "test",
    "valve",
    "hazard",
    "command",
    "plain",
    "unread",
  ]),
  code: z.string().optional(),
});

export const phraseViewSchema = phraseSchema.extend({
  receivedAt: z.string(),
  /** the reader that made these entries */
  reader: z.string(),
  /** what it left standing when it was said */
  entries: z.array(entrySchema),
  unread: z.array(z.object({ text: z.string(), at: z.tuple([z.number().int(), z.number().int()]) })),
  ask: z.array(z.string()),
  marks: z.array(markSchema),
  /** hazards said in it: the alert stands even where the entry was scratched */
  alerts: z.array(entrySchema),
  /** the name of the person who said it, where that is known */
  by: z.string().optional(),
  /** ids of earlier phrases whose entries it removed or amended */
  touched: z.array(z.string()),
  corrections: z.array(correctionSchema),
  /** its sound, as long as the site keeps it */
  clips: z.array(clipViewSchema),
  photos: z.array(photoViewSchema),
});
export type PhraseView = z.infer<typeof phraseViewSchema>;

/** One valve's share of a job: most jobs have one. */
export const shareSchema = z.object({
  tag: z.string().optional(),
  valve: valveSchema,
  /** its family, where that is one of the site's own */
  family: familySchema.optional(),
  entries: z.array(entrySchema),
  consequences: consequencesSchema,
});
export type Share = z.infer<typeof shareSchema>;

export const jobViewSchema = z.object({
  id: z.string(),
  site: z.string().optional(),
  tag: z.string().optional(),
  /** the site's day on which it started */
  day: dateSchema,
  startedAt: z.string(),
  receivedAt: z.string(),
  valve: valveSchema,
  phrases: z.array(phraseViewSchema),
  /** photographs that belong to no phrase */
  photos: z.array(photoViewSchema),
  /** all that stands, in order */
  entries: z.array(entrySchema),
  unread: z.array(unreadSchema),
  ask: z.array(askSchema),
  /** what follows for the job's valve */
  consequences: consequencesSchema,
  /** every valve named in it, the job's own first */
  valves: z.array(shareSchema),
});
export type JobView = z.infer<typeof jobViewSchema>;

export const jobSummarySchema = z.object({
  id: z.string(),
  site: z.string().optional(),
  tag: z.string().optional(),
  /** every valve named in it */
  tags: z.array(z.string()),
  day: dateSchema,
  startedAt: z.string(),
  phrases: z.number().int(),
  entries: z.number().int(),
  /** phrases with words not understood */
  unread: z.number().int(),
  hazards: z.array(z.string()),
  failedTests: z.array(z.string()),
  /** follow-ups due now */
  now: z.number().int(),
  finished: z.boolean(),
});
export type JobSummary = z.infer<typeof jobSummarySchema>;
export const jobListSchema = z.object({ day: dateSchema.optional(), jobs: z.array(jobSummarySchema) });

export const valveSummarySchema = z.object({
  site: z.string().optional(),
  tag: z.string(),
  valve: valveSchema,
  lastOn: dateSchema.optional(),
  open: z.number().int(),
  nextOn: dateSchema.optional(),
  /** how often its family was set up, where that is one of the site's own */
  ownFamily: z.number().int().optional(),
});
export type ValveSummary = z.infer<typeof valveSummarySchema>;
export const valveListSchema = z.object({ valves: z.array(valveSummarySchema) });

export const valveViewSchema = z.object({
  site: z.string().optional(),
  tag: z.string(),
  /** as set up, filled in with what was said of it */
  valve: valveSchema,
  /** whether a person set it up, or it is only known from what was said */
  setUp: z.boolean(),
  /** its family, where that is one of the site's own */
  ownFamily: ownFamilySchema.optional(),
  /** oldest first */
  history: z.array(z.object({ job: z.string(), on: dateSchema, startedAt: z.string(), entries: z.array(entrySchema) })),
  /** what was found and done at the seat, oldest first */
  seat: z.array(z.object({ job: z.string(), on: dateSchema, entry: entrySchema })),
  due: z.array(dueSchema),
  /** follow-ups not yet settled, as of the last job */
  open: z.array(followUpSchema),
  /** whose each of them is, in the same order */
  owned: z.array(ownedSchema),
  /** seat lives of like valves that the dates were reckoned with */
  fleet: z.array(lifeSchema),
  checks: z.array(checkSchema),
});
export type ValveView = z.infer<typeof valveViewSchema>;

export const dueLineSchema = dueSchema.extend({
  site: z.string().optional(),
  tag: z.string(),
  service: z.string(),
  /** days past due; negative: days still to go */
  overdue: z.number().int(),
});
export type DueLine = z.infer<typeof dueLineSchema>;
export const dueListSchema = z.object({
  today: dateSchema,
  days: z.number().int(),
  due: z.array(dueLineSchema),
  /** how many in all, and how many of them are past due */
  count: z.number().int(),
  overdue: z.number().int(),
  /** where the next page goes on; absent on the last, and where no page was asked for */
  next: z.string().optional(),
});
export type DueList = z.infer<typeof dueListSchema>;

export const siteListSchema = z.object({
  sites: z.array(siteSchema.extend({ today: dateSchema, keeping: keepingSchema })),
});

/** RFC 9457. `detail` says what to do. */
export const problemSchema = z.object({
  type: z.string(),
  title: z.string(),
  status: z.number().int(),
  detail: z.string(),
  errors: z.array(z.object({ at: z.string(), problem: z.string() })).optional(),
});
export type Problem = z.infer<typeof problemSchema>;

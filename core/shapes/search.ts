import { z } from "zod";
import { CONDITIONS, PARTS } from "./codes.ts";
import { entrySchema } from "./entry.ts";
import { ownedSchema } from "./owner.ts";
import { siteKeySchema, tagKeySchema } from "./served.ts";
import { dateSchema } from "./valve.ts";

/** What is looked for in all that was said; every key optional, all that are given must hold. */
export const searchSchema = z.object({
  site: z.string().max(80).optional(),
  tag: z.string().trim().max(40).optional(),
  /** each of them stands in the phrase, in any order */
  words: z.string().trim().max(200).optional(),
  part: z.enum(PARTS).optional(),
  condition: z.enum(CONDITIONS).optional(),
  from: dateSchema.optional(),
  to: dateSchema.optional(),
});
export type Search = z.infer<typeof searchSchema>;

export const foundSchema = z.object({
  phrase: z.string(),
  job: z.string(),
  site: z.string().optional(),
  tag: z.string().optional(),
  day: dateSchema,
  saidAt: z.string(),
  text: z.string(),
  by: z.string().optional(),
  /** what of it stands */
  entries: z.array(entrySchema),
});
export type Found = z.infer<typeof foundSchema>;
export const foundListSchema = z.object({
  found: z.array(foundSchema),
  /** where to go on; none where all was looked through */
  next: z.string().optional(),
  /** the day back to which there was time to look, where that was not all and fewer were found than asked for */
  lookedTo: dateSchema.optional(),
});
export type FoundList = z.infer<typeof foundListSchema>;

/** What is still owed of a valve, who does it, and whom to ask: whoever logged the job it comes from. */
export const owedSchema = ownedSchema.extend({
  site: z.string().optional(),
  tag: z.string(),
  do: z.string(),
  what: z.string(),
  when: z.union([z.literal("now"), z.literal("next_inspection"), dateSchema]),
  why: z.string(),
  /** the day of the valve's last job, and its id */
  since: dateSchema.optional(),
  job: z.string().optional(),
  loggedBy: z.array(z.string()),
});
export type Owed = z.infer<typeof owedSchema>;
export const owedListSchema = z.object({ owed: z.array(owedSchema), count: z.number().int() });
export type OwedList = z.infer<typeof owedListSchema>;

/** Gives a follow-up to somebody, or takes it away. */
export const ownerSentSchema = z.object({
  id: z.uuid(),
  site: siteKeySchema.optional(),
  tag: tagKeySchema,
  key: z.string().min(1).max(200),
  /** the person's id; null: nobody */
  owner: z.uuid().nullable(),
  /** how often it was seen to be given or taken away: where that has changed, nothing is done */
  seen: z.number().int().min(0),
});
export type OwnerSent = z.infer<typeof ownerSentSchema>;

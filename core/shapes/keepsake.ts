import { z } from "zod";

/**
 * What is kept beside the words: the sound of a phrase, and photographs. Both come from the device as bytes, with what
 * they belong to in the query; ids are UUIDs made by the device, so that the same one sent twice is kept once.
 */

const moment = z.iso.datetime({ offset: true });

/** The sound of one phrase, sent after the phrase. */
export const clipSentSchema = z.object({
  phrase: z.uuid(),
  at: moment,
  /** how long it sounds */
  seconds: z.coerce.number().positive().max(600),
});
export type ClipSent = z.infer<typeof clipSentSchema>;

/** A photograph of a job; with `phrase`, of what that phrase found. Sent after both. */
export const photoSentSchema = z.object({ job: z.uuid(), phrase: z.uuid().optional(), at: moment });
export type PhotoSent = z.infer<typeof photoSentSchema>;

export const keepsakeResultSchema = z.object({
  id: z.string(),
  /** `stored` and `known` are on disk; `not_kept` will never be, for the reason in `why`, and need not be sent again */
  status: z.enum(["stored", "known", "not_kept"]),
  why: z.string().optional(),
});
export type KeepsakeResult = z.infer<typeof keepsakeResultSchema>;

export const clipViewSchema = z.object({ id: z.string(), at: z.string(), seconds: z.number(), type: z.string() });
export type ClipView = z.infer<typeof clipViewSchema>;

export const photoViewSchema = z.object({
  id: z.string(),
  at: z.string(),
  type: z.string(),
  /** in picture elements, as stored */
  width: z.number().int(),
  height: z.number().int(),
});
export type PhotoView = z.infer<typeof photoViewSchema>;

/** What a site does with the sound of phrases: none, for so many days, or for good. Photographs stay with the record. */
export const keepingSchema = z.object({
  clips: z.enum(["none", "for_days", "for_good"]),
  days: z.number().int().min(1).max(3650),
});
export type Keeping = z.infer<typeof keepingSchema>;

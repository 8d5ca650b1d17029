import { z } from "zod";

/**
 * Recordings of the set of phrases as one file of JSON lines, made by the page and scored again by `npm run record-set`. The
 * first line says what it is; each further one is a phrase, or a stretch of other talk, with its sound as WAV in base64.
 */
const heard = { heard: z.string().max(2000), confidence: z.number().min(0).max(1), wav: z.base64() };

export const recordedHeadSchema = z.object({
  is: z.literal("record_set"),
  version: z.literal(1),
  at: z.iso.datetime({ offset: true }),
  /** how many phrases the set had */
  of: z.number().int().positive(),
  /** whether the page's ear had the wide acoustic model; left out where it is not known */
  wide: z.boolean().optional(),
});
export const recordedPhraseSchema = z.object({
  is: z.literal("phrase"),
  wanted: z.string().min(1).max(500),
  /** how often it was said: this is the last time */
  times: z.number().int().positive(),
  ...heard,
});
export const recordedTalkSchema = z.object({ is: z.literal("other_talk"), ...heard });
export const recordedLineSchema = z.discriminatedUnion("is", [
  recordedHeadSchema,
  recordedPhraseSchema,
  recordedTalkSchema,
]);

export type RecordedHead = z.infer<typeof recordedHeadSchema>;
export type RecordedPhrase = z.infer<typeof recordedPhraseSchema>;
export type RecordedTalk = z.infer<typeof recordedTalkSchema>;
export type RecordedLine = z.infer<typeof recordedLineSchema>;

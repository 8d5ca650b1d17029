import { z } from "zod";
import { entrySchema } from "./entry.ts";

/** What a device sends and gets back. Ids are UUIDs made by the device. */

const instant = z.iso.datetime({ offset: true });
const id = z.uuid();

export const jobSchema = z.object({
  id,
  tag: z.string().min(1).max(40).optional(),
  site: z.string().min(1).max(80).optional(),
  startedAt: instant,
});
export type Job = z.infer<typeof jobSchema>;

export const phraseSchema = z.object({
  id,
  job: id,
  text: z.string().min(1).max(100_000),
  saidAt: instant,
  how: z.enum(["typed", "heard"]),
  confidence: z.number().min(0).max(1).optional(),
});
export type Phrase = z.infer<typeof phraseSchema>;

/** Each job and phrase is judged by itself, so that one bad phrase does not spoil its neighbours. */
export const deliverySchema = z.object({
  jobs: z.array(z.unknown()).max(200).default([]),
  phrases: z.array(z.unknown()).max(200).default([]),
});

export const phraseResultSchema = z.object({
  id: z.string(),
  status: z.enum(["stored", "known", "refused"]),
  entries: z.array(entrySchema),
  unread: z.array(z.object({ text: z.string(), at: z.tuple([z.number().int(), z.number().int()]) })),
  problem: z.string().optional(),
});
export type PhraseResult = z.infer<typeof phraseResultSchema>;
export const deliveryResultSchema = z.object({ results: z.array(phraseResultSchema) });

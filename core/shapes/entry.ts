import { z } from "zod";
import {
  ACTS, BOUNDS, COMMANDS, CONDITIONS, EXTENTS, HAZARDS, PARTS, PLACES, QUANTITIES, SERVICES, SEVERITIES,
  STATUSES, TESTS, UNITS, WORKS,
} from "./codes.ts";

/**
 * What a phrase becomes. A key that does not apply is left out, never null or false;
 * the one null is the `result` of a test whose outcome was not said.
 */

/** Where an entry came from: kept with it so that any answer can be asked for its reason. */
const origin = {
  /** the words it was read from, as heard */
  words: z.string().optional(),
  /** the rule that made it */
  rule: z.string().optional(),
  /** how sure the reading is, 0 to 1 */
  confidence: z.number().min(0).max(1).optional(),
  /** index of the phrase in its session */
  phrase: z.number().int().min(0).optional(),
  /** first and one-past-last character in that phrase */
  at: z.tuple([z.number().int(), z.number().int()]).optional(),
  /** the part of this valve that a general part is taken to be */
  resolved: z.enum(PARTS).optional(),
  /** true where `resolved` was inferred, not said */
  assumed: z.literal(true).optional(),
  /** true where the phrase was heard doubtfully and nobody has said yet that it was heard right */
  doubtful: z.literal(true).optional(),
};

const count = z.number().int().min(1).optional();
const unsure = z.literal(true).optional();
const part = z.enum(PARTS).optional();

export const findingSchema = z.object({
  type: z.literal("finding"),
  condition: z.enum(CONDITIONS),
  part,
  extent: z.enum(EXTENTS).optional(),
  severity: z.enum(SEVERITIES).optional(),
  place: z.enum(PLACES).optional(),
  count,
  absent: z.literal(true).optional(),
  unsure,
  ...origin,
});
export const workSchema = z.object({
  type: z.literal("work"),
  work: z.enum(WORKS),
  status: z.enum(STATUSES),
  part,
  count,
  unsure,
  ...origin,
});
export const readingSchema = z.object({
  type: z.literal("reading"),
  quantity: z.enum(QUANTITIES),
  value: z.number(),
  unit: z.enum(UNITS),
  part,
  upper: z.number().optional(),
  bound: z.enum(BOUNDS).optional(),
  ...origin,
});
export const testSchema = z.object({
  type: z.literal("test"),
  test: z.enum(TESTS),
  result: z.enum(["pass", "fail"]).nullable(),
  ...origin,
});
export const valveEntrySchema = z.object({
  type: z.literal("valve"),
  tag: z.string().min(1).max(40).optional(),
  size_in: z.number().positive().optional(),
  acts: z.enum(ACTS).optional(),
  service: z.enum(SERVICES).optional(),
  ...origin,
});
export const needSchema = z.object({ type: z.literal("need"), part: z.enum(PARTS), count, ...origin });
export const hazardSchema = z.object({ type: z.literal("hazard"), hazard: z.enum(HAZARDS), ...origin });
export const noteSchema = z.object({ type: z.literal("note"), text: z.string(), ...origin });
export const commandSchema = z.object({ type: z.literal("command"), command: z.enum(COMMANDS), ...origin });

export const entrySchema = z.discriminatedUnion("type", [
  findingSchema, workSchema, readingSchema, testSchema, valveEntrySchema, needSchema, hazardSchema,
  noteSchema, commandSchema,
]);

export type Finding = z.infer<typeof findingSchema>;
export type WorkEntry = z.infer<typeof workSchema>;
export type Reading = z.infer<typeof readingSchema>;
export type TestEntry = z.infer<typeof testSchema>;
export type ValveEntry = z.infer<typeof valveEntrySchema>;
export type Need = z.infer<typeof needSchema>;
export type HazardEntry = z.infer<typeof hazardSchema>;
export type Note = z.infer<typeof noteSchema>;
export type CommandEntry = z.infer<typeof commandSchema>;
export type Entry = z.infer<typeof entrySchema>;

/** Words that belong to no entry, with their place: `at` is [first, one past last] character of the phrase. */
export const unreadSchema = z.object({
  phrase: z.number().int().min(0),
  text: z.string(),
  at: z.tuple([z.number().int(), z.number().int()]),
});
export type Unread = z.infer<typeof unreadSchema>;

/** One short question that would settle a real doubt. */
export const askSchema = z.object({ phrase: z.number().int().min(0), question: z.string() });
export type Ask = z.infer<typeof askSchema>;

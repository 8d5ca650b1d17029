import { z } from "zod";
import { LEAK_CLASSES, PARTS, TESTS, UNITS } from "./codes.ts";
import { dateSchema } from "./valve.ts";

/** What follows from a job's entries. Every line says why, and where its rule comes from. */

export const checkSchema = z.discriminatedUnion("check", [
  z.object({
    check: z.literal("torque"),
    part: z.enum(PARTS).optional(),
    verdict: z.enum(["within", "below", "above", "no_limit"]),
    value: z.number(),
    upper: z.number().optional(),
    unit: z.enum(UNITS),
    min: z.number().optional(),
    max: z.number().optional(),
    /** how far inside the nearer limit, in the same unit; below 0: how far outside */
    margin: z.number().optional(),
    source: z.string(),
    note: z.string().optional(),
  }),
  z.object({
    check: z.literal("seat_leakage"),
    verdict: z.enum(["pass", "fail", "no_limit"]),
    measured: z.number(),
    allowed: z.number().optional(),
    /** how much less than allowed, in the same unit; below 0: how much more */
    margin: z.number().optional(),
    unit: z.enum(UNITS),
    class: z.enum(LEAK_CLASSES).optional(),
    source: z.string(),
    note: z.string().optional(),
  }),
  z.object({
    check: z.literal("stroke"),
    verdict: z.enum(["within", "off", "no_limit", "not_enough"]),
    /** of every signal here */
    unit: z.enum(UNITS),
    /** rising: the last signal before it moved, the first at full travel */
    starts: z.number().optional(),
    full: z.number().optional(),
    /** falling: the last signal before it moved back, the first at which it was home */
    startsBack: z.number().optional(),
    home: z.number().optional(),
    travel: z.number().optional(),
    travelUnit: z.enum(UNITS).optional(),
    /** per cent of travel */
    hysteresis: z.number().optional(),
    /** in `unit`, and per cent of the signal span */
    deadBand: z.number().optional(),
    deadBandPercent: z.number().optional(),
    /** the bench range */
    min: z.number().optional(),
    max: z.number().optional(),
    /** how much further off the worse end might lie; below 0: how much too far off it lies */
    margin: z.number().optional(),
    source: z.string(),
    note: z.string().optional(),
  }),
]);
export type Check = z.infer<typeof checkSchema>;

export const DOS = [
  "replace",
  "flip",
  "clean",
  "inspect",
  "repair",
  "adjust",
  "tighten",
  "grease",
  "lap",
  "order",
  "retest",
  "retorque",
  "stop",
  "ask",
] as const;
export type Do = (typeof DOS)[number];

export const followUpSchema = z.object({
  /** one of DOS, or another work still owed, in its imperative */
  do: z.string(),
  part: z.enum(PARTS).optional(),
  when: z.union([z.literal("now"), z.literal("next_inspection"), dateSchema]),
  why: z.string(),
  rule: z.string(),
  source: z.string(),
  test: z.enum(TESTS).optional(),
  count: z.number().int().optional(),
});
export type FollowUp = z.infer<typeof followUpSchema>;

export const dueSchema = z.object({
  task: z.enum(["seat_inspection", "seal_replacement"]),
  on: dateSchema,
  months: z.number(),
  basis: z.enum(["interval", "severe_start", "wear_pattern", "site"]),
  why: z.string(),
});
export type Due = z.infer<typeof dueSchema>;

const partCount = z.object({ part: z.enum(PARTS), count: z.number().int() });
export const consequencesSchema = z.object({
  checks: z.array(checkSchema),
  followUps: z.array(followUpSchema),
  due: z.array(dueSchema),
  missing: z.array(z.enum(PARTS)),
  parts: z.object({ used: z.array(partCount), needed: z.array(partCount) }),
});
export type Consequences = z.infer<typeof consequencesSchema>;

import { z } from "zod";
import { PARTS, SERVICES } from "./codes.ts";
import { dateSchema } from "./valve.ts";

/** What many valves' records say together: what to carry, how often they fail, and the export. */

export const carryLineSchema = z.object({
  part: z.enum(PARTS),
  /** a seat of one family and size fits no other */
  family: z.string(),
  size_in: z.number().optional(),
  /** needed whatever is found */
  certain: z.number().int(),
  /** all that is to be expected, certain and likely */
  expected: z.number(),
  /** enough with the confidence of the list */
  carry: z.number().int(),
  /** where the stock was given */
  onHand: z.number().int().optional(),
  short: z.number().int().optional(),
  /** valves that need it for certain */
  tags: z.array(z.string()),
  why: z.string(),
});
export type CarryLine = z.infer<typeof carryLineSchema>;

export const carryListSchema = z.object({
  site: z.string().optional(),
  today: dateSchema,
  days: z.number().int(),
  confidence: z.number(),
  /** valves with work due in these days, overdue ones too */
  visits: z.number().int(),
  lines: z.array(carryLineSchema),
  /** the same soft goods, counted as kits */
  kits: z.array(
    z.object({
      family: z.string(),
      size_in: z.number().optional(),
      kit: z.string(),
      count: z.number().int(),
      why: z.string(),
    }),
  ),
  /** stock that fits no line, or more than one */
  unclear: z.array(z.string()),
  source: z.string(),
});
export type CarryList = z.infer<typeof carryListSchema>;

const rate = {
  valves: z.number().int(),
  failures: z.number().int(),
  degraded: z.number().int(),
  /** valve-years looked over */
  years: z.number(),
  /** failures a valve-year, with two-sided bounds; none where nothing was looked over */
  rate: z.number().optional(),
  lower: z.number().optional(),
  upper: z.number().optional(),
};
export const fleetRateSchema = z.object(rate);
export type FleetRate = z.infer<typeof fleetRateSchema>;

export const troubledValveSchema = z.object({
  site: z.string().optional(),
  tag: z.string(),
  family: z.string(),
  service: z.enum(SERVICES),
  failures: z.number().int(),
  degraded: z.number().int(),
  years: z.number(),
  /** failures to be expected in the year to come */
  expected: z.number(),
  trend: z.enum(["faster", "slower", "none", "too_few"]),
  laplace: z.object({ u: z.number(), p: z.number() }).optional(),
  handbook: z.object({ chiSquare: z.number(), freedom: z.number(), p: z.number() }).optional(),
  growth: z.number().optional(),
  /** why it stands where it does, a sentence each */
  evidence: z.array(z.string()),
});
export type TroubledValve = z.infer<typeof troubledValveSchema>;

export const reliabilitySchema = z.object({
  site: z.string().optional(),
  today: dateSchema,
  confidence: z.number(),
  fleet: fleetRateSchema,
  families: z.array(z.object({ family: z.string(), ...rate })),
  /** worst first */
  valves: z.array(troubledValveSchema),
  counts: z.string(),
  source: z.string(),
});
export type Reliability = z.infer<typeof reliabilitySchema>;

const coded = z.object({ code: z.string(), name: z.string() });
/** One line of the export. Codes are those of ISO 14224; `sure` says how far they are to be trusted. */
export const exportLineSchema = z.object({
  record: z.enum(["failure", "maintenance"]),
  site: z.string().optional(),
  tag: z.string(),
  equipment_class: z.literal("VA"),
  family: z.string(),
  on: dateSchema,
  part: z.enum(PARTS).optional(),
  /** what was said or measured, in the log's own code */
  found: z.string().optional(),
  failure_mode: coded.optional(),
  failure_mechanism: coded.optional(),
  severity: z.enum(["critical", "degraded", "incipient"]).optional(),
  activity: coded.optional(),
  work: z.string().optional(),
  sure: z.string(),
});
export type ExportLine = z.infer<typeof exportLineSchema>;

import { z } from "zod";
import { ACTS, LEAK_CLASSES, PARTS, SERVICES, TESTS } from "./codes.ts";
import { entrySchema } from "./entry.ts";

/** A calendar date without a clock or a zone. */
export const dateSchema = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}$/, "write a date as YYYY-MM-DD")
  .refine((text) => {
    const [year = 0, month = 0, day = 0] = text.split("-").map(Number);
    const last =
      month === 2
        ? year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
          ? 29
          : 28
        : [4, 6, 9, 11].includes(month)
          ? 30
          : 31;
    return month >= 1 && month <= 12 && day >= 1 && day <= last;
  }, "there is no such day");

/** What is known of one valve; every key optional. Sizes in inches, differential in psi. */
export const valveSchema = z.object({
  tag: z.string().min(1).max(40).optional(),
  family: z.string().optional(),
  size_in: z.number().positive().optional(),
  acts: z.enum(ACTS).optional(),
  service: z.enum(SERVICES).optional(),
  leak_class: z.enum(LEAK_CLASSES).optional(),
  port_in: z.number().positive().optional(),
  rated_dp_psi: z.number().positive().optional(),
  cv: z.number().positive().optional(),
  xT: z.number().positive().max(1).optional(),
  /** the site's own seat inspection interval */
  interval_months: z.number().positive().optional(),
});
export type Valve = z.infer<typeof valveSchema>;

/** An earlier job on the same valve. */
export const pastJobSchema = z.object({ on: dateSchema, entries: z.array(entrySchema) });
export type PastJob = z.infer<typeof pastJobSchema>;

/** How long one seat side lasted, in months: ended in (lower, upper]; no `upper`: still sound at `lower`. */
export const lifeSchema = z.object({ lower: z.number().min(0), upper: z.number().positive().optional() });
export type Life = z.infer<typeof lifeSchema>;

/** One part of a family's bill of parts. */
export const billLineSchema = z.object({
  part: z.enum(PARTS),
  count: z.number().int().min(1),
  /** seal, diaphragm, gasket or backup ring: wears out by being taken apart */
  soft: z.literal(true).optional(),
  /** controls the flow: seat, plug, cage */
  trim: z.literal(true).optional(),
  /** carries holes through which pressure is communicated */
  holes: z.literal(true).optional(),
});

/** A valve family as data. A site adds its own in the same shape, without code. */
export const familySchema = z.object({
  family: z.string(),
  name: z.string(),
  about: z.string(),
  source: z.string(),
  reversible_seat: z.boolean(),
  bill: z.array(billLineSchema),
  /** parts that a full inspection hears about, in the order of a tear-down */
  inspection: z.array(z.enum(PARTS)),
  torque: z.array(
    z.object({
      part: z.enum(PARTS),
      /** nominal sizes, inches, both ends included */
      size_in: z.tuple([z.number(), z.number()]),
      min: z.number(),
      max: z.number(),
      unit: z.enum(["ft_lbf", "in_lbf", "N_m"]),
      source: z.string(),
    }),
  ),
  /** bolts in the circle by part and size, for the tightening order */
  bolts: z.array(
    z.object({ part: z.enum(PARTS), size_in: z.tuple([z.number(), z.number()]), count: z.number().int() }),
  ),
  intervals: z.object({ seat_inspection_months: z.number(), seal_replacement_months: z.number(), source: z.string() }),
  leak_class: z.enum(LEAK_CLASSES).optional(),
  /** rated flow coefficient by nominal size */
  rated_cv: z.array(z.object({ size_in: z.number(), cv: z.number(), source: z.string() })),
  xT: z.number().optional(),
  bench_range_psi: z.tuple([z.number(), z.number()]).optional(),
  /** what a test after reassembly is owed */
  tests: z.array(z.enum(TESTS)),
  kits: z.array(
    z.object({
      kit: z.string(),
      name: z.string(),
      parts: z.array(z.object({ part: z.enum(PARTS), count: z.number().int() })),
    }),
  ),
  /** where a key's figures come from, for keys whose lines carry no source of their own */
  sources: z.record(z.string(), z.string()).optional(),
});
export type Family = z.infer<typeof familySchema>;

import { z } from "zod";

/** A list of valves out of a spreadsheet: sent as text, looked at row by row, kept only when told. */

export const VALVE_COLUMNS = [
  "tag",
  "family",
  "size_in",
  "acts",
  "service",
  "leak_class",
  "port_in",
  "rated_dp_psi",
  "cv",
  "xT",
  "interval_months",
] as const;

export const valveListSentSchema = z.object({
  csv: z.string().min(1).max(1_000_000),
  /** false or absent: nothing is kept */
  apply: z.boolean().optional(),
});

export const valveListReadSchema = z.object({
  rows: z.array(
    z.object({
      /** as a spreadsheet counts them: the head is row 1 */
      row: z.number().int(),
      tag: z.string().optional(),
      /** what keeping it would do */
      becomes: z.enum(["new", "changed", "same", "refused"]),
      /** what is wrong with it, column by column */
      problems: z.array(z.string()),
      /** what would change, in words */
      changes: z.array(z.string()),
    }),
  ),
  new: z.number().int(),
  changed: z.number().int(),
  same: z.number().int(),
  refused: z.number().int(),
  /** whether it was kept */
  applied: z.boolean(),
});
export type ValveListRead = z.infer<typeof valveListReadSchema>;

import { z } from "zod";

/** The lines of an export: a head, rows, the bytes of kept files, an end that tells a whole file from a cut one. */

const value = z.union([z.string(), z.number(), z.null(), z.strictObject({ base64: z.string() })]);
export type Value = z.infer<typeof value>;

export const headSchema = z.object({
  handsfull: z.string(),
  /** the form of these lines */
  export: z.literal(1),
  /** the shape of the database it was made from */
  schema: z.string(),
  at: z.string(),
});
export const lineSchema = z.union([
  z.strictObject({ table: z.string(), row: z.record(z.string(), value) }),
  z.strictObject({ file: z.string(), base64: z.string() }),
  z.strictObject({ end: z.strictObject({ rows: z.number().int(), files: z.number().int() }) }),
]);
export type Line = z.infer<typeof lineSchema>;

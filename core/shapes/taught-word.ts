import { z } from "zod";
import { CONDITIONS, PARTS, WORKS } from "./codes.ts";

/**
 * A word that a site says and the shipped rows lack: it means the same as a code the log has. Taught at run time,
 * kept on the device, read at once; `form` says how a condition's word is used, as in core/vocabulary/conditions.ts.
 */
export const taughtWordSchema = z.object({
  say: z.string().min(2).max(60),
  as: z.union([
    z.strictObject({ part: z.enum(PARTS) }),
    z.strictObject({ condition: z.enum(CONDITIONS), form: z.enum(["is", "has", "does"]).optional() }),
    z.strictObject({ work: z.enum(WORKS) }),
  ]),
});
export type TaughtWord = z.infer<typeof taughtWordSchema>;

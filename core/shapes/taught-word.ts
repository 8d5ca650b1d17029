import { z } from "zod";
import { CONDITIONS, PARTS, WORKS } from "./codes.ts";
import { entrySchema } from "./entry.ts";

/**
 * A word that a site says and the shipped rows lack: it means the same as a code the log has. Taught at run time,
 * read at once on the device, and by the server once sent; `form` says how a condition's word is used, as in core/vocabulary/conditions.ts.
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

/** A taught word as devices and server pass it on. Only `withdrawn` ever changes, and never back. */
export const siteWordSchema = taughtWordSchema.extend({
  /** made by the device that taught it */
  id: z.uuid(),
  /** what was said is looked at by `teach`, which refuses in words */
  say: z.string().min(1).max(1000),
  at: z.iso.datetime({ offset: true }),
  withdrawn: z.boolean().optional(),
});
export type SiteWord = z.infer<typeof siteWordSchema>;

/** Words sent, each judged by itself; those not among them stay as they are. */
export const wordsSentSchema = z.object({ words: z.array(z.unknown()).min(1).max(200) });

/** The words of a site as they stand, the withdrawn ones too, so that a device can tell gone from never had. */
export const siteWordsSchema = z.object({ words: z.array(siteWordSchema) });

/** A word tried before it is taught or withdrawn: which earlier phrases would read otherwise. Nothing is kept. */
export const wordTrySchema = z.object({
  /** absent: at every site */
  site: z.string().min(1).max(80).optional(),
  say: z.string().min(1).max(1000),
  as: taughtWordSchema.shape.as.optional(),
  /** true: what would read otherwise without it */
  withdraw: z.literal(true).optional(),
});
export const wordTriedSchema = z.object({
  phrases: z.array(
    z.object({
      phrase: z.string(),
      job: z.string(),
      tag: z.string().optional(),
      day: z.string(),
      text: z.string(),
      /** signed jobs stay as they were signed */
      signed: z.boolean(),
      before: z.array(entrySchema),
      after: z.array(entrySchema),
    }),
  ),
  /** how many in all; `phrases` are the latest of them */
  count: z.number().int(),
  /** the jobs that were looked at: those in which the word was said, and the latest */
  jobs: z.number().int(),
});
export type WordTried = z.infer<typeof wordTriedSchema>;

export const wordResultSchema = z.object({
  id: z.string(),
  status: z.enum(["stored", "known", "refused"]),
  problem: z.string().optional(),
});
export type WordResult = z.infer<typeof wordResultSchema>;

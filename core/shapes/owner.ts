import { z } from "zod";

/** Who does what was left open: given by a lead, and taken away again. Moments are ISO 8601 in UTC. */

export const ownerSchema = z.object({
  id: z.string(),
  name: z.string(),
  /** when it was given, and the name of who did; absent where nobody was enrolled */
  since: z.string(),
  by: z.string().optional(),
  /** no longer one of us: somebody else must have it */
  left: z.literal(true).optional(),
});
export type Owner = z.infer<typeof ownerSchema>;

/** A follow-up of a valve, by its key (`followUpKey`), and whose it is. */
export const ownedSchema = z.object({
  key: z.string(),
  owner: ownerSchema.optional(),
  /** how often it was given or taken away: sent back with the next, so that nothing passes unseen */
  given: z.number().int(),
});
export type Owned = z.infer<typeof ownedSchema>;

export const mayOwnSchema = z.object({ people: z.array(z.object({ id: z.string(), name: z.string() })) });
export type MayOwn = z.infer<typeof mayOwnSchema>;

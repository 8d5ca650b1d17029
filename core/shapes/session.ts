import { z } from "zod";
import { consequencesSchema } from "./consequence.ts";
import { askSchema, entrySchema, unreadSchema } from "./entry.ts";
import { dateSchema, lifeSchema, pastJobSchema, valveSchema } from "./valve.ts";

/** One job as a client hands it over: the phrases in order, and what is known beforehand. */
export const sessionSchema = z.object({
  id: z.string(),
  say: z.array(z.string().max(100_000)).max(5000),
  on: dateSchema.optional(),
  valve: valveSchema.optional(),
  history: z.array(pastJobSchema).optional(),
  fleet: z.array(lifeSchema).optional(),
});
export type Session = z.infer<typeof sessionSchema>;

export const sessionResultSchema = z
  .object({ id: z.string(), entries: z.array(entrySchema), unread: z.array(unreadSchema), ask: z.array(askSchema) })
  .extend(consequencesSchema.shape);
export type SessionResult = z.infer<typeof sessionResultSchema>;

import { and, eq } from "drizzle-orm";
import type { FollowUp } from "../../core/index.ts";
import { owed } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";

/** The state of a valve that a row of it points into. */
type Of = Pick<typeof owed.$inferSelect, "site" | "tag" | "lastOn">;

/**
 * Keeps where the open follow-ups of a valve stand among all that is owed: a page of those is then looked up in its
 * order, where all states there are would have to be read and put in order for each. What they are stays in the state.
 */
export async function keepOwed(tx: Tx, { site, tag, lastOn }: Of, open: readonly FollowUp[]): Promise<void> {
  await tx.delete(owed).where(and(eq(owed.site, site), eq(owed.tag, tag)));
  const rows = open.map((one, n) => ({ site, tag, n, urgency: urgencyOf(one), lastOn }));
  if (rows.length > 0) await tx.insert(owed).values(rows);
}

/** First what stops everything, then what is due now, then by day, and last what waits for the next inspection. */
export function urgencyOf({ do: what, when }: Pick<FollowUp, "do" | "when">): string {
  if (what === "stop") return "0";
  if (when === "now") return "1";
  return when === "next_inspection" ? "3" : `2 ${when}`;
}

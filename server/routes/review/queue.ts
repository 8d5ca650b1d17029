import { and, asc, count, eq, sql } from "drizzle-orm";
import type { ReviewPage } from "../../../core/index.ts";
import { REASONS } from "../../../core/shapes/review-reasons.ts";
import { ofSites, type SitesSeen } from "../../accounts/sites-seen.ts";
import type { Store } from "../../db/open.ts";
import { reviewItems } from "../../db/review-tables.ts";
import { weighChanged } from "../../review/weigh-changed.ts";
import { itemsOf } from "./items.ts";

type ItemRow = typeof reviewItems.$inferSelect;
type State = ItemRow["state"];

/**
 * A page of what waits at these sites for a lead: what can hurt or mislead first, then the phrases of a job together, the oldest job
 * first. `after` is where the page before ended: what was decided meanwhile neither hides nor repeats an item.
 */
export async function reviewPage(
  store: Store,
  seen: SitesSeen,
  wish: { job?: string; state: State; after?: string; most: number },
): Promise<ReviewPage> {
  await weighChanged(store, seen);
  const { db } = store;
  const of = ofSites(seen, reviewItems.site);
  const after = wish.after === undefined ? undefined : beyond(wish.after);
  const job = wish.job === undefined ? undefined : eq(reviewItems.job, wish.job);
  const rows = await db
    .select()
    .from(reviewItems)
    .where(and(of, job, eq(reviewItems.state, wish.state), after))
    .orderBy(
      asc(reviewItems.weight),
      asc(reviewItems.startedAt),
      asc(reviewItems.job),
      asc(reviewItems.saidAt),
      asc(reviewItems.phrase),
    )
    .limit(wish.most + 1);
  const shown = rows.slice(0, wish.most);
  const last = shown.at(-1);
  const byWeight = await db
    .select({ weight: reviewItems.weight, count: count() })
    .from(reviewItems)
    .where(and(of, eq(reviewItems.state, "open")))
    .groupBy(reviewItems.weight)
    .orderBy(asc(reviewItems.weight));
  const [asked] = await db
    .select({ count: count() })
    .from(reviewItems)
    .where(and(of, eq(reviewItems.state, "asked")));
  return {
    items: await itemsOf(db, shown),
    ...(rows.length > wish.most && last ? { next: placeOf(last) } : {}),
    waiting: byWeight.map((row) => ({ reason: REASONS[row.weight] ?? "certain", count: row.count })),
    asked: asked?.count ?? 0,
  };
}

/** Where an item stands in the queue, to go on from. */
const placeOf = (row: ItemRow) => [row.weight, row.startedAt, row.job, row.saidAt, row.phrase].map(String).join("~");

function beyond(place: string) {
  const [weight = "", startedAt = "", job = "", saidAt = "", phrase = ""] = place.split("~");
  const of = reviewItems;
  return sql`(${of.weight}, ${of.startedAt}, ${of.job}, ${of.saidAt}, ${of.phrase}) > (${Number(weight) || 0}, ${startedAt}, ${job}, ${saidAt}, ${phrase})`;
}

import { and, asc, count, inArray, lte, sql } from "drizzle-orm";
import type { DueLine, DueList } from "../../../core/index.ts";
import { dueSchema } from "../../../core/shapes/consequence.ts";
import { ofSites, onlySite, type SitesSeen } from "../../accounts/sites-seen.ts";
import type { Store } from "../../db/open.ts";
import { due } from "../../db/tables.ts";
import { addDays } from "../../moments.ts";
import { refreshStates } from "../../reading/valve-states.ts";
import { todayIn, zoneOf } from "../../reading/what-is-known.ts";

const DAY_MS = 86_400_000;

/**
 * What is overdue or falls due within `days`: severe service first, then by date. Counted from the today of the one site, or of
 * UTC over several, or from
 * `asOf`. All of it, or a page of `limit` lines that goes on behind the place `after`.
 */
export async function dueWithin(
  store: Store,
  seen: SitesSeen,
  days: number,
  { asOf, limit, after }: { asOf?: string; limit?: number; after?: string } = {},
): Promise<DueList> {
  await refreshStates(store, seen);
  const { db } = store;
  const only = onlySite(seen);
  const today = asOf ?? todayIn(only === undefined ? undefined : await zoneOf(db, only));
  const within = and(ofSites(seen, due.site), lte(due.on, addDays(today, days)));
  const order = [asc(due.rank), asc(due.on), asc(due.site), asc(due.tag), asc(due.task)];
  const all = db
    .select()
    .from(due)
    .where(and(within, after === undefined ? undefined : beyond(after)))
    .orderBy(...order);
  const rows = await (limit === undefined ? all : all.limit(limit + 1));
  const shown = limit === undefined ? rows : rows.slice(0, limit);
  const last = shown.at(-1);
  const [whole] = await db
    .select({ count: count(), overdue: sql<number>`count(case when ${due.on} < ${today} then 1 end)` })
    .from(due)
    // each rank named, so that the index by rank and date is read no further than the last day
    .where(and(within, inArray(due.rank, [0, 1])));
  return {
    today,
    days,
    due: shown.map((row) => lineOf(row, today)),
    count: whole?.count ?? 0,
    overdue: whole?.overdue ?? 0,
    ...(last && rows.length > shown.length ? { next: placeOf(last) } : {}),
  };
}

type Row = typeof due.$inferSelect;

function lineOf(row: Row, today: string): DueLine {
  const read = dueSchema.safeParse(JSON.parse(row.body));
  if (!read.success) throw new Error("a stored due date does not read", { cause: read.error });
  const overdue = Math.round((Date.parse(today) - Date.parse(read.data.on)) / DAY_MS);
  const service = row.rank === 0 ? "severe" : "normal";
  return { ...(row.site ? { site: row.site } : {}), tag: row.tag, ...read.data, service, overdue };
}

/** Where a line stands on the board, to go on from. */
const placeOf = (row: Row) => JSON.stringify([row.rank, row.on, row.site, row.tag, row.task]);

function beyond(place: string) {
  let read: unknown;
  try {
    read = JSON.parse(place);
  } catch {
    // a place that no page named is that of nothing: the board begins anew
    read = [];
  }
  const [rank = -1, on = "", site = "", tag = "", task = ""] = Array.isArray(read) ? read.map(String) : [];
  return sql`(${due.rank}, ${due.on}, ${due.site}, ${due.tag}, ${due.task}) > (${Number(rank) || 0}, ${on}, ${site}, ${tag}, ${task})`;
}

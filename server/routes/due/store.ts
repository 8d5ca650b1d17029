import { and, asc, eq, lte } from "drizzle-orm";
import type { DueLine } from "../../../core/index.ts";
import { dueSchema } from "../../../core/shapes/consequence.ts";
import type { Store } from "../../db/open.ts";
import { due, valveStates } from "../../db/tables.ts";
import { addDays } from "../../moments.ts";
import { refreshStates } from "../../reading/valve-states.ts";
import { todayIn, zoneOf } from "../../reading/what-is-known.ts";

const DAY_MS = 86_400_000;

/** What is overdue or falls due within `days`: severe service first, then by date. Counted from the site's today, or from `asOf`. */
export async function dueWithin(
  store: Store,
  site: string | undefined,
  days: number,
  asOf?: string,
): Promise<{ today: string; days: number; due: DueLine[] }> {
  await refreshStates(store, site);
  const today = asOf ?? todayIn(site === undefined ? undefined : await zoneOf(store.db, site));
  const rows = await store.db
    .select({ site: due.site, tag: due.tag, body: due.body, service: valveStates.service })
    .from(due)
    .innerJoin(valveStates, and(eq(valveStates.site, due.site), eq(valveStates.tag, due.tag)))
    .where(and(site === undefined ? undefined : eq(due.site, site), lte(due.on, addDays(today, days))))
    .orderBy(asc(due.on), asc(due.site), asc(due.tag), asc(due.task));
  const lines = rows.map((row): DueLine => {
    const read = dueSchema.safeParse(JSON.parse(row.body));
    if (!read.success) throw new Error("a stored due date does not read", { cause: read.error });
    const overdue = Math.round((Date.parse(today) - Date.parse(read.data.on)) / DAY_MS);
    return { ...(row.site ? { site: row.site } : {}), tag: row.tag, ...read.data, service: row.service, overdue };
  });
  const first = (line: DueLine) => (line.service === "severe" ? 0 : 1);
  return { today, days, due: lines.sort((a, b) => first(a) - first(b)) };
}

import { and, asc, desc, eq, ne } from "drizzle-orm";
import type { Entry, Life, Valve } from "../../core/index.ts";
import { lifeSchema } from "../../core/shapes/valve.ts";
import { valveStates } from "../db/tables.ts";
import type { Reads } from "./what-is-known.ts";

/** More would not move the fit and would only slow it. */
const VALVES_AT_MOST = 200;

/** The service a valve is in: as last said, else as set up. */
export function serviceOf(valve: Valve, visits: readonly { entries: readonly Entry[] }[]): "normal" | "severe" {
  const said = visits
    .flatMap((visit) => visit.entries)
    .findLast((entry) => entry.type === "valve" && entry.service !== undefined);
  return (said?.type === "valve" && said.service) || valve.service || "normal";
}

/**
 * Seat-side lives of the other valves of its family at its site that are in the same service, as last kept with their
 * states; those seen last come first. None for a valve whose family nobody set up: it may be like none of them.
 */
export async function livesOfLike(db: Reads, site: string, valve: Valve, service: string): Promise<Life[]> {
  if (valve.family === undefined || valve.tag === undefined) return [];
  const rows = await db
    .select({ lives: valveStates.lives })
    .from(valveStates)
    .where(
      and(
        eq(valveStates.site, site),
        eq(valveStates.family, valve.family),
        eq(valveStates.service, service),
        ne(valveStates.lives, "[]"),
        ne(valveStates.tag, valve.tag),
      ),
    )
    .orderBy(desc(valveStates.lastOn), asc(valveStates.tag))
    .limit(VALVES_AT_MOST);
  return rows.flatMap((row) => {
    const read = lifeSchema.array().safeParse(JSON.parse(row.lives));
    if (!read.success) throw new Error("stored seat lives do not read", { cause: read.error });
    return read.data;
  });
}

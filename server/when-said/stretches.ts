import { and, between, desc, inArray, type SQL } from "drizzle-orm";
import { ofSites, type SitesSeen } from "../accounts/sites-seen.ts";
import { phrases } from "../db/tables.ts";
import type { Reads } from "../reading/what-is-known.ts";
import { daysSaid, type Wanted } from "./days-said.ts";
import { dayOf } from "./list-days.ts";
import { BEFORE_ALL, beginningOf, isBefore, isFrom, placeOf } from "./places.ts";

/** Said at more sites than this, a day is gone through as it was said, and left when enough is found. */
const FEW_SITES = 4;
const SO_MANY = 10_000;

/** A stretch of time: what holds of its phrases, and the place where it begins, to go on from with those before it. */
export interface Stretch {
  holds: SQL | undefined;
  begins: string;
}

/**
 * Stretches of the phrases of these sites, the latest first: the days on which what is wanted was said, or, where no days
 * can be told, so many phrases after so many. They lie between two places in time; the last may reach beyond.
 */
export async function* stretches(
  db: Reads,
  wanted: Wanted,
  seen: SitesSeen,
  { from, before }: { from: string; before: string },
): AsyncGenerator<Stretch> {
  const days = await daysSaid(db, wanted, seen, { from: dayOf(from), to: dayOf(before) });
  if (!days) return yield* soMany(db, seen, from, before);
  for await (const { day, sites } of days) {
    const begins = beginningOf(day);
    // the day of the place itself may have been looked through whole
    if (begins >= before) continue;
    const at = sites.length <= FEW_SITES ? inArray(phrases.site, sites) : undefined;
    yield { holds: and(at, between(phrases.saidAt, `${day}T`, `${day}U`)), begins };
  }
}

async function* soMany(db: Reads, seen: SitesSeen, from: string, before: string): AsyncGenerator<Stretch> {
  for (let place = before; ; ) {
    const [edge] = await db
      .select({ saidAt: phrases.saidAt, id: phrases.id })
      .from(phrases)
      .where(and(ofSites(seen, phrases.site), isBefore(place)))
      .orderBy(desc(phrases.saidAt), desc(phrases.id))
      .limit(1)
      .offset(SO_MANY - 1);
    const begins = edge ? placeOf(edge) : BEFORE_ALL;
    yield { holds: and(isBefore(place), isFrom(begins)), begins };
    if (edge === undefined || edge.saidAt < from) return;
    place = begins;
  }
}

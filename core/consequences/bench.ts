import { familyOf } from "../families/index.ts";
import type { Entry } from "../shapes/entry.ts";
import type { Family, PastJob, Valve } from "../shapes/valve.ts";
import { judgeLeak } from "./leak-check.ts";
import type { Bench } from "./rule.ts";
import { tellSeat } from "./seat-story.ts";
import { inOrder, type Visit } from "./visit.ts";

/** Lays out one valve's jobs for the rules: in order, today's last, with the seat's story told. */
export function layOut(
  valve: Valve,
  history: readonly PastJob[],
  entries: readonly Entry[],
  on: string,
  families: readonly Family[] = [],
): Bench {
  const family = familyOf(valve.family, families);
  const known = asSaidToday(valve, entries);
  const visits = inOrder(history, entries, on);
  return {
    family,
    valve: known,
    visits,
    today: visits[visits.length - 1] as Visit,
    on,
    seat: tellSeat(visits, family),
    judgeLeak: (visit, entry) => judgeLeak(visit, entry, known, family),
  };
}

/** What is said of size, action or service overrides the record. */
function asSaidToday(valve: Valve, entries: readonly Entry[]): Valve {
  let known = valve;
  for (const entry of entries) {
    if (entry.type !== "valve" || entry.doubtful) continue;
    const { size_in, acts, service } = entry;
    known = {
      ...known,
      ...(size_in === undefined ? {} : { size_in }),
      ...(acts === undefined ? {} : { acts }),
      ...(service === undefined ? {} : { service }),
    };
  }
  return known;
}

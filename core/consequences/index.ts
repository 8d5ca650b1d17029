import { familyOf } from "../families/index.ts";
import type { Check, Consequences } from "../shapes/consequence.ts";
import type { Entry } from "../shapes/entry.ts";
import type { Family, Life, PastJob, Valve } from "../shapes/valve.ts";
import { followUps } from "./follow-ups.ts";
import { judgeLeak } from "./leak-check.ts";
import { missingItems, partsList } from "./parts-list.ts";
import type { Bench } from "./rule.ts";
import { sealDate } from "./seal-date.ts";
import { seatDate } from "./seat-date.ts";
import { tellSeat } from "./seat-story.ts";
import { judgeStroke } from "./stroke-check.ts";
import { judgeTorque } from "./torque-check.ts";
import { inOrder, type Visit } from "./visit.ts";

/**
 * What follows from today's entries, given what is known of the valve and its earlier jobs.
 * `history` in any order; `on` is the date of today's job, YYYY-MM-DD; `fleet`: seat-side lives of like valves, months;
 * `families`: a site's own, before ours. Edits nothing that it is given, and throws on nothing that fits the shapes.
 */
export function consequences(
  valve: Valve,
  history: readonly PastJob[],
  entries: readonly Entry[],
  on: string,
  fleet: readonly Life[] = [],
  families: readonly Family[] = [],
): Consequences {
  const family = familyOf(valve.family, families);
  const known = asSaidToday(valve, entries);
  const visits = inOrder(history, entries, on);
  const today = visits[visits.length - 1] as Visit;
  const bench: Bench = {
    family,
    valve: known,
    visits,
    today,
    on,
    seat: tellSeat(visits, family),
    judgeLeak: (visit, entry) => judgeLeak(visit, entry, known, family),
  };
  const owed = followUps(bench);
  return {
    checks: checks(bench),
    followUps: owed,
    due: [seatDate(bench, fleet), sealDate(bench)],
    missing: missingItems(bench),
    parts: partsList(bench, owed),
  };
}

/** What is said of size, action or service overrides the record. */
function asSaidToday(valve: Valve, entries: readonly Entry[]): Valve {
  let known = valve;
  for (const entry of entries) {
    if (entry.type !== "valve") continue;
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

/** Every torque said, the last measured leak of the seat, and the stroke where signals were read with positions. */
function checks(bench: Bench): Check[] {
  const { entries } = bench.today;
  const torque = entries.flatMap((entry) =>
    entry.type === "reading" && entry.quantity === "torque" ? [judgeTorque(entry, bench)] : [],
  );
  const leak = entries.findLastIndex(
    (entry) => entry.type === "reading" && entry.quantity === "leak_rate" && entry.part !== "packing",
  );
  const stroke = judgeStroke(entries, bench.family);
  return [...torque, ...(leak < 0 ? [] : [bench.judgeLeak(bench.today, leak)]), ...(stroke ? [stroke] : [])];
}

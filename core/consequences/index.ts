import type { Check, Consequences } from "../shapes/consequence.ts";
import type { Entry } from "../shapes/entry.ts";
import type { Family, Life, PastJob, Valve } from "../shapes/valve.ts";
import { layOut } from "./bench.ts";
import { followUps } from "./follow-ups.ts";
import { missingItems, partsList } from "./parts-list.ts";
import type { Bench } from "./rule.ts";
import { sealDate } from "./seal-date.ts";
import { seatDate } from "./seat-date.ts";
import { judgeStroke } from "./stroke-check.ts";
import { judgeTorque } from "./torque-check.ts";

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
  const bench = layOut(valve, history, entries, on, families);
  const owed = followUps(bench);
  return {
    checks: checks(bench),
    followUps: owed,
    due: [seatDate(bench, fleet), sealDate(bench)],
    missing: missingItems(bench),
    parts: partsList(bench, owed),
  };
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

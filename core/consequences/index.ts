import type { Consequences } from "../shapes/consequence.ts";
import type { Entry } from "../shapes/entry.ts";
import type { Life, PastJob, Valve } from "../shapes/valve.ts";

/**
 * What follows from today's entries, given what is known of the valve and its earlier jobs.
 * `history` in any order; `on` is the date of today's job, YYYY-MM-DD; `fleet`: seat-side lives of like valves, months.
 */
export function consequences(
  _valve: Valve,
  _history: readonly PastJob[],
  _entries: readonly Entry[],
  _on: string,
  _fleet: readonly Life[] = [],
): Consequences {
  return { checks: [], followUps: [], due: [], missing: [], parts: { used: [], needed: [] } };
}

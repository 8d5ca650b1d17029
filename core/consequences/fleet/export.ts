import type { ExportLine } from "../../shapes/fleet.ts";
import type { Family } from "../../shapes/valve.ts";
import { failureEvents } from "./failures.ts";
import { activityOf, CODES_SURE } from "./iso-14224.ts";
import { benchOf, type RecordedValve } from "./recorded.ts";

/**
 * The record as ISO 14224 has it: a line for each thing found wrong, once, and a line for each work done, by valve and
 * day. Equipment class VA is valves (from memory).
 */
export function exportLines(
  valves: readonly RecordedValve[],
  today: string,
  families: readonly Family[] = [],
): ExportLine[] {
  return valves.flatMap((one): ExportLine[] => {
    const bench = benchOf(one, today, families);
    if (!bench) return [];
    const head = {
      ...(one.site === undefined ? {} : { site: one.site }),
      tag: one.tag,
      equipment_class: "VA" as const,
      family: bench.family.family,
    };
    const failures = failureEvents(bench).map((event): ExportLine & { at: number } => ({
      record: "failure",
      ...head,
      on: event.on,
      ...(event.part === undefined ? {} : { part: event.part }),
      found: event.found,
      failure_mode: event.mode,
      failure_mechanism: event.mechanism,
      severity: event.severity,
      sure: CODES_SURE,
      at: event.at,
    }));
    const works = bench.visits.flatMap((visit) =>
      visit.entries.flatMap((entry): (ExportLine & { at: number })[] =>
        entry.type === "work" && entry.status === "done" && !entry.unsure
          ? [
              {
                record: "maintenance",
                ...head,
                on: visit.on,
                ...(entry.part === undefined ? {} : { part: entry.part }),
                activity: activityOf(entry.work),
                work: entry.work,
                sure: CODES_SURE,
                at: visit.at,
              },
            ]
          : [],
      ),
    );
    return [...failures, ...works].sort((a, b) => a.at - b.at).map(({ at: _, ...line }) => line);
  });
}

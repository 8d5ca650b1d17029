import type { Condition, Part, Place, Work } from "../../shapes/codes.ts";
import type { Finding } from "../../shapes/entry.ts";
import type { Family } from "../../shapes/valve.ts";
import { GUIDES, isSoft, PRESSURE_PARTS, THREADED, THREADS } from "../parts.ts";
import { type Owed, PRACTICE, type Rule } from "../rule.ts";
import type { Visit } from "../visit.ts";
import { spoken } from "../words.ts";

/** Metal parts: scratched guides, eroded leak paths, blocked holes, spoilt threads, and whatever else is broken. */

const WASHED = new Set<Condition>(["eroded", "corroded", "washed_out", "pitted", "scored", "cut", "nicked"]);
const LEAK_PATH = new Set<Part>(["cage", "seat_area", "plug", "body"]);
const SEALING_PLACES = new Set<Place>(["bottom", "lower", "face"]);
/** These are holes, or lines of signal and supply, by themselves. */
const HOLES = new Set<Part>(["vent_hole", "supply_port", "signal_port", "breather", "tubing"]);
/** Communication holes are bored through these. */
const BORED = new Set<Part>(["guide", "stem_guide", "nut", "lock_nut", "diaphragm_nut", "packing_nut"]);
const SPOILT_THREADS = new Set<Condition>(["stripped", "galled", "cross_threaded", "damaged"]);
const REPLACE_NOW = new Set<Condition>(["broken", "seized", "missing", "cracked"]);
const LOOK_AGAIN = new Set<Condition>(["bent", "weak"]);

function eachFault(
  visit: Visit,
  read: (finding: Finding, part: Part) => Omit<Owed, "part" | "finding"> | undefined,
): Owed[] {
  return visit.faults.flatMap((entry) => {
    if (!entry.part) return [];
    const owed = read(entry, entry.part);
    return owed ? [{ count: entry.count, ...owed, part: entry.part, finding: entry }] : [];
  });
}

function described({ part, condition, severity, place }: Finding): string {
  const how = severity === "slight" ? "slightly " : severity === "severe" ? "badly " : "";
  return `${spoken(part)} ${how}${condition.replaceAll("_", " ")}${place ? `, ${place}` : ""}`;
}

/** The faults that another rule answers for, so that "any other part" means any other. */
function isOther(part: Part, condition: Condition, family: Family): boolean {
  if (isSoft(part, family)) return false;
  return !(condition === "cracked" && (part === "seat" || PRESSURE_PARTS.has(part)));
}

export const HARD_PART_RULES: Rule[] = [
  {
    rule: "groove_scratched",
    source: PRACTICE,
    reads: "faults",
    owes: (visit) =>
      eachFault(visit, (finding, part) => {
        if (!GUIDES.has(part) || (finding.condition !== "scratched" && finding.condition !== "scored"))
          return undefined;
        return finding.severity === "slight"
          ? { do: "inspect", when: "next_inspection", why: `${described(finding)}: see whether it has grown` }
          : { do: "replace", when: "now", why: `${described(finding)}: a leak path past the guide` };
      }),
  },
  {
    rule: "leak_path",
    source: PRACTICE,
    reads: "faults",
    owes: (visit) =>
      eachFault(visit, (finding, part) => {
        if (!LEAK_PATH.has(part) || !WASHED.has(finding.condition)) return undefined;
        const sealing =
          part === "plug" || part === "seat_area" || (finding.place !== undefined && SEALING_PLACES.has(finding.place));
        return finding.severity === "slight" && !sealing
          ? { do: "inspect", when: "next_inspection", why: `${described(finding)}: see whether it has grown` }
          : { do: "replace", when: "now", why: `${described(finding)}: ${sealing ? "a sealing face" : "a leak path"}` };
      }),
  },
  {
    rule: "hole_blocked",
    source: PRACTICE,
    reads: "faults",
    owes: (visit, { family }) =>
      eachFault(visit, (finding, part) => {
        const { condition, place } = finding;
        if ((condition !== "plugged" && condition !== "fouled") || isSoft(part, family)) return undefined;
        const bored = BORED.has(part) || family.bill.some((line) => line.part === part && line.holes);
        const isHole = HOLES.has(part) || place === "hole" || (bored && condition === "plugged");
        return isHole
          ? {
              do: "clean",
              when: "now",
              why: `${described(finding)}: pressure must pass there for the valve to move`,
              by: ["cleaned", "replaced"],
            }
          : undefined;
      }),
  },
  {
    rule: "threads_bad",
    source: PRACTICE,
    reads: "faults",
    owes: (visit) =>
      eachFault(visit, (finding, part) => {
        const { condition } = finding;
        const threads = THREADS.has(part)
          ? SPOILT_THREADS.has(condition)
          : condition === "stripped" ||
            condition === "cross_threaded" ||
            (condition === "galled" && THREADED.has(part));
        return threads
          ? { do: "replace", when: "now", why: `${described(finding)}: replace the part that carries the threads` }
          : undefined;
      }),
  },
  {
    rule: "hard_part_bad",
    source: PRACTICE,
    reads: "faults",
    owes: (visit, { family }) =>
      eachFault(visit, (finding, part) => {
        const { condition } = finding;
        if (!isOther(part, condition, family)) return undefined;
        if (REPLACE_NOW.has(condition)) {
          const by: readonly Work[] =
            condition === "missing" ? ["replaced", "installed", "repaired"] : ["replaced", "repaired"];
          return { do: "replace", when: "now", why: described(finding), by };
        }
        return LOOK_AGAIN.has(condition)
          ? {
              do: "inspect",
              when: "next_inspection",
              why: `${described(finding)}: look at it again`,
              by: ["replaced", "repaired", "straightened"],
            }
          : undefined;
      }),
  },
];

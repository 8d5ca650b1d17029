import { spokenDate } from "../../compute/calendar.ts";
import type { Part, Work } from "../../shapes/codes.ts";
import type { WorkEntry } from "../../shapes/entry.ts";
import { reaches } from "../parts.ts";
import { type Bench, type Owed, PRACTICE, type Rule } from "../rule.ts";
import { didIn, isDone, isFault, isSound, type Visit } from "../visit.ts";
import { spoken } from "../words.ts";

/** What the record still wants: work said needed and not done, parts asked for and not fitted. */

/** The work as an order; nobody is ever owed a part put back in. */
const ORDERS: Partial<Record<Work, string>> = {
  replaced: "replace",
  flipped: "flip",
  cleaned: "clean",
  repaired: "repair",
  lapped: "lap",
  greased: "grease",
  adjusted: "adjust",
  tightened: "tighten",
  removed: "remove",
  installed: "install",
  inspected: "inspect",
  drained: "drain",
  filled: "fill",
  threadlocked: "threadlock",
  discarded: "discard",
  straightened: "straighten",
  dressed: "dress",
  vented: "vent",
  calibrated: "calibrate",
  disassembled: "disassemble",
};

/** True where the part had a fault in that visit, or one from before that nobody mended or found gone. */
function faultStands(part: Part | undefined, visit: Visit, bench: Bench): boolean {
  for (let at = visit.at; at >= 0; at--) {
    const job = bench.visits[at] as Visit;
    const same = job === visit;
    for (const entry of job.entries) if (isFault(entry) && reaches(entry.part, part, bench.family, same)) return true;
    if (same) continue;
    if (didIn(job, ["replaced", "repaired"], part, bench.family, false)) return false;
    if (job.entries.some((entry) => isSound(entry) && entry.part === part)) return false;
  }
  return false;
}

/** Done in that visit or since; a part replaced wants none of its older work, a part found so or so was looked at. */
function doneSince(entry: WorkEntry, visit: Visit, bench: Bench): boolean {
  const works: Work[] = entry.part === undefined && entry.work !== "flipped" ? [entry.work] : [entry.work, "replaced"];
  for (let at = visit.at; at < bench.visits.length; at++) {
    const job = bench.visits[at] as Visit;
    const same = job === visit;
    if (didIn(job, works, entry.part, bench.family, same)) return true;
    if (entry.work !== "inspected" || entry.part === undefined) continue;
    const looks = same ? job.entries.slice(job.entries.indexOf(entry) + 1) : job.entries;
    if (looks.some((one) => one.type === "finding" && reaches(one.part, entry.part, bench.family, same))) return true;
  }
  return false;
}

export const RECORD_RULES: Rule[] = [
  {
    rule: "work_owed",
    source: PRACTICE,
    reads: "record",
    owes: (_, bench) =>
      bench.visits.flatMap((visit) =>
        visit.entries.flatMap((entry): Owed[] => {
          if (entry.type !== "work" || entry.status === "done") return [];
          const order = ORDERS[entry.work];
          if (order === undefined) return [];
          if (entry.work === "flipped" && !bench.family.reversible_seat) return [];
          if (entry.status === "declined" && !faultStands(entry.part, visit, bench)) return [];
          if (doneSince(entry, visit, bench)) return [];
          const said = entry.status === "needed" ? "said to be needed" : "left undone though a fault was found";
          const when = visit === bench.today ? "today" : `on ${spokenDate(visit.on)}`;
          return [
            {
              do: order,
              part: entry.part,
              when: "now",
              why: `${order} ${spoken(entry.part)}: ${said} ${when}, not done yet`,
              count: entry.count,
              by: [],
            },
          ];
        }),
      ),
  },
  {
    rule: "part_owed",
    source: PRACTICE,
    reads: "record",
    owes: (_, bench) =>
      bench.visits.flatMap((visit) =>
        visit.entries.flatMap((entry, index): Owed[] => {
          if (entry.type !== "need") return [];
          // Fitted before it was asked for is another one: what was said last still stands.
          const fitted = bench.visits
            .slice(visit.at)
            .some((job) =>
              job.entries.some(
                (one, at) =>
                  (job !== visit || at > index) &&
                  isDone(one, ["replaced", "installed"], entry.part, bench.family, job === visit),
              ),
            );
          if (fitted) return [];
          const count = entry.count ?? 1;
          const when = visit === bench.today ? "today" : `on ${spokenDate(visit.on)}`;
          return [
            {
              do: "order",
              part: entry.part,
              when: "now",
              count,
              why: `${spoken(entry.part)}: ${count} asked for ${when}, not fitted yet`,
              by: [],
            },
          ];
        }),
      ),
  },
];

import { spokenDate } from "../../compute/calendar.ts";
import type { Work } from "../../shapes/codes.ts";
import type { Finding } from "../../shapes/entry.ts";
import { type Bench, type Owed, PRACTICE, type Rule } from "../rule.ts";
import { isFlip, newSeat, wearOf } from "../seat-story.ts";
import type { Visit } from "../visit.ts";

/** A reversible seat gives two sides: one worn is flipped, the second worn is replaced. */

/** Any of these is something done about a worn side. */
const TREATED: readonly Work[] = ["flipped", "replaced", "lapped", "repaired"];

/** A later sure finding of wear says more than this one: what it leads to stands in its place. */
const wornSince = (visit: Visit, later: boolean): boolean =>
  later && visit.entries.some((entry) => wearOf(entry) && entry.type === "finding" && !entry.unsure);

function seatWear(
  visit: Visit,
  read: (finding: Finding, sides: "one" | "both" | "unsaid") => Owed | undefined,
): Owed[] {
  return visit.faults.flatMap((entry) => {
    const wear = wearOf(entry);
    const owed = wear && read(wear.finding, wear.sides);
    return owed ? [{ part: "seat", finding: wear.finding, settled: wornSince, ...owed }] : [];
  });
}

const flippedAlready = (visit: Visit, bench: Bench): boolean => (bench.seat.flipsBefore[visit.at] ?? 0) > 0;

/** When the seat was last flipped before that visit. */
function lastFlip(visit: Visit, bench: Bench): string {
  const job = bench.visits.slice(0, visit.at).findLast((past) => past.entries.some((entry) => isFlip(entry, "done")));
  return job ? spokenDate(job.on) : "an earlier job";
}

export const SEAT_RULES: Rule[] = [
  {
    rule: "seat_flip",
    source: PRACTICE,
    reads: "faults",
    owes: (visit, bench) =>
      seatWear(visit, (_, sides) =>
        bench.family.reversible_seat && sides === "one" && !flippedAlready(visit, bench)
          ? { do: "flip", when: "now", why: "seat worn on one side, the other not used yet: flip it", by: TREATED }
          : undefined,
      ),
  },
  {
    rule: "seat_which_side",
    source: PRACTICE,
    reads: "faults",
    owes: (visit, bench) =>
      seatWear(visit, (_, sides) =>
        bench.family.reversible_seat && sides === "unsaid" && !flippedAlready(visit, bench)
          ? { do: "ask", when: "now", why: "seat worn: on one side, or both?", by: TREATED }
          : undefined,
      ),
  },
  {
    rule: "seat_second_side",
    source: PRACTICE,
    reads: "faults",
    owes: (visit, bench) =>
      bench.family.reversible_seat && !flippedAlready(visit, bench) && visit.entries.some((one) => isFlip(one, "done"))
        ? [
            {
              do: "replace",
              part: "seat",
              when: "next_inspection",
              why: "seat flipped: both sides are used once this one is, so have a new seat at the next inspection",
              stays: true,
            },
          ]
        : [],
  },
  {
    rule: "seat_spent",
    source: PRACTICE,
    reads: "faults",
    owes: (visit, bench) => [
      ...seatWear(visit, (_, sides) => {
        const why =
          sides === "both"
            ? "seat worn on both sides"
            : !bench.family.reversible_seat
              ? "seat worn, and this seat does not reverse"
              : flippedAlready(visit, bench)
                ? `seat worn, and flipped already on ${lastFlip(visit, bench)}`
                : undefined;
        return why ? { do: "replace", when: "now", why } : undefined;
      }),
      ...visit.faults.flatMap((entry): Owed[] =>
        entry.part === "seat" && entry.condition === "cracked"
          ? [{ do: "replace", part: "seat", when: "now", why: "seat cracked", finding: entry }]
          : [],
      ),
    ],
  },
  {
    rule: "seat_flip_twice",
    source: PRACTICE,
    reads: "today",
    owes: (visit, bench) =>
      bench.family.reversible_seat &&
      flippedAlready(visit, bench) &&
      visit.entries.some((one) => isFlip(one, "done")) &&
      !visit.entries.some(newSeat)
        ? [
            {
              do: "ask",
              part: "seat",
              when: "now",
              why: `said flipped, but the record has it flipped on ${lastFlip(visit, bench)}: this side is used. Which side is in?`,
              by: [],
            },
          ]
        : [],
  },
  {
    rule: "seat_not_reversible",
    source: "family data",
    reads: "today",
    owes: (visit, bench) =>
      !bench.family.reversible_seat && visit.entries.some((one) => isFlip(one, "done") || isFlip(one, "needed"))
        ? [
            {
              do: "ask",
              part: "seat",
              when: "now",
              why: `the seat of a ${bench.family.name} does not reverse: what was done?`,
              by: [],
            },
          ]
        : [],
  },
];

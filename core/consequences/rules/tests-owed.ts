import type { Test, Work } from "../../shapes/codes.ts";
import { isSoft, isTrim } from "../parts.ts";
import { type Bench, type Owed, PRACTICE, type Rule } from "../rule.ts";
import { type Outcome, outcomeOf } from "../test-outcome.ts";
import type { Visit } from "../visit.ts";
import { spokenUnit } from "../words.ts";

/** A test that failed is repaired and done again; work on trim or seals is not done until it is tested. */

const NAMES: Record<Test, string> = {
  seat_leak: "seat leak test",
  stroke: "stroke test",
  shell: "shell test",
  packing: "packing test",
  actuator: "actuator test",
};
const TESTS = Object.keys(NAMES) as Test[];

/** Work after which nobody knows whether the valve still shuts and strokes. */
const OPENED: readonly Work[] = ["replaced", "flipped", "lapped", "repaired", "removed", "reused"];
/** Work that may have mended what a test showed. */
const MENDED: readonly Work[] = ["replaced", "flipped", "lapped", "repaired"];

function workedOn(visit: Visit, works: readonly Work[], bench: Bench): boolean {
  return visit.entries.some(
    (entry) =>
      entry.type === "work" &&
      entry.status === "done" &&
      !entry.unsure &&
      works.includes(entry.work) &&
      (isTrim(entry.part, bench.family) ||
        isSoft(entry.part, bench.family) ||
        entry.part === "valve" ||
        (entry.part === undefined && entry.work === "flipped")),
  );
}

function failed(test: Test, outcome: Outcome): Owed[] {
  const why = outcome.leak
    ? `${NAMES[test]}: ${outcome.leak.measured} ${spokenUnit(outcome.leak.unit)} measured, ${Number((outcome.leak.allowed ?? 0).toPrecision(3))} allowed`
    : `${NAMES[test]} failed`;
  return [
    { do: "repair", when: "now", test, why, by: [] },
    { do: "retest", when: "now", test, why: `${why}: test again once repaired`, by: [] },
  ];
}

export const TEST_RULES: Rule[] = [
  {
    rule: "test_failed",
    source: PRACTICE,
    reads: "faults",
    owes: (visit, bench) =>
      TESTS.flatMap((test) => {
        const outcome = outcomeOf(visit, test, bench);
        if (outcome.last !== "fail") return [];
        // Of an earlier job it is over once the test has a result again, or trim or seals were mended.
        const settled = (other: Visit, later: boolean): boolean =>
          later
            ? outcomeOf(other, test, bench).last !== undefined || workedOn(other, MENDED, bench)
            : visit !== bench.today && workedOn(visit, MENDED, bench);
        const repaired = visit.entries
          .slice(outcome.at + 1)
          .some(
            (entry) => entry.type === "work" && entry.work === "repaired" && entry.status === "done" && !entry.unsure,
          );
        return failed(test, outcome)
          .filter((owed) => owed.do !== "repair" || !repaired)
          .map((owed) => ({ ...owed, settled }));
      }),
  },
  {
    rule: "test_owed",
    source: PRACTICE,
    reads: "today",
    owes: (visit, bench) => {
      if (!workedOn(visit, OPENED, bench)) return [];
      return (["seat_leak", "stroke"] as const)
        .filter((test) => !outcomeOf(visit, test, bench).closed)
        .map((test) => ({
          do: "retest",
          when: "now",
          test,
          why: `trim or seals were worked on and the ${NAMES[test]} has no result yet`,
          by: [],
        }));
    },
  },
];

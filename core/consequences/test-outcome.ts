import type { Test, TestResult } from "../shapes/codes.ts";
import type { Check } from "../shapes/consequence.ts";
import type { Bench } from "./rule.ts";
import type { Visit } from "./visit.ts";

/** How a test stands at the end of a visit. */
export interface Outcome {
  /** the last result said or judged */
  last?: "pass" | "fail";
  /** where in the visit's entries it stands */
  at: number;
  /** true where the last test named has a result */
  closed: boolean;
  /** the judged rate that made the last result */
  leak?: Extract<Check, { check: "seat_leakage" }>;
}

/**
 * Goes through a visit's entries in the order said. A leak rate belongs to the seat test that follows it and, judged,
 * is that test's result; a rate without a limit closes nothing.
 */
export function outcomeOf(visit: Visit, test: Test, bench: Bench): Outcome {
  let last: TestResult | undefined;
  let closed = false;
  let at = -1;
  let leak: Outcome["leak"];
  let waiting: Outcome["leak"];
  visit.entries.forEach((entry, index) => {
    if (
      test === "seat_leak" &&
      entry.type === "reading" &&
      entry.quantity === "leak_rate" &&
      entry.part !== "packing"
    ) {
      const check = bench.judgeLeak(visit, index);
      waiting = check;
      if (check.verdict === "no_limit") return;
      last = check.verdict;
      at = index;
      closed = true;
      leak = check;
    } else if (entry.type === "test" && entry.test === test) {
      const judged = waiting && waiting.verdict !== "no_limit";
      waiting = undefined;
      if (judged) return;
      closed = entry.result !== null;
      if (entry.result === null) return;
      last = entry.result;
      at = index;
      leak = undefined;
    }
  });
  return { last: last ?? undefined, at, closed, leak };
}

import type { Condition, Part, Status, Test, TestResult, Work } from "../shapes/codes.ts";
import type { FollowUp } from "../shapes/consequence.ts";
import type { Entry, Finding, WorkEntry } from "../shapes/entry.ts";
import type { PastJob, Valve } from "../shapes/valve.ts";
import type { RuleCode } from "./rule.ts";

/**
 * One case of a rule, beside the rule: what is said, on what valve, after what jobs, and the follow-ups that this rule
 * then makes: all of them, by the keys given. None is the near miss that the rule must leave alone.
 */
export interface Example {
  rule: RuleCode;
  about: string;
  say: readonly Entry[];
  before?: readonly PastJob[];
  valve?: Valve;
  gives: readonly Partial<FollowUp>[];
}

/** Today, in every example. */
export const EXAMPLE_DAY = "2026-03-04";
/** The valve of an example that names none. */
export const EXAMPLE_VALVE: Valve = { family: "balanced_dump", size_in: 2, leak_class: "VI", port_in: 2 };
export const GLOBE: Valve = { family: "globe_control", size_in: 2, leak_class: "IV" };

export function found(part: Part, condition: Condition, more: Partial<Finding> = {}): Entry {
  return { type: "finding", condition, part, ...more };
}

export function worked(work: Work, part: Part, status: Status = "done", more: Partial<WorkEntry> = {}): Entry {
  return { type: "work", work, status, part, ...more };
}

export function tested(test: Test, result: TestResult): Entry {
  return { type: "test", test, result };
}

/** An earlier job. */
export function job(on: string, ...entries: Entry[]): PastJob {
  return { on, entries };
}

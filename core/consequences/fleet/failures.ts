import type { Part, Test, Work } from "../../shapes/codes.ts";
import { TESTS } from "../../shapes/codes.ts";
import type { Finding } from "../../shapes/entry.ts";
import type { Bench } from "../rule.ts";
import { outcomeOf } from "../test-outcome.ts";
import { didIn, isFault, isSound, type Visit } from "../visit.ts";
import {
  type Coded,
  isFaultCode,
  mechanismOf,
  modeOfFinding,
  modeOfTest,
  type Severity14224,
  severityOf,
  UNKNOWN_MECHANISM,
} from "./iso-14224.ts";

/** Something found wrong for the first time: not again what an earlier job left unmended. */
export interface FailureEvent {
  on: string;
  /** the visit's place in the row */
  at: number;
  part?: Part;
  /** the condition found, or the test that failed */
  found: string;
  mode: Coded;
  mechanism: Coded;
  severity: Severity14224;
}

const MENDS: readonly Work[] = [
  "replaced",
  "repaired",
  "cleaned",
  "adjusted",
  "flipped",
  "lapped",
  "tightened",
  "dressed",
];

/** Everything found wrong on one valve, oldest first. A failed test and a lost part are failures, wear is not yet. */
export function failureEvents(bench: Bench): FailureEvent[] {
  const events: FailureEvent[] = [];
  const standing = new Map<string, Finding | Test>();
  for (const visit of bench.visits) {
    const { on, at } = visit;
    for (const test of TESTS) {
      if (!failedIn(visit, test, bench) || standing.has(test)) continue;
      standing.set(test, test);
      events.push({
        on,
        at,
        found: `${test} failed`,
        mode: modeOfTest(test),
        mechanism: UNKNOWN_MECHANISM,
        severity: "critical",
      });
    }
    for (const fault of visit.faults) {
      if (fault.unsure || !isFaultCode(fault.condition)) continue;
      const key = `${fault.part ?? ""} ${fault.condition}`;
      if (standing.has(key)) continue;
      standing.set(key, fault);
      events.push({
        on,
        at,
        ...(fault.part === undefined ? {} : { part: fault.part }),
        found: fault.condition,
        mode: modeOfFinding(fault.condition, fault.part),
        mechanism: mechanismOf(fault.condition),
        severity: severityOf(fault.condition, fault.severity === "slight"),
      });
    }
    for (const [key, what] of standing) if (mendedIn(visit, what, bench)) standing.delete(key);
  }
  return events;
}

/** Failed at any time in the visit, though it passed after a repair: it had failed all the same. */
function failedIn(visit: Visit, test: Test, bench: Bench): boolean {
  return visit.entries.some((entry, index) => {
    if (entry.type === "test") return entry.test === test && entry.result === "fail";
    if (test !== "seat_leak" || entry.type !== "reading") return false;
    if (entry.quantity !== "leak_rate" || entry.part === "packing") return false;
    return bench.judgeLeak(visit, index).verdict === "fail";
  });
}

function mendedIn(visit: Visit, what: Finding | Test, bench: Bench): boolean {
  if (typeof what === "string")
    return (
      outcomeOf(visit, what, bench).last === "pass" ||
      visit.entries.some((entry) => entry.type === "work" && entry.status === "done" && MENDS.includes(entry.work))
    );
  return (
    didIn(visit, MENDS, what.part, bench.family) ||
    visit.entries.some((entry) => isSound(entry) && entry.part === what.part && !isFault(entry))
  );
}

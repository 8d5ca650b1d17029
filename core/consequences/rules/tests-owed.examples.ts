import type { Entry } from "../../shapes/entry.ts";
import { type Example, found, GLOBE, job, tested, worked } from "../example.ts";

const rate = (value: number, unit: "bubble/min" | "mL/min" | "drop/min", more = {}): Entry => ({
  type: "reading",
  quantity: "leak_rate",
  value,
  unit,
  ...more,
});

export const TEST_EXAMPLES: Example[] = [
  {
    rule: "test_failed",
    about: "held, then leaked by",
    say: [tested("seat_leak", "pass"), tested("seat_leak", "fail")],
    gives: [
      { do: "repair", test: "seat_leak", when: "now" },
      { do: "retest", test: "seat_leak", when: "now" },
    ],
  },
  {
    rule: "test_failed",
    about: "leaked, then held",
    say: [tested("seat_leak", "fail"), tested("seat_leak", "pass")],
    gives: [],
  },
  {
    rule: "test_failed",
    about: "a measured leak over its limit is a fail, whatever was said",
    say: [rate(4, "bubble/min"), tested("seat_leak", "pass")],
    gives: [
      { do: "repair", test: "seat_leak" },
      { do: "retest", test: "seat_leak" },
    ],
  },
  {
    rule: "test_failed",
    about: "a measured leak over its limit, then tight",
    say: [rate(4, "bubble/min"), tested("seat_leak", null), tested("seat_leak", "pass")],
    gives: [],
  },
  {
    rule: "test_failed",
    about: "the packing's rate is not the seat's",
    valve: GLOBE,
    say: [rate(40, "drop/min", { part: "packing" }), tested("packing", null)],
    gives: [],
  },
  {
    rule: "test_failed",
    about: "failed, then repaired: only the test is left",
    say: [tested("stroke", "fail"), worked("repaired", "linkage")],
    gives: [{ do: "retest", test: "stroke" }],
  },
  {
    rule: "fault_carried",
    about: "failed then, not tested since",
    before: [job("2025-09-02", tested("stroke", "fail"))],
    say: [found("stem", "ok")],
    gives: [
      { do: "repair", test: "stroke" },
      { do: "retest", test: "stroke" },
    ],
  },
  {
    rule: "fault_carried",
    about: "failed then, tight today",
    before: [job("2025-09-02", tested("seat_leak", "fail"))],
    say: [tested("seat_leak", "pass")],
    gives: [],
  },
  {
    rule: "test_owed",
    about: "a new seat, nothing tested",
    say: [worked("replaced", "seat")],
    gives: [
      { do: "retest", test: "seat_leak" },
      { do: "retest", test: "stroke" },
    ],
  },
  {
    rule: "test_owed",
    about: "the rate has no limit, so it closes nothing",
    say: [worked("replaced", "seat"), rate(4, "drop/min"), tested("seat_leak", null), tested("stroke", "pass")],
    gives: [{ do: "retest", test: "seat_leak" }],
  },
  {
    rule: "test_owed",
    about: "the rate is judged",
    say: [worked("reused", "cage"), rate(2, "bubble/min"), tested("seat_leak", null), tested("stroke", "pass")],
    gives: [],
  },
  { rule: "test_owed", about: "cleaned is not opened", say: [worked("cleaned", "cage")], gives: [] },
  { rule: "test_owed", about: "wanted is not done", say: [worked("replaced", "seat", "needed")], gives: [] },
];

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { consequences } from "../../../core/consequences/index.ts";
import { spoken, spokenUnit } from "../../../core/consequences/words.ts";
import {
  type Check,
  checkSentence,
  type FollowUp,
  followUpWords,
  isGood,
  nameOf,
  openedKits,
} from "../../../core/index.ts";
import { PARTS, UNITS } from "../../../core/shapes/codes.ts";
import { anyDate, anyEntries, anyFleet, anyHistory, anyValve } from "../consequences/any-job.ts";

const source = "s";
const cases: [check: Check, sentence: string][] = [
  [
    {
      check: "torque",
      part: "bonnet_bolting",
      verdict: "above",
      value: 40,
      unit: "ft_lbf",
      min: 25,
      max: 30,
      margin: -10,
      source,
    },
    "Bonnet bolting torque 40 ft-lbf: above the limits 25 to 30 ft-lbf, by 10 ft-lbf.",
  ],
  [
    {
      check: "torque",
      part: "body_bolting",
      verdict: "within",
      value: 26,
      upper: 28,
      unit: "ft_lbf",
      min: 25,
      max: 30,
      margin: 1,
      source,
    },
    "Body bolting torque 26 to 28 ft-lbf: within the limits 25 to 30 ft-lbf, 1 ft-lbf to spare.",
  ],
  [
    { check: "torque", verdict: "no_limit", value: 40, unit: "N_m", source, note: "no part was said" },
    "Bolting torque 40 N·m: no limit is known to judge it by (no part was said).",
  ],
  [
    {
      check: "seat_leakage",
      verdict: "fail",
      measured: 5,
      allowed: 3,
      margin: -2,
      unit: "bubble/min",
      class: "VI",
      source,
    },
    "Seat leakage 5 bubbles/min, allowed 3 (class VI): FAILED, by 2 bubbles/min.",
  ],
  [
    {
      check: "seat_leakage",
      verdict: "pass",
      measured: 3,
      allowed: 3,
      margin: 0,
      unit: "bubble/min",
      class: "VI",
      source,
    },
    "Seat leakage 3 bubbles/min, allowed 3 (class VI): passed, at the limit.",
  ],
  [
    {
      check: "stroke",
      verdict: "off",
      unit: "psi",
      starts: 5,
      full: 15,
      travel: 100,
      travelUnit: "%",
      min: 3,
      max: 15,
      margin: -0.8,
      source,
    },
    "Stroke moves from 5 psi; full at 15 psi; travel 100 %: OFF the bench range 3 to 15 psi, by 0.8 psi.",
  ],
  [
    { check: "stroke", verdict: "not_enough", unit: "psi", source, note: "read the ends" },
    "Stroke: not enough was read to judge it (read the ends).",
  ],
];

describe("what follows, in words", () => {
  for (const [check, sentence] of cases) test(sentence, () => expect(checkSentence(check)).toBe(sentence));
  test("good, not good, and nothing to judge by", () =>
    expect(cases.map(([check]) => isGood(check))).toEqual([false, true, undefined, false, true, false, undefined]));
  test("follow-ups", () => {
    const line = (one: Partial<FollowUp>) =>
      followUpWords({ do: "replace", when: "now", why: "", rule: "", source, ...one });
    expect(line({ part: "cage_o_ring" })).toBe("Replace the cage O-ring");
    expect(line({ do: "order", part: "seat", count: 2 })).toBe("Order 2 × seat");
    expect(line({ do: "retest", test: "seat_leak" })).toMatch(/^Repeat the seat leak/);
    expect(line({ do: "retorque", part: "bonnet_bolting" })).toBe("Retorque the bonnet bolting");
  });
  test("a kit is opened into its parts, once; a part by itself is not", () => {
    const kit = { part: "kit" as const, count: 2 };
    const [line, ...more] = openedKits([kit, { part: "seat", count: 1 }, kit], { family: "globe_control" });
    expect(line).toMatch(/^2 × kit is 2 × bonnet gasket, .*2 × packing, 2 × diaphragm\.$/);
    expect(more).toEqual([]);
  });
  /** Reasons are worded where they are found, apart from the rows: both must call a thing by one name. */
  test("a reason and a sentence call every part and unit the same", () => {
    for (const part of PARTS) expect(spoken(part)).toBe(nameOf(part, "part"));
    for (const unit of UNITS) expect(spokenUnit(unit)).toBe(nameOf(unit, "unit"));
  });
  test("no reason, note or sentence shows a code, whatever the job holds", () => {
    const code = /[a-zA-Z]_[a-zA-Z]/;
    fc.assert(
      fc.property(anyValve, anyHistory, anyEntries, anyDate, anyFleet, (valve, history, entries, on, fleet) => {
        const after = consequences(valve, history, entries, on, fleet);
        for (const text of [
          ...after.followUps.flatMap((one) => [one.why, followUpWords(one)]),
          ...after.due.map((one) => one.why),
          ...after.checks.flatMap((one) => [checkSentence(one), one.source]),
        ])
          expect(text).not.toMatch(code);
      }),
      { numRuns: 200 },
    );
  });
});

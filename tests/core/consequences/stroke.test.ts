import { describe, expect, test } from "vitest";
import { GLOBE, worked } from "../../../core/consequences/example.ts";
import { consequences } from "../../../core/consequences/index.ts";
import type { Quantity, Unit } from "../../../core/shapes/codes.ts";
import type { Check } from "../../../core/shapes/consequence.ts";
import { checkSchema } from "../../../core/shapes/consequence.ts";
import type { Entry } from "../../../core/shapes/entry.ts";
import type { Valve } from "../../../core/shapes/valve.ts";

const ON = "2026-03-04";
const reading = (quantity: Quantity, value: number, unit: Unit, phrase?: number): Entry => ({
  type: "reading",
  quantity,
  value,
  unit,
  ...(phrase === undefined ? {} : { phrase }),
});
/** "at 3.2 psi nought per cent": a signal and a position of one phrase. */
const stands = (signal: number, open: number, phrase: number): Entry[] => [
  reading("signal_pressure", signal, "psi", phrase),
  reading("percent_open", open, "%", phrase),
];
function stroke(entries: Entry[], valve: Valve = GLOBE): Extract<Check, { check: "stroke" }> | undefined {
  const found = consequences(valve, [], entries, ON).checks.find((one) => one.check === "stroke");
  if (found) expect(checkSchema.safeParse(found).error).toBeUndefined();
  return found;
}

describe("stroke against the bench range", () => {
  test("up and down within a tenth of 3 to 15 psi, with hysteresis and dead band", () => {
    const check = stroke([
      ...stands(3.2, 0, 0),
      ...stands(14.8, 100, 1),
      ...stands(14.1, 100, 2),
      ...stands(2.6, 0, 3),
    ]);
    expect(check).toMatchObject({
      verdict: "within",
      min: 3,
      max: 15,
      starts: 3.2,
      full: 14.8,
      home: 2.6,
      travel: 100,
    });
    expect(check?.margin).toBeCloseTo(1, 9);
    expect(check?.deadBand).toBeCloseTo(0.7, 9);
    expect(check?.source).toContain("IEC 61298-2");
  });
  test("starts 2 psi late: off, by 0.8 psi more than a tenth of the span", () => {
    const check = stroke([...stands(5, 0, 0), ...stands(15, 100, 1)]);
    expect(check).toMatchObject({ verdict: "off", starts: 5 });
    expect(check?.margin).toBeCloseTo(-0.8, 9);
  });
  test("signals in kPa are judged in kPa", () => {
    const check = stroke([
      reading("signal_pressure", 20.7, "kPa", 0),
      reading("percent_open", 0, "%", 0),
      reading("signal_pressure", 103.4, "kPa", 1),
      reading("percent_open", 100, "%", 1),
    ]);
    expect(check).toMatchObject({ verdict: "within", unit: "kPa" });
    expect(check?.min).toBeCloseTo(20.684, 3);
  });
  test("one position at one signal: not enough, said plainly", () => {
    expect(stroke(stands(9, 50, 0))).toMatchObject({
      verdict: "not_enough",
      note: expect.stringContaining("read the ends"),
    });
  });
  test("a family without a bench range: the figures, and no verdict", () =>
    expect(stroke([...stands(3, 0, 0), ...stands(15, 100, 1)], { family: "unheard_of" })).toMatchObject({
      verdict: "no_limit",
      travel: 100,
    }));
  test("before and after a repair: what was read after it counts", () => {
    const check = stroke([
      ...stands(6, 0, 0),
      ...stands(15, 80, 1),
      worked("adjusted", "actuator_spring"),
      ...stands(3, 0, 3),
      ...stands(15, 100, 4),
    ]);
    expect(check).toMatchObject({ verdict: "within", starts: 3, travel: 100 });
  });
  test("several in one phrase go by their order; a position said after its signal goes with it", () => {
    const list = [3, 9, 15].map((one) => reading("signal_pressure", one, "psi", 0));
    const places = [0, 50, 100].map((one) => reading("percent_open", one, "%", 0));
    expect(stroke([...list, ...places])).toMatchObject({ starts: 3, full: 15 });
    const apart = [3, 15].flatMap((one, at) => [
      reading("signal_pressure", one, "psi", 2 * at),
      reading("travel", at * 1.5, "in", 2 * at + 1),
    ]);
    expect(stroke(apart)).toMatchObject({ travel: 1.5, travelUnit: "in" });
  });
  test("a signal alone, or a position alone, is no stroke record and makes no check", () => {
    expect(stroke([reading("signal_pressure", 15, "psi", 0), { type: "test", test: "stroke", result: "pass" }])).toBe(
      undefined,
    );
    expect(stroke([reading("percent_open", 50, "%", 0)])).toBe(undefined);
  });
});

describe("how far from the limit", () => {
  const checksOf = (valve: Valve, ...entries: Entry[]) => consequences(valve, [], entries, ON).checks;
  const dump: Valve = { family: "balanced_dump", size_in: 2, leak_class: "VI", port_in: 2 };
  test("torque: to the nearer limit, below 0 outside it", () => {
    const torque = (value: number, upper?: number): Entry => ({
      type: "reading",
      quantity: "torque",
      value,
      unit: "ft_lbf",
      part: "body_bolting",
      ...(upper ? { upper } : {}),
    });
    expect(checksOf(dump, torque(28), torque(20), torque(25), torque(26, 33))).toMatchObject([
      { verdict: "within", margin: 2 },
      { verdict: "below", margin: -5 },
      { verdict: "within", margin: 0 },
      { verdict: "above", margin: -3 },
    ]);
  });
  test("leak: what is left of the limit, or how much is over it", () => {
    const leak = (value: number): Entry => ({ type: "reading", quantity: "leak_rate", value, unit: "bubble/min" });
    expect(checksOf(dump, leak(1))).toMatchObject([{ verdict: "pass", margin: 2 }]);
    expect(checksOf(dump, leak(5))).toMatchObject([{ verdict: "fail", margin: -2 }]);
  });
  test("nothing to judge by: no margin, and what is missing is said", () => {
    const [check] = checksOf({ family: "unheard_of" }, {
      type: "reading",
      quantity: "leak_rate",
      value: 5,
      unit: "mL/min",
    } as Entry);
    expect(check).not.toHaveProperty("margin");
    expect(check?.note).toContain("no leakage class is known");
  });
});

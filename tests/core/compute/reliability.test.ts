import chiSquareCdf from "@stdlib/stats-base-dists-chisquare-cdf";
import chiSquareQuantile from "@stdlib/stats-base-dists-chisquare-quantile";
import normalCdf from "@stdlib/stats-base-dists-normal-cdf";
import stdlibNormalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import poissonQuantile from "@stdlib/stats-base-dists-poisson-quantile";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boltPasses } from "../../../core/compute/bolt-passes.ts";
import { failureRate } from "../../../core/compute/failure-rate.ts";
import { failureTrend } from "../../../core/compute/failure-trend.ts";
import { normalBelow } from "../../../core/compute/normal.ts";
import { chiSquareOneQuantile, normalQuantile } from "../../../core/compute/normal-quantile.ts";
import {
  evenChiSquare,
  evenChiSquareQuantile,
  poissonAtLeast,
  poissonAtMost,
  poissonCovering,
} from "../../../core/compute/poisson.ts";
import published from "../../published/reliability.json" with { type: "json" };

function near(got: number | undefined, want: number, tolerance: number, what = ""): void {
  expect(got).toBeTypeOf("number");
  expect(Math.abs((got as number) - want), `${what}: ${got} for ${want}`).toBeLessThanOrEqual(
    tolerance * Math.max(1e-300, Math.abs(want)),
  );
}

/**
 * The hand-written distributions beside a well-kept library's. The library is for tests alone: it would more than
 * double what the browser fetches for the same digits.
 */
describe("distributions, beside @stdlib", () => {
  const share = fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true });
  const count = fc.integer({ min: 1, max: 400 });
  test("chi-square with even freedom, value and quantile", () => {
    fc.assert(
      fc.property(share, count, (p, k) => {
        const x = evenChiSquareQuantile(p, 2 * k);
        near(x, chiSquareQuantile(p, 2 * k), 1e-8, `quantile ${p} ${2 * k}`);
        near(evenChiSquare(x, 2 * k), p, 1e-11, `value ${x} ${2 * k}`);
        near(evenChiSquare(x, 2 * k), chiSquareCdf(x, 2 * k), 1e-8, `cdf ${x} ${2 * k}`);
      }),
      { numRuns: 300 },
    );
  });
  test("chi-square with one degree of freedom, and the normal behind it", () => {
    fc.assert(
      fc.property(share, (p) => {
        // Near 0 the library's own root gives out first: there the two differ in the seventh figure.
        near(chiSquareOneQuantile(p), chiSquareQuantile(p, 1), p < 1e-3 ? 1e-5 : 1e-8, `chi-square(1) ${p}`);
        near(normalQuantile(p), stdlibNormalQuantile(p, 0, 1), 1e-9, `normal ${p}`);
      }),
    );
  });
  test("normal, both tails", () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 8, noNaN: true }), (z) => {
        near(normalBelow(z), normalCdf(z, 0, 1), 1e-11, `normal below ${z}`);
      }),
      { numRuns: 500 },
    );
    near(normalBelow(normalQuantile(1e-10)), 1e-10, 1e-12);
  });
  test("how many cover a Poisson demand", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 300, noNaN: true }),
        fc.constantFrom(0.5, 0.9, 0.95, 0.99),
        (mean, p) => {
          expect(poissonCovering(mean, p)).toBe(poissonQuantile(p, mean) + 0);
        },
      ),
      { numRuns: 500 },
    );
  });
  test("the two tails make one, and a mean of nothing asks for nothing", () => {
    fc.assert(
      fc.property(count, fc.double({ min: 0, max: 500, noNaN: true }), (k, mean) => {
        expect(Math.abs(poissonAtMost(k - 1, mean) + poissonAtLeast(k, mean) - 1)).toBeLessThan(1e-13);
      }),
    );
    expect(poissonCovering(0, 0.95)).toBe(0);
    expect(poissonAtMost(-1, 3)).toBe(0);
  });
  test("an odd freedom, a share out of range or a mean below 0 is a broken promise", () => {
    expect(() => evenChiSquare(1, 3)).toThrow(RangeError);
    expect(() => evenChiSquareQuantile(1, 2)).toThrow(RangeError);
    expect(() => poissonAtMost(1, -1)).toThrow(RangeError);
    expect(() => poissonCovering(1, 1)).toThrow(RangeError);
  });
});

describe("failure rates: exact chi-square bounds", () => {
  for (const { what, failures, exposure, confidence, mtbf } of published.rates)
    test(what, () => {
      const { lower, upper } = failureRate(failures, exposure, confidence);
      expect(Math.round(1 / (upper as number))).toBe(mtbf[0]);
      expect(Math.round(1 / (lower as number))).toBe(mtbf[1]);
    });
  // Tables print three decimals or four figures.
  for (const [failures, lower, upper] of published.garwood_95.rows as [number, number, number][])
    test(`Poisson limits of ${failures} at 95 %`, () => {
      const rate = failureRate(failures, 1, 0.95);
      expect(Math.abs((rate.lower as number) - lower)).toBeLessThan(0.005);
      expect(Math.abs((rate.upper as number) - upper)).toBeLessThan(0.005);
    });
  test("no failure: nothing below, -ln(alpha) over the time above", () => {
    const { lower, upper, rate } = failureRate(0, 250, 0.9);
    expect([lower, rate]).toEqual([0, 0]);
    near(upper, -Math.log(1 - published.zero.confidence) / 250, 1e-12);
  });
  test("nothing looked over: no rate at all", () =>
    expect(failureRate(0, 0)).toEqual({ failures: 0, exposure: 0, confidence: 0.9 }));
  test("a count that is none", () => expect(() => failureRate(1.5, 2)).toThrow(RangeError));
  test("the bounds hold the rate, and twice the time halves them", () => {
    fc.assert(
      fc.property(fc.nat(300), fc.double({ min: 0.1, max: 1e4, noNaN: true }), (failures, years) => {
        const one = failureRate(failures, years);
        const two = failureRate(failures, 2 * years);
        expect(one.lower as number).toBeLessThanOrEqual(one.rate as number);
        expect(one.upper as number).toBeGreaterThan(one.rate as number);
        near(two.upper, (one.upper as number) / 2, 1e-12);
      }),
    );
  });
});

describe("trends of a repaired valve's failures", () => {
  for (const one of published.trends)
    test(one.what, () => {
      const trend = failureTrend(one.ages, one.end, one.stopped as "time" | "failure");
      if (!trend.ok) throw new Error(trend.why);
      expect(trend.says).toBe(one.says);
      expect(trend.handbook.freedom).toBe(one.freedom);
      if (one.chi_square_printed) expect(trend.handbook.chiSquare.toFixed(2)).toBe(String(one.chi_square_printed));
      if (one.one_less_growth) expect(1 - trend.growth).toBeCloseTo(one.one_less_growth, 6);
      if (one.laplace) expect(trend.laplace.u).toBeCloseTo(one.laplace, 4);
      expect(trend.growth > 1).toBe(trend.laplace.u > 0);
    });
  test("two failures show none, and say so", () =>
    expect(failureTrend([3, 5], 6)).toMatchObject({ ok: false, why: "2 failures are too few to show a trend" }));
  test("an age past the end is no age", () => expect(failureTrend([3, 5, 9], 6)).toMatchObject({ ok: false }));
  test("neither the order nor the unit of the ages matters", () => {
    const age = fc.double({ min: 0.01, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(age, { minLength: 3, maxLength: 20 }), (ages) => {
        const one = failureTrend(ages, 10);
        const other = failureTrend(
          ages.toReversed().map((each) => each * 30),
          300,
        );
        if (!one.ok || !other.ok) throw new Error("no trend");
        expect(other.says).toBe(one.says);
        expect(other.laplace.u).toBeCloseTo(one.laplace.u, 9);
        expect(other.handbook.p).toBeCloseTo(one.handbook.p, 9);
      }),
    );
  });
  test("evenly spread failures show none", () =>
    expect(failureTrend([1, 2, 3, 4, 5, 6, 7, 8, 9], 10)).toMatchObject({ ok: true, says: "none" }));
});

describe("rounds of the wrench", () => {
  for (const n of [4, 6, 8, 12, 16, 24])
    test(`${n} bolts: every round takes each once, the last goes round the circle`, () => {
      const passes = boltPasses(n);
      for (const { order } of passes)
        expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: n }, (_, i) => i + 1));
      expect(passes.at(-1)?.order).toEqual(Array.from({ length: n }, (_, i) => i + 1));
      const tops = passes.map((one) => one.percent[1]);
      expect(tops).toEqual([...tops].sort((a, b) => a - b));
      expect(tops.at(-1)).toBe(100);
    });
  test("five bolts have no cross pattern", () => expect(() => boltPasses(5)).toThrow(RangeError));
});

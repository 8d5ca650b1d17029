import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitWeibull, type WeibullFit } from "../../../core/compute/weibull.ts";
import type { CountedLife } from "../../../core/compute/weibull-likelihood.ts";
import published from "../../published/weibull.json" with { type: "json" };

/**
 * Fits and bounds against values that R's survreg and a second reckoning agree on to 1e-7; sources in the file.
 * Tolerances are the file's own: 1e-5 for fits, 1e-6 for log-likelihoods, 1e-4 for bounds and waits, which the
 * rounding of 1.6423744 to 1.6424 alone moves by up to 5e-5.
 */
const FIT = 1e-5;
const LIKELIHOOD = 1e-6;
const BOUND = 1e-4;

interface Figures {
  shape?: number;
  scale: number;
  logLikelihood: number;
  B10: number;
  B50?: number;
  lowerBound?: { p: number; confidence: number; value: number }[];
  lowerBound90_B10?: number;
  upper_end_80_B10?: number;
}
interface Case {
  id: string;
  lives: CountedLife[];
  fit?: Figures;
  shape_capped_at_20?: Figures;
  two_parameter_uncapped?: Figures | string;
  shape_fixed_at_2?: Figures | string;
  waits?: { age: number; wait: number; lowerBound90: number }[];
}
const cases = [...published.sets, ...published.edges] as Case[];

function fitted(lives: readonly CountedLife[], shape?: number): WeibullFit {
  const fit = fitWeibull(lives, { shape });
  if (!fit.ok) throw new Error(`no estimate: ${fit.why}`);
  return fit;
}

function near(got: number, want: number, tolerance: number, what: string): void {
  expect(Math.abs(got - want) / Math.max(Math.abs(want), 1e-300), `${what}: ${got} for ${want}`).toBeLessThan(
    tolerance,
  );
}

function agrees(fit: WeibullFit, want: Figures): void {
  expect(fit.converged).toBe(true);
  if (want.shape !== undefined) near(fit.shape, want.shape, FIT, "shape");
  near(fit.scale, want.scale, FIT, "scale");
  expect(Math.abs(fit.logLikelihood - want.logLikelihood)).toBeLessThan(
    LIKELIHOOD * Math.max(1, Math.abs(want.logLikelihood)),
  );
  near(fit.quantile(0.1), want.B10, FIT, "B10");
  if (want.B50 !== undefined) near(fit.quantile(0.5), want.B50, FIT, "B50");
  for (const { p, confidence, value } of want.lowerBound ?? [])
    near(fit.lowerBound(p, confidence), value, BOUND, `bound ${p} at ${confidence}`);
  if (want.lowerBound90_B10) near(fit.lowerBound(0.1, 0.9), want.lowerBound90_B10, BOUND, "lower bound");
  if (want.upper_end_80_B10) near(fit.upperBound(0.1, 0.9), want.upper_end_80_B10, BOUND, "upper end");
}

describe("Weibull fits against published and computed values", () => {
  for (const one of cases) {
    const free = one.fit ?? one.shape_capped_at_20 ?? one.two_parameter_uncapped;
    if (typeof free === "object" && (free.shape ?? 0) <= 20 && one.id !== "bound_is_zero")
      test(`${one.id}: shape, scale, bounds`, () => agrees(fitted(one.lives), free));
    const fixed = one.shape_fixed_at_2;
    if (typeof fixed === "object") test(`${one.id}: shape held at 2`, () => agrees(fitted(one.lives, 2), fixed));
    if (typeof fixed === "string")
      test(`${one.id}: ${fixed}`, () => {
        expect(fitWeibull(one.lives, { shape: 2 })).toMatchObject({ ok: false, problem: "no_estimate" });
        expect(fitWeibull(one.lives)).toMatchObject({ ok: false, problem: "no_estimate" });
      });
    for (const { age, wait, lowerBound90 } of one.waits ?? [])
      test(`${one.id}: wait with the side sound at ${age}`, () => {
        const fit = fitted(one.lives);
        near(fit.wait(age), wait, FIT, "wait");
        near(fit.waitBound(age), lowerBound90, BOUND, "bound of the wait");
      });
  }
});

test("NIST's printed figures: e-Handbook of Statistical Methods 8.4.1", () => {
  const fit = fitted(published.sets.find((set) => set.id === "nist_8_4_1")?.lives ?? []);
  expect(fit.shape.toFixed(4)).toBe("1.7208");
  // The page's scale is off the maximum in the seventh figure.
  near(fit.scale, 606.528, 1e-6, "scale");
  expect(fit.logLikelihood.toFixed(3)).toBe("-75.135");
});

describe("edges", () => {
  test("one ended life has no spread: the shape is held at its greatest, and said so", () => {
    expect(fitted([{ lower: 4, upper: 6 }])).toMatchObject({ shape: 20, held: "greatest" });
  });
  test("every ended life starting at 0, a censored one older: the shape is held at its least", () => {
    const fit = fitted([{ lower: 0, upper: 6 }, { lower: 0, upper: 6 }, { lower: 0, upper: 5.5 }, { lower: 6.1 }]);
    expect(fit).toMatchObject({ shape: 0.2, held: "least" });
  });
  test("a bound that runs to nothing stops at the least shape, far under a week", () => {
    const set = published.edges.find((edge) => edge.id === "bound_is_zero") as Case;
    const bound = fitted(set.lives).lowerBound(0.1, 0.9);
    expect(bound).toBeGreaterThanOrEqual(0);
    expect(bound).toBeLessThan(1e-3);
  });
  test("lives that share an exact age, and an empty list", () => {
    expect(fitted([5, 5, 5].map((age) => ({ lower: age, upper: age }))).shape).toBe(20);
    expect(fitWeibull([])).toMatchObject({ ok: false, problem: "no_estimate" });
  });
  test("lives that only touch at an age share it in any unit, whatever the last digits become", () => {
    const lives = [
      { lower: 0.03285420944558522, upper: 0.262 },
      { lower: 0, upper: 12.9 },
      { lower: 0, upper: 0.03285420944558522 },
    ];
    for (const k of [1, 0.013116721606883621, 0.1, 3, 7.7])
      expect(fitted(lives.map(({ lower, upper }) => ({ lower: lower * k, upper: upper * k }))).shape).toBe(20);
  });
  test("lives a hair apart have an estimate too", () => {
    for (const gap of [1e-4, 1e-6, 1e-8, 1e-10, 1e-12, 1e-15])
      expect(
        fitted([
          { lower: 1, upper: 8 },
          { lower: 0, upper: 12 },
          { lower: 0, upper: 1 - gap },
        ]).scale,
      ).toBeCloseTo(1, 0);
  });
  test("a life that ends before it begins is said to be none", () => {
    expect(fitWeibull([{ lower: 4, upper: 3 }])).toMatchObject({ ok: false, problem: "no_estimate" });
  });
  test("a share or a confidence out of range, or a shape of 0, is a broken promise", () => {
    const fit = fitted([{ lower: 4, upper: 6 }]);
    expect(() => fit.quantile(0)).toThrow(RangeError);
    expect(() => fit.lowerBound(0.1, 1)).toThrow(RangeError);
    expect(() => fitWeibull([], { shape: 0 })).toThrow(RangeError);
  });
});

const age = fc.integer({ min: 1, max: 400 }).map((days) => days / 30.4375);
const life = fc.oneof(
  age.map((lower) => ({ lower })),
  fc.tuple(age, age).map(([lower, more]) => ({ lower, upper: lower + more })),
  age.map((upper) => ({ lower: 0, upper })),
);
const someLives = fc.array(life, { minLength: 1, maxLength: 12 });

describe("properties", () => {
  test("ages times k give scale, quantiles, bounds and waits times k", () => {
    fc.assert(
      fc.property(someLives, fc.double({ min: 0.01, max: 100, noNaN: true }), age, (lives, k, sound) => {
        const fit = fitWeibull(lives);
        const times = (value: number) => value * k;
        const scaled = fitWeibull(
          lives.map(({ lower, ...end }) => ({
            lower: times(lower),
            ...("upper" in end ? { upper: times(end.upper) } : {}),
          })),
        );
        expect(scaled.ok).toBe(fit.ok);
        if (!fit.ok || !scaled.ok) return;
        near(scaled.shape, fit.shape, 1e-6, "shape");
        near(scaled.scale, times(fit.scale), 1e-6, "scale");
        near(scaled.logLikelihood - fit.logLikelihood + 1, 1, 1e-7, "log-likelihood");
        near(scaled.lowerBound(0.1, 0.9), times(fit.lowerBound(0.1, 0.9)), 1e-6, "bound");
        near(scaled.waitBound(times(sound)), times(fit.waitBound(sound)), 1e-6, "wait");
      }),
      { numRuns: 400 },
    );
  });

  test("order changes nothing, and a life of no length adds nothing", () => {
    fc.assert(
      fc.property(someLives, (lives) => {
        const fit = fitWeibull(lives);
        const other = fitWeibull([{ lower: 0 }, ...lives.toReversed()]);
        expect(other.ok).toBe(fit.ok);
        if (!fit.ok || !other.ok) return;
        // A roof may be flat to half the digits: the top is found no nearer than that.
        near(other.shape, fit.shape, 1e-6, "shape");
        near(other.waitBound(2), fit.waitBound(2), 1e-6, "wait");
      }),
      { numRuns: 400 },
    );
  });

  test("the bound lies under the estimate, falls as confidence rises, and no point in the region goes lower", () => {
    fc.assert(
      fc.property(someLives, age, fc.double({ min: 0, max: 1, noNaN: true }), (lives, sound, where) => {
        const fit = fitWeibull(lives);
        if (!fit.ok) return;
        expect(fit.converged).toBe(true);
        const low = fit.lowerBound(0.1, 0.9);
        expect(fit.lowerBound(0.1, 0.5)).toBeCloseTo(fit.quantile(0.1), 9);
        expect(low).toBeLessThanOrEqual(fit.quantile(0.1) * (1 + 1e-9));
        expect(fit.lowerBound(0.1, 0.95)).toBeLessThanOrEqual(low * (1 + 1e-9));
        expect(fit.upperBound(0.1, 0.9)).toBeGreaterThanOrEqual(fit.quantile(0.1) * (1 - 1e-9));
        expect(fit.waitBound(sound)).toBeLessThanOrEqual(fit.wait(sound) * (1 + 1e-9));
        // A fit with the shape held anywhere, still likely enough, must not promise less.
        const shape = 0.2 * 100 ** where;
        const held = fitted(lives, shape);
        if (2 * (fit.logLikelihood - held.logLikelihood) <= 1.6423) {
          expect(held.quantile(0.1)).toBeGreaterThanOrEqual(low * (1 - 1e-6));
          expect(held.wait(sound)).toBeGreaterThanOrEqual(fit.waitBound(sound) * (1 - 1e-6));
        }
      }),
      { numRuns: 400 },
    );
  });
});

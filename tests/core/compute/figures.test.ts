import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boltSequence } from "../../../core/compute/bolt-sequence.ts";
import {
  chokedLiquidKPa,
  expansion,
  gasKv,
  liquidKv,
  ratedGasScfh,
  ratedWaterGpm,
} from "../../../core/compute/capacity.ts";
import { atLeast, atMost, convert } from "../../../core/compute/convert.ts";
import { type LeakageAsk, seatLeakageLimit } from "../../../core/compute/leakage-limit.ts";
import { chiSquareOneQuantile, normalQuantile } from "../../../core/compute/normal-quantile.ts";
import { UNITS } from "../../../core/shapes/codes.ts";
import bolts from "../../published/bolts.json" with { type: "json" };
import leakage from "../../published/leakage.json" with { type: "json" };
import sizing from "../../published/sizing.json" with { type: "json" };
import units from "../../published/units.json" with { type: "json" };

function near(got: unknown, want: number, tolerance: number): void {
  expect(typeof got).toBe("number");
  expect(Math.abs((got as number) - want) / Math.max(1e-12, Math.abs(want)), `${got} for ${want}`).toBeLessThan(
    tolerance,
  );
}

describe("quantiles", () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods 1.3.6.7.4, chi-square with 1 degree of freedom, as printed.
  for (const [p, printed] of [
    [0.9, "2.706"],
    [0.95, "3.841"],
    [0.975, "5.024"],
    [0.99, "6.635"],
    [0.999, "10.828"],
  ] as const)
    test(`chi-square(1) at ${p} is ${printed}`, () => expect(chiSquareOneQuantile(p).toFixed(3)).toBe(printed));
  // Abramowitz and Stegun table 26.5, and digits computed by Python's statistics.NormalDist.
  for (const [p, z] of [
    [0.9, 1.2815515655446008],
    [0.95, 1.6448536269514715],
    [0.975, 1.9599639845400536],
    [0.999, 3.090232306167813],
    [1e-10, -6.361340902404056],
  ] as const)
    test(`normal at ${p}`, () => near(normalQuantile(p), z, 1e-14));
  test("1.6424 of the likelihood region is chi-square(1) at 0.8", () =>
    near(chiSquareOneQuantile(0.8), 1.6423744, 1e-7));
});

describe("units: NIST SP 811 appendix B.8", () => {
  for (const { value, from, to, expect: want } of units.cases)
    test(`${value} ${from} is ${want} ${to}`, () => near(convert(value, from, to), want, 1e-9));
  for (const { from, to, factor } of units.factors)
    if (factor && (UNITS as readonly string[]).includes(from))
      test(`1 ${from} is ${factor} ${to}`, () => near(convert(1, from, to), Number(factor), 1e-15));
  test("there and back is the same", () => {
    const unit = fc.constantFrom(...UNITS);
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), unit, unit, (value, from, to) => {
        const there = convert(value, from, to);
        if (typeof there !== "number") expect(there).toMatchObject({ ok: false, problem: "does_not_convert" });
        else
          expect(Math.abs((convert(there, to, from) as number) - value)).toBeLessThan(1e-9 * (1000 + Math.abs(value)));
      }),
    );
  });
  for (const [from, to] of [
    ["bubble/min", "mL/min"],
    ["mL/min", "drop/min"],
    ["psi", "ft_lbf"],
    ["degF", "psi"],
    ["s", "mm"],
  ] as const)
    test(`${from} does not convert to ${to}, and says so`, () => {
      const said = convert(1, from, to);
      expect(typeof said === "object" && said.why).toContain("does not convert");
    });
  test("29 ft-lbf comes to just over 348 in-lbf, and still meets a limit of 348", () => {
    const value = convert(29, "ft_lbf", "in_lbf") as number;
    expect(atMost(value, 348) && atLeast(value, 348)).toBe(true);
    expect(atMost(348.001, 348)).toBe(false);
  });
});

describe("seat leakage: ANSI/FCI 70-2, IEC 60534-4", () => {
  for (const { port_in, mL_min, bubbles_min } of leakage.class_VI.table)
    test(`class VI, ${port_in} inch`, () => {
      const limit = seatLeakageLimit({ class: "VI", port_in, dp_psi: 50, medium: "air" });
      expect(limit).toMatchObject({ ok: true, mLPerMin: mL_min });
      expect(limit.ok && limit.bubblesPerMin).toBe(bubbles_min);
    });
  for (const { port_in, mL_min } of leakage.class_VI.between_rows.examples)
    test(`class VI between rows, ${port_in} inch`, () => {
      const limit = seatLeakageLimit({ class: "VI", port_in });
      near(limit.ok && limit.mLPerMin, mL_min, 1e-5);
    });
  // Gas to 1 %: the rounded constants of the standard differ by 0.56 % between unit systems. Water to 0.1 %.
  for (const one of sizing.leak_cases)
    test(`class ${one.class}, ${one.medium ?? "gas"}, ${one.cv ?? one.port_in}, ${one.dp_psi ?? 50} psi`, () => {
      const limit = seatLeakageLimit(one as LeakageAsk);
      const want = one.limit_mL_min;
      if (typeof want === "number") near(limit.ok && limit.mLPerMin, want, 1e-6);
      else {
        near(limit.ok && limit.mLPerMin, want.US, 1e-5);
        near(limit.ok && limit.mLPerMin, want.SI, one.medium === "water" ? 1e-3 : 1e-2);
      }
      if (one.rated?.scfh_US && one.cv) near(ratedGasScfh(one.cv, one.dp_psi, one.xT), one.rated.scfh_US, 1e-5);
      if (one.rated_gpm && one.cv) near(ratedWaterGpm(one.cv, one.dp_psi as number), one.rated_gpm, 1e-6);
    });
  for (const [why, ask] of [
    ["class I", { class: "I", port_in: 2 }],
    ["no Cv", { class: "IV", dp_psi: 50, medium: "air" }],
    ["no pressure", { class: "II", cv: 12, medium: "air" }],
    ["no port", { class: "VI" }],
    ["class VI on water", { class: "VI", port_in: 2, medium: "water" }],
    ["beyond the table", { class: "VI", port_in: 18 }],
  ] as [string, LeakageAsk][])
    test(`no limit: ${why}`, () => expect(seatLeakageLimit(ask)).toMatchObject({ ok: false, problem: "no_limit" }));
  test("9 inch has no bubbles to go by, and a bigger port never has a smaller limit", () => {
    const nine = seatLeakageLimit({ class: "VI", port_in: 9 });
    expect(nine.ok && nine.bubblesPerMin === undefined).toBe(true);
    const port = fc.double({ min: 0.1, max: 16, noNaN: true });
    fc.assert(
      fc.property(port, port, (a, b) => {
        // Within 2 mm of a row a port is that row's, so a hair's breadth may step: compare further apart.
        if (Math.abs(a - b) < 0.17) return;
        const small = seatLeakageLimit({ class: "VI", port_in: Math.min(a, b) });
        const large = seatLeakageLimit({ class: "VI", port_in: Math.max(a, b) });
        expect(small.ok && large.ok && small.mLPerMin <= large.mLPerMin).toBe(true);
      }),
    );
  });
});

describe("the sizing standard's own examples: IEC 60534-2-1", () => {
  const [water, choked, carbonDioxide, argon] = sizing.published_examples as unknown as [
    {
      in: { Q_m3h: number; rho: number; pv_kPa: number; pc_kPa: number; p1_kPa: number; p2_kPa: number; FL: number };
      Kv: number;
      dp_choked_kPa: number;
      Kv_published: number;
    },
    { in: { FL: number }; Kv: number; dp_choked_kPa: number; Kv_published: number },
    { in: Record<string, number>; Kv_without_reducers: number },
    { in: Record<string, number>; Kv_turbulent: number; Y: number; x: number },
  ];
  const { Q_m3h, rho, pv_kPa, pc_kPa, p1_kPa, p2_kPa } = water.in;
  for (const [name, FL, one] of [
    ["1: water, not choked", water.in.FL, water],
    ["2: water, choked", choked.in.FL, choked],
  ] as const)
    test(name, () => {
      const most = chokedLiquidKPa(p1_kPa, pv_kPa, pc_kPa, FL);
      near(most, one.dp_choked_kPa, 1e-6);
      const kv = liquidKv(Q_m3h, Math.min(p1_kPa - p2_kPa, most), rho / 1000);
      near(kv, one.Kv, 1e-5);
      // The standard prints whole numbers.
      expect(Math.round(kv)).toBe(one.Kv_published);
    });
  const kvOf = (g: Record<string, number>) =>
    gasKv({
      m3PerHour: g.Q_m3h_0C as number,
      p1: g.p1_kPa as number,
      p2: g.p2_kPa as number,
      kelvin: g.T_K as number,
      molarMass: g.M as number,
      gamma: g.gamma as number,
      Z: g.Z as number,
      xT: g.xT as number,
    });
  test("3: carbon dioxide, before reducers", () =>
    near(kvOf(carbonDioxide.in), carbonDioxide.Kv_without_reducers, 1e-6));
  test("4: argon, before the laminar correction", () => {
    near(kvOf(argon.in), argon.Kv_turbulent, 1e-6);
    const { x, Y } = expansion(150, 280, (1.67 / 1.4) * 0.8);
    near(x, argon.x, 1e-7);
    near(Y, argon.Y, 1e-7);
  });
});

describe("bolt order: ASME PCC-1 legacy cross-pattern", () => {
  for (const [n, order] of Object.entries(bolts.sequences))
    test(`${n} bolts`, () => expect(boltSequence(Number(n))).toEqual(order));
  test("6 bolts", () => expect(boltSequence(6)).toEqual(bolts.six));
  for (let n = 4; n <= 120; n += 2)
    test(`${n} bolts keep the pattern's promises`, () => {
      const order = boltSequence(n);
      expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: n }, (_, i) => i + 1));
      expect(order[0]).toBe(1);
      const apart = (a: number, b: number) => Math.min((a - b + n) % n, (b - a + n) % n);
      for (let i = 0; i < n; i += 2) expect(apart(order[i] as number, order[i + 1] as number)).toBe(n / 2);
      if (n >= 6)
        for (let i = 1; i < n; i++) expect(apart(order[i - 1] as number, order[i] as number)).toBeGreaterThan(1);
      if (n % 4 === 0)
        for (let i = 0; i < n; i += 4) {
          const at = (k: number) => ((order[i + k] as number) - (order[i] as number) + n) % n;
          expect([at(1), at(2), at(3)]).toEqual([n / 2, n / 4, (3 * n) / 4]);
        }
    });
  for (const n of [0, 2, 3, 5, 7, -8, 4.5, Number.NaN])
    test(`${n} bolts have no cross pattern`, () => expect(() => boltSequence(n)).toThrow(RangeError));
});

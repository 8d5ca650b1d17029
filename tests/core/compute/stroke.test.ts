import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type StrokePoint, strokeOf } from "../../../core/compute/stroke.ts";

const read = (...points: [signal: number, position: number][]): StrokePoint[] =>
  points.map(([signal, position]) => ({ signal, position }));

/** Definitions of IEC 61298-2 as remembered; the figures are invented and worked by hand. */
describe("a stroke from its readings", () => {
  test("first movement and full travel, up and down", () => {
    const stroke = strokeOf(read([3.2, 0], [14.8, 100], [14.1, 100], [2.6, 0]));
    if (!stroke.ok) throw new Error(stroke.why);
    expect(stroke).toMatchObject({
      travel: 100,
      up: { starts: 3.2, full: 14.8 },
      down: { starts: 14.1, home: 2.6 },
      lacking: [],
    });
    // 14.8 - 14.1 above, 3.2 - 2.6 below: the greater, of the 11.6 psi between first movement and full travel
    expect(stroke.deadBand?.signal).toBeCloseTo(0.7, 12);
    expect(stroke.deadBand?.percent).toBeCloseTo((100 * 0.7) / 11.6, 9);
    // at 14.1 the way up stands at (14.1 - 3.2) / 11.6 of travel, the way down at all of it
    expect(stroke.hysteresis?.percent).toBeCloseTo(100 * (1 - 10.9 / 11.6), 9);
    expect(stroke.hysteresis).toMatchObject({ at: 14.1, between: true });
  });
  test("five steps up and down: hysteresis read at a signal, no dead band to be told", () => {
    const stroke = strokeOf(read([3, 0], [9, 50], [15, 100], [9, 52], [3, 0]));
    expect(stroke).toMatchObject({ ok: true, hysteresis: { percent: 2, at: 9, between: false } });
    expect(stroke).not.toHaveProperty("deadBand");
    expect(stroke.ok && stroke.lacking.join()).toContain("no dead band");
  });
  test("a signal that closes: position falls as the signal rises", () => {
    const stroke = strokeOf(read([3, 100], [6, 75], [15, 0], [14, 0], [6, 72], [3, 100]));
    expect(stroke).toMatchObject({
      ok: true,
      from: 100,
      to: 0,
      travel: 100,
      up: { starts: 3, full: 15 },
      down: { starts: 14, home: 3 },
      deadBand: { signal: 1 },
    });
  });
  test("travel in inches", () =>
    expect(strokeOf(read([3, 0], [9, 0.7], [15, 1.5]))).toMatchObject({ travel: 1.5, up: { starts: 3, full: 15 } }));
  test("up alone: travel and ends, and what it cannot tell is said", () => {
    const stroke = strokeOf(read([3, 0], [15, 100]));
    expect(stroke).toMatchObject({ ok: true, travel: 100, up: { starts: 3, full: 15 } });
    expect(stroke).not.toHaveProperty("hysteresis");
    expect(stroke.ok && stroke.lacking.join()).toContain("falling");
  });
  test("down alone", () =>
    expect(strokeOf(read([15, 100], [14, 100], [3, 0]))).toMatchObject({ ok: true, down: { starts: 14, home: 3 } }));
  test("it sticks at the start: the last signal before it moved", () =>
    expect(strokeOf(read([3, 0], [4, 0], [5, 0], [6, 30], [15, 100]))).toMatchObject({ up: { starts: 5, full: 15 } }));
  test("it is full before the end of the signal", () =>
    expect(strokeOf(read([3, 0], [12, 100], [15, 100]))).toMatchObject({ up: { starts: 3, full: 12 } }));
  for (const [why, points] of [
    ["one position", read([9, 50])],
    ["nothing", []],
    ["one signal twice", read([9, 50], [9, 52])],
    ["no movement", read([3, 40], [15, 40], [3, 40])],
    ["no number", read([3, Number.NaN], [15, 100])],
  ] as const)
    test(`not enough: ${why}`, () => expect(strokeOf(points)).toMatchObject({ ok: false, problem: "not_enough" }));

  test("a unit of signal times k gives signals times k, the same hysteresis and dead band in per cent", () => {
    const signal = fc.integer({ min: 30, max: 150 }).map((tenths) => tenths / 10);
    const point = fc.record({ signal, position: fc.integer({ min: 0, max: 100 }) });
    fc.assert(
      fc.property(fc.array(point, { maxLength: 10 }), (points) => {
        const one = strokeOf(points);
        const other = strokeOf(points.map((each) => ({ ...each, signal: each.signal * 8 })));
        expect(other.ok).toBe(one.ok);
        if (!one.ok || !other.ok) return;
        expect(other.travel).toBe(one.travel);
        expect(other.hysteresis?.percent ?? -1).toBeCloseTo(one.hysteresis?.percent ?? -1, 6);
        expect(other.deadBand?.percent ?? -1).toBeCloseTo(one.deadBand?.percent ?? -1, 6);
        expect(one.travel).toBeGreaterThan(0);
        for (const value of [one.hysteresis?.percent, one.deadBand?.signal])
          if (value !== undefined) expect(value).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 500 },
    );
  });
});

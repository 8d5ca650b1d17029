import { describe, expect, it } from "vitest";
import { found, job, worked } from "../../../core/consequences/example.ts";
import { seatLives } from "../../../core/consequences/seat-lives.ts";
import type { Entry } from "../../../core/shapes/entry.ts";
import type { PastJob, Valve } from "../../../core/shapes/valve.ts";

/** What a valve lends to like ones: its own lives, in the service it is in. */

const fresh = worked("replaced", "seat");
const worn = found("seat", "worn", { extent: "both_sides" });
const ok = found("seat", "ok");
const service = (which: "normal" | "severe"): Entry => ({ type: "valve", service: which });
const SEVERE: Valve = { family: "balanced_dump", service: "severe" };
const days = (valve: Valve, history: PastJob[], on = "2026-03-01") =>
  seatLives(valve, history, on).map(({ lower, upper }) => [lower, upper].map((m) => m && Math.round(m * 30.4375)));

const TWO = [job("2025-01-01", fresh), job("2025-01-11", ok), job("2025-01-21", worn, fresh), job("2025-02-10", ok)];

describe("seatLives", () => {
  it("gives ended and running lives, whatever the order of the jobs", () => {
    const lives = [
      [10, 20],
      [20, undefined],
    ];
    expect(days(SEVERE, TWO)).toEqual(lives);
    expect(days(SEVERE, TWO.toReversed())).toEqual(lives);
    expect(days({}, [])).toEqual([]);
  });

  it("looks no further than its day", () => {
    expect(days(SEVERE, TWO, "2025-01-15")).toEqual([[10, undefined]]);
  });

  it("leaves out lives of another service, and those that ran through a change", () => {
    const changed = [...TWO, job("2025-02-20", service("normal")), job("2025-03-02", ok)];
    expect(days(SEVERE, changed)).toEqual([]);
    expect(days(SEVERE, [...changed, job("2025-04-01", fresh), job("2025-04-06", ok)])).toEqual([[5, undefined]]);
  });

  it("takes the first service said for that of the lives before, where none was set up", () => {
    const said = [...TWO, job("2025-02-20", service("severe"))];
    expect(days({}, said)).toHaveLength(2);
    expect(days({}, [...said, job("2025-02-25", service("normal"))])).toEqual([]);
  });
});

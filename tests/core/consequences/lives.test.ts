import { describe, expect, test } from "vitest";
import { addDays } from "../../../core/compute/calendar.ts";
import { fitWeibull } from "../../../core/compute/weibull.ts";
import { found, job, worked } from "../../../core/consequences/example.ts";
import { consequences } from "../../../core/consequences/index.ts";
import { tellSeat } from "../../../core/consequences/seat-story.ts";
import { inOrder } from "../../../core/consequences/visit.ts";
import { FAMILIES } from "../../../core/families/index.ts";
import type { Entry } from "../../../core/shapes/entry.ts";
import type { Family, PastJob, Valve } from "../../../core/shapes/valve.ts";

/** The seat-side lives that a history holds, and what they lead to, edge by edge. */

const ON = "2026-03-04";
const SEVERE: Valve = { family: "balanced_dump", size_in: 2, service: "severe" };
const worn = found("seat", "worn", { extent: "one_side" });
const ok = found("seat", "ok");
const fresh = worked("replaced", "seat");
const service = (which: "normal" | "severe"): Entry => ({ type: "valve", service: which });

const story = (history: PastJob[], today: Entry[] = []) => tellSeat(inOrder(history, today, ON), FAMILIES[0] as Family);
/** Lives as days, which the histories are written in. */
const days = (history: PastJob[], today: Entry[] = []) =>
  story(history, today).lives.map(({ lower, upper }) => [lower, upper].map((m) => m && Math.round(m * 30.4375)));
const seat = (history: PastJob[], today: Entry[], valve = SEVERE) => {
  const [due] = consequences(valve, history, today, ON).due;
  if (!due) throw new Error("no date");
  return due;
};
/** Fresh sides, each found sound after `sound` days and worn after `end`, one after another up to today. */
function sides(lasted: readonly [sound: number, end: number][]): PastJob[] {
  let on = addDays(ON, -lasted.reduce((sum, [, end]) => sum + end, 0));
  const jobs = [job(on, fresh)];
  for (const [sound, end] of lasted) {
    jobs.push(job(addDays(on, sound), ok));
    on = addDays(on, end);
    jobs.push(job(on, found("seat", "worn", { extent: "both_sides" }), fresh));
  }
  return jobs;
}

describe("edges of lives", () => {
  test("all censored: sides taken out sound, one sound still; no estimate, and severe service keeps its start", () => {
    const history = [job("2025-01-04", fresh), job("2025-06-04", ok, fresh), job("2025-12-04", ok)];
    expect(days(history)).toEqual([
      [151, undefined],
      [183, undefined],
    ]);
    expect(fitWeibull(story(history).lives)).toMatchObject({ ok: false, why: "no life has ended yet" });
    expect(seat(history, [ok])).toMatchObject({ on: "2026-04-04", basis: "severe_start" });
    expect(seat(history, [ok]).why).toBe(
      "severe service, seat last seen 4 March 2026, start at 1 month until a pattern shows, so look again by 4 April 2026",
    );
  });
  test("one life: too few for a pattern; half of it, where that is sooner than the start", () => {
    const history = [job("2026-01-23", fresh)];
    expect(days(history, [worn, worked("flipped", "seat")])).toEqual([[0, 40]]);
    const due = seat(history, [worn, worked("flipped", "seat")]);
    expect(due).toMatchObject({ on: "2026-03-24", basis: "severe_start" });
    expect(due.why).toContain("one side was worn within 1.3 months, and half of that is taken until a pattern shows");
  });
  test("identical intervals: the shape runs to its end, which the reason says", () => {
    const history = sides([
      [150, 180],
      [150, 180],
      [150, 180],
    ]);
    const due = seat(history, []);
    expect(due.basis).toBe("wear_pattern");
    expect(due.why).toMatch(
      /^worn 3 times at 4\.9 to 5\.9 months; .*shape held at 20; about 9 in 10 sides last 4\.\d months or more, so look again by /,
    );
  });
  test("zero length: fitted and found worn on one day is no life", () => {
    expect(days([job("2025-06-04", fresh), job("2025-06-04", worn)])).toEqual([]);
    expect(days([job("2025-06-04", fresh, worn)])).toEqual([]);
  });
  test("out of order: the order in which jobs are given counts for nothing", () => {
    const history = sides([
      [100, 140],
      [90, 150],
      [120, 160],
    ]);
    const mixed = history.map((_, at) => history[(at * 3) % history.length] as PastJob);
    expect(new Set(mixed.map((one) => one.on)).size).toBe(history.length);
    expect(days(mixed)).toEqual(days(history));
    expect(seat(mixed, [ok])).toEqual(seat(history, [ok]));
  });
  test("two jobs on one day: the look comes before the work", () => {
    const looked = job("2025-09-04", worn);
    const done = job("2025-09-04", fresh);
    const start = job("2025-03-04", fresh);
    expect(days([start, done, looked])).toEqual([[0, 184]]);
    expect(days([start, looked, done])).toEqual([[0, 184]]);
  });
  test("a doubt ends no life, and a later look settles it", () => {
    const unsure = found("seat", "worn", { unsure: true });
    expect(days([job("2025-03-04", fresh), job("2025-06-04", unsure), job("2025-09-04", ok)])).toEqual([
      [184, undefined],
    ]);
  });
  test("a life through a change of service counts, and the reason says so", () => {
    const history = sides([
      [150, 180],
      [140, 190],
      [160, 200],
    ]);
    const first = history[0] as PastJob;
    const second = history[1] as PastJob;
    const told = [
      { ...first, entries: [service("normal"), ...first.entries] },
      { ...second, entries: [service("severe"), ...second.entries] },
      ...history.slice(2),
    ];
    expect(days(told)).toEqual(days(history));
    expect(story(told).changed).toBe(1);
    const due = seat(told, []);
    expect(due.on).toBe(seat(history, []).on);
    expect(due.why).toContain("worn 3 times at 4.6 to 6.6 months, 1 of them through a change of service; ");
  });
  test("the same service said again, or changed once the side was worn, is no change", () => {
    const same = [job("2025-03-04", service("severe"), fresh), job("2025-06-04", service("severe"), ok)];
    expect(story(same).changed).toBe(0);
    const after = [
      job("2025-03-04", service("normal"), fresh),
      job("2025-06-04", worn),
      job("2025-07-04", service("severe"), fresh),
    ];
    expect(story(after).changed).toBe(0);
  });
});

describe("a date's reason is a sentence that a technician would accept", () => {
  const history = sides([
    [120, 150],
    [160, 185],
    [180, 212],
  ]);
  for (const [about, due] of [
    ["pattern, fresh side", seat(history, [])],
    [
      "pattern, side of some age",
      seat(
        history.map((one) => ({ ...one, on: addDays(one.on, -40) })),
        [ok],
      ),
    ],
    ["severe start", seat([], [ok])],
    ["normal", seat([], [ok], { family: "balanced_dump" })],
    ["site's own", seat([], [ok], { family: "balanced_dump", interval_months: 9 })],
    ["overdue", seat([job("2025-03-04", ok)], [], { family: "balanced_dump" })],
  ] as const)
    test(about, () => {
      expect(due.why).toMatch(/, so (look again by|it was due) \d{1,2} [A-Z][a-z]+ \d{4}$/);
      expect(due.why).not.toMatch(/NaN|undefined|Infinity|_/);
      expect(due.why.length).toBeLessThan(260);
    });
  test("worked through", () =>
    expect(seat(history, []).why).toMatch(
      /^worn 3 times at 3\.9 to 7 months; about 9 in 10 sides last \d\.\d months or more, so look again by \d+ \w+ 2026$/,
    ));
});

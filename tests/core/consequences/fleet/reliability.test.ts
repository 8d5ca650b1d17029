import { describe, expect, test } from "vitest";
import { addDays } from "../../../../core/compute/calendar.ts";
import { failureRate } from "../../../../core/compute/failure-rate.ts";
import { found, job, tested, worked } from "../../../../core/consequences/example.ts";
import { exportLines } from "../../../../core/consequences/fleet/export.ts";
import type { RecordedValve } from "../../../../core/consequences/fleet/recorded.ts";
import { fleetReliability } from "../../../../core/consequences/fleet/reliability.ts";
import { CONDITIONS, TESTS, WORKS } from "../../../../core/shapes/codes.ts";
import type { Entry } from "../../../../core/shapes/entry.ts";
import { exportLineSchema, reliabilitySchema } from "../../../../core/shapes/fleet.ts";
import type { PastJob } from "../../../../core/shapes/valve.ts";
import { manyValves } from "../many-valves.ts";

const TODAY = "2026-03-04";
const START = addDays(TODAY, -1461);
const valve = (tag: string, jobs: PastJob[]): RecordedValve => ({
  tag,
  valve: { family: "balanced_dump", size_in: 2, leak_class: "VI", port_in: 2 },
  jobs,
  open: [],
  due: [],
});
const sound = job(START, found("seat", "ok"));
const torn = [found("upper_diaphragm", "torn"), worked("replaced", "upper_diaphragm")];
const failed = (...daysIn: number[]) => daysIn.map((day) => job(addDays(START, day), ...torn));
const reckon = (...valves: RecordedValve[]) => {
  const made = fleetReliability(valves, TODAY);
  expect(reliabilitySchema.safeParse(made).error).toBeUndefined();
  return made;
};

describe("failures per valve-year", () => {
  test("four years of two valves, three failures: the rate and its exact bounds", () => {
    const { fleet } = reckon(valve("A-1", [sound, ...failed(100, 500)]), valve("A-2", [sound, ...failed(900)]));
    expect(fleet).toMatchObject({ valves: 2, failures: 3, degraded: 0 });
    expect(fleet.years).toBeCloseTo(8, 9);
    expect(fleet.rate).toBeCloseTo(3 / 8, 9);
    expect([fleet.lower, fleet.upper]).toEqual([failureRate(3, fleet.years).lower, failureRate(3, fleet.years).upper]);
  });
  test("what the first job found is not counted, for nobody knows how long it was so", () =>
    expect(reckon(valve("A-1", [job(START, ...torn)])).fleet).toMatchObject({ failures: 0 }));
  test("left unmended and seen again it is one failure; mended and torn again, two", () => {
    const unmended = [50, 60, 70].map((day) => job(addDays(START, day), found("upper_diaphragm", "torn")));
    expect(reckon(valve("A-1", [sound, ...unmended])).fleet.failures).toBe(1);
    expect(reckon(valve("A-1", [sound, ...failed(50, 60)])).fleet.failures).toBe(2);
  });
  test("wear is counted apart, doubt and dirt not at all; two things on one day are one failure", () => {
    const worn = job(addDays(START, 90), found("seat", "worn"), worked("replaced", "seat"));
    const doubt = job(addDays(START, 120), found("stem", "bent", { unsure: true }), found("body", "fouled"));
    const two = job(addDays(START, 150), found("body", "cracked"), tested("seat_leak", "fail"));
    expect(reckon(valve("A-1", [sound, worn, doubt, two])).fleet).toMatchObject({ failures: 1, degraded: 1 });
  });
  test("a measured leak over its limit is a failed test; repaired and passed the same day it had failed all the same", () => {
    const leak: Entry = { type: "reading", quantity: "leak_rate", value: 20, unit: "bubble/min" };
    const day = job(
      addDays(START, 90),
      leak,
      tested("seat_leak", null),
      worked("lapped", "seat"),
      tested("seat_leak", "pass"),
    );
    expect(reckon(valve("A-1", [sound, day])).fleet.failures).toBe(1);
  });
  test("nothing on record: no rate", () => {
    const { fleet, valves } = reckon(valve("A-1", []));
    expect([fleet.rate, valves]).toEqual([undefined, []]);
  });
});

describe("worst valves first", () => {
  test("by what is to be expected, drawn to the fleet's rate, with the evidence", () => {
    const { valves } = reckon(
      valve("B-1", [sound]),
      valve("B-2", [sound, ...failed(200, 600, 1000, 1300)]),
      valve("B-3", [sound, ...failed(700)]),
    );
    expect(valves.map((one) => one.tag)).toEqual(["B-2", "B-3", "B-1"]);
    const [worst] = valves;
    expect(worst?.evidence[0]).toMatch(/^4 failures in 4 years; about [\d.]+ to be expected in the next year$/);
    expect(worst?.evidence.join()).toContain("last failure");
    expect(worst?.evidence.join()).toContain("upper diaphragm found wrong 4 times");
    // five failures in twelve years: five in four years lie between that and their own rate
    expect(worst?.expected).toBeGreaterThan(5 / 12);
    expect(worst?.expected).toBeLessThan(4 / 4);
    for (const one of valves) expect(one.expected).toBeGreaterThan(0);
  });
  test("failures that crowd towards today raise it, and both tests are told", () => {
    const late = valve("C-1", [sound, ...failed(1000, 1200, 1300, 1380, 1440)]);
    const early = valve("C-2", [sound, ...failed(20, 70, 150, 260, 450)]);
    const { valves } = reckon(late, early);
    expect(valves.map(({ tag, trend }) => [tag, trend])).toEqual([
      ["C-1", "faster"],
      ["C-2", "slower"],
    ]);
    expect(valves[0]?.evidence.join()).toMatch(
      /come faster as it ages \(Laplace [\d.]+, p 0\.0\d+; MIL-HDBK-189 p 0\.0/,
    );
    expect(valves[0]?.expected).toBeGreaterThan(2 * (valves[1]?.expected as number));
  });
  test("two failures show no trend and say so", () =>
    expect(reckon(valve("D-1", [sound, ...failed(3, 1400)])).valves[0]).toMatchObject({ trend: "too_few" }));
  test("the order of valves and of jobs counts for nothing", () => {
    const some = [
      valve("E-1", [sound, ...failed(10, 90)]),
      valve("E-2", [sound]),
      valve("E-3", [sound, ...failed(400)]),
    ];
    const turned = some.toReversed().map((one) => ({ ...one, jobs: one.jobs.toReversed() }));
    expect(fleetReliability(turned, TODAY)).toEqual(fleetReliability(some, TODAY));
  });
});

describe("export", () => {
  test("each thing found wrong once, each work done, with codes and how far they are to be trusted", () => {
    const lines = exportLines([valve("F-1", [sound, ...failed(100)])], TODAY);
    for (const line of lines) expect(exportLineSchema.safeParse(line).error).toBeUndefined();
    expect(lines).toMatchObject([
      {
        record: "failure",
        tag: "F-1",
        equipment_class: "VA",
        part: "upper_diaphragm",
        found: "torn",
        failure_mechanism: { code: "2.5", name: "breakage" },
        failure_mode: { code: "STD" },
        severity: "critical",
      },
      { record: "maintenance", work: "replaced", activity: { code: "1", name: "replace" } },
    ]);
    expect(lines[0]?.sure).toContain("from memory");
  });
  test("every fault, failed test and work has its codes", () => {
    const entries: Entry[] = [
      ...CONDITIONS.map((condition) => found("body", condition)),
      ...TESTS.map((test) => tested(test, "fail")),
      ...WORKS.map((work) => worked(work, "plug")),
    ];
    const lines = exportLines([valve("F-2", [job(TODAY, ...entries)])], TODAY);
    expect(lines).toHaveLength(CONDITIONS.length - 2 + TESTS.length + WORKS.length);
    for (const line of lines)
      expect(line.record === "failure" ? line.failure_mechanism?.name : line.activity?.name).toBeTruthy();
  });
});

test("a thousand valves of twenty jobs are reckoned in seconds, and twice the valves take about twice as long", () => {
  const valves = manyValves(1000).map(({ valve: about, history, on }, n) => ({
    ...valve(`S-${n}`, history),
    valve: about,
    on,
  }));
  const took = (some: typeof valves) => {
    const start = performance.now();
    fleetReliability(some, "2026-03-04");
    return performance.now() - start;
  };
  took(valves.slice(0, 200));
  const half = took(valves.slice(0, 500));
  const whole = took(valves);
  expect(whole).toBeLessThan(3000);
  expect(whole / half).toBeLessThan(5);
});

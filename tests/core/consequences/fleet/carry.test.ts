import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "../../../../core/compute/calendar.ts";
import { poissonCovering } from "../../../../core/compute/poisson.ts";
import { found, job, worked } from "../../../../core/consequences/example.ts";
import { carryList } from "../../../../core/consequences/fleet/carry.ts";
import { bestKit, explode, softGoods } from "../../../../core/consequences/fleet/explode.ts";
import type { RecordedValve } from "../../../../core/consequences/fleet/recorded.ts";
import { consequences } from "../../../../core/consequences/index.ts";
import { familyOf } from "../../../../core/families/index.ts";
import { carryListSchema } from "../../../../core/shapes/fleet.ts";
import type { PastJob, Valve } from "../../../../core/shapes/valve.ts";

const TODAY = "2026-03-04";
const globe = familyOf("globe_control");

/** A valve with what the record makes of it, as the server keeps it. */
function recorded(tag: string, jobs: PastJob[], valve: Valve = { family: "globe_control", size_in: 2 }): RecordedValve {
  const last = jobs[jobs.length - 1];
  const after = consequences(valve, jobs.slice(0, -1), last?.entries ?? [], last?.on ?? TODAY);
  return { site: "north", tag, valve, jobs, open: after.followUps, due: after.due };
}
const list = (valves: RecordedValve[], days = 30, stock = {}) => {
  const made = carryList(valves, { today: TODAY, days, stock, site: "north" });
  expect(carryListSchema.safeParse(made).error).toBeUndefined();
  return made;
};
/** Seals changed so long ago that they fall due in `inDays`; the seat seen today. */
const sealsDue = (tag: string, inDays: number) =>
  recorded(tag, [
    job(addDays("2025-03-04", inDays), worked("replaced", "kit"), worked("replaced", "seat")),
    job(TODAY, found("seat", "ok")),
  ]);

describe("kits opened into parts", () => {
  test("a kit holds what the family says, seals are every soft good, trim is the trim kit", () => {
    expect(explode([{ part: "kit", count: 2 }], globe)).toContainEqual({ part: "packing", count: 2 });
    expect(explode([{ part: "seals", count: 1 }], globe)).toEqual(softGoods(globe));
    expect(explode([{ part: "trim", count: 1 }], globe)).toContainEqual({ part: "cage", count: 1 });
  });
  test("a part and a kit that holds it add up; a family without kits goes by its bill", () => {
    const both = explode(
      [
        { part: "kit", count: 1 },
        { part: "packing", count: 1 },
      ],
      globe,
    );
    expect(both).toContainEqual({ part: "packing", count: 2 });
    expect(explode([{ part: "kit", count: 1 }], familyOf("unheard_of")).length).toBeGreaterThan(3);
  });
  test("the kit that lacks least", () => {
    expect(bestKit(softGoods(globe), globe)).toMatchObject({ kit: "soft_goods", lacks: [] });
    expect(
      bestKit(
        [
          { part: "stem", count: 1 },
          { part: "plug", count: 2 },
        ],
        globe,
      ),
    ).toMatchObject({
      kit: "trim",
      lacks: [{ part: "plug", count: 1 }],
    });
    expect(bestKit([{ part: "yoke", count: 1 }], globe)).toBeUndefined();
  });
});

describe("what to carry", () => {
  test("seals due within the days are certain, as parts and as kits; later ones are not taken", () => {
    const made = list([sealsDue("PV-1", 5), sealsDue("PV-2", 20), sealsDue("PV-3", 60)]);
    const packing = made.lines.find((line) => line.part === "packing");
    expect(packing).toMatchObject({
      certain: 2,
      carry: 2,
      tags: ["PV-1", "PV-2"],
      size_in: 2,
      family: "globe_control",
    });
    expect(packing?.why).toContain("2 for certain (PV-1, PV-2)");
    expect(made.kits).toMatchObject([{ kit: "soft goods kit", count: 2 }]);
    expect(list([sealsDue("PV-1", 5), sealsDue("PV-2", 20)], 7).visits).toBe(1);
    expect(list([sealsDue("PV-1", 5)], 14).lines.length).toBeGreaterThan(3);
  });
  test("what stands open for now is certain whatever is due, and asked for twice is needed once", () => {
    const open = recorded("PV-4", [
      job("2026-02-20", worked("replaced", "kit"), found("seat", "ok")),
      job(TODAY, found("plug", "cracked"), { type: "need", part: "plug", count: 2 }, found("seat", "ok")),
    ]);
    expect(list([open]).lines.find((line) => line.part === "plug")).toMatchObject({ certain: 2, carry: 2 });
  });
  test("a kit owed is opened, and a gasket owed beside the seals due is one gasket", () => {
    const owed = recorded("PV-5", [
      job("2025-03-10", worked("replaced", "kit"), found("seat", "ok")),
      job(TODAY, found("seat", "ok"), worked("reused", "packing")),
    ]);
    const packing = list([owed]).lines.find((line) => line.part === "packing");
    expect(packing).toMatchObject({ certain: 1, tags: ["PV-5"] });
  });
  test("a seat that does not reverse: likely, by how often like seats were found worn, enough 19 times in 20", () => {
    const seen = (tag: string, worn: boolean) =>
      recorded(tag, [
        job(
          "2025-09-01",
          worked("replaced", "kit"),
          found("seat", worn ? "worn" : "ok"),
          ...(worn ? [worked("replaced", "seat")] : []),
        ),
      ]);
    const valves = Array.from({ length: 20 }, (_, n) => seen(`PV-${n}`, n % 4 === 0));
    const made = list(valves);
    expect(made.visits).toBe(20);
    const seat = made.lines.find((line) => line.part === "seat");
    const chance = 5.5 / 21;
    // the five with a new seat have an age, but no life has ended yet: the share goes for all
    expect(seat?.certain).toBe(0);
    expect(seat?.expected).toBeCloseTo(20 * chance, 9);
    expect(seat?.carry).toBe(poissonCovering(20 * chance, 0.95));
    expect(seat?.why).toContain("worn at 5 of 20 looks");
  });
  test("says counts as a person would: once, one job, none more", () => {
    const often = Array.from({ length: 20 }, (_, n) =>
      recorded(`PV-${n}`, [
        job("2025-09-01", worked("replaced", "kit"), found("seat", "ok"), ...(n ? [] : [worked("replaced", "plug")])),
      ]),
    );
    const plug = list(often).lines.find((line) => line.part === "plug");
    expect(plug?.why).toContain("replaced once in 20 jobs on like valves");
    const said = list([...often, recorded("PV-99", [job("2025-09-01", worked("replaced", "kit"))])]).lines;
    expect(said.map((line) => line.why).join()).not.toMatch(/\b(1 times|0 cover|1 cover it|1 jobs)\b/);
  });
  test("a reversible seat on its first side is turned over: none is carried; on its second it may be needed", () => {
    const dump: Valve = { family: "balanced_dump", size_in: 2 };
    const first = recorded("LCV-1", [job("2025-08-01", worked("replaced", "seals"), worked("replaced", "seat"))], dump);
    const second = recorded(
      "LCV-2",
      [
        job("2025-01-01", worked("replaced", "seat")),
        job(
          "2025-08-01",
          worked("replaced", "seals"),
          found("seat", "worn", { extent: "one_side" }),
          worked("flipped", "seat"),
        ),
      ],
      dump,
    );
    const seats = (valves: RecordedValve[]) => list(valves, 14).lines.find((line) => line.part === "seat");
    expect(seats([first])).toBeUndefined();
    expect(seats([second])).toMatchObject({ certain: 1 });
  });
  test("stock on hand: what is short; a name that fits no line, or several, is said", () => {
    const four: Valve = { family: "globe_control", size_in: 4 };
    const other = { ...sealsDue("PV-9", 5), valve: four };
    const made = list([sealsDue("PV-1", 5), sealsDue("PV-2", 5), other], 30, {
      "packing/globe_control/2": 1,
      packing: 9,
      yoke: 3,
    });
    expect(made.lines.find((line) => line.part === "packing" && line.size_in === 2)).toMatchObject({
      onHand: 1,
      short: 1,
    });
    expect(made.unclear).toHaveLength(2);
    expect(made.unclear.join()).toMatch(/packing: fits 2 lines.*yoke: nothing of the kind/);
  });
  test("nothing on record, nothing due: nothing to carry", () =>
    expect(list([recorded("PV-1", [])])).toMatchObject({ visits: 0, lines: [], kits: [] }));

  test("more days never ask for less, nor do more valves; what is carried covers what is certain", () => {
    const days = fc.integer({ min: 0, max: 90 });
    fc.assert(
      fc.property(fc.array(days, { minLength: 1, maxLength: 12 }), days, days, (dues, a, b) => {
        const valves = dues.map((inDays, n) => sealsDue(`PV-${n}`, inDays));
        const total = (some: RecordedValve[], within: number) =>
          carryList(some, { today: TODAY, days: within }).lines.reduce((sum, line) => sum + line.carry, 0);
        expect(total(valves, Math.max(a, b))).toBeGreaterThanOrEqual(total(valves, Math.min(a, b)));
        expect(total(valves, a)).toBeGreaterThanOrEqual(total(valves.slice(1), a));
        for (const line of carryList(valves, { today: TODAY, days: a }).lines) {
          expect(line.carry).toBeGreaterThanOrEqual(line.certain);
          expect(line.expected).toBeGreaterThanOrEqual(line.certain);
        }
      }),
      { numRuns: 40 },
    );
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, addMonths, dateOfDay, dayNumber, earlier } from "../../../core/compute/calendar.ts";
import { found, job, worked } from "../../../core/consequences/example.ts";
import { consequences } from "../../../core/consequences/index.ts";
import { tellSeat } from "../../../core/consequences/seat-story.ts";
import { inOrder } from "../../../core/consequences/visit.ts";
import { wearPattern } from "../../../core/consequences/wear-pattern.ts";
import { familyOf } from "../../../core/families/index.ts";
import { consequencesSchema } from "../../../core/shapes/consequence.ts";
import { entrySchema } from "../../../core/shapes/entry.ts";
import { lifeSchema, type PastJob, pastJobSchema, valveSchema } from "../../../core/shapes/valve.ts";
import { anyDate, anyEntries, anyFleet, anyHistory, anyValve } from "./any-job.ts";

function freeze<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const inner of Object.values(value)) freeze(inner);
  }
  return value;
}

const dump = familyOf("balanced_dump");

describe("any job that fits the shapes", () => {
  test("is answered in the shape promised, whatever it holds; nothing given is edited; the order of jobs counts for nothing", () => {
    fc.assert(
      fc.property(anyValve, anyHistory, anyEntries, anyDate, anyFleet, (valve, history, entries, on, fleet) => {
        for (const [schema, value] of [
          [valveSchema, valve],
          [pastJobSchema.array(), history],
          [entrySchema.array(), entries],
          [lifeSchema.array(), fleet],
        ] as const)
          expect(schema.safeParse(value).success).toBe(true);
        for (const value of [valve, history, entries, fleet]) freeze<unknown>(value);
        const after = consequences(valve, history, entries, on, fleet);
        expect(consequencesSchema.safeParse(after).error).toBeUndefined();
        expect(consequences(valve, history.toReversed(), entries, on, fleet)).toEqual(after);

        const keys = after.followUps.map((one) => `${one.do} ${one.part} ${one.test}`);
        expect(new Set(keys).size).toBe(keys.length);
        if (entries.some((entry) => entry.type === "hazard")) expect(after.followUps[0]?.rule).toBe("hazard_stop");
        const fitted = (part: string) =>
          entries.some(
            (entry) =>
              entry.type === "work" &&
              entry.status === "done" &&
              !entry.unsure &&
              entry.part === part &&
              (entry.work === "replaced" || entry.work === "installed"),
          );
        for (const one of after.followUps)
          if (one.do === "replace" && one.part && !after.parts.needed.some((line) => line.part === one.part))
            expect(entries.some((entry) => entry.type === "work" && entry.status === "done")).toBe(true);
        for (const { part } of after.parts.needed) expect(fitted(part)).toBe(false);
        expect(after.due.map((one) => one.task)).toEqual(["seat_inspection", "seal_replacement"]);
      }),
      { numRuns: 600 },
    );
  });
});

/** A seat's life told by a list of looks: days since the look before, and what was found and done. */
const looks = fc.array(
  fc.record({
    days: fc.integer({ min: 1, max: 200 }),
    seen: fc.constantFrom("ok", "worn and flipped", "worn and replaced", "worn and left", "replaced", "not seen"),
  }),
  { minLength: 1, maxLength: 16 },
);

function historyOf(steps: { days: number; seen: string }[], times = 1): PastJob[] {
  let day = dayNumber("2015-01-01");
  return steps.map(({ days, seen }) => {
    day += days * times;
    const worn = found("seat", "worn", { extent: "one_side" });
    const entries =
      seen === "ok"
        ? [found("seat", "ok")]
        : seen === "worn and flipped"
          ? [worn, worked("flipped", "seat")]
          : seen === "worn and replaced"
            ? [worn, worked("replaced", "seat")]
            : seen === "worn and left"
              ? [worn]
              : seen === "replaced"
                ? [worked("replaced", "seat")]
                : [found("stem", "ok")];
    return job(dateOfDay(day), ...entries);
  });
}

describe("dates", () => {
  test("no date before the floor, none after the cap", () => {
    const interval = fc.option(fc.integer({ min: 1, max: 24 }), { nil: undefined });
    fc.assert(
      fc.property(
        looks,
        fc.constantFrom("normal" as const, "severe" as const),
        interval,
        anyFleet,
        (steps, service, interval_months, fleet) => {
          const history = historyOf(steps);
          const on = addDays((history.at(-1) as PastJob).on, 20);
          const [due] = consequences({ service, interval_months }, history, [], on, fleet).due;
          const seen = history.findLast((past) =>
            past.entries.some((entry) => "part" in entry && entry.part === "seat"),
          )?.on;
          if (seen === undefined) expect(due?.on).toBe(on);
          else {
            const cap = addMonths(seen, interval_months ?? 6);
            const floor = service === "severe" ? addDays(seen, 7) : addMonths(seen, 1);
            expect((due?.on ?? "") <= cap).toBe(true);
            expect((due?.on ?? "") >= earlier(floor, cap)).toBe(true);
            if (due?.basis === "site") expect(interval_months).toBeDefined();
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  test("ages times k give waits times k", () => {
    fc.assert(
      fc.property(looks, fc.integer({ min: 2, max: 9 }), (steps, k) => {
        const story = (times: number) => {
          const history = historyOf(steps, times);
          return tellSeat(inOrder(history, [], addDays((history.at(-1) as PastJob).on, 1)), dump);
        };
        const [one, many] = [story(1), story(k)];
        expect(many.lives).toHaveLength(one.lives.length);
        many.lives.forEach((life, at) => {
          expect(life.lower).toBeCloseTo((one.lives[at]?.lower ?? 0) * k, 9);
        });
        expect(many.age === undefined).toBe(one.age === undefined);
        const [short, long] = [wearPattern(one, [], one.age ?? 0), wearPattern(many, [], many.age ?? 0)];
        expect(long === undefined).toBe(short === undefined);
        if (!short || !long) return;
        // A bound that runs to nothing has no ratio.
        if (short.bound < 1e-15) expect(long.bound).toBeLessThan(1e-14);
        else expect(Math.abs(long.bound / (short.bound * k) - 1)).toBeLessThan(1e-6);
        expect(long.established).toBe(short.established);
      }),
      { numRuns: 200 },
    );
  });
});

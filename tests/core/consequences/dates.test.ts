import { describe, expect, test } from "vitest";
import { found, job, worked } from "../../../core/consequences/example.ts";
import { consequences } from "../../../core/consequences/index.ts";
import type { Due } from "../../../core/shapes/consequence.ts";
import type { Entry } from "../../../core/shapes/entry.ts";
import type { Life, PastJob, Valve } from "../../../core/shapes/valve.ts";
import published from "../../published/weibull.json" with { type: "json" };

const ON = "2026-03-04";
interface Case {
  about: string;
  valve?: Valve;
  before?: PastJob[];
  say?: Entry[];
  fleet?: Life[];
  on?: string;
  seat?: Partial<Due>;
  seals?: Partial<Due>;
}

const [SIX, TWELVE, FEW] = published.selection;
const wornOne = found("seat", "worn", { extent: "one_side" });
/** Any five ended lives at 5 to 6 months: a steady pattern. */
const STEADY: Life[] = [5, 5.2, 4.8, 5.1, 4.9].map((lower) => ({ lower, upper: lower + 1 }));

const cases: Case[] = [
  {
    about: "nothing on record: due today",
    seat: { on: ON, basis: "interval", months: 6 },
    seals: { on: ON, months: 12 },
  },
  {
    about: "severe and never seen: today too",
    valve: { service: "severe" },
    seat: { on: ON, basis: "severe_start", months: 1 },
  },
  {
    about: "the site's interval, longer than ours",
    valve: { interval_months: 9 },
    before: [job("2026-01-31", found("seat", "ok"))],
    seat: { on: "2026-10-31", basis: "site", months: 9 },
  },
  {
    about: "severe, the site looks every half month: capped by the site",
    valve: { service: "severe", interval_months: 0.5 },
    say: [found("seat", "ok")],
    seat: { on: "2026-03-19", basis: "site", months: 0.5 },
  },
  {
    about: "a past date stays past",
    before: [job("2025-01-31", worked("cleaned", "seat"))],
    seat: { on: "2025-07-31" },
  },
  {
    about: "an unsure finding has seen the seat",
    say: [found("seat", "worn", { unsure: true })],
    seat: { on: "2026-09-04" },
  },
  {
    about: "a leak test has not",
    before: [job("2025-12-31", found("seat", "ok"))],
    say: [{ type: "test", test: "seat_leak", result: "pass" }],
    seat: { on: "2026-06-30" },
  },
  {
    about: "severe, worn side left in: the start, though the fleet's pattern is longer",
    valve: { service: "severe" },
    before: [job("2025-12-04", worked("replaced", "seat"))],
    say: [wornOne],
    fleet: STEADY,
    seat: { on: "2026-04-04", basis: "severe_start", months: 1 },
  },
  {
    about: "severe, a fresh side and the fleet's pattern",
    valve: { service: "severe" },
    say: [worked("replaced", "seat")],
    fleet: STEADY,
    seat: { basis: "wear_pattern" },
  },
  {
    about: "severe, side in place since nobody knows when: no age, so no wait",
    valve: { service: "severe" },
    say: [found("seat", "ok")],
    fleet: STEADY,
    seat: { on: "2026-04-04", basis: "severe_start" },
  },
  {
    about: "severe, lives too unlike: twelve lives of ratio 3.188 make no pattern",
    valve: { service: "severe" },
    say: [worked("replaced", "seat")],
    fleet: [...(TWELVE?.own ?? []), ...(TWELVE?.fleet ?? [])],
    seat: { on: "2026-04-04", basis: "severe_start" },
  },
  {
    about: "severe, three ended lives of the fleet are too few",
    valve: { service: "severe" },
    say: [worked("replaced", "seat")],
    fleet: [...(FEW?.own ?? []), ...(FEW?.fleet ?? [])],
    seat: { on: "2026-04-04", basis: "severe_start" },
  },
  {
    about: "six lives of the fleet with four ended are too few, though three of one's own would do",
    valve: { service: "severe" },
    say: [worked("replaced", "seat")],
    fleet: SIX?.own,
    seat: { on: "2026-04-04", basis: "severe_start" },
  },
  {
    about: "severe, one side worn in ten days: half of that is under a week, so a week",
    valve: { service: "severe" },
    before: [job("2026-02-22", worked("replaced", "seat"))],
    say: [wornOne, worked("flipped", "seat")],
    seat: { on: "2026-03-11", basis: "severe_start" },
  },
  {
    about: "normal, a pattern of weeks is never looked at sooner than a month",
    say: [worked("replaced", "seat")],
    fleet: [0.5, 0.6, 0.55, 0.5, 0.6].map((lower) => ({ lower, upper: lower + 0.2 })),
    seat: { on: "2026-04-04", basis: "wear_pattern" },
  },
  {
    about: "normal, a longer pattern changes nothing",
    say: [worked("replaced", "seat")],
    fleet: STEADY.map(({ lower, upper }) => ({ lower: lower * 4, upper: (upper ?? 0) * 4 })),
    seat: { on: "2026-09-04", basis: "interval", months: 6 },
  },
  {
    about: "seals: from the kit, though one gasket is newer",
    before: [job("2025-06-01", worked("replaced", "kit")), job("2025-12-01", worked("replaced", "bonnet_gasket"))],
    seals: { on: "2026-06-01", basis: "interval" },
  },
  {
    about: "seals: 29 February clamps, and stays past",
    before: [job("2024-02-29", worked("replaced", "seals"))],
    seals: { on: "2025-02-28" },
  },
  {
    about: "seals: one soft good unknown is all overdue",
    before: [job("2025-12-01", worked("replaced", "bonnet_gasket"))],
    seals: { on: ON },
  },
  {
    about: "seals: cleaned or wanted is not replaced",
    before: [job("2025-12-01", worked("cleaned", "seals"), worked("replaced", "kit", "needed"))],
    seals: { on: ON },
  },
  {
    about: "jobs dated after today are no history yet",
    before: [job("2026-05-01", found("seat", "ok"), worked("replaced", "seals"))],
    seat: { on: ON },
    seals: { on: ON },
  },
];

describe("due dates", () => {
  for (const { about, valve = {}, before = [], say = [], fleet, on = ON, seat, seals } of cases)
    test(about, () => {
      const { due } = consequences(valve, before, say, on, fleet);
      const of = (task: Due["task"]) => due.find((one) => one.task === task);
      if (seat) expect(of("seat_inspection")).toMatchObject(seat);
      if (seals) expect(of("seal_replacement")).toMatchObject(seals);
      for (const one of due) expect(one.why.length).toBeGreaterThan(20);
    });
  test("the sentence says how often, at what ages, how long and until when, and that nine in ten is only about", () => {
    const [due] = consequences({ service: "severe" }, [], [worked("replaced", "seat")], ON, STEADY).due;
    expect(due?.why).toMatch(
      /^worn 5 times at 4\.8 to 6\.2 months on this and like valves; .*about 9 in 10 sides last [\d.]+ months or more, so look again by \d+ \w+ 2026$/,
    );
  });
  test("a shape held at its end is said", () => {
    const same = Array.from({ length: 5 }, () => ({ lower: 5, upper: 6 }));
    const [due] = consequences({ service: "severe" }, [], [worked("replaced", "seat")], ON, same).due;
    expect(due?.why).toContain("shape held at 20");
  });
});

import { describe, expect, test } from "vitest";
import { found, tested, worked } from "../../../core/consequences/example.ts";
import { consequences } from "../../../core/consequences/index.ts";
import type { Unit } from "../../../core/shapes/codes.ts";
import type { Entry } from "../../../core/shapes/entry.ts";
import type { Valve } from "../../../core/shapes/valve.ts";

const ON = "2026-03-04";
const DUMP: Valve = { family: "balanced_dump", size_in: 2, leak_class: "VI", port_in: 2, rated_dp_psi: 125 };
const leak = (value: number, unit: Unit, psi?: number): Entry[] => [
  { type: "reading", quantity: "leak_rate", value, unit },
  ...(psi === undefined ? [] : [{ type: "reading", quantity: "upstream_pressure", value: psi, unit: "psi" } as const]),
  tested("seat_leak", null),
];

describe("seat leakage", () => {
  const cases: [about: string, valve: Valve, say: Entry[], want: object, note?: RegExp | "none"][] = [
    ["at the limit", DUMP, leak(3, "bubble/min", 50), { verdict: "pass", allowed: 3, class: "VI" }],
    ["over it", DUMP, leak(0.46, "mL/min", 50), { verdict: "fail", allowed: 0.45 }],
    [
      "3.5 bar is the same test",
      DUMP,
      [
        leak(3, "bubble/min")[0] as Entry,
        { type: "reading", quantity: "upstream_pressure", value: 3.5, unit: "bar" },
        tested("seat_leak", null),
      ],
      { verdict: "pass" },
      "none",
    ],
    ["pressure not said", DUMP, leak(2, "bubble/min"), { verdict: "pass" }, /no test pressure said/],
    [
      "at another pressure",
      DUMP,
      leak(2, "bubble/min", 80),
      { verdict: "pass" },
      /measured at 80 psi; the limit is for 50 psi/,
    ],
    [
      "rated for less than the test",
      { ...DUMP, rated_dp_psi: 30 },
      leak(2, "bubble/min", 30),
      { verdict: "pass" },
      "none",
    ],
    [
      "port not known: size, with a note",
      { ...DUMP, port_in: undefined },
      leak(3, "bubble/min", 50),
      { verdict: "pass" },
      /nominal 2 inch/,
    ],
    [
      "no size",
      { ...DUMP, port_in: undefined, size_in: undefined },
      leak(3, "bubble/min", 50),
      { verdict: "no_limit" },
      /port size/,
    ],
    [
      "no class",
      { ...DUMP, family: "unheard_of", leak_class: undefined },
      leak(3, "bubble/min", 50),
      { verdict: "no_limit" },
      /class/,
    ],
    [
      "the family's class, with a note",
      { ...DUMP, leak_class: undefined },
      leak(3, "bubble/min", 50),
      { verdict: "pass", class: "VI" },
      /usual one/,
    ],
    ["drops", DUMP, leak(3, "drop/min", 50), { verdict: "no_limit", measured: 3 }, /drop/],
    [
      "10 inch has no bubbles",
      { ...DUMP, port_in: 10 },
      leak(3, "bubble/min", 50),
      { verdict: "no_limit" },
      /bubble column/,
    ],
    [
      "class IV: 0.01 % of rated capacity on gas",
      { ...DUMP, leak_class: "IV", cv: 50, xT: 0.72 },
      leak(5100, "mL/min", 50),
      { verdict: "pass" },
      /gas test/,
    ],
    ["class IV, the family's Cv", { ...DUMP, leak_class: "IV" }, leak(5100, "mL/min", 50), { verdict: "fail" }],
    ["class IV, no Cv", { leak_class: "IV", size_in: 7 }, leak(5, "mL/min", 50), { verdict: "no_limit" }, /Cv/],
    ["class I has no test", { ...DUMP, leak_class: "I" }, leak(5, "mL/min", 50), { verdict: "no_limit" }, /class I /],
    ["class V on gas", { ...DUMP, leak_class: "V" }, leak(9.4, "mL/min", 50), { verdict: "pass", allowed: 9.4 }],
  ];
  for (const [about, valve, say, want, note] of cases)
    test(about, () => {
      const [check] = consequences(valve, [], say, ON).checks;
      expect(check).toMatchObject({ check: "seat_leakage", ...want });
      if (note === "none") expect(check?.note).toBeUndefined();
      else if (note) expect(check?.note).toMatch(note);
      expect(check?.source).toContain("IEC 60534-4");
    });
  test("the last rate is the one judged, and the packing's is not the seat's", () => {
    const packing: Entry = { type: "reading", quantity: "leak_rate", value: 9, unit: "drop/min", part: "packing" };
    const { checks } = consequences(
      DUMP,
      [],
      [...leak(40, "bubble/min", 50), ...leak(1, "bubble/min", 50), packing],
      ON,
    );
    expect(checks).toHaveLength(1);
    expect(checks[0]).toMatchObject({ measured: 1, verdict: "pass" });
  });
  test("a pressure said with another test is not this one's", () => {
    const say: Entry[] = [
      { type: "reading", quantity: "upstream_pressure", value: 90, unit: "psi" },
      tested("shell", "pass"),
      ...leak(2, "bubble/min"),
    ];
    expect(consequences(DUMP, [], say, ON).checks[0]?.note).toMatch(/no test pressure said/);
  });
});

describe("torque", () => {
  const torque = (value: number, unit: Unit, upper?: number): Entry => ({
    type: "reading",
    quantity: "torque",
    value,
    unit,
    part: "bonnet_bolting",
    ...(upper === undefined ? {} : { upper }),
  });
  const cases: [about: string, valve: Valve, say: Entry, want: object][] = [
    ["both ends are within", DUMP, torque(25, "ft_lbf", 30), { verdict: "within", min: 25, max: 30, upper: 30 }],
    ["in inch-pounds, the limit in inch-pounds", DUMP, torque(360, "in_lbf"), { verdict: "within" }],
    ["in newton metres", DUMP, torque(41, "N_m"), { verdict: "above" }],
    ["a range said backwards", DUMP, torque(30, "ft_lbf", 24), { verdict: "below" }],
    ["no size, no limit", { ...DUMP, size_in: undefined }, torque(28, "ft_lbf"), { verdict: "no_limit" }],
    ["6 inch, no limit", { ...DUMP, size_in: 6 }, torque(28, "ft_lbf"), { verdict: "no_limit" }],
    ["not a torque at all", DUMP, torque(28, "psi"), { verdict: "no_limit" }],
  ];
  for (const [about, valve, say, want] of cases)
    test(about, () =>
      expect(consequences(valve, [], [say], ON).checks[0]).toMatchObject({
        check: "torque",
        part: "bonnet_bolting",
        ...want,
      }),
    );
  test("the size said today overrides the record", () => {
    const { checks } = consequences(
      { ...DUMP, size_in: 12 },
      [],
      [{ type: "valve", size_in: 3 }, torque(28, "ft_lbf")],
      ON,
    );
    expect(checks[0]).toMatchObject({ verdict: "within" });
  });
});

describe("missing items and parts", () => {
  test("a heard part is not missing, nor what a set or a pair's general word holds", () => {
    const { missing } = consequences(
      DUMP,
      [],
      [found("plug", "ok"), found("diaphragm", "ok"), found("gasket", "ok"), worked("replaced", "body_bolting")],
      ON,
    );
    for (const part of ["plug", "upper_diaphragm", "lower_diaphragm", "body_bolting"])
      expect(missing).not.toContain(part);
    for (const part of ["seat", "cage", "seat_gasket", "bonnet_gasket"]) expect(missing).toContain(part);
    expect(consequences(DUMP, [], [found("seals", "ok")], ON).missing).not.toContain("seat_gasket");
    expect(consequences(DUMP, [], [found("valve", "ok")], ON).missing).toContain("seat");
  });
  test("used is counted, a part put in after being replaced once", () => {
    const { parts } = consequences(
      DUMP,
      [],
      [
        worked("replaced", "backup_ring", "done", { count: 2 }),
        worked("replaced", "seat"),
        worked("installed", "seat"),
        worked("replaced", "kit"),
      ],
      ON,
    );
    expect(parts.used).toEqual([
      { part: "backup_ring", count: 2 },
      { part: "seat", count: 1 },
      { part: "kit", count: 1 },
    ]);
    expect(parts.needed).toEqual([]);
  });
});

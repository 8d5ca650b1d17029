import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inflect, plurals } from "../../../core/vocabulary/inflect.ts";
import { phones, soundDistance } from "../../../core/vocabulary/sound.ts";

describe("forms of a verb", () => {
  const TABLE: [verb: string, third: string, past: string, ing: string][] = [
    ["replace", "replaces", "replaced", "replacing"],
    ["flip", "flips", "flipped", "flipping"],
    ["lap", "laps", "lapped", "lapping"],
    ["clean", "cleans", "cleaned", "cleaning"],
    ["drain", "drains", "drained", "draining"],
    ["tighten", "tightens", "tightened", "tightening"],
    ["polish", "polishes", "polished", "polishing"],
    ["fix", "fixes", "fixed", "fixing"],
    ["scrap", "scraps", "scrapped", "scrapping"],
    ["wire brush", "wire brushes", "wire brushed", "wire brushing"],
    ["blow:blew", "blows", "blew", "blowing"],
    ["take:took", "takes", "took", "taking"],
    ["keep:kept", "keeps", "kept", "keeping"],
    ["top up", "tops up", "topped up", "topping up"],
    ["calibrate", "calibrates", "calibrated", "calibrating"],
  ];
  for (const [verb, third, past, ing] of TABLE)
    test(verb, () => {
      const forms = inflect(verb);
      expect(forms.base[1]).toBe(third);
      expect(forms.past[0]).toBe(past);
      expect(forms.ing[0]).toBe(ing);
    });
});

describe("one and many", () => {
  const TABLE: [name: string, many: string][] = [
    ["seat", "seats"],
    ["cap screw", "cap screws"],
    ["gland box", "gland boxes"],
    ["assembly", "assemblies"],
    ["boss", "bosses"],
  ];
  for (const [name, many] of TABLE) test(name, () => expect(plurals(name)).toEqual([name, many]));
  test("what is many already stays", () => expect(plurals("threads")).toEqual(["threads"]));
});

describe("what sounds alike", () => {
  const SAME: [a: string, b: string][] = [
    ["fowled", "fouled"],
    ["galled", "gauled"],
    ["phlange", "flange"],
    ["knut", "nut"],
    ["seet", "seat"],
    ["wrapped", "rapped"],
  ];
  for (const [a, b] of SAME) test(`${a}, ${b}`, () => expect(soundDistance(phones(a), phones(b))).toBeLessThan(0.11));
  const APART: [a: string, b: string][] = [
    ["seat", "spring"],
    ["plug", "torque"],
    ["gasket", "bonnet"],
    ["worn", "cut"],
  ];
  for (const [a, b] of APART)
    test(`not ${a}, ${b}`, () => expect(soundDistance(phones(a), phones(b))).toBeGreaterThan(0.4));
});

test("the distance of sounds is nothing to itself, the same both ways, and gives up only beyond the limit", () => {
  const sound = fc.stringMatching(/^[a-z]{1,12}$/).map(phones);
  fc.assert(
    fc.property(sound, sound, fc.double({ min: 0.05, max: 1, noNaN: true }), (a, b, most) => {
      expect(soundDistance(a, a)).toBe(0);
      const far = soundDistance(a, b);
      expect(soundDistance(b, a)).toBeCloseTo(far, 5);
      const limited = soundDistance(a, b, most);
      if (far <= most - 1e-6) expect(limited).toBeCloseTo(far, 5);
      else expect(limited === Number.POSITIVE_INFINITY || Math.abs(limited - far) < 1e-5).toBe(true);
    }),
    { seed: 4 },
  );
});

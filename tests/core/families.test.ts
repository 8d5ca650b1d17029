import { describe, expect, test } from "vitest";
import { boltSequence } from "../../core/compute/bolt-sequence.ts";
import { FAMILIES, familyOf } from "../../core/families/index.ts";
import { familySchema } from "../../core/shapes/valve.ts";

/** A family is data: each is in the shape, agrees with itself, and says where its figures come from. */
for (const family of FAMILIES)
  describe(family.family, () => {
    const parts = family.bill.map((line) => line.part);
    test("is in the shape, with no key beside it", () => {
      expect(familySchema.strict().safeParse(family).error).toBeUndefined();
    });
    test("lists each part once, and inspects only what it has", () => {
      expect(new Set(parts).size).toBe(parts.length);
      expect(family.inspection.filter((part) => !parts.includes(part))).toEqual([]);
      expect(new Set(family.inspection).size).toBe(family.inspection.length);
    });
    test("its kits hold parts of the bill, and the soft goods kit all soft goods in their number", () => {
      for (const kit of family.kits) for (const { part } of kit.parts) expect(parts).toContain(part);
      const soft = family.bill.filter((line) => line.soft).map(({ part, count }) => ({ part, count }));
      const kit = family.kits.find((one) => one.kit === "soft_goods")?.parts ?? [];
      expect([...kit].sort((a, b) => (a.part < b.part ? -1 : 1))).toEqual(
        soft.sort((a, b) => (a.part < b.part ? -1 : 1)),
      );
    });
    test("its torque limits are ranges that do not overlap, its bolt circles can be tightened crosswise", () => {
      for (const line of family.torque) {
        expect(line.min).toBeLessThan(line.max);
        const rivals = family.torque.filter((one) => one !== line && one.part === line.part);
        for (const one of rivals)
          expect(one.size_in[0] > line.size_in[1] || one.size_in[1] < line.size_in[0]).toBe(true);
      }
      for (const { count } of family.bolts) expect(boltSequence(count)).toHaveLength(count);
    });
    test("every figure has a source", () => {
      expect(family.source.length).toBeGreaterThan(5);
      for (const line of [...family.torque, ...family.rated_cv, family.intervals])
        expect(line.source.length).toBeGreaterThan(5);
      for (const key of ["bill", "bolts", "leak_class", "xT", "bench_range_psi", "kits"])
        expect(family.sources?.[key]?.length ?? 0, key).toBeGreaterThan(5);
    });
  });

describe("which family", () => {
  test("none said is the balanced dump valve", () => expect(familyOf(undefined).family).toBe("balanced_dump"));
  test("a site's own comes before ours", () => {
    const own = { ...familyOf("globe_control"), name: "the site's globe valve" };
    expect(familyOf("globe_control", [own]).name).toBe("the site's globe valve");
    expect(familyOf("site_special", [{ ...own, family: "site_special" }]).torque.length).toBeGreaterThan(0);
  });
  test("a code that nobody knows borrows no limit", () => {
    expect(familyOf("unheard_of")).toMatchObject({ family: "unheard_of", torque: [], rated_cv: [], bolts: [] });
    expect(familyOf("unheard_of").leak_class).toBeUndefined();
  });
});

test("dump valve bolting of 2 to 4 inch is 25 to 30 ft-lbf", () => {
  for (const part of ["body_bolting", "bonnet_bolting"] as const)
    expect(familyOf("balanced_dump").torque).toContainEqual(
      expect.objectContaining({ part, size_in: [2, 4], min: 25, max: 30, unit: "ft_lbf" }),
    );
});

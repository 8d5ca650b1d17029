import { describe, expect, it } from "vitest";
import type { Entry } from "../../../core/index.ts";
import { COMMANDS, CONDITIONS, HAZARDS, PARTS, QUANTITIES, TESTS, UNITS, WORKS } from "../../../core/shapes/codes.ts";
import { AT_HAZARD } from "../../../web/parts/cautions.ts";
import { entryWords } from "../../../web/parts/entry-words.ts";
import { sayEntry } from "../../../web/parts/say.ts";

const SAID: [Entry, string, string][] = [
  [{ type: "finding", condition: "worn", part: "seat", extent: "one_side" }, "Found", "seat: worn, one side"],
  [{ type: "finding", condition: "cracked", part: "cage", absent: true }, "Found", "cage: not cracked"],
  [{ type: "finding", condition: "torn" }, "Found", "part not said: torn"],
  [{ type: "work", work: "replaced", status: "done", part: "o_ring", count: 2 }, "Done", "O-ring: replaced, 2 of them"],
  [{ type: "work", work: "flipped", status: "needed", part: "seat" }, "To do", "seat: must be flipped"],
  [{ type: "work", work: "replaced", status: "declined", part: "seat" }, "Left", "seat: not replaced"],
  [{ type: "reading", quantity: "torque", value: 25, upper: 30, unit: "ft_lbf" }, "Read", "torque: 25 to 30 ft-lbf"],
  [{ type: "reading", quantity: "pressure", value: 60, unit: "psi", bound: "about" }, "Read", "pressure: about 60 psi"],
  [{ type: "test", test: "seat_leak", result: null }, "Test", "seat leak test: no result said"],
  [{ type: "test", test: "packing", result: "fail" }, "Test", "packing test: FAILED"],
  [{ type: "valve", tag: "LCV-213", size_in: 2, service: "severe" }, "Valve", "LCV-213: 2 inch, severe service"],
  [{ type: "need", part: "seat" }, "Order", "seat: "],
];

describe("entries in words", () => {
  it.each(SAID)("%o", (entry, stamp, words) => {
    const told = entryWords(entry);
    expect([told.stamp, `${told.subject}: ${told.told}`]).toEqual([stamp, words]);
  });

  it("have words without underscores for every code there is", () => {
    const entries: Entry[] = [
      ...CONDITIONS.map((condition): Entry => ({ type: "finding", condition, part: "seat" })),
      ...PARTS.map((part): Entry => ({ type: "need", part })),
      ...WORKS.map((work): Entry => ({ type: "work", work, status: "done", part: "plug" })),
      ...QUANTITIES.map((quantity): Entry => ({ type: "reading", quantity, value: 1, unit: "psi" })),
      ...UNITS.map((unit): Entry => ({ type: "reading", quantity: "pressure", value: 1, unit })),
      ...TESTS.map((test): Entry => ({ type: "test", test, result: "pass" })),
      ...HAZARDS.map((hazard): Entry => ({ type: "hazard", hazard })),
      ...COMMANDS.map((command): Entry => ({ type: "command", command })),
    ];
    for (const entry of entries) {
      expect(sayEntry(entry)).not.toMatch(/_|undefined/);
      expect(sayEntry(entry)).not.toBe("");
    }
  });
});

describe("cautions", () => {
  it.each(HAZARDS)("stand for %s and never call anything safe", (hazard) => {
    expect(AT_HAZARD[hazard].length).toBeGreaterThan(0);
    expect(AT_HAZARD[hazard].join(" ")).not.toMatch(/\bsafe(ly)?\b/i);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Mark, readPhrase } from "../../../core/index.ts";
import { stretches } from "../../../web/parts/stretches.ts";

describe("stretches of a phrase", () => {
  it("cut it along its marks", () => {
    const marks: Mark[] = [
      { at: [0, 4], as: "part", code: "seat" },
      { at: [5, 9], as: "condition", code: "worn" },
    ];
    expect(stretches("seat worn huh", marks, [{ at: [10, 13] }])).toEqual([
      { text: "seat", as: "part", code: "seat" },
      { text: " ", as: "plain" },
      { text: "worn", as: "condition", code: "worn" },
      { text: " ", as: "plain" },
      { text: "huh", as: "unread" },
    ]);
  });

  it("join a number and its unit, which are one figure", () => {
    const marks: Mark[] = [
      { at: [0, 5], as: "number" },
      { at: [6, 9], as: "number" },
      { at: [10, 14], as: "part", code: "seat" },
      { at: [15, 16], as: "number" },
    ];
    expect(stretches("fifty psi seat 2", marks, []).map((one) => one.text)).toEqual([
      "fifty psi",
      " ",
      "seat",
      " ",
      "2",
    ]);
  });

  it("leave no word out, whatever the marks are", () => {
    const mark = fc.record({ at: fc.tuple(fc.integer(), fc.integer()), as: fc.constant("part" as const) });
    fc.assert(
      fc.property(fc.string(), fc.array(mark), (text, marks) => {
        const cut = stretches(text, marks, marks.slice(0, 1));
        expect(cut.map((one) => one.text).join("")).toBe(text);
      }),
    );
  });

  it("join to the words of what the reader read", () => {
    const reading = readPhrase("upper diaphragm's torn bad and the frobnicator squeals");
    expect(
      stretches(reading.text, reading.marks, reading.unread)
        .map((one) => one.text)
        .join(""),
    ).toBe(reading.text);
  });
});

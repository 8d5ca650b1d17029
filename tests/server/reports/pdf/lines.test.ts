import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Run } from "../../../../server/reports/pdf/blocks.ts";
import { type Line, lineBreaker } from "../../../../server/reports/pdf/lines.ts";
import { typewriter } from "./typewriter.ts";

const breakLines = lineBreaker(typewriter);
const plain = (text: string): Run => ({ text, pen: "plain" });
const read = (line: Line) => line.stretches.map((one) => one.glyphs).join("");
/** plain letters are 5.25 wide: this many go on a line */
const across = (letters: number) => letters * 5.25 + 0.01;
const broken = (runs: readonly Run[], letters: number) =>
  breakLines(runs, across(letters)).map((line) => read(line).trimEnd());

describe("words broken into lines", () => {
  it.each([
    ["at spaces, which are gone then", "seat worn one side", 9, ["seat worn", "one side"]],
    [
      "behind a hyphen or slash between words",
      "spring-loaded inlet/outlet",
      8,
      ["spring-", "loaded", "inlet/", "outlet"],
    ],
    [
      "never before a digit, so tags and fractions stay whole",
      "at LCV-213 by 1/2 in",
      8,
      ["at", "LCV-213", "by 1/2", "in"],
    ],
    ["nor inside a unit", "27 ft-lbf 3 bubbles/min", 12, ["27 ft-lbf 3", "bubbles/min"]],
    ["in a word longer than the line", "abcdefghij kl", 4, ["abcd", "efgh", "ij", "kl"]],
    ["with several spaces kept inside a line", "a   b", 9, ["a   b"]],
    ["with a line for no words at all", "", 9, [""]],
  ])("%s", (_, text, letters, lines) => {
    expect(broken([plain(text)], letters)).toEqual(lines);
  });

  it("sticks words of two pens together where no space stands between them", () => {
    const runs: Run[] = [plain("replace it, "), { text: "now", pen: "alarm" }, plain("\u00a0 why")];
    expect(broken(runs, 14)).toEqual(["replace it,", "now\u00a0 why"]);
  });

  it("changes the pen where the run does, and nowhere else", () => {
    const [line] = breakLines([{ text: "LCV-7: ", pen: "strong" }, plain("one "), plain("two")], across(40));
    expect(line?.stretches.map((one) => one.glyphs)).toEqual(["LCV-7: ", "one two"]);
  });

  it("loses no letter, and nothing runs off the paper", () => {
    const text = fc.string({
      unit: fc.constantFrom("a", "W", " ", "-", "/", "7", "ż", "\u00a0", "😀"),
      maxLength: 300,
    });
    const runs = fc.array(fc.record({ text, pen: fc.constantFrom("plain" as const, "strong" as const) }), {
      maxLength: 5,
    });
    fc.assert(
      fc.property(runs, fc.integer({ min: 1, max: 80 }), (said, letters) => {
        const lines = breakLines(said, across(letters));
        expect(lines.map(read).join("").replaceAll(" ", "")).toBe(
          said
            .map((one) => one.text)
            .join("")
            .replaceAll(" ", ""),
        );
        for (const line of lines) expect(line.width).toBeLessThanOrEqual(across(letters));
      }),
    );
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Pattern, spell } from "../../../core/vocabulary/notation.ts";

describe("spelled out", () => {
  const TABLE: [line: string, ...texts: string[]][] = [
    ["seat ring", "seat ring"],
    ["(a|b) c", "a c", "b c"],
    ["[x] y", "y", "x y"],
    ["worn [out|down]", "worn", "worn out", "worn down"],
    ["(on|along) [the] edge", "on edge", "on the edge", "along edge", "along the edge"],
    ["[(a|b) [c]] d", "d", "a d", "a c d", "b d", "b c d"],
    ["valve[s]", "valve", "valves"],
  ];
  for (const [line, ...texts] of TABLE) test(line, () => expect(spell(line).sort()).toEqual(texts.sort()));
});

describe("matched word by word", () => {
  const match = (line: string, text: string): number => new Pattern(line).match(text.split(" "), 0);
  test("to the end of what it knows", () => {
    expect(match("(a|b) c", "b c d")).toBe(2);
    expect(match("(a|b) c", "c")).toBe(-1);
    expect(match("[x] y", "y")).toBe(1);
    expect(match("valve[s] leaking", "valves leaking")).toBe(2);
  });
  test("over a gap of up to three words", () => {
    expect(match("smell .. gas", "smell gas")).toBe(2);
    expect(match("smell .. gas", "smell some of that gas")).toBe(5);
    expect(match("smell .. gas", "smell a b c d gas")).toBe(-1);
  });
  test("the longest of its choices", () => expect(match("(a|a b) [c]", "a b c")).toBe(3));
  test("and it knows what it may begin with", () => {
    expect([...new Pattern("[x] (a|b) c").firsts].sort()).toEqual(["a", "b", "x"]);
  });
});

test("what a line spells, its pattern matches whole", () => {
  const word = fc.constantFrom("seat", "ring", "is", "worn", "the");
  const { line } = fc.letrec<{ line: string; piece: string }>((tie) => ({
    piece: fc.oneof(
      { maxDepth: 2, depthSize: "small" },
      word,
      fc
        .array(fc.tuple(word, tie("line")), { minLength: 2, maxLength: 3 })
        .map((list) => `(${list.map((one) => one.join(" ")).join("|")})`),
      tie("line").map((inner) => `[${inner}]`),
    ),
    line: fc.array(tie("piece"), { minLength: 1, maxLength: 2 }).map((list) => list.join(" ")),
  }));
  fc.assert(
    fc.property(line, (text) => {
      const pattern = new Pattern(text);
      for (const spelled of spell(text).filter(Boolean).slice(0, 40)) {
        const words = spelled.split(" ");
        expect(pattern.match(words, 0), `${text} / ${spelled}`).toBe(words.length);
        expect(pattern.firsts.has(words[0] as string), `${text} may begin with ${words[0]}`).toBe(true);
      }
    }),
    { numRuns: 500, seed: 3 },
  );
});

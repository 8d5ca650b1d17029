import { describe, expect, test } from "vitest";
import { BEGIN, counted, END } from "../../../core/speech/language-model.ts";
import { SaidChances } from "../../../core/speech/said-chances.ts";
import { waysHeard } from "../../../core/speech/ways-heard.ts";

const lines = ["packing nut is tight", "packing nut is loose", "mud in the packing", "seat is worn"].map((line) =>
  line.split(" "),
);
const counts = counted([{ lines, weight: 1 }], { classes: {}, unsaid: new Map(), unsaidShare: 0 });
const call = { word: "C_for_the_log", share: 0.2, alone: 0.3 };
const chances = new SaidChances(counts, counts, call);

const word = (word: string, from: number, to: number, fits: number) => ({ word, from, to, fits });
const textOf = (words: readonly { word: string }[]) => words.map(({ word }) => word).join(" ");

describe("the ways in which something may have been said", () => {
  const graph = {
    frames: 40,
    words: [
      word("<sil>", 0, 10, -100),
      word("packing", 10, 20, -300),
      word("mud", 20, 30, -298),
      word("nut", 20, 30, -300),
      word("is", 30, 35, -80),
      word("loose", 35, 40, -90),
    ],
  };
  test("come best first, each once, by sound and by what is said after what", () => {
    const ways = waysHeard(graph, chances);
    expect(ways.map(({ words }) => textOf(words))).toEqual(["packing nut is loose", "packing mud is loose"]);
    expect(ways[0]?.words[1]).toMatchObject({ word: "nut", from: 20, to: 30 });
    expect(ways[0]?.score).toBeGreaterThan(ways[1]?.score ?? 0);
  });
  test("a word that fits the sound much better wins over the likelier one", () => {
    const clear = graph.words.map((one) => (one.word === "mud" ? { ...one, fits: 3000 } : one));
    expect(textOf(waysHeard({ frames: 40, words: clear }, chances)[0]?.words ?? [])).toBe("packing mud is loose");
  });
  test("what does not reach the end was not heard", () => {
    expect(waysHeard({ frames: 41, words: graph.words }, chances)).toEqual([]);
  });
  test("nothing but room is one way, without words", () => {
    expect(waysHeard({ frames: 10, words: [word("<sil>", 0, 10, -9)] }, chances)).toMatchObject([{ words: [] }]);
  });
});

describe("what is likely next", () => {
  test("after the call a phrase begins anew, or nothing follows", () => {
    const called = chances.afterSaying(call.word, SaidChances.START);
    expect(chances.of("seat", called)).toBeCloseTo(Math.log(0.7) + chances.of("seat", [BEGIN, BEGIN]), 12);
    expect(chances.of("is", chances.afterSaying("seat", called))).toBe(chances.of("is", [BEGIN, "seat"]));
    expect(chances.of(END, called)).toBeCloseTo(Math.log(0.3), 12);
  });
  test("nobody calls in the middle of a phrase, and a word that no line has is all but impossible", () => {
    expect(chances.of(call.word, [BEGIN, "seat"])).toBeLessThan(-20);
    expect(chances.of("barbecue", [BEGIN, "seat"])).toBeLessThan(-20);
    expect(chances.of("is", [BEGIN, "seat"])).toBeGreaterThan(-2);
  });
});

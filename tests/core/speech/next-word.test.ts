import { describe, expect, test } from "vitest";
import { BEGIN, counted, END } from "../../../core/speech/language-model.ts";
import type { Layer } from "../../../core/speech/learnt/layers.ts";
import { LAYER_SIZES, NextWord, RARE } from "../../../core/speech/next-word/next-word.ts";
import { learntNextWord } from "../../../core/speech/next-word/weights.ts";
import { SaidChances } from "../../../core/speech/said-chances.ts";
import { Learner } from "../../../server/ear/learn-next-word/learner.ts";
import { Luck } from "../../../server/ear/learning/luck.ts";

const ofLine = (line: string) => {
  const words = line.split(" ");
  return [...words, END].reduce((sum, word, at) => sum + (learntNextWord().of(word, words.slice(0, at)) ?? 0), 0);
};

describe("the network of next words, as it was taught", () => {
  test.each([
    ["the seat is worn on one side", "the seat is warn on one side"],
    ["seat is cut on the outlet side", "seat is cut on the outlet sight"],
    ["torqued to forty foot pounds", "torqued two forty foot pounds"],
    ["no cracks in the bonnet", "no cracks in the bonnet's"],
  ])("finds '%s' likelier than '%s'", (likely, not) => {
    expect(ofLine(likely)).toBeGreaterThan(ofLine(not));
  });

  test("gives the log of a chance: over all words they sum to about one, with no sum ever taken", () => {
    const words = learntNextWord().words;
    for (const before of ["", "the seat", "torqued the bonnet bolts to", "replaced the"]) {
      const line = before.split(" ").filter(Boolean);
      const all = words.reduce((sum, word) => sum + Math.exp(learntNextWord().of(word, line) as number), 0);
      expect(all).toBeGreaterThan(0.5);
      expect(all).toBeLessThan(2);
    }
  });

  test("looks further back than two words", () => {
    const pounds = (line: string) => learntNextWord().of("pounds", line.split(" ")) as number;
    expect(pounds("torqued the bolts to forty foot")).not.toBeCloseTo(pounds("replaced it with a forty foot"), 3);
  });

  test("says nothing of a word that it has not learnt, and takes it for a rare one before others", () => {
    expect(learntNextWord().of("barbecue", ["the"])).toBeUndefined();
    expect(learntNextWord().of("is", ["the", "barbecue"])).toBe(learntNextWord().of("is", ["the", "zither"]));
  });

  test("fits its words, or is refused", () => {
    expect(() => new NextWord([BEGIN, END, RARE], [])).toThrow("three layers");
  });
});

describe("its teacher", () => {
  const words = [BEGIN, RARE, "seat", "plug", "is", "worn", "bent", END];
  const number = (word: string) => words.indexOf(word);
  const begin = number(BEGIN);
  const lines = ["seat is worn", "plug is bent"];

  test("teaches what a word two before says of the next", () => {
    const learner = new Learner([1, 1, 1, 1, 2, 1, 1, 2], new Luck(3));
    for (let pass = 0; pass < 700; pass++)
      for (const line of lines) {
        const row = [begin, begin, begin, begin, begin, ...line.split(" ").map(number), number(END)];
        for (let at = 5; at < row.length; at++)
          learner.learn(Int32Array.from(row.slice(at - 5, at)), row[at] as number, pass / 700);
      }
    const network = new NextWord(words, learner.layers);
    const chance = (word: string, before: string) => Math.exp(network.of(word, before.split(" ")) as number);
    expect(chance("worn", "seat is")).toBeGreaterThan(0.8);
    expect(chance("bent", "seat is")).toBeLessThan(0.1);
    expect(chance("bent", "plug is")).toBeGreaterThan(0.8);
  });
});

describe("a whole line's chance", () => {
  const layers: Layer[] = LAYER_SIZES(4).map(([from, to]) => ({
    weights: new Float32Array(from * to),
    biases: new Float32Array(to).fill(Math.log(0.25)),
  }));
  const network = new NextWord([BEGIN, RARE, "seat", END], layers);
  const counts = counted([{ lines: [["seat", "leaks"]], weight: 1 }], {
    classes: {},
    unsaid: new Map(),
    unsaidShare: 0,
  });
  const call = { word: "C_for_the_log", share: 0.2, alone: 0.3 };
  const alone = new SaidChances(counts, counts, call);
  const both = new SaidChances(counts, counts, call, network);

  test("goes half by what was counted and half by what was learnt, word by word; what was not learnt is counted alone", () => {
    const mean = (word: string, before: readonly [string, string]) =>
      0.5 * alone.of(word, before) + 0.5 * Math.log(0.25);
    expect(both.ofLine(["seat", "leaks"])).toBeCloseTo(
      mean("seat", [BEGIN, BEGIN]) + alone.of("leaks", [BEGIN, "seat"]) + mean(END, ["seat", "leaks"]),
      6,
    );
  });

  test("after the call is that of the line alone, with the call's own chance", () => {
    expect(alone.ofLine([call.word, "seat", "leaks"]) - alone.ofLine(["seat", "leaks"])).toBeCloseTo(
      Math.log(0.2 * 0.7),
      6,
    );
  });

  test("of the next word alone it is the mean of the two, which is a chance again", () => {
    expect(both.next("seat", [])).toBeCloseTo((Math.exp(alone.of("seat", [BEGIN, BEGIN])) + 0.25) / 2, 6);
    expect(both.next("leaks", ["seat"])).toBeCloseTo(Math.exp(alone.of("leaks", [BEGIN, "seat"])), 6);
  });
});

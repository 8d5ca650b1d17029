import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readPhrase } from "../../../core/index.ts";
import { ENTRY_TYPES } from "../../../core/shapes/codes.ts";
import { RECORD_SET } from "../../../core/speech/record-set/phrases.ts";
import { scoreSet } from "../../../core/speech/record-set/score.ts";
import { SAID_LINES } from "../../../core/speech/said/index.ts";
import { bareWords, sameWords } from "../../../core/speech/same-words.ts";

const read = (text: string) => readPhrase(text).entries;

describe("the phrases to measure the ear by", () => {
  it("are forty, each once, and of every kind of entry", () => {
    expect(new Set(RECORD_SET.map(bareWords)).size).toBe(40);
    const kinds = new Set(RECORD_SET.flatMap((phrase) => read(phrase).map(({ type }) => type)));
    expect(ENTRY_TYPES.filter((type) => !kinds.has(type))).toEqual([]);
  });

  it("are none that the ear was taught or measured by before", () => {
    const bench = JSON.parse(readFileSync(new URL("../../bench/hearing-set.json", import.meta.url), "utf8"));
    const known = new Set([...SAID_LINES, ...bench.phrases, ...bench.talk].map(bareWords));
    expect(known.size).toBeGreaterThan(5000);
    expect(RECORD_SET.filter((phrase) => known.has(bareWords(phrase)))).toEqual([]);
  });
});

describe("word for word", () => {
  it.each([
    ["It's a 3-inch valve.", "its a 3 inch valve"],
    ["seat,  worn", "Seat worn"],
    ["don’t", "dont"],
  ])("%s is %s", (wanted, heard) => expect(sameWords(wanted, heard)).toBe(true));
  it.each([
    ["the seat is worn", "seat is worn"],
    ["thirty two", "thirty"],
    ["seat worn", ""],
  ])("%s is not %s", (wanted, heard) => expect(sameWords(wanted, heard)).toBe(false));
});

describe("the score", () => {
  const score = scoreSet(
    [
      { wanted: "the seat is worn on one side", heard: "the seat is worn on one side", confidence: 0.9 },
      { wanted: "plug is pitted", heard: "the plug is pitted", confidence: 0.95 },
      { wanted: "stem is bent", heard: "the cage is bent", confidence: 0.6 },
      { wanted: "no cracks in the cage", heard: "", confidence: 0 },
      // neither is read as anything: that is no agreement
      { wanted: "well now then", heard: "when now then", confidence: 0.3 },
    ],
    ["it rained all night", "the seat is worn"],
    read,
  );

  it("counts what was word for word, and what means the same all the same", () => {
    expect(score).toMatchObject({ said: 5, wordForWord: 1, sameEntries: 2, unheard: 1 });
    expect(score.misses.map(({ wanted, sameEntries }) => [wanted, sameEntries])).toEqual([
      ["plug is pitted", true],
      ["stem is bent", false],
      ["no cracks in the cage", false],
      ["well now then", false],
    ]);
  });

  it("says of how many the ear was so sure and how many of those were right, each heard phrase once", () => {
    expect(score.sure).toEqual([
      { from: 0.9, said: 2, right: 1 },
      { from: 0.7, said: 0, right: 0 },
      { from: 0.5, said: 1, right: 0 },
      { from: 0, said: 1, right: 0 },
    ]);
  });

  it("counts other talk that left an entry", () => {
    expect(score.otherTalk).toEqual({ said: 2, invented: ["the seat is worn"] });
  });

  it("of nothing is nothing", () => {
    expect(scoreSet([], [], read)).toMatchObject({ said: 0, wordForWord: 0, misses: [], otherTalk: { said: 0 } });
  });
});

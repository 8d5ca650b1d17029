import { describe, expect, test } from "vitest";
import { type Chunk, chunk } from "../../../core/parse/chunks.ts";
import { splitWords } from "../../../core/parse/words.ts";
import { lexicon } from "../../../core/vocabulary/lexicon.ts";

const chunks = (text: string): Chunk[] =>
  chunk(
    splitWords(text).map((word) => word.text),
    lexicon(),
  );
const texts = (text: string): string =>
  chunks(text)
    .map((one) => one.text)
    .join(" | ");

describe("the longest stretch that a row knows", () => {
  const TABLE: [text: string, cut: string][] = [
    ["stem guide o ring is cut", "stem guide o ring | is | cut"],
    ["stem guide is cut", "stem guide | is | cut"],
    ["the diaphragm plate", "the | diaphragm plate"],
    ["washed out bad", "washed out | bad"],
    ["twenty eight foot pounds", "twenty eight | foot pounds"],
    ["no leak at sixty psi", "no leak | at | sixty | psi"],
    ["l c v two one three", "l c v two one three"],
    ["good to go back in", "good to go back in"],
    ["all the way around", "all the way around"],
    ["close it out", "close it out"],
  ];
  for (const [text, cut] of TABLE) test(text, () => expect(texts(text)).toBe(cut));
});

describe("every word is in one chunk and only one", () => {
  for (const text of [
    "seat worn one side and flipped it",
    "blorft the gnarl",
    "a",
    "one two three four",
    "take a seat and eat your lunch",
  ])
    test(text, () => {
      const all = chunks(text);
      const words = splitWords(text).length;
      expect(all[0]?.from).toBe(0);
      for (const [at, one] of all.entries()) expect(one.to).toBe(all[at + 1]?.from ?? words);
    });
});

describe("what a chunk is", () => {
  const only = (text: string): Chunk => {
    const all = chunks(text);
    expect(all, texts(text)).toHaveLength(1);
    return all[0] as Chunk;
  };
  test("a part, and whether it is many", () => {
    expect(only("seat ring").senses).toMatchObject({ part: "seat" });
    expect(only("backup rings").senses).toMatchObject({ part: "backup_ring", plural: true });
    expect(only("jam nut").senses).toMatchObject({ part: "lock_nut" });
  });
  test("a condition in the form it is said in", () => {
    expect(only("pitted").senses.condition).toContainEqual({ code: "pitted", form: "is" });
    expect(only("pitting").senses.condition).toContainEqual({ code: "pitted", form: "has" });
    expect(only("leaks").senses.condition).toContainEqual({ code: "leaking", form: "does" });
  });
  test("work and its form", () => {
    expect(only("replaced").senses.work).toContainEqual({ code: "replaced", form: "past", with: undefined });
    expect(only("lapping").senses.work?.some((one) => one.code === "lapped")).toBe(true);
  });
  test("a number, a tag, a hazard, a command", () => {
    expect(only("a hundred and five").number?.value).toBe(105);
    expect(only("pv 104 b").tag).toBe("PV-104B");
    expect(only("smell gas").hazard).toBe("gas");
    expect(only("take a picture").command).toBe("photo");
  });
  test("talk, a plain word, a word nobody knows", () => {
    expect(only("lunch").talk).toBe(true);
    expect(only("uh").senses).toEqual(expect.objectContaining({}));
    expect(only("blorft").unknown).toBe(true);
  });
});

describe("an idiom hides the trade words in it", () => {
  for (const text of ["take a seat", "spring break", "black hole", "home plate"])
    test(text, () => expect(chunks(text).every((one) => one.talk === true)).toBe(true));
});

test("a hazard denied is none", () => {
  expect(chunks("no gas alarm").some((one) => one.hazard)).toBe(false);
  expect(chunks("gas alarm").some((one) => one.hazard === "gas")).toBe(true);
});

test("a command about something else is talk", () => {
  expect(chunks("what's left of that pizza").some((one) => one.command)).toBe(false);
  expect(chunks("what's left").some((one) => one.command === "missing")).toBe(true);
  expect(chunks("what's left on the valve").some((one) => one.command === "missing")).toBe(true);
});

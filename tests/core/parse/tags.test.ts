import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readTag, readTagDigits } from "../../../core/parse/tags.ts";
import { splitWords } from "../../../core/parse/words.ts";
import { LETTER_SOUNDS, SPELLING_ALPHABET, TAG_GROUPS } from "../../../core/vocabulary/letters.ts";

const list = (text: string): string[] => splitWords(text).map((word) => word.text);
const read = (text: string): string | undefined => readTag(list(text), 0)?.tag;

const SAID: [text: string, tag: string][] = [
  ["L C V two one three", "LCV-213"],
  ["x-ray victor two one three", "XV-213"],
  ["em oh vee one oh four", "MOV-104"],
  ["dee pee vee sixteen", "DPV-16"],
  ["LCV-213", "LCV-213"],
  ["lcv213", "LCV-213"],
  ["LCV 213", "LCV-213"],
  ["l.c.v. two thirteen", "LCV-213"],
  ["pee vee one oh four bravo", "PV-104B"],
  ["PV-104B", "PV-104B"],
  ["p v one zero four b", "PV-104B"],
  ["hotel victor three three", "HV-33"],
  ["lima charlie victor two one three", "LCV-213"],
  ["el see vee two one three", "LCV-213"],
  ["ell cee vee two hundred thirteen", "LCV-213"],
  ["X V eleven oh two", "XV-1102"],
  ["T C V six twelve", "TCV-612"],
  ["F C V five hundred", "FCV-500"],
  ["F C V twelve hundred", "FCV-1200"],
  ["P V double four one", "PV-441"],
  ["L C V triple seven", "LCV-777"],
  ["P V forty one", "PV-41"],
  ["L C V dash two one three", "LCV-213"],
  ["L C V number nine", "LCV-9"],
  ["L C V two one three alpha", "LCV-213A"],
  ["lcv two one three charlie", "LCV-213C"],
  ["el see vee to oh nine", "LCV-209"],
];

describe("a tag, however it is said", () => {
  for (const [text, tag] of SAID) test(text, () => expect(read(text)).toBe(tag));
});

describe("what is no tag", () => {
  for (const text of [
    "see you two",
    "are you for real",
    "pee two times",
    "a 213",
    "seat one",
    "plug two",
    "in two one three",
    "okay two",
    "you",
    "lcv",
    "v",
    "",
    "tea for two",
    "we are 2",
    "oh 4",
    "ft 28",
  ])
    test(JSON.stringify(text), () => expect(read(text)).toBeUndefined());
});

test("the size behind a tag is no part of its number", () => {
  expect(readTag(list("l c v one oh two two inch"), 0)).toEqual({ tag: "LCV-102", end: 6 });
  expect(readTag(list("pv 104 3 in"), 0)).toMatchObject({ tag: "PV-104" });
});

test("digits alone, as a correction says them", () => {
  expect(readTagDigits(list("four twelve"), 0)).toEqual({ digits: "412", end: 2 });
  expect(readTagDigits(list("two oh nine"), 0)?.digits).toBe("209");
  expect(readTagDigits(list("441"), 0)?.digits).toBe("441");
  expect(readTagDigits(list("seat"), 0)).toBeUndefined();
});

test("every known group comes back in letters, written together and spelled", () => {
  const spelling = Object.fromEntries(Object.entries(SPELLING_ALPHABET).map(([word, letter]) => [letter, word]));
  const digit = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
  fc.assert(
    fc.property(
      fc.constantFrom(...TAG_GROUPS),
      fc.stringMatching(/^[1-9]\d{1,3}$/),
      fc.constantFrom("", "b", "c", "d"),
      (group, number, trailing) => {
        const want = `${group}-${number}${trailing}`.toUpperCase();
        const digits = [...number].map((one) => digit[Number(one)]).join(" ");
        const behind = trailing ? ` ${spelling[trailing]}` : "";
        expect(read(want)).toBe(want);
        expect(read(`${group}${number}${trailing}`)).toBe(want);
        expect(read(`${[...group].join(" ")} ${digits}${behind}`)).toBe(want);
        expect(read(`${[...group].map((letter) => spelling[letter]).join(" ")} ${digits}${behind}`)).toBe(want);
      },
    ),
    { numRuns: 400, seed: 2 },
  );
});

test("every letter has a sound or a spelling word", () => {
  const letters = new Set(Object.values({ ...LETTER_SOUNDS, ...SPELLING_ALPHABET }).join(""));
  expect([..."abcdefghijklmnopqrstuvwxyz"].filter((letter) => !letters.has(letter))).toEqual([]);
});

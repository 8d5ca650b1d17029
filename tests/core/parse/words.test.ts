import { describe, expect, test } from "vitest";
import { splitWords } from "../../../core/parse/words.ts";

const words = (text: string): string =>
  splitWords(text)
    .map((word) => word.text)
    .join(" ");

/** What is said or written, and the words it becomes. */
const TABLE: [about: string, text: string, becomes: string][] = [
  ["case", "Seat WORN One Side", "seat worn one side"],
  ["stops", "seat worn, one side. Flipped!", "seat worn one side flipped"],
  ["an apostrophe", "seat's worn, can't tell", "seats worn cant tell"],
  ["a curly apostrophe", "seat’s worn", "seats worn"],
  ["a swallowed g", "it's passin' and leakin'", "its passing and leaking"],
  ["a swallowed g, curly", "blowin’ by", "blowing by"],
  ["hyphens join words", "o-ring, wire-brushed", "o ring wire brushed"],
  ["a hyphen between numbers is a range", "25-30 ft lbs", "25 to 30 ft lbs"],
  ["a dash between numbers is a range", "25–30", "25 to 30"],
  ["a hyphen before a number is none", "LCV-213", "lcv 213"],
  ["a spaced dash is none", "25 - 30", "25 30"],
  ["letters and digits part", "lcv213 2in", "lcv 213 2 in"],
  ["a trailing letter parts", "PV-104B", "pv 104 b"],
  ["a fraction", "5 3/8 in", "5 3/8 in"],
  ["a sign of a fraction", "½ inch and ⅜", "1/2 inch and 3/8"],
  ["a decimal", "0.45 in", "0.45 in"],
  ["a decimal without its zero", ".5 in", ".5 in"],
  ["a number's own commas", "1,200 psi", "1200 psi"],
  ["commas of a list", "2, 3, 4", "2 3 4"],
  ["a point that ends the phrase", "torqued to 28.", "torqued to 28"],
  ["inches behind a number", '2" valve', "2 inch valve"],
  ["quotes around words", 'he said "fine"', "he said fine"],
  ["pounds behind a number", "60# on it", "60 lbs on it"],
  ["a hash before a number", "valve #3", "valve 3"],
  ["percent and degrees", "50% at 98° F", "50 % at 98 degrees f"],
  ["with and without", "torqued w/ grease, w/o gasket", "torqued with grease without gasket"],
  ["at, and, about", "28 @ 3 & ~4", "28 at 3 and about 4"],
  ["more and less", "<30 >20", "< 30 > 20"],
  ["letters with accents", "café valve", "café valve"],
  ["nothing", "", ""],
  ["no word at all", "… ?! —", ""],
];

describe("a phrase becomes words", () => {
  for (const [about, text, becomes] of TABLE) test(`${about}: ${text}`, () => expect(words(text)).toBe(becomes));
});

describe("each word knows its place", () => {
  for (const [about, text] of TABLE)
    test(about, () => {
      let end = 0;
      for (const { from, to } of splitWords(text)) {
        expect(from).toBeGreaterThanOrEqual(end);
        expect(to).toBeGreaterThan(from);
        end = to;
      }
      expect(end).toBeLessThanOrEqual(text.length);
    });

  test("as it was written", () => {
    const text = "Seat's worn, 25-30 ft.";
    expect(splitWords(text).map(({ from, to }) => text.slice(from, to))).toEqual([
      "Seat's",
      "worn",
      "25",
      "-",
      "30",
      "ft",
    ]);
  });
});

test("words that name an object's own keys are words", () => {
  expect(words("constructor toString __proto__ valueOf")).toBe("constructor tostring proto valueof");
});

test("a breath has an end: two thousand words", () => {
  expect(splitWords("seat ".repeat(5000))).toHaveLength(2000);
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readNumber } from "../../../core/parse/numbers.ts";
import { splitWords } from "../../../core/parse/words.ts";
import { inDigits, inPairs, inWords } from "./spoken-numbers.ts";

function read(text: string): number | [number, number] | undefined {
  const words = splitWords(text).map((word) => word.text);
  const found = readNumber(words, 0);
  if (!found || found.end !== words.length) return undefined;
  return found.upper === undefined ? found.value : [found.value, found.upper];
}

/** Every form of the contract, and the ones next to it. */
const FORMS: [text: string, value: number | [number, number]][] = [
  ["twenty eight", 28],
  ["twenty-eight", 28],
  ["28", 28],
  ["a hundred and five", 105],
  ["one hundred five", 105],
  ["hundred and five", 105],
  ["a hundred", 100],
  ["two hundred and fifty", 250],
  ["one twenty", 120],
  ["one oh five", 105],
  ["two fifty", 250],
  ["nineteen fifty", 1950],
  ["nineteen oh five", 1905],
  ["twelve hundred", 1200],
  ["fifteen hundred and fifty", 1550],
  ["a thousand", 1000],
  ["two thousand", 2000],
  ["one thousand two hundred", 1200],
  ["two thousand three hundred and forty five", 2345],
  ["1,200", 1200],
  ["3 hundred", 300],
  ["two and a half", 2.5],
  ["two and three quarters", 2.75],
  ["four and a quarter", 4.25],
  ["five three eighths", 5.375],
  ["five and three eighths", 5.375],
  ["5 3/8", 5.375],
  ["3/8", 0.375],
  ["three eighths", 0.375],
  ["five eighths", 0.625],
  ["a half", 0.5],
  ["half", 0.5],
  ["one half", 0.5],
  ["a quarter", 0.25],
  ["three quarters", 0.75],
  ["an eighth", 0.125],
  ["seven sixteenths", 0.4375],
  ["three thirty seconds", 0.09375],
  ["nine sixty fourths", 0.140625],
  ["½", 0.5],
  ["point four five", 0.45],
  ["zero point four five", 0.45],
  ["two point five", 2.5],
  ["point oh one two", 0.012],
  ["twelve point twenty five", 12.25],
  ["0.45", 0.45],
  [".5", 0.5],
  ["zero", 0],
  ["a couple", 2],
  ["a dozen", 12],
  ["twenty five to thirty", [25, 30]],
  ["25-30", [25, 30]],
  ["between eighty and ninety", [80, 90]],
  ["from three to fifteen", [3, 15]],
  ["three to fifteen", [3, 15]],
  ["twenty ate", 28],
];

describe("forms of a number", () => {
  for (const [text, value] of FORMS) test(text, () => expect(read(text)).toEqual(value));
});

describe("what is no number, or not to its end", () => {
  for (const text of ["", "a", "and five", "the", "seat", "point", "between five", "1/0", "to"])
    test(JSON.stringify(text), () => expect(read(text)).toBeUndefined());
  test("a range does not run backwards", () => expect(read("thirty to twenty")).toBeUndefined());
  test("the bare word one is marked as such", () => {
    expect(readNumber(["one"], 0)).toMatchObject({ value: 1, bareOne: true });
    expect(readNumber(["one", "twenty"], 0)).toEqual({ value: 120, end: 2 });
  });
  test("a fraction below one is marked, since it counts nothing", () => {
    expect(readNumber(["three", "eighths"], 0)).toMatchObject({ fraction: true });
    expect(readNumber(["two", "and", "a", "half"], 0)?.fraction).toBeUndefined();
  });
});

describe("every whole number from 0 to 9999 comes back from how it is said", () => {
  const STYLES = {
    "in words": inWords,
    "in words with and": (value: number) => inWords(value, "and"),
    "in pairs, as pressures are said": inPairs,
    "in digits": inDigits,
  };
  for (const [style, say] of Object.entries(STYLES))
    test(style, () => {
      const wrong: string[] = [];
      for (let value = 0; value <= 9999; value += 1) {
        const text = say(value);
        if (text !== undefined && read(text) !== value) wrong.push(`${value}: ${text} -> ${read(text)}`);
      }
      expect(wrong).toEqual([]);
    });
});

test("decimals come back digit by digit", () => {
  const digit = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 99 }), fc.stringMatching(/^\d{0,2}[1-9]$/), (whole, decimals) => {
      const spoken = [...decimals].map((one) => digit[Number(one)]).join(" ");
      expect(read(`${inWords(whole)} point ${spoken}`)).toBe(Number(`${whole}.${decimals}`));
      expect(read(`${whole}.${decimals}`)).toBe(Number(`${whole}.${decimals}`));
    }),
  );
});

test("ranges come back with both ends", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 500 }), fc.integer({ min: 1, max: 500 }), (low, step) => {
      const high = low + step;
      expect(read(`${inWords(low)} to ${inWords(high)}`)).toEqual([low, high]);
      expect(read(`${low}-${high}`)).toEqual([low, high]);
      expect(read(`between ${low} and ${high}`)).toEqual([low, high]);
    }),
  );
});

import type { Style } from "./field.ts";

/** Numbers and tags as the three people say or write them. */

const DIGITS = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
const TEENS = [
  "ten",
  "eleven",
  "twelve",
  "thirteen",
  "fourteen",
  "fifteen",
  "sixteen",
  "seventeen",
  "eighteen",
  "nineteen",
];
const TENS = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
const ALPHABET: Record<string, string> = { F: "foxtrot", L: "lima", C: "charlie", V: "victor", P: "papa", T: "tango" };

/** 0 to 999 in words. */
export function inWords(n: number): string {
  if (n < 10) return DIGITS[n] ?? "";
  if (n < 20) return TEENS[n - 10] ?? "";
  if (n < 100) return [TENS[Math.floor(n / 10)], n % 10 ? DIGITS[n % 10] : ""].filter(Boolean).join(" ");
  const rest = n % 100;
  return `${DIGITS[Math.floor(n / 100)]} hundred${rest ? ` and ${inWords(rest)}` : ""}`;
}

export function tagSaid(tag: string, style: Style): string {
  const [letters = "", number = ""] = tag.split("-");
  if (style === "short") return tag;
  const digits = [...number].map((digit) => (digit === "0" ? "oh" : DIGITS[Number(digit)])).join(" ");
  if (style === "plain") return `${[...letters].join(" ")} ${digits}`;
  return `${[...letters].map((letter) => ALPHABET[letter] ?? letter).join(" ")} ${digits}`;
}

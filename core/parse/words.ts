/**
 * Step 1: a phrase becomes words, each with its place in the text.
 * Case, punctuation, apostrophes and hyphens do not reach the later steps: speech has none of them.
 */

import { wordTable } from "../vocabulary/notation.ts";
import { isNextAbove, MEASURED, readNumber } from "./numbers.ts";

/** A word of a phrase and where it stands in the text. */
export interface Word {
  /** lower case, letters or digits only ("seats" for "seat's"); a number keeps its point and stroke */
  text: string;
  /** first and one past last character */
  from: number;
  to: number;
}

const PIECE =
  /w\/o?(?=\s)|\d+\/\d+|\d+(?:,\d{3})+(?:\.\d+)?|\d+\.\d+|\d+|\.\d+|[a-z\u00c0-\u024f]+(?:['’`][a-z]+)*|[#%"°½¼¾⅜⅝⅞⅛@&~<>–-]/gi;
const SIGNS: Record<string, string> = wordTable({
  "#": "lbs",
  "%": "%",
  '"': "inch",
  "°": "degrees",
  "@": "at",
  "&": "and",
  "~": "about",
  "<": "<",
  ">": ">",
  "w/": "with",
  "w/o": "without",
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅛": "1/8",
});
const DIGIT = /^[\d.]/;
const LETTERS = /^[a-z]+$/i;

/** "at fifty, two bubbles": a comma ends a number that the next word could go on with. */
const OPEN_NUMBER = /^(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand)$/;
const DIGIT_WORD = /^(?:one|two|three|four|five|six|seven|eight|nine)$/i;

const TENS_WORD = /^(?:ten|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty)$/i;
/** "all eight, thirty foot pounds" likewise: the comma stands between two numbers. */
const endsNumber = (before: string, next: string): boolean =>
  (OPEN_NUMBER.test(before) && DIGIT_WORD.test(next)) || (DIGIT_WORD.test(before) && TENS_WORD.test(next));

/** Words run together that no other step could tell from a plural: "four's", "that'n's", "this'n". */
const RUN_TOGETHER =
  /^(?:(two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)['’`](s)|(this|that|other)(['’`]?n)(['’`]s)?)$/i;
/** Spellings of how a word is said. */
const SPELLED: Record<string, string> = wordTable({ caint: "cant" });

/** "four's" is four and "is", "that'n" is that one. */
function apart(raw: string, from: number): Word[] {
  const [, count, s, pointing, n = "", is] = RUN_TOGETHER.exec(raw) ?? [];
  const first = count ?? pointing;
  if (!first) return [];
  const behind = s ? ["is"] : is ? ["one", "is"] : ["one"];
  const start = from + first.length;
  const ends = s || !is ? [from + raw.length] : [start + n.length, from + raw.length];
  return [
    { text: first.toLowerCase(), from, to: start },
    ...behind.map((text, nth) => ({ text, from: ends[nth - 1] ?? start, to: ends[nth] as number })),
  ];
}

/** The word without its apostrophes: "seats" for "seat's", "her" for "'er". */
function wordOf(raw: string, before = ""): string {
  const lower = raw.toLowerCase();
  const text = LETTERS.test(raw) ? lower : lower.replace(/['’`]/g, "");
  if (text === "er" && /['’`]/.test(before)) return "her";
  return SPELLED[text] ?? text;
}

/** A phrase longer than this is kept whole but read only this far: nobody says more in one breath. */
export const MOST_WORDS = 2000;

/** "The seat's worn 1/2\"" → "the", "seats", "worn", "1/2", "inch". */
export function splitWords(text: string): Word[] {
  const words: Word[] = [];
  const commas: number[] = [];
  const hasComma = text.includes(",");
  PIECE.lastIndex = 0;
  for (let match = PIECE.exec(text); match && words.length < MOST_WORDS; match = PIECE.exec(text)) {
    const raw = match[0];
    const from = match.index;
    const to = from + raw.length;
    if (raw === "-" || raw === "–") {
      // "25-30" is a range, "6-1/4" is six and a quarter; every other hyphen only joins words
      const before = words[words.length - 1];
      const mixed = /^\d+\/\d/.test(text.slice(to, to + 4));
      if (before && before.to === from && DIGIT.test(before.text) && /\d/.test(text[to] ?? "") && !mixed)
        words.push({ text: "to", from, to });
      continue;
    }
    const before = words[words.length - 1];
    if (hasComma && before && /^\s*,/.test(text.slice(before.to, from))) {
      commas.push(words.length);
      if (endsNumber(before.text, raw)) words.push({ text: "then", from: before.to, to: before.to + 1 });
    }
    const sign = LETTERS.test(raw) ? undefined : SIGNS[raw.toLowerCase()];
    if (sign !== undefined) {
      if ((raw === '"' || raw === "#") && !(before && DIGIT.test(before.text) && before.to === from)) continue;
      words.push({ text: sign, from, to });
      continue;
    }
    const several = apart(raw, from);
    if (several.length > 0) {
      words.push(...several);
      continue;
    }
    // "passin'": the g is swallowed
    const swallowed = raw.length > 4 && /in$/i.test(raw) && /['’]/.test(text[to] ?? "") ? "g" : "";
    words.push({
      text: DIGIT.test(raw) ? raw.replaceAll(",", "") : wordOf(raw, text[from - 1]) + swallowed,
      from,
      to,
    });
  }
  return commas.length > 0 ? withRanges(words, commas) : words;
}

/** "ten, twelve psi": between two numbers of one measure, the second a little higher, the comma is a "to". */
function withRanges(words: readonly Word[], commas: readonly number[]): Word[] {
  const list = words.map((word) => word.text);
  const joints = new Set(commas.filter((at) => joinsRange(list, at)));
  return words.flatMap((word, at) => {
    const joined = joints.has(at) && word.text === "then" ? [] : [word];
    return joints.has(at) ? [{ text: "to", from: word.from - 1, to: word.from }, ...joined] : joined;
  });
}

function joinsRange(list: readonly string[], at: number): boolean {
  const high = readNumber(list, list[at] === "then" ? at + 1 : at);
  if (!high || high.upper !== undefined || !MEASURED.test(list[high.end] ?? "")) return false;
  for (let from = Math.max(0, at - 4); from < at; from += 1) {
    const low = readNumber(list.slice(0, at), from);
    // "L V six two, three inch": digits of a tag are no guess
    const spelled = /^[a-z]$/.test(list[from - 1] ?? "") || readNumber(list, from - 1) !== undefined;
    if (low?.end === at) return !spelled && isNextAbove(low.value, high.value);
  }
  return false;
}

/** Step 2b: a valve's tag, however it is said. */

import { LETTER_SOUNDS, SPELLING_ALPHABET, TAG_GROUPS } from "../vocabulary/letters.ts";
import { ONES, SOUND_NUMBERS, TEENS, TENS } from "../vocabulary/numerals.ts";

/**
 * A tag as the log writes it: "L C V two one three" LCV-213, "pee vee one oh four bravo" PV-104B,
 * "hotel victor three three" HV-33, "lcv213". Upper case, one hyphen, a trailing letter kept on.
 */
export interface TagRead {
  tag: string;
  end: number;
}

const MOST_LETTERS = 5;

/** Words after a number that show it is a quantity and no part of a tag. */
const UNITS_AFTER = new Set([
  "inch",
  "inches",
  "in",
  "psi",
  "pounds",
  "pound",
  "foot",
  "bolts",
  "percent",
  "bar",
  "lbs",
  "minutes",
  "seconds",
  "degrees",
]);

/** The tag that starts at `start`: "L C V two one three" is LCV-213. */
export function readTag(words: readonly string[], start: number): TagRead | undefined {
  const group = readLetters(words, start);
  if (!group) return undefined;
  const digits = readTagDigits(words, group.end);
  if (!digits) return undefined;
  const trailing = readTrailing(words, digits.end);
  return { tag: `${group.letters.toUpperCase()}-${digits.digits}${trailing.letter.toUpperCase()}`, end: trailing.end };
}

function readLetters(words: readonly string[], start: number): { letters: string; end: number } | undefined {
  let letters = "";
  let at = start;
  let sounds = 0;
  let spelled = 0;
  while (at < words.length && letters.length < MOST_LETTERS) {
    const word = words[at] as string;
    if (word === "x" && words[at + 1] === "ray") {
      letters += "x";
      spelled += 1;
      at += 1;
    } else if (letters !== "" && word === "oh" && /^(?:v|vee)$/.test(words[at + 1] ?? "")) {
      // "em oh vee": between letters it is none of the number's
      letters += "o";
      sounds += 1;
    } else if (/^[a-z]$/.test(word)) letters += word;
    else if (SPELLING_ALPHABET[word]) {
      letters += SPELLING_ALPHABET[word];
      spelled += 1;
    } else if (LETTER_SOUNDS[word] && (letters === "" || sounds + letters.length > 0)) {
      letters += LETTER_SOUNDS[word];
      sounds += 1;
    } else if (word === "double" && (words[at + 1] === "u" || words[at + 1] === "you")) {
      letters += "w";
      at += 1;
    } else if (letters === "" && /^[a-z]{2,5}$/.test(word) && TAG_GROUPS.has(word)) {
      return { letters: word, end: at + 1 };
    } else break;
    at += 1;
  }
  if (letters.length === 0) return undefined;
  // "ell sea be two oh nine": B is heard for V, and no valve is called so
  if (sounds > 0 && !TAG_GROUPS.has(letters) && /[bd]$/.test(letters) && TAG_GROUPS.has(`${letters.slice(0, -1)}v`))
    letters = `${letters.slice(0, -1)}v`;
  const known = TAG_GROUPS.has(letters);
  // "dee pee vee": sounds that are no words of their own spell whatever the plant calls its valves
  if (letters.endsWith("v") && letters.length <= 4 && words.slice(start, at).every((word) => SPELLS.test(word)))
    return { letters, end: at };
  if (letters.length === 1) return letters === "v" && words[start] === "v" ? { letters, end: at } : undefined;
  // sounds are everyday words ("are you two"): only a known letter group, or spelled letters, make a tag of them
  if (known || spelled === letters.length || (sounds === 0 && letters.endsWith("v"))) return { letters, end: at };
  return sounds === 0 && spelled === 0 && letters.length <= 4 && !/^(?:ps|cc|om|pm|am|ft|in|oh|o)/.test(letters)
    ? { letters, end: at }
    : undefined;
}

const SPELLS = /^(?:[a-z]|dee|pee|vee|cee|bee|eff|ell|em|en|ess|tee|kay|jay|gee|aitch|ex|zee|zed|cue)$/;

const digitOf = (word: string): number | undefined => ONES[word];
const digitHeard = (word: string): number | undefined => ONES[word] ?? SOUND_NUMBERS[word];

/** The number of a tag: digits one by one, in pairs, or as a number ("eleven oh two", "six twelve", "five hundred"). */
export function readTagDigits(words: readonly string[], start: number): { digits: string; end: number } | undefined {
  let digits = "";
  let at = start;
  if (words[at] === "dash" || words[at] === "number") at += 1;
  while (at < words.length && digits.length < 6) {
    const word = words[at] as string;
    const next = words[at + 1] ?? "";
    let piece: string | undefined;
    let took = 1;
    if (/^\d+$/.test(word)) piece = word;
    else if (word === "double" && digitOf(next) !== undefined) {
      piece = `${digitOf(next)}${digitOf(next)}`;
      took = 2;
    } else if (word === "triple" && digitOf(next) !== undefined) {
      piece = String(digitOf(next)).repeat(3);
      took = 2;
    } else if (digitOf(word) !== undefined) {
      if (next === "hundred") {
        piece = readHundred(words, at);
        took = hundredWords(words, at);
      } else if (next === "thousand") {
        piece = `${digitOf(word)}000`;
        took = 2;
      } else piece = String(digitOf(word));
    } else if (TEENS[word] !== undefined) {
      piece = next === "hundred" ? `${TEENS[word]}00` : String(TEENS[word]);
      took = next === "hundred" ? 2 : 1;
    } else if (TENS[word] !== undefined) {
      // "forty too" is forty two, where no size follows
      const sounded = soundsLikeDigit(words, at + 1, `${digits}0`) ? SOUND_NUMBERS[next] : undefined;
      const one = digitOf(next) ?? (sounded === undefined ? undefined : sounded);
      piece = one && next !== "o" && next !== "oh" ? String((TENS[word] as number) + one) : String(TENS[word]);
      took = one && next !== "o" && next !== "oh" ? 2 : 1;
    } else if (next === "hundred" && digits === "" && digitHeard(word) !== undefined) {
      // "too hundred five"
      piece = readHundred(words, at);
      took = hundredWords(words, at);
    } else if (SOUND_NUMBERS[word] !== undefined && soundsLikeDigit(words, at, digits))
      piece = String(SOUND_NUMBERS[word]);
    if (piece === undefined || digits.length + piece.length > 8) break;
    // "one oh two two inch": the last two belongs to the size, not the tag
    if (digits && UNITS_AFTER.has(words[at + took] ?? "") && !isOneAndPart(words, at + took)) break;
    digits += piece;
    at += took;
  }
  return digits ? { digits, end: at } : undefined;
}

/** "three one seven, inch and a half": one inch and a half, so that the digit before it is the tag's. */
const isOneAndPart = (words: readonly string[], at: number): boolean =>
  words[at] === "inch" && words[at + 1] === "and" && /^(?:a|one|three)$/.test(words[at + 2] ?? "");

/** "el see vee to oh nine": a sound stands for a digit first in the number before another, or between two. */
function soundsLikeDigit(words: readonly string[], at: number, digits: string): boolean {
  const after = words[at + 1] ?? "";
  // before a trailing letter, or last where the tag ends the phrase or a plain word follows
  const closes =
    digits !== "" &&
    words[at] !== "to" &&
    (SPELLING_ALPHABET[after] !== undefined ||
      at + 1 >= words.length ||
      (/^(?:too|ate|niner|won|fore)$/.test(words[at] ?? "") && !/^(?:bad|much|it|many)$/.test(after)) ||
      (words[at] === "for" && /^(?:seat|plug|stem|cage|okay)/.test(after)));
  if (closes) return true;
  const digitAfter =
    ONES[after] !== undefined ||
    TEENS[after] !== undefined ||
    TENS[after] !== undefined ||
    /^\d/.test(after) ||
    // "to won three"
    (SOUND_NUMBERS[after] !== undefined && ONES[words[at + 2] ?? ""] !== undefined);
  return (
    digitAfter ||
    (digits !== "" && words[at] !== "to" && words[at] !== "for" && words[at] !== "too" && at + 1 >= words.length) ||
    (digits === "" && at + 1 >= words.length)
  );
}

function readHundred(words: readonly string[], at: number): string {
  const base = (digitHeard(words[at] as string) as number) * 100;
  const from = words[at + 2] === "and" ? at + 3 : at + 2;
  const word = words[from] ?? "";
  if (TENS[word] !== undefined) return String(base + (TENS[word] as number) + (digitOf(words[from + 1] ?? "") ?? 0));
  if (TEENS[word] !== undefined) return String(base + (TEENS[word] as number));
  return String(base + (digitOf(word) ?? 0));
}

function hundredWords(words: readonly string[], at: number): number {
  const from = words[at + 2] === "and" ? at + 3 : at + 2;
  const word = words[from] ?? "";
  if (TENS[word] !== undefined) return from - at + (digitOf(words[from + 1] ?? "") ? 2 : 1);
  if (TEENS[word] !== undefined || digitOf(word) !== undefined) return from - at + 1;
  return 2;
}

function readTrailing(words: readonly string[], at: number): { letter: string; end: number } {
  const word = words[at] ?? "";
  const next = words[at + 1] ?? "";
  if (SPELLING_ALPHABET[word] && word !== "mike" && word !== "fox")
    return { letter: SPELLING_ALPHABET[word], end: at + 1 };
  if (/^[b-hj-np-z]$/.test(word) && next !== "ring" && !/^[a-z]$/.test(next)) return { letter: word, end: at + 1 };
  if (word === "a" && (at + 1 >= words.length || /^(?:is|seat|plug|stem|cage|bonnet|body|packing)/.test(next)))
    return { letter: "a", end: at + 1 };
  if ((word === "bee" || word === "cee" || word === "dee" || word === "ay") && LETTER_SOUNDS[word])
    return { letter: LETTER_SOUNDS[word] as string, end: at + 1 };
  return { letter: "", end: at };
}

import { COMMAND_ROWS, HAZARD_ROWS } from "../../core/vocabulary/alarms.ts";
import { CONFUSIONS } from "../../core/vocabulary/confusions.ts";
import { GRAMMAR, PLAIN, TURNS } from "../../core/vocabulary/grammar.ts";
import { SPELLING_ALPHABET } from "../../core/vocabulary/letters.ts";
import { lexicon } from "../../core/vocabulary/lexicon.ts";
import { BOUND_ROWS, QUANTITY_ROWS, UNIT_ROWS } from "../../core/vocabulary/measures.ts";
import { spell } from "../../core/vocabulary/notation.ts";
import { COUNT_WORDS, FRACTIONS, ONES, SCALES, TEENS, TENS } from "../../core/vocabulary/numerals.ts";
import { PART_ROWS } from "../../core/vocabulary/parts.ts";
import { TALK } from "../../core/vocabulary/talk.ts";
import { CORPORA, isLookedAt, loadCases } from "../corpora/corpus.ts";
import type { Chance } from "./chance.ts";

const spelled = (lines: readonly string[]): string[] =>
  lines.flatMap((line) => spell(line)).filter((text) => text && !text.includes(".."));

const NUMBERS = [ONES, TEENS, TENS, SCALES, FRACTIONS, COUNT_WORDS].flatMap((table) => Object.keys(table));
const WRITTEN = [
  "28",
  "3/8",
  "5 3/8",
  "0.45",
  ".5",
  "25-30",
  "1,200",
  "2in",
  "60#",
  '2"',
  "½",
  "0/0",
  "1/0",
  "00",
  "99999999",
  "LCV-213",
  "pv104b",
  "H2S",
  "o-ring",
  "don't",
  "passin'",
  "w/",
];
const STRANGE = [
  "",
  "-",
  "--",
  "…",
  "'",
  "''",
  "’",
  "\u0000",
  "\n",
  "\t",
  "é",
  "ß",
  "👍",
  "\ud800",
  "日本",
  "<b>",
  "__proto__",
  "constructor",
  "toString",
  "hasOwnProperty",
  "NaN",
  "null",
  "%",
  "°",
  "@",
  "&",
  "~",
  "(",
  ")",
  "[",
  "]",
  "|",
  "\\",
  "$1",
  "9".repeat(40),
  "a".repeat(60),
];

/** What random phrases are made of: each list is as likely as another, so that rare words meet often. */
export const POOLS: readonly (readonly string[])[] = [
  [...lexicon().tradeWords],
  spelled(PART_ROWS.flatMap((row) => row.say)),
  spelled(Object.values(GRAMMAR).flat()),
  [...PLAIN],
  [...TALK],
  NUMBERS,
  spelled([...UNIT_ROWS, ...BOUND_ROWS, ...QUANTITY_ROWS].flatMap((row) => row.say)),
  spelled(HAZARD_ROWS.flatMap((row) => row.say).filter((line) => line.length < 60)),
  spelled(COMMAND_ROWS.flatMap((row) => row.say)),
  spelled(Object.values(TURNS).flat()),
  Object.keys(SPELLING_ALPHABET),
  CONFUSIONS.map((row) => row.example),
  WRITTEN,
  STRANGE,
];

// what is only scored is kept out, lest a failure here shows it
const SAID = CORPORA.flatMap((name) => loadCases(name)).filter(isLookedAt);
const SPOKEN = SAID.flatMap((one) => one.say);

/** Phrases that speak of something else and must leave a log as it was; one that begins by taking back does take back. */
export const CHATTER: readonly string[] = SAID.filter(
  (one) =>
    one.entries.length === 0 &&
    one.say.length === 1 &&
    !/^(?:scratch|strike|undo|never ?mind|forget)\b/i.test(one.say[0] ?? ""),
).flatMap((one) => one.say);

/** A string of tokens: now and then a spoken phrase with some of its words thrown about. */
export function randomPhrase(by: Chance): string {
  const kind = by.below(10);
  if (kind === 0) return by.pick(SPOKEN);
  if (kind <= 3) return disturbed(by.pick(SPOKEN).split(" "), by).join(" ");
  return Array.from({ length: by.below(14) }, () => by.pick(by.pick(POOLS))).join(" ");
}

function disturbed(words: readonly string[], by: Chance): string[] {
  const out = [...words];
  for (let times = by.below(3) + 1; times > 0; times -= 1) {
    const at = by.below(out.length + 1);
    const how = by.below(4);
    if (how === 0) out.splice(at, 1);
    else if (how === 1) out.splice(at, 0, by.pick(by.pick(POOLS)));
    else if (how === 2) out.splice(at, 1, by.pick(by.pick(POOLS)));
    else out.splice(at, 0, ...out.splice(by.below(out.length + 1), 1));
  }
  return out;
}

import type { Opened } from "./first-words.ts";
import { PLAIN } from "./grammar.ts";
import { LETTER_SOUNDS, SPELLING_ALPHABET, TAG_GROUPS } from "./letters.ts";
import type { ConfusionRow } from "./mishearings.ts";
import { COUNT_WORDS, FRACTIONS, ONES, SCALES, SOUND_NUMBERS, TEENS, TENS } from "./numerals.ts";
import type { PhrasePatterns } from "./patterns.ts";
import { TALK } from "./talk.ts";
import type { WordTree } from "./word-tree.ts";

/** What a stretch that begins with a word may be, and what the word is where it is none of these. */
export const OPENS = {
  noHazard: 1,
  hazard: 2,
  idiom: 4,
  command: 8,
  tag: 16,
  number: 32,
  turn: 64,
  /** a stretch that some row knows */
  row: 128,
  /** a known mishearing, of the word or of the one it is the plural of */
  confusion: 256,
  /** a word of other talk */
  talk: 512,
  /** a word without a meaning of its own */
  plain: 1024,
  /** a call on the radio */
  call: 2048,
} as const;

/** For each word what it may open, as OPENS bits: one look-up in place of a dozen that mostly find nothing. */
export function openings(
  patterns: PhrasePatterns,
  tree: WordTree,
  confusions: ReadonlyMap<string, Opened<ConfusionRow>>,
): Map<string, number> {
  const opens = new Map<string, number>();
  const add = (words: Iterable<string>, bit: number) => {
    for (const word of words) opens.set(word, (opens.get(word) ?? 0) | bit);
  };
  add(patterns.noHazard.byFirst.keys(), OPENS.noHazard);
  add(patterns.hazards.byFirst.keys(), OPENS.hazard);
  add(patterns.idioms.byFirst.keys(), OPENS.idiom);
  add(patterns.calls.byFirst.keys(), OPENS.call);
  add(patterns.commands.byFirst.keys(), OPENS.command);
  for (const turns of [patterns.undo, patterns.amend, patterns.note]) add(turns.byFirst.keys(), OPENS.turn);
  add(["note", "no", "nope", "nah", "make"], OPENS.turn);
  const spelled = [...Object.keys(LETTER_SOUNDS), ...Object.keys(SPELLING_ALPHABET), ...TAG_GROUPS];
  add([..."abcdefghijklmnopqrstuvwxyz", "double", ...spelled], OPENS.tag);
  const numbers = [ONES, TEENS, TENS, SCALES, FRACTIONS, SOUND_NUMBERS, COUNT_WORDS];
  add(
    numbers.flatMap((table) => Object.keys(table)),
    OPENS.number,
  );
  add(["a", "an", "point", "between", "from", "anywhere", "somewhere", "buck"], OPENS.number);
  add(tree.firsts, OPENS.row);
  add(withPlurals(confusions.keys()), OPENS.confusion);
  add(withPlurals(TALK), OPENS.talk);
  add(PLAIN, OPENS.plain);
  return opens;
}

const withPlurals = (words: Iterable<string>) => [...words].flatMap((word) => [word, `${word}s`]);

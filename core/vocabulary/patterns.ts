import type { Hazard } from "../shapes/codes.ts";
import { COMMAND_ROWS, HAZARD_ROWS, NO_HAZARD } from "./alarms.ts";
import { TURNS } from "./grammar.ts";
import { IDIOMS } from "./idioms.ts";
import { LETTER_SOUNDS, SPELLING_ALPHABET, TAG_GROUPS } from "./letters.ts";
import { Pattern } from "./notation.ts";
import { COUNT_WORDS, FRACTIONS, ONES, SCALES, SOUND_NUMBERS, TEENS, TENS } from "./numerals.ts";

/** Patterns found by their first word. */
export interface PatternIndex<Code> {
  byFirst: Map<string, { pattern: Pattern; code: Code }[]>;
}

function index<Code>(rows: readonly { line: string; code: Code }[]): PatternIndex<Code> {
  const byFirst: PatternIndex<Code>["byFirst"] = new Map();
  for (const { line, code } of rows) {
    const pattern = new Pattern(line);
    for (const first of pattern.firsts) {
      const list = byFirst.get(first);
      if (list) list.push({ pattern, code });
      else byFirst.set(first, [{ pattern, code }]);
    }
  }
  return { byFirst };
}

const plainIndex = (lines: readonly string[]) => index(lines.map((line) => ({ line, code: true as const })));

/** The longest pattern that matches at `start`. */
export function matchAt<Code>(
  found: PatternIndex<Code>,
  words: readonly string[],
  start: number,
): { code: Code; end: number } | undefined {
  let best: { code: Code; end: number } | undefined;
  for (const { pattern, code } of found.byFirst.get(words[start] ?? "") ?? []) {
    const end = pattern.match(words, start);
    if (end > start && (!best || end > best.end)) best = { code, end };
  }
  return best;
}

/** Hazards, commands, idioms and the turns of a phrase: lines too free to be looked up word by word. */
export interface PhrasePatterns {
  hazards: PatternIndex<Hazard>;
  noHazard: PatternIndex<true>;
  commands: PatternIndex<string>;
  idioms: PatternIndex<true>;
  undo: PatternIndex<true>;
  amend: PatternIndex<true>;
  note: PatternIndex<true>;
}

/** The patterns of the shipped rows. */
export function phrasePatterns(): PhrasePatterns {
  return {
    hazards: index(HAZARD_ROWS.flatMap((row) => row.say.map((line) => ({ line, code: row.code })))),
    noHazard: plainIndex(NO_HAZARD),
    commands: index(COMMAND_ROWS.flatMap((row) => row.say.map((line) => ({ line, code: row.code as string })))),
    idioms: plainIndex(IDIOMS),
    undo: plainIndex(TURNS.undo),
    amend: plainIndex(TURNS.amend),
    note: plainIndex(TURNS.note),
  };
}

/** What a stretch that begins with a word may be. */
export const OPENS = { noHazard: 1, hazard: 2, idiom: 4, command: 8, tag: 16, number: 32, turn: 64 } as const;

/** For each word what it may open, as OPENS bits. */
export function openings(patterns: PhrasePatterns): Map<string, number> {
  const opens = new Map<string, number>();
  const add = (words: Iterable<string>, bit: number) => {
    for (const word of words) opens.set(word, (opens.get(word) ?? 0) | bit);
  };
  add(patterns.noHazard.byFirst.keys(), OPENS.noHazard);
  add(patterns.hazards.byFirst.keys(), OPENS.hazard);
  add(patterns.idioms.byFirst.keys(), OPENS.idiom);
  add(patterns.commands.byFirst.keys(), OPENS.command);
  for (const turns of [patterns.undo, patterns.amend, patterns.note]) add(turns.byFirst.keys(), OPENS.turn);
  add(["note"], OPENS.turn);
  const spelled = [...Object.keys(LETTER_SOUNDS), ...Object.keys(SPELLING_ALPHABET), ...TAG_GROUPS];
  add([..."abcdefghijklmnopqrstuvwxyz", "double", ...spelled], OPENS.tag);
  const numbers = [ONES, TEENS, TENS, SCALES, FRACTIONS, SOUND_NUMBERS, COUNT_WORDS];
  add(
    numbers.flatMap((table) => Object.keys(table)),
    OPENS.number,
  );
  add(["a", "an", "point", "between", "from"], OPENS.number);
  return opens;
}

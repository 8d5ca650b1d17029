import type { Listening, Mark, PhraseReading } from "../../../core/index.ts";
import { splitWords } from "../../../core/parse/words.ts";
import { GRAMMAR, PLAIN } from "../../../core/vocabulary/grammar.ts";
import { spell } from "../../../core/vocabulary/notation.ts";

/** Words that hold others together and say nothing themselves: PLAIN, the grammar's, single letters. */
const GRAMMAR_WORDS = new Set(
  Object.values(GRAMMAR)
    .flat()
    .flatMap((line) => spell(line))
    .flatMap((text) => text.split(" ")),
);
export const isIgnorable = (word: string): boolean => PLAIN.has(word) || GRAMMAR_WORDS.has(word) || word.length === 1;

/**
 * Words of a phrase that came to nothing without being shown as unread: the words silently lost. A word is kept when
 * it is ignorable, lies in an unread stretch, in the span of an entry that the phrase made, or in a stretch marked as
 * what others are said of (a part that "it" stands for next, a place, a quantity, a correction). A condition, work,
 * number, test, hazard or tag that was understood and is in no entry is lost: those are what a log is for.
 * A phrase that takes something back or puts something right may drop words of its own, and is not asked.
 */
export function lostWords(reading: PhraseReading): string[] {
  if (turns(reading)) return [];
  // "bonnet bolts torqued to thirty" is the reading alone: its verb says what the number is of
  const torque = reading.entries.some((one) => one.type === "reading" && one.quantity === "torque");
  return wordsOutside(reading, [
    ...reading.unread.map((one) => one.at),
    ...reading.entries.flatMap((one) => (one.at ? [one.at] : [])),
    ...reading.marks.filter((one) => ABOUT.has(one.as) || (torque && one.code === "tightened")).map((one) => one.at),
  ]);
}

const ABOUT = new Set<Mark["as"]>(["part", "detail", "command"]);

function wordsOutside(reading: PhraseReading, spans: readonly (readonly [number, number])[]): string[] {
  return splitWords(reading.text)
    .filter((word) => !isIgnorable(word.text) && !spans.some(([from, to]) => word.from >= from && word.to <= to))
    .map((word) => word.text);
}

/** Whether the phrase took something back or put something right. */
export const turns = (reading: PhraseReading): boolean =>
  reading.touched.length > 0 || reading.marks.some((one) => one.code === "undo" || one.code === "amend");

export const lostIn = (session: Listening): string[] => session.phrases.flatMap(lostWords);

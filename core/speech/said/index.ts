import { ANOTHER_SHIFT } from "./another-shift.ts";
import { ANSWERS } from "./answers.ts";
import { AT_THE_BENCH } from "./at-the-bench.ts";
import { AT_THE_DUMP } from "./at-the-dump.ts";
import { CAREFUL } from "./careful.ts";
import { CLIPPED } from "./clipped.ts";
import { EIGHT_TECHNICIANS } from "./eight-technicians.ts";
import { FINDINGS } from "./findings.ts";
import { IN_FULL_SENTENCES } from "./in-full-sentences.ts";
import { LOGGED } from "./logged.ts";
import { NUMBERS } from "./numbers.ts";
import { OTHER_SKIDS } from "./other-skids.ts";
import { PART_AFTER_PART } from "./part-after-part.ts";
import { PARTS_IN_TURN } from "./parts-in-turn.ts";
import { PLAIN } from "./plain.ts";
import { READINGS_IN_TURN } from "./readings-in-turn.ts";
import { RUNNING_TALK } from "./running-talk.ts";
import { SENTENCES } from "./sentences.ts";
import { SESSION } from "./session.ts";
import { THREE_TALKERS } from "./three-talkers.ts";
import { WHOLE_DAYS } from "./whole-days.ts";
import { WORK } from "./work.ts";

const linesOf = (...texts: readonly string[]): string[] =>
  texts
    .join("")
    .split("\n")
    .filter((line) => line !== "");

/** What a log gets to hear, phrase for phrase: counted more than what was written to be listened for. */
export const LOGGED_LINES: readonly string[] = linesOf(LOGGED);

/** What is said alone, to a question. */
export const ANSWER_LINES: readonly string[] = linesOf(ANSWERS);

/** Lines written for the ear: every part, number and turn of phrase that may come. */
export const SAID_LINES: readonly string[] = linesOf(
  CLIPPED,
  CAREFUL,
  THREE_TALKERS,
  FINDINGS,
  WORK,
  NUMBERS,
  SESSION,
  WHOLE_DAYS,
  PLAIN,
  SENTENCES,
  PARTS_IN_TURN,
  READINGS_IN_TURN,
  ANOTHER_SHIFT,
  OTHER_SKIDS,
  RUNNING_TALK,
  IN_FULL_SENTENCES,
  AT_THE_DUMP,
  PART_AFTER_PART,
  AT_THE_BENCH,
  EIGHT_TECHNICIANS,
);

import { CAREFUL } from "./careful.ts";
import { CLIPPED } from "./clipped.ts";
import { FINDINGS } from "./findings.ts";
import { NUMBERS } from "./numbers.ts";
import { PLAIN } from "./plain.ts";
import { SENTENCES } from "./sentences.ts";
import { SESSION } from "./session.ts";
import { THREE_TALKERS } from "./three-talkers.ts";
import { WHOLE_DAYS } from "./whole-days.ts";
import { WORK } from "./work.ts";

/** All of the lines that the language model is counted from. */
export const SAID_LINES: readonly string[] = [
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
]
  .join("")
  .split("\n")
  .filter((line) => line !== "");

import type { SaidLines } from "./language-model.ts";
import { ANSWER_LINES, LOGGED_LINES, SAID_LINES } from "./said/index.ts";
import { spokenWords } from "./spoken-words.ts";

/** How much a line counts that is a whole phrase by itself, beside one of thousands that begin alike. */
export const SAID_ALONE = 12;

/** What anyone would say, whatever the site, as words: what is counted, and what the network of next words is taught. */
export const saidTexts = (): SaidLines[] => [
  { lines: SAID_LINES.map(spokenWords), weight: 1 },
  { lines: LOGGED_LINES.map(spokenWords), weight: 2 },
  { lines: ANSWER_LINES.map(spokenWords), weight: SAID_ALONE },
];

import { END } from "./language-model.ts";
import type { SaidChances } from "./said-chances.ts";

/** Whether the words so far are likely all that somebody has to say, may be, or cannot be. */
export type MayBeAll = "likely" | "maybe" | "no";

/**
 * Where a line ends less often than this, something is still to come: "torqued to", "seat worn on one". Of 160 phrases that
 * no line has, 159 end above it, and six in ten of the words within them lie below.
 */
const ENDS_FROM = 0.03;
/** Of those phrases 148 end above this, and one in six of the words within them lies there. */
const ENDS_LIKELY = 0.2;

/**
 * Whether words may be all, by how often a line ends after them. Who falls silent then has most likely finished; after any
 * others he is thinking.
 */
export function mayBeAll(chances: SaidChances, words: readonly string[]): MayBeAll {
  const ends = words.length === 0 ? 0 : chances.next(END, words);
  return ends >= ENDS_LIKELY ? "likely" : ends >= ENDS_FROM ? "maybe" : "no";
}

import { chanceOf, END, type LanguageModel, START, shorten } from "./language-model.ts";

/**
 * Where a line ends less often than this, something is still to come: "torqued to", "seat worn on one". Of 80 phrases that
 * no line has, the last word of each lies above; four in ten of the words within them lie below.
 */
const ENDS_FROM = 0.02;

/**
 * Whether words may be all that somebody has to say, by how often a line ends after them. Who falls silent then has
 * most likely finished; after any others he is thinking.
 */
export function mayBeAll({ after, classes }: LanguageModel, words: readonly string[]): boolean {
  const tokens = [...START.split(" "), ...words.map((word) => classes.get(word)?.of ?? word)];
  let history = tokens.slice(-2).join(" ");
  while (history !== "" && !after.has(history)) history = shorten(history);
  return chanceOf(END, history, after) >= ENDS_FROM;
}

import type { TaughtWord } from "../shapes/taught-word.ts";
import type { Opened } from "./first-words.ts";
import { layRows, layTaught } from "./known-words.ts";
import { type ConfusionRow, confusionsByFirst } from "./mishearings.ts";
import { openings } from "./opens.ts";
import { type PhrasePatterns, phrasePatterns } from "./patterns.ts";
import type { Senses } from "./senses.ts";
import { type SoundAlikeRow, soundAlikesByFirst } from "./sound-alikes.ts";
import { WordTree } from "./word-tree.ts";

/** All the rows, made searchable. */
export interface Lexicon extends PhrasePatterns {
  /** the longest stretch known from `start`: its senses and the index after it */
  longest(words: readonly string[], start: number): { senses: Senses; end: number } | undefined;
  /** known mishearings, by the first word heard */
  confusions: Map<string, Opened<ConfusionRow>>;
  /** what sounds like a word of the trade, by the first word heard */
  soundAlikes: Map<string, SoundAlikeRow[]>;
  /** what a word may open, as OPENS bits: most words open little, and need not be asked a dozen times */
  opens: Map<string, number>;
  /** every single word that some row uses */
  words: Set<string>;
  /** the words that parts, conditions, work, tests and units are made of */
  tradeWords: Set<string>;
}

/** The lexicon of the shipped rows and of the words a site taught beside them. */
export function buildLexicon(taught: readonly TaughtWord[] = []): Lexicon {
  const tree = new WordTree();
  const tradeWords = layRows(tree);
  for (const one of taught) layTaught(tree, one);
  const patterns = phrasePatterns();
  const confusions = confusionsByFirst();
  return {
    longest: (words, start) => tree.longest(words, start),
    ...patterns,
    confusions,
    soundAlikes: soundAlikesByFirst(),
    opens: openings(patterns, tree, confusions),
    words: tree.words,
    tradeWords,
  };
}

let shipped: Lexicon | undefined;
/** The lexicon of the shipped rows, made once. */
export function lexicon(): Lexicon {
  shipped ??= buildLexicon();
  return shipped;
}

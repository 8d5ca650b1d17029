import { END } from "./language-model.ts";
import { type Before, SaidChances } from "./said-chances.ts";
import { type GraphWord, isFiller, UNIT, type WordGraph } from "./word-graph.ts";

/** A word of a way: where it lies, and what it brings to the way's score. */
export interface WordHeard {
  word: string;
  /** first frame, and first frame behind it */
  from: number;
  to: number;
  score: number;
}

/** One way in which a whole utterance may have been said. */
export interface WayHeard {
  /** words of the network, fillers left out */
  words: readonly WordHeard[];
  /** sound and likelihood together, in the engine's units */
  score: number;
}

/** How much the likelihood of words counts beside the sound, and what a word more costs: measured on lines not counted. */
const ON_THE_WAY = 8;
/** The same for whole lines: more is known of them, so it counts more. */
export const LIKELIHOOD_WEIGHT = 10;
const A_WORD_MORE = Math.log(0.2);
const A_FILLER_MORE = -4.5;
/** Ways that fall so far behind the best one at the same moment are given up, in the engine's units. */
const GIVEN_UP = 2000;
/** Ways that are followed at one moment. */
const FOLLOWED = 60;
/** Ways that are weighed once more as whole lines. */
const WEIGHED = 30;

interface Way {
  text: string;
  /** sound and likelihood, and of that the sound, with what words cost that are more */
  score: number;
  sound: number;
  before: Before;
  word?: GraphWord;
  back?: Way;
}

/** What a word brings to a way, wherever it ends. */
interface Step {
  text: string;
  before: Before;
  likely: number;
  more: number;
}

/**
 * The likeliest ways in which an utterance may have been said, best first, each a different row of words. Goes through the
 * words that the search came past once more with all that was counted, and weighs the best as whole lines.
 */
export function waysHeard({ frames, words }: WordGraph, chances: SaidChances): WayHeard[] {
  const from: GraphWord[][] = Array.from({ length: frames }, () => []);
  for (const word of words) from[word.from]?.push(word);
  const at: Map<string, Way>[] = Array.from({ length: frames + 1 }, () => new Map());
  at[0]?.set("", { text: "", score: 0, sound: 0, before: SaidChances.START });
  for (let frame = 0; frame < frames; frame++) {
    const here = at[frame] as Map<string, Way>;
    const next = from[frame] as GraphWord[];
    if (here.size === 0 || next.length === 0) continue;
    for (const way of best(here)) {
      // the same word often ends in many frames: how likely it is there, and what is said with it, is found once
      const steps = new Map<string, Step>();
      for (const word of next) {
        let step = steps.get(word.word);
        if (!step) {
          step = stepFrom(way, word.word, chances);
          steps.set(word.word, step);
        }
        keep(at[word.to], gone(way, word, step));
      }
    }
    here.clear();
  }
  return [...(at[frames] ?? new Map<string, Way>()).values()]
    .map((way) => ({ way, score: way.score + (ON_THE_WAY * chances.of(END, way.before)) / UNIT }))
    .sort((a, b) => b.score - a.score)
    .slice(0, WEIGHED)
    .map(({ way }) => asWhole(way, chances))
    .sort((a, b) => b.score - a.score);
}

/** A way with the likelihood of its whole line; its words keep what they brought on the way. */
function asWhole(way: Way, chances: SaidChances): WayHeard {
  const words = wordsOf(way);
  const line = words.map(({ word }) => word);
  return { words, score: way.sound + (LIKELIHOOD_WEIGHT * chances.ofLine(line)) / UNIT };
}

function best(ways: ReadonlyMap<string, Way>): Way[] {
  const all = [...ways.values()].sort((a, b) => b.score - a.score);
  const least = (all[0] as Way).score - GIVEN_UP;
  return all.slice(0, FOLLOWED).filter(({ score }) => score >= least);
}

function stepFrom(way: Way, word: string, chances: SaidChances): Step {
  if (isFiller(word)) return { text: way.text, before: way.before, likely: 0, more: A_FILLER_MORE / UNIT };
  return {
    text: `${way.text} ${word}`,
    before: chances.afterSaying(word, way.before),
    likely: (ON_THE_WAY * chances.of(word, way.before)) / UNIT,
    more: A_WORD_MORE / UNIT,
  };
}

function gone(way: Way, word: GraphWord, { text, before, likely, more }: Step): Way {
  const sound = word.fits + more;
  return { text, score: way.score + sound + likely, sound: way.sound + sound, before, word, back: way };
}

/** Of two that say the same until the same moment, the better. */
function keep(ways: Map<string, Way> | undefined, way: Way): void {
  const known = ways?.get(way.text);
  if (!known || known.score < way.score) ways?.set(way.text, way);
}

function wordsOf(way: Way): WordHeard[] {
  const words: WordHeard[] = [];
  for (let one = way; one.back && one.word; one = one.back) {
    const { word, from, to } = one.word;
    if (!isFiller(word)) words.push({ word, from, to, score: one.score - one.back.score });
  }
  return words.reverse();
}

import { BEGIN } from "../language-model.ts";
import { bend, type Layer, through } from "../learnt/layers.ts";
import type { LayerSize } from "../learnt/written-layers.ts";

/** Words before the next one that are looked at. */
export const BEFORE = 5;
/** Numbers that stand for a word. */
export const OF_A_WORD = 96;
const BETWEEN = 256;
/**
 * The layers up to what the next word should be like. Their last one is the words: a row each of what it is like, and a
 * bias of how often it is said at all; the same rows go in for the words before, so that what is learnt of a word in one
 * place is known in all.
 */
export const LAYER_SIZES = (words: number): readonly LayerSize[] => [
  [BEFORE * OF_A_WORD, BETWEEN],
  [BETWEEN, OF_A_WORD],
  [OF_A_WORD, words],
];
/** The word that stands for those that are too rare to have been learnt. */
export const RARE = "<rare>";
/** Histories that are remembered: enough for one phrase. */
const REMEMBERED = 2_000;

/**
 * What is likely said next, as a small network has learnt it from our lines (`server/ear/learn-next-word`): it looks at five
 * words before, and takes words that are used alike for alike, where counting sees two words and each for itself. It was
 * taught so that what comes out needs no sum over all words: it is the log of the chance.
 * Source: Bengio et al., "A Neural Probabilistic Language Model", JMLR 3 (2003), 1137-1155; Mnih & Teh, "A fast and simple
 * algorithm for training neural probabilistic language models", ICML 2012; Press & Wolf, EACL 2017, for the shared rows.
 */
export class NextWord {
  /** all that it has learnt, BEGIN, END and RARE among them */
  readonly words: readonly string[];
  readonly #numbers: ReadonlyMap<string, number>;
  readonly #between: Layer;
  readonly #like: Layer;
  readonly #words: Layer;
  readonly #bent = new Float32Array(BETWEEN);
  readonly #known = new Map<string, Float32Array>();
  /** what each word brings to the first layer's sums from each place before */
  readonly #brought = new Map<number, Float64Array>();

  /** `words` in the order of the last layer's rows. */
  constructor(words: readonly string[], [between, like, rows]: readonly Layer[]) {
    if (!between || !like || rows?.biases.length !== words.length)
      throw new RangeError("a network of next words has three layers, the last with a row for each word");
    this.words = words;
    this.#numbers = new Map(words.map((word, number) => [word, number]));
    this.#between = between;
    this.#like = like;
    this.#words = rows;
  }

  /** Natural log of the chance that `word` comes after `before`, the words of the phrase so far; undefined where it has not learnt the word. */
  of(word: string, before: readonly string[]): number | undefined {
    const number = this.#numbers.get(word);
    if (number === undefined) return undefined;
    const like = this.#likeAfter(before);
    const { weights, biases } = this.#words;
    let sum = biases[number] as number;
    for (let i = 0; i < OF_A_WORD; i++) sum += (weights[number * OF_A_WORD + i] as number) * (like[i] as number);
    // a chance, whatever was learnt
    return Math.min(0, sum);
  }

  #likeAfter(before: readonly string[]): Float32Array {
    const last = Array.from({ length: BEFORE }, (_, n) => before[before.length - BEFORE + n] ?? BEGIN);
    const key = last.join(" ");
    let like = this.#known.get(key);
    if (!like) {
      const brought = last.map((word, place) => this.#broughtBy(word, place));
      for (let j = 0; j < BETWEEN; j++) {
        let sum = this.#between.biases[j] as number;
        for (const sums of brought) sum += sums[j] as number;
        this.#bent[j] = sum;
      }
      bend(this.#bent);
      like = new Float32Array(OF_A_WORD);
      through(this.#like, this.#bent, like);
      if (this.#known.size >= REMEMBERED) this.#known.clear();
      this.#known.set(key, like);
    }
    return like;
  }

  /** The ways weighed share most of their words: each word's part in a place is summed up once, not with every history. */
  #broughtBy(word: string, place: number): Float64Array {
    const number = this.#numbers.get(word) ?? (this.#numbers.get(RARE) as number);
    const key = number * BEFORE + place;
    let sums = this.#brought.get(key);
    if (!sums) {
      const like = this.#words.weights.subarray(number * OF_A_WORD, (number + 1) * OF_A_WORD);
      const { weights } = this.#between;
      sums = new Float64Array(BETWEEN);
      for (let j = 0; j < BETWEEN; j++) {
        const row = (j * BEFORE + place) * OF_A_WORD;
        let sum = 0;
        for (let i = 0; i < OF_A_WORD; i++) sum += (weights[row + i] as number) * (like[i] as number);
        sums[j] = sum;
      }
      if (this.#brought.size >= REMEMBERED) this.#brought.clear();
      this.#brought.set(key, sums);
    }
    return sums;
  }
}

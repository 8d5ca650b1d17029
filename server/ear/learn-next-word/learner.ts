import type { Layer } from "../../../core/speech/learnt/layers.ts";
import { BEFORE, LAYER_SIZES, OF_A_WORD } from "../../../core/speech/next-word/next-word.ts";
import type { Luck } from "../learning/luck.ts";
import { addRow, addTimes, dot } from "../learning/rows.ts";
import { Weights } from "../learning/weights.ts";

const BATCH = 128;
const RATE = 2e-3;
const SHRINK = 0.01;
/** Words drawn by chance beside each true one, which it is to be told apart from. */
const DRAWN = 100;
/** The share of what passes between that is left out by chance: nothing may lean on one number. Srivastava et al., JMLR 15 (2014). */
const LEFT_OUT = 0.2;

interface Learning {
  weights: Weights;
  biases: Weights;
}

/**
 * Learns which word comes next by telling it from words drawn by chance, each as often as it is said at all; so the sum over
 * all words is never taken, and what is learnt is the log of the chance itself.
 * Source: Gutmann & Hyvärinen, JMLR 13 (2012); Mnih & Teh, ICML 2012.
 */
export class Learner {
  readonly #luck: Luck;
  readonly #between: Learning;
  readonly #like: Learning;
  readonly #words: Learning;
  readonly #logDrawn: Float64Array;
  /** each number as often as its word is said */
  readonly #urn: Int32Array;
  readonly #in = new Float64Array(BEFORE * OF_A_WORD);
  readonly #bent: Float64Array;
  readonly #kept: Float64Array;
  readonly #wrongBent: Float64Array;
  readonly #liked = new Float64Array(OF_A_WORD);
  readonly #wrongLiked = new Float64Array(OF_A_WORD);
  readonly #wrongIn = new Float64Array(BEFORE * OF_A_WORD);
  #steps = 0;
  #inBatch = 0;

  /** `said`: how often each word is said, all above zero. */
  constructor(said: readonly number[], luck: Luck) {
    this.#luck = luck;
    const all = said.reduce((sum, n) => sum + n, 0);
    this.#logDrawn = Float64Array.from(said, (n) => Math.log((DRAWN * n) / all));
    this.#urn = Int32Array.from(said.flatMap((n, number) => Array.from({ length: n }, () => number)));
    const normal = () => luck.normal();
    const layers = LAYER_SIZES(said.length).map(([from, to], n) => ({
      weights: new Weights(from * to, { spread: n === 2 ? 0.1 : Math.sqrt((n === 0 ? 2 : 1) / from), normal }),
      biases: new Weights(to),
    }));
    [this.#between, this.#like, this.#words] = layers as [Learning, Learning, Learning];
    // begins with how often each is said at all
    for (const [number, n] of said.entries()) this.#words.biases.values[number] = Math.log(n / all);
    const between = this.#between.biases.values.length;
    this.#bent = new Float64Array(between);
    this.#kept = new Float64Array(between);
    this.#wrongBent = new Float64Array(between);
  }

  get layers(): Layer[] {
    return [this.#between, this.#like, this.#words].map(({ weights, biases }) => ({
      weights: Float32Array.from(weights.values),
      biases: Float32Array.from(biases.values),
    }));
  }

  /** Learns that `word` came after `before`, numbers of words; `done` is the share of all learning that lies behind. */
  learn(before: Int32Array, word: number, done: number): void {
    for (let j = 0; j < this.#kept.length; j++) this.#kept[j] = this.#luck.chance(LEFT_OUT) ? 0 : 1 / (1 - LEFT_OUT);
    this.#forward(before);
    this.#wrongLiked.fill(0);
    this.#tell(word, true);
    for (let n = 0; n < DRAWN; n++)
      this.#tell(this.#urn[Math.floor(this.#luck.next() * this.#urn.length)] as number, false);
    this.#backward(before);
    if (++this.#inBatch === BATCH) {
      this.#steps++;
      const rate = RATE * 0.5 * (1 + Math.cos(Math.PI * done)) + 1e-6;
      for (const { weights, biases } of [this.#between, this.#like, this.#words]) {
        weights.step(this.#steps, BATCH, rate, SHRINK);
        biases.step(this.#steps, BATCH, rate);
      }
      this.#inBatch = 0;
    }
  }

  #forward(before: Int32Array): void {
    for (const [n, number] of before.entries())
      this.#in.set(this.#words.weights.values.subarray(number * OF_A_WORD, (number + 1) * OF_A_WORD), n * OF_A_WORD);
    const { weights, biases } = this.#between;
    for (let j = 0; j < this.#bent.length; j++) {
      const kept = this.#kept[j] as number;
      const sum = kept === 0 ? 0 : dot(weights.values, j * this.#in.length, this.#in) + (biases.values[j] as number);
      this.#bent[j] = Math.max(0, sum) * kept;
    }
    for (let i = 0; i < OF_A_WORD; i++)
      this.#liked[i] =
        (this.#like.biases.values[i] as number) + dot(this.#like.weights.values, i * this.#bent.length, this.#bent);
  }

  /** One word is told to be the next one, or one drawn by chance. */
  #tell(number: number, next: boolean): void {
    const { weights, biases } = this.#words;
    const at = number * OF_A_WORD;
    const sum = (biases.values[number] as number) + dot(weights.values, at, this.#liked);
    const wrong = 1 / (1 + Math.exp((this.#logDrawn[number] as number) - sum)) - (next ? 1 : 0);
    biases.slopes[number] = (biases.slopes[number] as number) + wrong;
    addTimes(weights.slopes, at, wrong, this.#liked);
    addRow(this.#wrongLiked, wrong, weights.values, at);
  }

  #backward(before: Int32Array): void {
    this.#wrongBent.fill(0);
    for (let i = 0; i < OF_A_WORD; i++) {
      const wrong = this.#wrongLiked[i] as number;
      this.#like.biases.slopes[i] = (this.#like.biases.slopes[i] as number) + wrong;
      addTimes(this.#like.weights.slopes, i * this.#bent.length, wrong, this.#bent);
      addRow(this.#wrongBent, wrong, this.#like.weights.values, i * this.#bent.length);
    }
    this.#wrongIn.fill(0);
    for (let j = 0; j < this.#bent.length; j++) {
      // what was below nothing, or left out, changes nothing
      if (this.#bent[j] === 0) continue;
      const wrong = (this.#wrongBent[j] as number) * (this.#kept[j] as number);
      this.#between.biases.slopes[j] = (this.#between.biases.slopes[j] as number) + wrong;
      addTimes(this.#between.weights.slopes, j * this.#in.length, wrong, this.#in);
      addRow(this.#wrongIn, wrong, this.#between.weights.values, j * this.#in.length);
    }
    const rows = this.#words.weights.slopes;
    for (const [n, number] of before.entries())
      addTimes(rows, number * OF_A_WORD, 1, this.#wrongIn.subarray(n * OF_A_WORD, (n + 1) * OF_A_WORD));
  }
}

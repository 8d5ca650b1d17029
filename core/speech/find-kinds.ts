/**
 * Words that stand in like places, found in lines of words: each word is moved to whatever kind makes the lines likeliest
 * when only the kind before is known, again and again until little moves.
 * Source: Kneser & Ney, "Improved clustering techniques for class-based statistical language modelling", Eurospeech 1993.
 */

import { BEGIN, END } from "./language-model.ts";

const MOST_ROUNDS = 8;

/** Kinds of words, the most frequent words first, in at most `most` kinds; `lines` of what was said. */
export function findKinds(lines: readonly (readonly string[])[], most: number): string[][] {
  const sentences = lines.map((line) => [BEGIN, ...line, END]);
  const often = new Map<string, number>();
  for (const word of sentences.flat()) often.set(word, (often.get(word) ?? 0) + 1);
  const words = [...often.keys()].sort((a, b) => (often.get(b) as number) - (often.get(a) as number));
  const exchange = new Exchange(words, often, sentences, most);
  for (let round = 0; round < MOST_ROUNDS && exchange.round() > words.length / 500; round++);
  return exchange.kinds();
}

/** Counts of neighbours, by numbers of words and kinds, and what a move would change. */
class Exchange {
  readonly #words: readonly string[];
  readonly #often: readonly number[];
  readonly #behind: Map<number, number>[];
  readonly #before: Map<number, number>[];
  readonly #kindOf: Int32Array;
  readonly #pairs: Float64Array;
  readonly #singles: Float64Array;
  readonly #most: number;

  constructor(words: string[], often: Map<string, number>, sentences: readonly string[][], most: number) {
    this.#words = words;
    this.#often = words.map((word) => often.get(word) as number);
    this.#most = most;
    this.#behind = words.map(() => new Map());
    this.#before = words.map(() => new Map());
    const numbers = new Map(words.map((word, at) => [word, at]));
    for (const sentence of sentences)
      for (let at = 1; at < sentence.length; at++) {
        const first = numbers.get(sentence[at - 1] as string) as number;
        const second = numbers.get(sentence[at] as string) as number;
        more(this.#behind[first], second);
        more(this.#before[second], first);
      }
    this.#kindOf = Int32Array.from(words, (_, at) => Math.min(at, most - 1));
    this.#pairs = new Float64Array(most * most);
    this.#singles = new Float64Array(most);
    for (let word = 0; word < words.length; word++) this.#count(word, 1);
  }

  /** Each word once to where it fits best; how many moved. */
  round(): number {
    let moved = 0;
    for (let word = 0; word < this.#words.length; word++) {
      if (this.#words[word] === BEGIN || this.#words[word] === END) continue;
      const was = this.#kindOf[word] as number;
      const best = this.#bestFor(word, was);
      if (best !== was) moved++;
    }
    return moved;
  }

  kinds(): string[][] {
    const kinds: string[][] = Array.from({ length: this.#most }, () => []);
    this.#words.forEach((word, at) => {
      if (word !== BEGIN && word !== END) kinds[this.#kindOf[at] as number]?.push(word);
    });
    return kinds.filter((kind) => kind.length > 1);
  }

  /** Adds a word's pairs with words that have their place already; of the first count each pair once. */
  #count(word: number, sign: 1 | -1): void {
    const kind = this.#kindOf[word] as number;
    for (const [next, n] of this.#behind[word] as Map<number, number>)
      this.#pair(kind, this.#kindOf[next] as number, sign * n);
    this.#singles[kind] = (this.#singles[kind] as number) + sign * (this.#often[word] as number);
  }

  #pair(first: number, second: number, n: number): void {
    const at = first * this.#most + second;
    this.#pairs[at] = (this.#pairs[at] as number) + n;
  }

  #bestFor(word: number, was: number): number {
    const out = this.#byKind(this.#behind[word] as Map<number, number>, word);
    const into = this.#byKind(this.#before[word] as Map<number, number>, word);
    const self = this.#behind[word]?.get(word) ?? 0;
    const n = this.#often[word] as number;
    const shift = (kind: number, sign: 1 | -1) => {
      for (const [other, count] of out) this.#pair(kind, other, sign * count);
      for (const [other, count] of into) this.#pair(other, kind, sign * count);
      this.#pair(kind, kind, sign * self);
      this.#singles[kind] = (this.#singles[kind] as number) + sign * n;
    };
    shift(was, -1);
    let best = was;
    let gain = Number.NEGATIVE_INFINITY;
    for (let kind = 0; kind < this.#most; kind++) {
      const gained = this.#gain(kind, out, into, self, n);
      if (gained > gain + 1e-9) {
        gain = gained;
        best = kind;
      }
    }
    shift(best, 1);
    this.#kindOf[word] = best;
    return best;
  }

  #gain(kind: number, out: Map<number, number>, into: Map<number, number>, self: number, n: number): number {
    const pair = (first: number, second: number) => this.#pairs[first * this.#most + second] as number;
    const grown = (was: number, by: number) => entropy(was + by) - entropy(was);
    let gain = grown(pair(kind, kind), (out.get(kind) ?? 0) + (into.get(kind) ?? 0) + self);
    for (const [other, count] of out) if (other !== kind) gain += grown(pair(kind, other), count);
    for (const [other, count] of into) if (other !== kind) gain += grown(pair(other, kind), count);
    return gain - 2 * grown(this.#singles[kind] as number, n);
  }

  #byKind(counts: Map<number, number>, but: number): Map<number, number> {
    const byKind = new Map<number, number>();
    for (const [word, n] of counts) if (word !== but) more(byKind, this.#kindOf[word] as number, n);
    return byKind;
  }
}

const entropy = (n: number) => (n > 0 ? n * Math.log(n) : 0);

function more(counts: Map<number, number> | undefined, key: number, n = 1): void {
  counts?.set(key, (counts.get(key) ?? 0) + n);
}

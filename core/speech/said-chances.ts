import { BEGIN, type Counted, END, EveryHistory } from "./language-model.ts";
import type { NextWord } from "./next-word/next-word.ts";

/** What was said so far, as far as it tells what comes next: the two words before. */
export type Before = readonly [string, string];

/** The call word: how often a phrase begins with it, and how often nothing follows it. */
export interface Call {
  word: string;
  share: number;
  alone: number;
}

/** Words alone know best what they were often said with; of kinds of words more was said. Least perplexity on other lines. */
const SHARE_OF_KINDS = 0.3;
/**
 * How much the log of what was learnt counts beside that of what was counted. As a product of the two, what either holds for
 * unlikely stays so: on other lines fewer wrong choices than with their mean.
 */
const SHARE_OF_LEARNT = 0.5;
/** Of what nobody ever said. */
const NEVER = -30;
/** Chances that are remembered: enough for one phrase, and no more after a whole shift. */
const REMEMBERED = 50_000;

/**
 * How likely each next word is by all that was counted, and whole lines by that and what a network has learnt (`next-word/`):
 * for choosing among the few ways in which something may have been said, and for telling where somebody may have finished.
 * The network that is searched while sound comes knows much less (`language-model.ts`).
 */
export class SaidChances {
  static readonly START: Before = [BEGIN, BEGIN];
  readonly #words: EveryHistory;
  readonly #kinds: EveryHistory;
  readonly #call: Call | undefined;
  readonly #learnt: NextWord | undefined;
  readonly #known = new Map<string, number>();

  constructor(words: Counted, kinds: Counted, call: Call | undefined, learnt?: NextWord) {
    this.#words = new EveryHistory(words);
    this.#kinds = new EveryHistory(kinds);
    this.#call = call;
    this.#learnt = learnt;
  }

  /** How likely a whole line is, as a natural log: half by what was counted, half by what was learnt, where that knows the word. */
  ofLine(line: readonly string[]): number {
    let sum = 0;
    let before: Before = SaidChances.START;
    let begins = 0;
    for (const [at, word] of [...line, END].entries()) {
      const counted = this.of(word, before);
      const learnt = word === this.#call?.word ? undefined : this.#learnt?.of(word, line.slice(begins, at));
      sum += learnt === undefined ? counted : counted + SHARE_OF_LEARNT * (learnt - counted);
      before = this.afterSaying(word, before);
      if (word === this.#call?.word) begins = at + 1;
    }
    return sum;
  }

  /** Natural log of the chance that `word` comes next; END is that nothing does. */
  of(word: string, before: Before): number {
    const [, last] = before;
    const call = this.#call;
    if (call && word === call.word) return last === BEGIN ? Math.log(call.share) : NEVER;
    if (call && last === call.word)
      return word === END ? Math.log(call.alone) : Math.log(1 - call.alone) + this.of(word, SaidChances.START);
    const key = `${before[0]} ${last} ${word}`;
    let known = this.#known.get(key);
    if (known === undefined) {
      const chance =
        (1 - SHARE_OF_KINDS) * this.#words.chanceOf(word, before) + SHARE_OF_KINDS * this.#kinds.chanceOf(word, before);
      known = chance > 0 ? Math.log(chance) : NEVER;
      if (this.#known.size >= REMEMBERED) this.#known.clear();
      this.#known.set(key, known);
    }
    return known;
  }

  /** The chance of `word` after the line so far: the mean of what was counted and what was learnt. */
  next(word: string, line: readonly string[]): number {
    const before = line.reduce((before, said) => this.afterSaying(said, before), SaidChances.START);
    const counted = Math.exp(this.of(word, before));
    const learnt = this.#learnt?.of(word, line);
    return learnt === undefined ? counted : (counted + Math.exp(learnt)) / 2;
  }

  /** What stands before the word after `word`. A phrase begins anew after the call. */
  afterSaying(word: string, [, last]: Before): Before {
    return last === this.#call?.word ? [BEGIN, word] : [last, word];
  }
}

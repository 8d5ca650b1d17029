/** A session under way: the value that `listen` takes and gives, and what each of its phrases did. */

import type { Ask, Entry, Unread } from "../shapes/entry.ts";
import type { Lexicon } from "../vocabulary/lexicon.ts";
import type { Waiting } from "./questions.ts";
import type { Steps } from "./steps.ts";

/** One stretch of a phrase and what it was taken for: `at` is [first, one past last] character. */
export interface Mark {
  at: [number, number];
  /** `plain` words carry no meaning of their own ("the", "uh"); `unread` words were not understood */
  as:
    | "part"
    | "condition"
    | "work"
    | "detail"
    | "number"
    | "test"
    | "valve"
    | "hazard"
    | "command"
    | "plain"
    | "unread";
  /** the code it was read as, where it has one */
  code?: string;
}

/** What one phrase did to the session. */
export interface PhraseReading {
  text: string;
  /** entries that this phrase left standing when it was said */
  entries: Entry[];
  unread: Unread[];
  ask: Ask[];
  marks: Mark[];
  /** phrases whose entries this one removed or amended */
  touched: number[];
  /** hazards said in it: the alert stands even where the entry is scratched later */
  alerts: Entry[];
}

/** A session under way: a value, never edited in place. */
export interface Listening {
  readonly phrases: readonly PhraseReading[];
  /** what stands after the last phrase, in order */
  readonly entries: readonly Entry[];
  readonly unread: readonly Unread[];
  /** the question still open, at most one */
  readonly ask: readonly Ask[];
  readonly muted: boolean;
  /** a number that waits for its unit */
  readonly waiting?: Waiting;
  readonly lexicon: Lexicon;
  /** what stands of each phrase, the last first */
  readonly steps: Steps | undefined;
}

/** The lists of a session are laid out when somebody asks for them, not with every phrase. */
export class Heard implements Listening {
  readonly ask: readonly Ask[];
  readonly muted: boolean;
  readonly waiting?: Waiting;
  readonly lexicon: Lexicon;
  readonly steps: Steps | undefined;
  readonly count: number;
  readonly #before: Heard | undefined;
  readonly #reading: PhraseReading | undefined;
  #phrases: readonly PhraseReading[] | undefined;
  #entries: readonly Entry[] | undefined;

  constructor(
    from: { ask: readonly Ask[]; muted: boolean; waiting?: Waiting; lexicon: Lexicon; steps: Steps | undefined },
    before?: Heard,
    reading?: PhraseReading,
  ) {
    this.ask = from.ask;
    this.muted = from.muted;
    this.waiting = from.waiting;
    this.lexicon = from.lexicon;
    this.steps = from.steps;
    this.#before = before;
    this.#reading = reading;
    this.count = before ? before.count + 1 : 0;
  }

  get phrases(): readonly PhraseReading[] {
    if (!this.#phrases) {
      const list: PhraseReading[] = [];
      for (let one: Heard | undefined = this; one; one = one.#before) if (one.#reading) list.push(one.#reading);
      this.#phrases = list.reverse();
    }
    return this.#phrases;
  }

  get entries(): readonly Entry[] {
    if (!this.#entries) {
      const list: Entry[][] = [];
      for (let one = this.steps; one; one = one.before) list.push(one.last.entries);
      this.#entries = list.reverse().flat();
    }
    return this.#entries;
  }

  get unread(): readonly Unread[] {
    return this.phrases.flatMap((phrase) => phrase.unread);
  }
}

/** A session in which nothing has been said yet, with the words it knows. */
export function emptySession(words: Lexicon): Listening {
  return new Heard({ ask: [], muted: false, steps: undefined, lexicon: words });
}

/** How many phrases were heard; read without laying out the list of them. */
export const countOf = (session: Listening): number =>
  session instanceof Heard ? session.count : session.phrases.length;

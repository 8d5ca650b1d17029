import type { TaughtWord } from "../../core/index.ts";
import type { State } from "./state.ts";

/** A word taught on this device: for the site it was taught at, or, with none chosen then, for every site. */
export interface KeptWord extends TaughtWord {
  site?: string;
  /** absent in words kept before the server took any: they get one when they are sent */
  id?: string;
  at?: string;
  /** no longer read; kept until the server knows */
  withdrawn?: boolean;
  /** the server holds it as it stands here */
  sent?: boolean;
  /** why the server refused it: it is not read here either, so that both read the same */
  problem?: string;
}

/** Whether the word is read: neither withdrawn nor refused. */
export function isRead(word: KeptWord): boolean {
  return !word.withdrawn && !word.problem;
}

/** Whether the server has yet to hear of the word, or of its end. */
export function waits(word: KeptWord): boolean {
  return !word.sent && !word.problem;
}

let last: { words: readonly KeptWord[]; site: string | undefined; here: readonly TaughtWord[] } | undefined;

/** The words that are read at a site. The same array as long as nothing changed: the reader keeps its lexicon by it. */
export function wordsAt(words: readonly KeptWord[], site: string | undefined): readonly TaughtWord[] {
  if (last?.words !== words || last.site !== site) {
    const read = words.filter((word) => isRead(word) && (!word.site || word.site === site));
    // a word of every site may have been taught at this site too: read once
    const here = [...new Map(read.map(({ say, as }) => [say, { say, as }])).values()];
    last = { words, site, here };
  }
  return last.here;
}

/** The words read on the bench as it stands: those of the job's site, or of the site chosen. */
export function wordsHere(state: Pick<State, "card" | "settings" | "taught">): readonly TaughtWord[] {
  return wordsAt(state.taught, state.card ? state.card.site : state.settings.site);
}

import type { TaughtWord } from "../../core/index.ts";
import type { State } from "./state.ts";

/** A word taught on this device: for the site it was taught at, or, with none chosen then, for every site. */
export interface KeptWord extends TaughtWord {
  site?: string;
}

let last: { words: readonly KeptWord[]; site: string | undefined; here: readonly TaughtWord[] } | undefined;

/** The words that are read at a site. The same array as long as nothing changed: the reader keeps its lexicon by it. */
export function wordsAt(words: readonly KeptWord[], site: string | undefined): readonly TaughtWord[] {
  if (last?.words !== words || last.site !== site) {
    const here = words.filter((word) => !word.site || word.site === site).map(({ say, as }) => ({ say, as }));
    last = { words, site, here };
  }
  return last.here;
}

/** The words read on the bench as it stands: those of the job's site, or of the site chosen. */
export function wordsHere(state: Pick<State, "card" | "settings" | "taught">): readonly TaughtWord[] {
  return wordsAt(state.taught, state.card ? state.card.site : state.settings.site);
}

import type { Entry } from "../../shapes/entry.ts";
import { sameWords } from "../same-words.ts";

/** A phrase of the set as somebody said it and the ear heard it. */
export interface Take {
  wanted: string;
  /** empty where the ear took nothing for words of ours */
  heard: string;
  /** how sure the ear was, 0 to 1; 0 where it heard nothing */
  confidence: number;
}

/** Of the phrases of which the ear was so sure, how many were right. */
export interface SureRow {
  /** from here on, and below the row above */
  from: number;
  said: number;
  right: number;
}

export interface SetScore {
  said: number;
  wordForWord: number;
  /** heard another way and still read as the same entries, or word for word */
  sameEntries: number;
  /** nothing heard at all */
  unheard: number;
  sure: SureRow[];
  /** not word for word, in the order of the set */
  misses: (Take & { sameEntries: boolean })[];
  /** talk of something else: stretches of it, and those that left an entry */
  otherTalk: { said: number; invented: string[] };
}

export type Reader = (text: string) => readonly Entry[];

const SURE_FROM = [0.9, 0.7, 0.5, 0];

/** What the ear is worth on these takes. `read` is the reader of phrases; `otherTalk` what it heard in other talk. */
export function scoreSet(takes: readonly Take[], otherTalk: readonly string[], read: Reader): SetScore {
  const judged = takes.map((take) => {
    const right = sameWords(take.wanted, take.heard);
    return { take, right, sameEntries: right || sameMeaning(read(take.wanted), read(take.heard)) };
  });
  const heard = judged.filter(({ take }) => take.heard !== "");
  return {
    said: takes.length,
    wordForWord: judged.filter(({ right }) => right).length,
    sameEntries: judged.filter((one) => one.sameEntries).length,
    unheard: takes.length - heard.length,
    sure: SURE_FROM.map((from, index) => {
      const below = SURE_FROM[index - 1] ?? Number.POSITIVE_INFINITY;
      const inRow = heard.filter(({ take }) => take.confidence >= from && take.confidence < below);
      return { from, said: inRow.length, right: inRow.filter(({ right }) => right).length };
    }),
    misses: judged.filter(({ right }) => !right).map(({ take, sameEntries }) => ({ ...take, sameEntries })),
    otherTalk: { said: otherTalk.length, invented: otherTalk.filter((text) => read(text).length > 0) },
  };
}

/** Where an entry came from is no part of what it says. */
const ORIGIN = new Set(["words", "rule", "confidence", "phrase", "at", "resolved", "assumed", "doubtful"]);

/** Phrases read as nothing mean the same as nothing only where both are read so and one was heard at all. */
function sameMeaning(wanted: readonly Entry[], heard: readonly Entry[]): boolean {
  return wanted.length > 0 && plain(wanted) === plain(heard);
}

const plain = (entries: readonly Entry[]): string =>
  JSON.stringify(
    entries.map((entry) =>
      Object.entries(entry)
        .filter(([key]) => !ORIGIN.has(key))
        .sort(([a], [b]) => (a < b ? -1 : 1)),
    ),
  );

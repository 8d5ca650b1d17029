import {
  byValve,
  doubtfulPhrases,
  type Entry,
  type Listening,
  listen,
  markDoubtful,
  type PhraseReading,
  startListening,
} from "../../core/index.ts";

/** A phrase as it is to be read: with its correction in place, or "" where it was struck. */
export interface Said {
  id: string;
  text: string;
  /** the moment as stored */
  saidAt: string;
  /** how sure the recogniser was of the words, where they were heard */
  confidence?: number | null;
  /** a lead has accepted it as it reads: nothing of it stands in doubt */
  accepted?: boolean;
}

/** An entry that stands, with the valve it belongs to ("" where none was named). */
export interface Standing {
  tag: string;
  entry: Entry;
  /** the phrase that made it, where the reader says so */
  phrase: string | undefined;
}

export interface JobReading {
  heard: Listening;
  said: Said[];
  standing: Standing[];
}

export const nothingHeard: JobReading = { heard: startListening(), said: [], standing: [] };

/** Hears further phrases of a job, in the order said, after those already heard. `tag`: the valve the job came with. */
export function readOn(before: JobReading, more: readonly Said[], tag: string | undefined): JobReading {
  let heard = before.heard;
  for (const { text } of more) heard = listen(heard, text);
  const said = [...before.said, ...more];
  const heardSo = doubtfulPhrases(heard.phrases, (phrase) => said[phrase]?.confidence ?? undefined);
  const doubtful = new Set([...heardSo].filter((phrase) => !said[phrase]?.accepted));
  const standing = byValve(markDoubtful(heard.entries, doubtful), tag).flatMap((stretch) =>
    stretch.entries.map((entry) => ({
      tag: stretch.tag ?? "",
      entry,
      phrase: entry.phrase === undefined ? undefined : said[entry.phrase]?.id,
    })),
  );
  return { heard, said, standing };
}

/** What each phrase did from the given one on, with ids in place of positions. */
export function eachPhrase(reading: JobReading, from = 0): { id: string; reading: PhraseReading; touched: string[] }[] {
  return reading.heard.phrases.slice(from).map((one, at) => ({
    id: reading.said[from + at]?.id ?? "",
    reading: one,
    touched: one.touched.flatMap((n) => reading.said[n]?.id ?? []),
  }));
}

/** The valve a job belongs to: the one it came with stands until another is named before anything is said of it. */
export function mainTag(standing: readonly { tag: string }[], tag: string | null | undefined): string {
  return standing[0]?.tag || tag || "";
}

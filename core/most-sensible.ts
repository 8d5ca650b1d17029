import { type Listening, readPhrase } from "./parse/index.ts";

/** One way in which a phrase may have been heard. */
export interface Way {
  text: string;
  /** how much less likely than the likeliest by its sound, natural log; 0 for that one */
  behind: number;
}

/** What a word that is read as nothing costs beside the sound; a whole phrase of them is talk, and costs no more. */
const UNREAD_WORD = 1;
const MOST_UNREAD = 3;

/**
 * Of the ways in which a phrase may have been heard, the one that makes sense where they are close: what the reader can
 * make something of is likelier to have been said to a log. `ways` is not empty; the first of equals is taken.
 */
export function mostSensible<W extends Way>(ways: readonly W[], session?: Listening): W {
  const [first, ...rest] = ways.map((way) => ({ way, cost: way.behind + senseless(way.text, session) }));
  if (!first) throw new RangeError("there is no way to choose from");
  return rest.reduce((best, one) => (one.cost < best.cost ? one : best), first).way;
}

function senseless(text: string, session: Listening | undefined): number {
  const { unread } = readPhrase(text, session);
  const words = unread.reduce((all, one) => all + one.text.split(/\s+/).length, 0);
  return UNREAD_WORD * Math.min(words, MOST_UNREAD);
}

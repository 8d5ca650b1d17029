import type { Ask, Entry, Unread } from "../shapes/entry.ts";

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
  phrases: PhraseReading[];
  /** what stands after the last phrase, in order */
  entries: Entry[];
  unread: Unread[];
  ask: Ask[];
  muted: boolean;
}

/** A session in which nothing has been said. */
export function startListening(): Listening {
  return { phrases: [], entries: [], unread: [], ask: [], muted: false };
}

/** Hears the next phrase; returns the session as it stands after it. Never throws. */
export function listen(session: Listening, text: string): Listening {
  const phrase = session.phrases.length;
  const at: [number, number] = [0, text.length];
  const unread: Unread[] = text ? [{ phrase, text, at }] : [];
  const reading: PhraseReading = { text, entries: [], unread, ask: [], marks: [], touched: [], alerts: [] };
  return { ...session, phrases: [...session.phrases, reading], unread: [...session.unread, ...unread] };
}

/** Reads one phrase by itself, or as the next of a session. */
export function readPhrase(text: string, context: Listening = startListening()): PhraseReading {
  const after = listen(context, text);
  return after.phrases[after.phrases.length - 1] as PhraseReading;
}

/** The entries of each valve in turn: naming another tag starts that valve's stretch. */
export function byValve(entries: readonly Entry[], tag?: string): { tag?: string; entries: Entry[] }[] {
  const stretches: { tag?: string; entries: Entry[] }[] = [{ tag, entries: [] }];
  for (const entry of entries) {
    let last = stretches[stretches.length - 1] as { tag?: string; entries: Entry[] };
    if (entry.type === "valve" && entry.tag && entry.tag !== last.tag) {
      if (last.tag === undefined) last.tag = entry.tag;
      else {
        last = { tag: entry.tag, entries: [] };
        stretches.push(last);
      }
    }
    last.entries.push(entry);
  }
  return stretches;
}

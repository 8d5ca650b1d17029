import type { Entry } from "../shapes/entry.ts";
import type { TaughtWord } from "../shapes/taught-word.ts";
import { buildLexicon, type Lexicon, lexicon } from "../vocabulary/lexicon.ts";
import { emptySession, type Listening, type PhraseReading } from "./listening.ts";
import { take } from "./session.ts";

export type { Listening, Mark, PhraseReading } from "./listening.ts";

/** A session in which nothing has been said. `taught`: words this site uses beside the shipped ones. */
export function startListening(taught: readonly TaughtWord[] = []): Listening {
  return emptySession(taught.length > 0 ? lexiconWith(taught) : lexicon());
}

let lastTaught: { taught: readonly TaughtWord[]; lexicon: Lexicon } | undefined;
function lexiconWith(taught: readonly TaughtWord[]): Lexicon {
  if (lastTaught?.taught !== taught) lastTaught = { taught, lexicon: buildLexicon(taught) };
  return lastTaught.lexicon;
}

/** Hears the next phrase; returns the session as it stands after it. Never throws. */
export function listen(session: Listening, text: string): Listening {
  return take(session, text);
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

/**
 * Phrase to entries, step by step:
 *
 * 1. words.ts: the text becomes words, each with its place.
 * 2. turns.ts: "scratch that", "make that", "note"; session.ts has each run of words between them read by itself,
 *    numbers.ts and tags.ts read the numbers and tags in it.
 * 3. chunks.ts: the longest stretches the rows know, with every sense they can have. mishearing.ts proposes trade
 *    words for what a recogniser may have got wrong, meant.ts keeps what makes sense; fragment.ts takes one run of
 *    words through steps 3 to 5, and scene.ts holds what has been made of it.
 * 4. measures.ts, quantities.ts, measured-part.ts: numbers with units become readings; tests.ts: tests and how they
 *    went; valves.ts: which valve it is.
 * 5. clauses.ts, with clause-state.ts: from left to right, each part (noun.ts, places.ts, pronouns.ts, subjects.ts)
 *    and what is said of it:
 *    a. findings.ts: conditions-said.ts, said-around.ts, which-condition.ts, which-part.ts, verdict-first.ts
 *    b. works.ts: work-target.ts, placing.ts, leaving.ts; neighbours.ts serves both
 *    c. needs.ts
 *    d. copying.ts
 *    e. order.ts: each entry once, in the order the log keeps them
 *    f. other-talk.ts: what was made of talk about something else is let go
 * 6. amend.ts, amend-number.ts, amend-said.ts, with standing.ts: an amendment in place of what stood.
 * 7. taken.ts, marks.ts: what each word was taken for, and what is unread.
 * 8. questions.ts: the one question that would settle a doubt, and its answer.
 *
 * listening.ts is the session that comes out, steps.ts what each phrase left in it, reference.ts what "it" means next.
 */

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

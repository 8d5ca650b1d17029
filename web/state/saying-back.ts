import { type Entry, followUpWords, type PhraseReading, whenWords } from "../../core/index.ts";
import { readBack } from "../parts/say.ts";
import type { Mood } from "./loop.ts";
import { openQuestion, questionWords } from "./questions.ts";
import { amendedNow, lastEntries, lastSaid, whatFollows } from "./seen.ts";
import type { State } from "./state.ts";

/** What the last phrase is answered with: the sign for ear and skin, the words, and whether they ask. */
export interface Answer {
  mood?: Mood;
  say?: string;
  asks?: boolean;
}

/** `before`: what was to be done before the phrase, so that only what it brought is said. */
export function answerTo(state: State, before: readonly string[] = []): Answer {
  const last = lastSaid(state);
  if (!last) return {};
  const question = openQuestion(state);
  const mood = question ? "doubtful" : moodOf(last.reading);
  if (question) {
    const known = question.is === "doubt" ? "" : entriesWords(state, last.reading);
    const said = state.settings.readBack === "tones" ? "" : known;
    return { mood, say: [said, questionWords(question)].filter(Boolean).join(". "), asks: true };
  }
  if (state.settings.readBack === "tones") return { mood };
  const words = readBack({ ...last.reading, entries: lastEntries(state) }, undefined, amendedNow(state));
  const next = state.settings.readBack === "full" ? nextWords(state, before) : "";
  return { mood, say: [words, next].filter(Boolean).join(". ") || undefined };
}

/** Words not read beside others that were are a doubt too: he must know that something is missing. */
export function moodOf({ entries, touched, unread }: PhraseReading): Mood | undefined {
  const read = entries.length > 0 || touched.length > 0;
  if (unread.length > 0) return read ? "doubtful" : "not_understood";
  return read ? "understood" : undefined;
}

function entriesWords(state: State, reading: PhraseReading): string {
  const entries: Entry[] = lastEntries(state);
  return readBack({ ...reading, entries, unread: [], ask: [] }, undefined, amendedNow(state));
}

/** What is to be done now, each in a word or two. */
export const toDo = (state: State): string[] =>
  whatFollows(state)
    .followUps.filter((one) => one.do !== "ask" && one.do !== "stop")
    .map((one) => `${followUpWords(one)}, ${whenWords(one)}`);

function nextWords(state: State, before: readonly string[]): string {
  const fresh = toDo(state).filter((one) => !before.includes(one));
  return fresh.length ? `Next: ${fresh.slice(0, 2).join(". ")}` : "";
}

import { type Entry, type Listening, listen, startListening } from "../../core/index.ts";
import { entrySchema } from "../../core/shapes/entry.ts";
import { ONES, SCALES, TEENS, TENS } from "../../core/vocabulary/numerals.ts";
import { lostWords, turns } from "../core/parse/kept-words.ts";
import { bare } from "../corpora/corpus.ts";
import type { Chance } from "./chance.ts";
import { CHATTER, randomPhrase } from "./phrases.ts";

/** A promise of the reader that did not hold: which one, and the phrases that show it. */
export interface Broken {
  promise: string;
  say: string[];
  detail: string;
}

export const CHATTER_PROMISE = "chatter leaves the log as it was";

/** The note's own text keeps case and stops as heard; everything else of an entry does not know them. */
const meaning = (entry: Entry): string => (entry.type === "note" ? "note" : bare(entry));
const meanings = (entries: readonly Entry[]): string => entries.map(meaning).join("\n");

/** A session of up to two phrases, for the next one to be read in. */
export function randomSession(by: Chance): { session: Listening; say: string[] } {
  const say = Array.from({ length: by.below(3) }, () => randomPhrase(by));
  return { session: say.reduce(listen, startListening()), say };
}

/** Reads one random phrase after a random session and tells which promises it broke. */
export function tryOne(by: Chance): Broken[] {
  const { session, say } = randomSession(by);
  const phrase = randomPhrase(by);
  return tryPhrase(session, say, phrase, by);
}

export function tryPhrase(before: Listening, said: readonly string[], phrase: string, by: Chance): Broken[] {
  const say = [...said, phrase];
  const broken: Broken[] = [];
  const hold = (promise: string, problem: string | undefined) => {
    if (problem !== undefined) broken.push({ promise, say, detail: problem });
  };
  const frozen = JSON.stringify(values(before));
  let after: Listening;
  try {
    after = listen(before, phrase);
  } catch (error) {
    return [{ promise: "reading never throws", say, detail: String(error) }];
  }
  hold("a session is never edited", JSON.stringify(values(before)) === frozen ? undefined : frozen);
  hold("entries fit the contract", misshapen(after));
  // with its ears shut the log hears hazards only, and says so
  if (!before.muted) hold("no word is lost in silence", lost(after));
  hold("case, stops and spacing change nothing", differs(before, after, phrase, by));
  hold("undo gives back what stood before", notUndone(before, after));
  hold(CHATTER_PROMISE, disturbedBy(after, by.pick(CHATTER)));
  return broken;
}

const values = ({ phrases, entries, unread, ask, muted, steps, waiting }: Listening) => ({
  phrases,
  entries,
  unread,
  ask,
  muted,
  steps,
  waiting,
});

function misshapen(after: Listening): string | undefined {
  for (const entry of after.entries) {
    const { error } = entrySchema.safeParse(entry);
    if (error) return `${JSON.stringify(entry)}: ${error.message}`;
    if (Object.values(entry).some((value) => value === undefined))
      return `undefined in ${JSON.stringify(Object.entries(entry))}`;
  }
  return undefined;
}

function lost(after: Listening): string | undefined {
  const reading = after.phrases.at(-1);
  const words = reading ? lostWords(reading) : [];
  return words.length > 0 ? words.join(" ") : undefined;
}

/** The same words shouted, spaced out, or written with stops between; stops inside numbers and tags mean something. */
function differs(before: Listening, after: Listening, phrase: string, by: Chance): string | undefined {
  // a quote or a hash behind a number is its unit, an apostrophe stands for a letter: those are no stops
  if (/["#'’`%°@&~<>½¼¾⅜⅝⅞⅛/ßŉ]|\d[.,–-]|[.–-]\d/i.test(phrase)) return undefined;
  const other = by.pick([
    phrase.toUpperCase(),
    phrase.replace(/\s+/g, "   "),
    ` ${phrase.replace(/\s+/g, (gap, at) => {
      const stop = by.pick([gap, ", ", "; ", ". ", " - ", "... ", "! ", "\n"]);
      return withinNumber(phrase, at, gap.length) ? gap : stop;
    })}.`,
  ]);
  const again = listen(before, other);
  return meanings(again.entries) === meanings(after.entries)
    ? undefined
    : `${JSON.stringify(other)}\n${meanings(after.entries)}\n-- became --\n${meanings(again.entries)}`;
}

/** "thirty, two" are two numbers: a stop between the words of one ends it. */
function withinNumber(phrase: string, at: number, gap: number): boolean {
  const before = /[a-z]+$/i.exec(phrase.slice(0, at))?.[0] ?? "";
  const after = /^[a-z]+/i.exec(phrase.slice(at + gap))?.[0] ?? "";
  return isNumber(before) && isNumber(after);
}

const isNumber = (word: string): boolean =>
  [ONES, TEENS, TENS, SCALES].some((words) => words[word.toLowerCase()] !== undefined);

/** A phrase that left entries and put nothing right is wholly taken back, and with it what "it" stood for. */
function notUndone(before: Listening, after: Listening): string | undefined {
  const reading = after.phrases.at(-1);
  if (!reading || reading.entries.length === 0 || turns(reading) || after.muted || before.muted) return undefined;
  const undone = listen(after, "scratch that");
  if (meanings(undone.entries) !== meanings(before.entries))
    return `${meanings(before.entries)}\n-- became --\n${meanings(undone.entries)}`;
  const [next, straight] = [listen(undone, "replaced it"), listen(before, "replaced it")];
  return meanings(next.entries) === meanings(straight.entries)
    ? undefined
    : `"replaced it" then reads\n${meanings(next.entries)}\nnot\n${meanings(straight.entries)}`;
}

function disturbedBy(after: Listening, chatter: string): string | undefined {
  const then = listen(after, chatter);
  return meanings(then.entries) === meanings(after.entries)
    ? undefined
    : `${JSON.stringify(chatter)} made\n${meanings(then.entries)}\nof\n${meanings(after.entries)}`;
}

import { type Entry, type Listening, nameOf, readPhrase } from "../../core/index.ts";
import type { Question } from "./questions.ts";

/**
 * What words mean where something was asked, or said back: an answer in a word, a correction, or simply the next phrase.
 * What comes out is said into the record in the words that any reader understands: "no, twenty eight" on the bench is
 * "correction, twenty eight" in the job, at the desk and in ten years.
 */
export type Meant =
  /** the doubtful phrase was heard right */
  | { is: "right" }
  | { is: "close" }
  /** the question is dropped; nothing is said */
  | { is: "go_on" }
  | { is: "start" }
  | { is: "phrases"; texts: string[] };

const YES =
  /^(?:yes|yeah|yep|yup|right|correct|affirmative|okay|ok|sure|(?:yes )?thats (?:right|it|correct)|you (?:got|heard) it)$/;
const NO = /^(?:no|nope|nah|wrong|negative|not right|thats (?:not right|wrong))$/;
const STAY = /^(?:no|nope|not yet|wait|hold on|go on|stay|leave it open|keep (?:it )?open|dont)$/;
const ANYWAY = /^(?:close|close it|close (?:it )?anyway|anyway|just close it|done|leave (?:it|them)|all done)$/;
const NO_AND = /^(?:no|nope|wrong|negative)[\s,.:;]+(?=\S)/i;

export function meantBy(text: string, asked: Question | undefined, heard: Listening): Meant {
  const bare = plain(text);
  if (asked?.is === "close") {
    if (YES.test(bare) || ANYWAY.test(bare) || commands(text, heard).includes("finish")) return { is: "close" };
    if (STAY.test(bare)) return { is: "go_on" };
  }
  if (asked?.is === "start") {
    if (YES.test(bare)) return { is: "start" };
    if (NO.test(bare)) return { is: "go_on" };
  }
  if (asked?.is === "doubt") {
    if (YES.test(bare) || isSaidAgain(text, heard)) return { is: "right" };
    if (NO.test(bare)) return { is: "phrases", texts: ["scratch that"] };
    if (NO_AND.test(text) && !denies(text, heard))
      return { is: "phrases", texts: putRight(text.replace(NO_AND, ""), heard, true) };
  }
  return { is: "phrases", texts: asIsOrPutRight(text, bare, asked, heard) };
}

/** "no, twenty eight" after what was said back; "done" after work that is owed; "one side" where that was asked. */
function asIsOrPutRight(text: string, bare: string, asked: Question | undefined, heard: Listening): string[] {
  if (readsToSomething(text, heard)) return [text];
  if (NO.test(bare) && !asked && heard.phrases.length) return ["scratch that"];
  if (/^(?:done|its done|did it|did that|already did)$/.test(bare)) {
    const owed = lastEntries(heard).findLast((entry) => entry.type === "work" && entry.status === "needed");
    if (owed?.type === "work") return [`correction, already ${nameOf(owed.work, "work")} it`];
  }
  if (NO_AND.test(text)) return putRight(text.replace(NO_AND, ""), heard, false) ?? [text];
  if (asked?.is === "follow_up" || asked?.is === "reader") {
    const corrected = `correction, ${text}`;
    if (amends(corrected, heard)) return [corrected];
  }
  return [text];
}

/** The last phrase put right by these words; or, where they are a phrase of their own, scratched and said anew. */
function putRight(words: string, heard: Listening, wrong: boolean): string[] {
  const corrected = `correction, ${words}`;
  const fresh = readPhrase(words, heard);
  const whole = fresh.entries.some(
    (entry) => entry.type === "finding" || entry.type === "work" || entry.type === "test",
  );
  if (!whole && amends(corrected, heard)) return [corrected];
  if (whole || wrong) return ["scratch that", words];
  return amends(corrected, heard) ? [corrected] : [`no, ${words}`];
}

function readsToSomething(text: string, heard: Listening): boolean {
  const { entries, touched, alerts } = readPhrase(text, heard);
  return entries.length > 0 || touched.length > 0 || alerts.length > 0;
}

function amends(text: string, heard: Listening): boolean {
  const { touched, unread } = readPhrase(text, heard);
  return touched.length > 0 && unread.length === 0;
}

/**
 * "no leak at sixty", "no cracks in the cage": the no belongs to what comes right behind it, and this is the next phrase.
 * Taken for an answer it would say the opposite. "no, leak" has its comma where it is typed; an ear hears none.
 */
function denies(text: string, heard: Listening): boolean {
  if (/^\w+\s*[,.:;]/.test(text)) return false;
  const { marks } = readPhrase(text, heard);
  const [first, second] = marks;
  if (first?.as === "test") return first.at[1] > text.search(/\s/);
  return first?.as === "plain" && (second?.as === "condition" || second?.as === "test");
}

/** The phrase that was doubted, said once more: the same entries come of it. */
function isSaidAgain(text: string, heard: Listening): boolean {
  const before = heard.phrases.at(-1)?.entries ?? [];
  const again = readPhrase(text, heard).entries;
  return before.length > 0 && bareJson(before) === bareJson(again);
}

const bareJson = (entries: readonly Entry[]): string =>
  JSON.stringify(entries.map(({ words: _w, at: _a, rule: _r, confidence: _c, phrase: _p, ...told }) => told));

const commands = (text: string, heard: Listening) =>
  readPhrase(text, heard).entries.flatMap((entry) => (entry.type === "command" ? [entry.command] : []));

const lastEntries = (heard: Listening): readonly Entry[] => {
  const last = heard.phrases.length - 1;
  return heard.entries.filter((entry) => entry.phrase === last);
};

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll("'", "")
    .replaceAll("’", "")
    .replaceAll(/[^a-z0-9]+/g, " ")
    .trim();

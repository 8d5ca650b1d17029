import type { TaughtWord } from "../shapes/taught-word.ts";
import { PLAIN } from "../vocabulary/grammar.ts";
import { lexicon } from "../vocabulary/lexicon.ts";
import { matchAt } from "../vocabulary/patterns.ts";
import type { Senses } from "../vocabulary/senses.ts";
import { nameOf } from "./names.ts";

export type Taught = { ok: true; value: TaughtWord } | { ok: false; problem: string };

/** The longest name a part has in any trade: more is a sentence, and a sentence is said, not taught. */
const MOST_WORDS = 5;

/**
 * A word a site may teach, written as the reader takes it, or why not, in words for the person. Refused is whatever
 * would change the reading of what everybody says: a word the log already reads as something, the small words of
 * English, and words that open a hazard, a command or a correction.
 */
export function teach(say: string, as: TaughtWord["as"], taught: readonly TaughtWord[] = []): Taught {
  const text = asHeard(say);
  const words = text ? text.split(" ") : [];
  const refuse = (problem: string): Taught => ({ ok: false, problem });
  if (words.length === 0) return refuse("Write the word as it is said, in letters.");
  if (text.length < 2 || text.length > 60 || words.length > MOST_WORDS)
    return refuse(`Teach a word or a short name, ${MOST_WORDS} words at most.`);
  if (!/[a-z]{2}/.test(text)) return refuse("Numbers and single letters are read as figures and tags already.");
  if (words.every((word) => PLAIN.has(word)))
    return refuse(`“${text}” is said all day and means nothing by itself: teach a word that stands out.`);
  const before = taught.find((one) => one.say === text);
  if (before) return refuse(`“${text}” is taught already, for ${meaningOf(before.as)}.`);
  const shipped = lexicon();
  const opens = [shipped.hazards, shipped.commands, shipped.undo, shipped.amend, shipped.note];
  if (opens.some((index) => matchAt<unknown>(index, words, 0)))
    return refuse(`“${text}” opens a hazard, a command or a correction, which must never be read as anything else.`);
  const found = shipped.longest(words, 0);
  const known = found && found.end === words.length ? meaningKnown(found.senses) : undefined;
  if (known) return refuse(`“${text}” is read already: ${known}.`);
  return { ok: true, value: { say: text, as } };
}

/** What a taught word means, by the name of its code. */
export function meaningOf(as: TaughtWord["as"]): string {
  if ("part" in as) return nameOf(as.part, "part");
  return "condition" in as ? nameOf(as.condition, "condition") : nameOf(as.work, "work");
}

/** The words as they stand after splitting: no capitals, apostrophes or signs. */
function asHeard(say: string): string {
  return say
    .toLowerCase()
    .replace(/['’]/g, "")
    .replace(/[^a-z0-9]+/g, " ")
    .trim();
}

function meaningKnown(senses: Senses): string | undefined {
  if (senses.part) return nameOf(senses.part, "part");
  if (senses.condition?.[0]) return nameOf(senses.condition[0].code, "condition");
  if (senses.work?.[0]) return nameOf(senses.work[0].code, "work");
  if (senses.test) return nameOf(senses.test, "test");
  if (senses.outcome) return nameOf(senses.outcome.test, "test");
  if (senses.quantity) return nameOf(senses.quantity, "quantity");
  if (senses.place) return nameOf(senses.place, "place");
  if (senses.unit || senses.bound || senses.severity || senses.extent || senses.acts || senses.service)
    return "a figure or a detail";
  return senses.roles || senses.placing || senses.verdict || senses.testing
    ? "a word that ties others together"
    : undefined;
}

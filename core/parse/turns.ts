/** Step 2: where a phrase turns. Each run of words between two turns is read by itself. */

import { EVERYDAY } from "../vocabulary/conditions.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import type { Lexicon } from "../vocabulary/lexicon.ts";
import { ONES, TEENS, TENS } from "../vocabulary/numerals.ts";
import { OPENS } from "../vocabulary/opens.ts";
import { matchAt } from "../vocabulary/patterns.ts";
import { readNumber } from "./numbers.ts";

/** "scratch that" undoes, "make that" amends, "note" opens a note: words [from, to). */
export interface Turn {
  kind: "undo" | "amend" | "note";
  from: number;
  to: number;
}

/** The turns of a phrase, from left to right; a note takes the rest of it, so nothing turns behind one. */
export function turnsOf(words: readonly string[], lexicon: Lexicon): Turn[] {
  const corrected = correctedFrom(words, lexicon);
  if (corrected) return [{ kind: "amend", from: 0, to: corrected }];
  const turns: Turn[] = [];
  for (let at = 0; at < words.length; ) {
    if (!((lexicon.opens.get(words[at] as string) ?? 0) & OPENS.turn)) {
      at += 1;
      continue;
    }
    const note =
      matchAt(lexicon.note, words, at) ?? (words[at] === "note" && noteAlone(words, at) ? { end: at + 1 } : undefined);
    if (note && note.end < words.length && opensNote(words, at)) {
      turns.push({ kind: "note", from: at, to: note.end });
      return turns;
    }
    const taken = matchAt(lexicon.undo, words, at) ?? swallowedThat(words, at);
    // "wipe that cage down", "scrub that stem": a work, and no undo
    const undo =
      taken && /^(?:wipe|scrub|drop)$/.test(words[at] as string) && partBehind(words, taken.end, lexicon)
        ? undefined
        : taken;
    const change = matchAt(lexicon.amend, words, at) ?? makesIt(words, at);
    const denied = !undo && !change ? deniedFor(words, at, lexicon) : undefined;
    if (denied) {
      turns.push({ kind: "amend", from: at, to: denied });
      at = denied;
    } else if (undo && undo.end >= (change?.end ?? 0)) {
      turns.push({ kind: "undo", from: at, to: undo.end });
      at = undo.end;
    } else if (change) {
      turns.push({ kind: "amend", from: at, to: change.end });
      at = change.end;
    } else at += 1;
  }
  return turns;
}

/** "no, forty", "wait, that was the plug", "should be six": a phrase that is nothing but what it should have been. */
function correctedFrom(words: readonly string[], lexicon: Lexicon): number | undefined {
  let at = 0;
  while (/^(?:no|nope|nah|wait|actually)$/.test(words[at] ?? "")) at += 1;
  const doubted = at > 0;
  const two = `${words[at]} ${words[at + 1]}`;
  if (two === "should be" || (doubted && /^(?:that was|it was|make it)$/.test(two))) at += 2;
  else if (two === "that should" && words[at + 2] === "be") at += 3;
  else if (doubted && /^(?:its|thats)$/.test(words[at] ?? "")) at += 1;
  if (at === 0) return undefined;
  const number = readNumber(words, at);
  if (number) {
    const behind = lexicon.longest(words, number.end)?.senses;
    // "wait fifteen minutes": nobody was wrong
    if (behind?.unit === "min" || behind?.unit === "s") return undefined;
    const end = behind?.unit || behind?.part ? lexicon.longest(words, number.end)?.end : number.end;
    const rate = end === words.length - 1 && /^(?:bubbles?|drops?|cc)$/.test(words[number.end] ?? "");
    return end === words.length || rate ? at : undefined;
  }
  const article = words[at] === "the" ? at + 1 : at;
  const part = lexicon.longest(words, article);
  // "no gasket": there is none
  const none = article === at && /^(?:no|nope|nah)$/.test(words[at - 1] ?? "");
  return part?.senses.part && part.end === words.length && !none ? at : undefined;
}

/** "scratch at": all that was said, and no scratch anywhere. */
function swallowedThat(words: readonly string[], at: number): { end: number } | undefined {
  const whole = /^(?:scratch|strike)$/.test(words[at] ?? "") && words[at + 1] === "at" && words.length === at + 2;
  return whole ? { end: at + 2 } : undefined;
}

const partBehind = (words: readonly string[], at: number, lexicon: Lexicon): boolean =>
  [at, at + 1].some((from) => lexicon.longest(words, from)?.senses.part !== undefined);

/** "order two, no, make it four". */
function makesIt(words: readonly string[], at: number): { end: number } | undefined {
  if (words[at] !== "make" || words[at + 1] !== "it") return undefined;
  const many = words[at + 2] ?? "";
  return ONES[many] || TEENS[many] || TENS[many] || /^\d/.test(many) ? { end: at + 2 } : undefined;
}

/** "might be worn, no, cracked": what it is instead, and nothing that is not there ("no cracks", "no torn gaskets"). */
function deniedFor(words: readonly string[], at: number, lexicon: Lexicon): number | undefined {
  if (!/^(?:no|nope|nah)$/.test(words[at] ?? "")) return undefined;
  // "no, I flipped it": what was done instead
  if (at === 0 && /^(?:i|we|ive|weve)$/.test(words[1] ?? "")) {
    const deed = lexicon.longest(words, 2)?.senses.work;
    return deed?.some((one) => one.form === "past") ? 1 : undefined;
  }
  // "has no life left", "is no good": what there is none of
  if (
    /^(?:got|has|have|had|having|with|show|shows|showed|see|saw|found|is|are|was|were|theres|there|its|and|or|in|of|s)$/.test(
      words[at - 1] ?? "",
    )
  )
    return undefined;
  let to = at + 1;
  while (/^(?:uh|um|just|really|its|more|like|actually)$/.test(words[to] ?? "")) to += 1;
  let from = to;
  while (lexicon.longest(words, from)?.senses.severity && !lexicon.longest(words, from)?.senses.condition)
    from = lexicon.longest(words, from)?.end ?? words.length;
  const said = lexicon.longest(words, from);
  if (!said?.senses.condition?.every((one) => one.form === "is") || EVERYDAY.has(words[from] ?? "")) return undefined;
  const behind = lexicon.longest(words, said.end);
  return behind?.senses.part || (behind?.senses.roles ?? 0) & ROLE.or ? undefined : to;
}

/** "okay note": the bare word leads in where little stands before it. */
function noteAlone(words: readonly string[], at: number): boolean {
  return at === 0 || /^(?:okay|ok|uh|um|and|also|so|well|please)$/.test(words[at - 1] ?? "");
}

/** "a note", "no note": the word as a thing is no lead-in. */
function opensNote(words: readonly string[], at: number): boolean {
  return !/^(?:a|the|no|my|his|that|this|any|on|of|sticky|left|quick)$/.test(words[at - 1] ?? "");
}

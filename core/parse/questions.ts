/**
 * Step 8: the one short question that would settle a real doubt, and the word or two that answer it.
 * A question is never asked where the trade would not ask.
 */

import type { Unit } from "../shapes/codes.ts";
import type { Ask, Entry } from "../shapes/entry.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { nameOfPart } from "../vocabulary/names.ts";
import { spellings } from "../vocabulary/notation.ts";
import { amend } from "./amend.ts";
import { bubblesAt } from "./bubbles.ts";
import { has } from "./chunks.ts";
import type { Fragment } from "./fragment.ts";

/** A number said without the whole of its unit, waiting for it: of bolts or a nut, or of bubbles. */
export interface Waiting {
  phrase: number;
  value: number;
  part?: Extract<Entry, { type: "reading" }>["part"];
  /** bubbles or drops, counted without the time */
  rate?: Unit;
}

const BOLTED = /bolting|nut/;

/** "bonnet bolts twenty eight", "twenty eight on the bonnet bolts": 28 what? "three bubbles": a minute? */
export function numberWaiting(fragment: Fragment, phrase: number): { ask: Ask; waiting: Waiting } | undefined {
  const { scene } = fragment;
  const { chunks } = scene;
  for (const [at, one] of chunks.entries()) {
    const counted = one.number && chunks[at + 1]?.used ? bubblesAt(scene, at + 1) : undefined;
    if (counted && one.number)
      return {
        ask: { phrase, question: `${one.number.value} ${counted.thing}${one.number.value === 1 ? "" : "s"} a minute?` },
        waiting: { phrase, value: one.number.value, rate: counted.unit },
      };
    if (!one.number || one.used || one.number.fraction || one.number.value < 5) continue;
    const before = chunks[at - 1]?.senses.part ?? chunks[at - 2]?.senses.part;
    const behind = /^on(?: the)?$/.test(chunks[at + 1]?.text ?? "") ? scene.noun(at + 2)?.part : undefined;
    const part = behind ?? before;
    if (/^of\b/.test(chunks[at + 1]?.text ?? "")) continue;
    if (!part || !BOLTED.test(part) || chunks[at + 1]?.senses.part || chunks[at + 1]?.unknown) continue;
    return {
      ask: { phrase, question: `${one.number.value} what on the ${nameOfPart(part)}: foot pounds?` },
      waiting: { phrase, value: one.number.value, part },
    };
  }
  return undefined;
}

/** "worn on one side" with nothing named before: of which part? */
export function partWanted(entries: readonly Entry[], phrase: number): Ask | undefined {
  const bare = entries.find((entry) => (entry.type === "finding" || entry.type === "work") && !entry.part);
  return bare ? { phrase, question: "Which part?" } : undefined;
}

const DID = spellings("[(i|we) ]did|finished|done");

/** "did the packing": renewed, adjusted or cleaned? What is not said is asked for, and never supposed. */
export function workWanted(fragment: Fragment, phrase: number): Ask | undefined {
  const { scene, drafts } = fragment;
  const did = drafts.length > 0 ? -1 : scene.chunks.findIndex((one) => DID.has(one.text));
  if (did < 0 || scene.skipPlain(0) < did) return undefined;
  const objects = scene.nouns(did + 1, "object");
  const [first, more] = objects?.nouns ?? [];
  if (!first?.part || first.part === "valve" || !(first.det || first.plural)) return undefined;
  if (!scene.chunks.slice(objects?.end).every((one) => one.senses.plain && !one.unknown)) return undefined;
  return { phrase, question: more ? "What was done to them?" : `What was done to the ${nameOfPart(first.part)}?` };
}

/** The reading that a unit, or a plain yes, makes of a waiting number. */
export function unitAnswer(waiting: Waiting, words: readonly string[], fragment: Fragment): Entry | undefined {
  const unit = fragment.scene.chunks.find((one) => one.senses.unit)?.senses.unit;
  const yes = words.every((word) => /^(?:yes|yeah|yep|yup|right|correct|sure)$/.test(word));
  if (!yes && !(unit && words.length <= 4)) return undefined;
  if (waiting.rate)
    return yes || unit === "min" || unit === waiting.rate
      ? { type: "reading", quantity: "leak_rate", value: waiting.value, unit: waiting.rate }
      : undefined;
  const said = yes || unit === "pound" ? "ft_lbf" : unit;
  if (said !== "ft_lbf" && said !== "in_lbf" && said !== "N_m") return undefined;
  return {
    type: "reading",
    quantity: "torque",
    value: waiting.value,
    unit: said,
    ...(waiting.part ? { part: waiting.part } : {}),
  };
}

const GENERAL = new Set<string | undefined>(["diaphragm", "housing", "threads"]);

/** An entry whose part is not said, or only in general: a bare part or place next may be the answer. */
export const wantsPart = (entry: Entry): boolean =>
  ((entry.type === "finding" || entry.type === "work") && !entry.part) || ("part" in entry && GENERAL.has(entry.part));

/** A part or a place said by itself answers "which part?" and "which one?" of the phrase before. */
export function partAnswer(last: readonly Entry[], words: readonly string[], fragment: Fragment): Entry[] | undefined {
  if (fragment.drafts.length > 0 || words.length > 4 || last.length === 0) return undefined;
  const { chunks } = fragment.scene;
  const bareWords = chunks.every(
    (one) =>
      one.senses.part ||
      one.senses.place ||
      one.senses.plain ||
      has(one, ROLE.det) ||
      has(one, ROLE.one) ||
      has(one, ROLE.it),
  );
  const place = chunks.find((one) => one.senses.place && !one.senses.part)?.senses.place;
  const part = chunks.find((one) => one.senses.part);
  if (!bareWords || (!place && !part)) return undefined;
  const wanting = last.filter((entry) => (entry.type === "finding" || entry.type === "work") && !entry.part);
  if (part && wanting.length > 0) {
    const noun = fragment.scene.noun(chunks.indexOf(part)) ?? undefined;
    return last.map((entry) =>
      wanting.includes(entry) ? ({ ...entry, part: noun?.part ?? part.senses.part } as Entry) : entry,
    );
  }
  const general = last.some((entry) => "part" in entry && GENERAL.has(entry.part));
  return general && (place || part) ? amend(last, words, fragment) : undefined;
}

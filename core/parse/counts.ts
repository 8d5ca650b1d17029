/** Step 5: a number that says how many of a part. */

import { ROLE } from "../vocabulary/grammar.ts";
import { type Chunk, has } from "./chunks.ts";
import type { Named } from "./noun.ts";

/** What goods are measured by where they are not counted. */
export const MEASURED_BY =
  /^(?:foot|feet|ft|inch|inches|yards?|meters?|metres?|lengths?|pieces?|sections?|sticks?|rolls?|cans?|tubes?)$/;
export const PIECES = /^(?:numbers?|nos?|pcs|pieces|ea|each|qty|units?)$/;

/** A number that counts things ("four bolts"), and not one with a unit behind it. */
export function countAt(chunks: readonly Chunk[], index: number): number | undefined {
  const number = chunks[index]?.number;
  if (!number || number.fraction || number.upper !== undefined || !Number.isInteger(number.value)) return undefined;
  if (number.value < 1 || number.value > 200) return undefined;
  if (chunks[index]?.used || chunks[index + 1]?.senses.unit === "pound") return undefined;
  // "every one of the bolts"
  if (number.bareOne && /^(?:every|each|any|this|that|which|neither|either)$/.test(chunks[index - 1]?.text ?? ""))
    return undefined;
  // "item two, bonnet", "number three stud": which, and not how many
  if (
    /^(?:items?|steps?|number|section|question|page|phase|stage|point|valve|pass)$/.test(chunks[index - 1]?.text ?? "")
  )
    return undefined;
  return number.value;
}

/** "two studs are bent and one is missing": the number behind the studs counts some of them. */
export function oneOfMany(next: Chunk | undefined, named: readonly Named[]): boolean {
  if (!(has(next, ROLE.is) || has(next, ROLE.has)) || next?.senses.part || has(next, ROLE.and)) return false;
  return named.at(-1)?.plural === true;
}

/** Step 4a: which part a measure is said of ("bonnet bolts torqued to thirty"). */

import type { Quantity } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { type Chunk, has } from "./chunks.ts";
import { isPressureWord, type Measure } from "./measure.ts";
import type { Noun } from "./noun.ts";
import type { Scene } from "./scene.ts";

/** A reading names its part only when the words do: the part just before it, or "on the bonnet bolts" just after. */
export function nounOf(
  scene: Scene,
  measure: Measure,
  quantity: Quantity,
  low: number,
  high: number,
): Noun | undefined {
  if (quantity === "temperature") {
    // "the oil temperature": the part stands right before the word
    const word = scene.chunks.findIndex((one, at) => at >= low && at < high && one.senses.quantity === "temperature");
    if (word > 0) return scene.chunks[word - 1]?.senses.part ? nounEndingAt(scene, word - 1) : undefined;
    // "body's at a hundred and eighty degrees"
    const part = scene.chunks.findLastIndex(
      (one, at) => at >= low && at < measure.from && one.senses.part !== undefined,
    );
    return part >= 0 && measure.from - part <= 3 && scene.chunks[part]?.senses.part !== "valve"
      ? nounEndingAt(scene, part)
      : undefined;
  }
  if (isPressureWord(quantity) || quantity === "duration" || quantity === "percent_open" || quantity === "travel")
    return undefined;
  if (quantity === "leak_rate") {
    for (let at = low; at < high; at += 1) {
      const noun = scene.chunks[at]?.senses.part ? scene.noun(at) : undefined;
      if (noun && (noun.part === "packing" || noun.part === "packing_nut")) return { ...noun, part: "packing" };
      if (scene.chunks[at]?.senses.test === "packing") return { part: "packing", from: at, to: at + 1, core: at };
    }
    return undefined;
  }
  // "bonnet's back on, thirty foot pounds on all of them": a pronoun names nothing but the bolts just said
  const on = scene.chunks.slice(measure.to, measure.to + 4).findIndex((one) => /^(?:them|em|those|it)$/.test(one.text));
  const pointed = quantity === "torque" && on > 0 && /^on/.test(scene.chunks[measure.to]?.text ?? "");
  let at = measure.to;
  while (
    at < high &&
    (has(scene.chunks[at], ROLE.prep) ||
      scene.chunks[at]?.senses.quantity ||
      scene.chunks[at]?.senses.plain ||
      (quantity === "length" && scene.chunks[at]?.senses.condition?.some((one) => one.form === "has")))
  )
    at += 1;
  const joined = scene.chunks[measure.to];
  if (at < high && joined && (has(joined, ROLE.prep) || joined.senses.quantity)) {
    const noun = scene.noun(at);
    // "spring's four and five eighths long, stem's three quarter inch": of what stands before
    const anew = !has(joined, ROLE.prep) && scene.chunks.slice(low, measure.from).some((one) => one.senses.part);
    if (noun?.part && at > measure.to && !anew) return noun;
  }
  for (let back = measure.from - 1; back >= low && back >= measure.from - 10; back -= 1) {
    const chunk = scene.chunks[back];
    // "a hole in the diaphragm about a quarter inch": of the hole
    if (quantity === "length" && chunk?.senses.part && foundOn(scene, back)) return undefined;
    // "a washout below the seat, a quarter inch deep": where, and not what
    if (quantity === "length" && chunk?.senses.part && BESIDE.test(before(scene, back)?.text ?? "")) continue;
    // "new gaskets, torqued to forty": nobody torques a gasket
    if (quantity === "torque" && SOFT.test(chunk?.senses.part ?? "")) return undefined;
    if (chunk?.senses.part) {
      const noun = nounEndingAt(scene, back);
      // "put the bonnet back on, torqued to fifty": what was put on is not what was torqued
      const handled = scene.chunks[(noun?.from ?? back) - 1];
      if (
        quantity === "torque" &&
        noun?.part &&
        !/bolting|nut|screw|threads|connector/.test(noun.part) &&
        ((handled?.senses.work && handled.senses.quantity !== "torque" && !/^tighten/.test(handled.text)) ||
          handled?.senses.placing)
      )
        return undefined;
      return pointed && !/bolting|nut|screw|connector/.test(noun?.part ?? "") ? undefined : noun;
    }
    // "leaking around the bolts, retorqued them to fifteen": a pronoun names nothing
    if (
      quantity === "torque" &&
      /^(?:them|it|em|those|these)$/.test(chunk?.text ?? "") &&
      /torqu|tighten/.test(scene.chunks[back - 1]?.text ?? "")
    )
      return undefined;
    if (chunk?.senses.condition && quantity !== "length") return undefined;
    // "studs lubed and torqued to one ten": of bolts alone, since "gasket replaced and torqued" is of others
    if (has(chunk, ROLE.and) && quantity === "torque" && !boltsBefore(scene, back, low)) return undefined;
  }
  return undefined;
}

const SOFT = /gasket|o_ring|backup_ring|diaphragm$|seals|oil|tubing/;

const BESIDE = /^(?:below|by|near|under|underneath|above|behind|beside|next to)$/;

/** What stands before a part and its article. */
function before(scene: Scene, part: number): Chunk | undefined {
  let back = part - 1;
  while (has(scene.chunks[back], ROLE.det) && !has(scene.chunks[back], ROLE.prep)) back -= 1;
  return scene.chunks[back];
}

/** A thing found stands before the part: "a crack in the yoke". */
function foundOn(scene: Scene, part: number): boolean {
  const prep = before(scene, part);
  const back = prep ? scene.chunks.indexOf(prep) : 0;
  return has(prep, ROLE.prep) && (scene.chunks[back - 1]?.senses.condition?.some((one) => one.form === "has") ?? false);
}

function boltsBefore(scene: Scene, from: number, low: number): boolean {
  for (let at = from - 1; at >= low; at -= 1) {
    const part = scene.chunks[at]?.senses.part;
    if (part) return /bolting/.test(part) && scene.chunks[from - 1]?.senses.work !== undefined;
  }
  return false;
}

/** The noun phrase whose part stands at `core`, with what stands before it. */
export function nounEndingAt(scene: Scene, core: number): Noun | undefined {
  for (let from = Math.max(0, core - 4); from <= core; from += 1) {
    const noun = scene.noun(from);
    if (noun?.core === core) return noun;
  }
  return undefined;
}

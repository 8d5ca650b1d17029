/** Step 5: one noun phrase, "the two lower bonnet bolts", "the other one", "top of the housing". */

import type { Part, Place } from "../shapes/codes.ts";
import { KIND_OF } from "../shapes/part-kinds.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { spellings } from "../vocabulary/notation.ts";
import { type Chunk, has } from "./chunks.ts";
import { countAt, MEASURED_BY, oneOfMany, PIECES } from "./counts.ts";
import { finish } from "./noun-tail.ts";
import { isNextAbove } from "./numbers.ts";
import { counterpart, placed } from "./places.ts";

/** A part as a phrase names it. */
export interface Named {
  part: Part | undefined;
  place?: Place;
  count?: number;
  plural?: boolean;
  /** "both": two of them */
  both?: boolean;
}

/** A noun phrase: chunks [from, to) naming a part. */
export interface Noun extends Named {
  from: number;
  to: number;
  /** index of the chunk that names the part */
  core: number;
  fresh?: boolean;
  old?: boolean;
  det?: boolean;
  /** "the other one": the counterpart of what was named last */
  other?: boolean;
  /** "the top of the housing": the place is not part of the name */
  apart?: boolean;
  /** "the lower one": the part comes from what was named last */
  one?: boolean;
}

/** What comes by the piece. */
const RUNS = /^(?:tubing|packing|gasket|bolting|linkage|diaphragm|spring)$/;
/** No name is longer than this. */
const MOST_CHUNKS = 9;
const RING = spellings("ring|rings");
const BOTH = spellings("both[ of (the|them)]");
/** "all the bolts", "that gasket": words for "it" that may also stand before a part. */
const POINTING = new Set(["that", "this", "those", "these", "all"]);

/** A noun phrase in the making, with all its keys: nouns are asked and copied more than anything else. */
const nounAt = (index: number): Noun => ({
  part: undefined,
  place: undefined,
  count: undefined,
  plural: undefined,
  both: undefined,
  from: index,
  to: index,
  core: index,
  fresh: undefined,
  old: undefined,
  det: undefined,
  other: undefined,
  apart: undefined,
  one: undefined,
});

/** The noun phrase that starts at `index`; `named` are the parts named last, for "the lower one". */
export function readNoun(chunks: readonly Chunk[], index: number, named: readonly Named[]): Noun | undefined {
  const noun = nounAt(index);
  const endAt = (core: number) => {
    noun.core = core;
    noun.to = core + 1;
    return finish(chunks, noun, named);
  };
  for (let at = index; at < chunks.length && at < index + MOST_CHUNKS; at += 1) {
    const chunk = chunks[at] as Chunk;
    // "the uh the cage gasket"
    if (noun.det && at > index && /^(?:uh|um|er|ah|uhh|umm)$/.test(chunk.text)) continue;
    const ring = RING.has(chunk.text);
    // "bring two numbers cage gasket", "4 pcs studs"
    if (noun.count !== undefined && at > index && PIECES.test(chunk.text) && chunks[at + 1]?.senses.part) continue;
    // "five rings of new packing"
    if (
      noun.count !== undefined &&
      (ring || /^(?:rows?|sets?)$/.test(chunk.text)) &&
      /^of/.test(chunks[at + 1]?.text ?? "")
    ) {
      at += 1;
      continue;
    }
    if (chunk.hazard || chunk.command || chunk.tag || chunk.talk || (chunk.unknown && !ring)) return undefined;
    const senses = chunk.senses;
    // "on top, lower housing's fine": the place is the last thing's, not this one's
    if (senses.part && noun.place && !noun.apart && /^(?:upper|lower|inlet|outlet)_/.test(senses.part))
      return undefined;
    // "packing was gone, so I put five new rings in": rings of what was named last
    if (ring && named.at(-1)?.part === "packing_nut" && (noun.fresh || noun.count !== undefined || noun.det)) {
      noun.part = "packing";
      return endAt(at);
    }
    if (ring && RINGED.test(named.at(-1)?.part ?? "") && (noun.fresh || noun.count !== undefined || noun.det)) {
      noun.one = true;
      return endAt(at);
    }
    if (chunk.unknown) return undefined;
    if (senses.part && isSeason(chunks, at)) return undefined;
    if (senses.part && !isVerbHere(chunks, at)) {
      noun.part = senses.part;
      noun.plural = senses.plural;
      return endAt(at);
    }
    // "a two inch kit": its size, and no count of it
    const sized = chunks[at + 2]?.senses.part;
    if (chunk.number && chunks[at + 1]?.text === "inch" && !chunk.used && sized && sized !== "valve") {
      at += 1;
      continue;
    }
    // "two or three bolts": nobody counted
    if (
      chunk.number?.upper !== undefined &&
      !chunk.used &&
      Number.isInteger(chunk.number.value) &&
      sizedOrPart(chunks, at + 1)
    ) {
      noun.det = true;
      continue;
    }
    const count = countAt(chunks, at);
    // "two stripped, the rest are fine": as many as are left of what was named
    if ((noun.det || chunks[at - 1]?.text === "and the") && REST.test(chunk.text) && isMany(named.at(-1))) {
      const ofThem = chunks[at + 1]?.text === "of" && countsThem(chunks, at + 2);
      if (ofThem || !/^of(?: the)?$/.test(chunks[at + 1]?.text ?? "")) {
        noun.one = true;
        return endAt(ofThem ? at + 2 : at);
      }
    }
    // "other three rusty": so many of what was named
    if (
      has(chunk, ROLE.other) &&
      countAt(chunks, at + 1) !== undefined &&
      isMany(named.at(-1)) &&
      isSaid(chunks[at + 2])
    ) {
      noun.count = countAt(chunks, at + 1);
      noun.one = true;
      return endAt(at + 1);
    }
    // "the other side": of the same part, and no other one
    if (
      has(chunk, ROLE.other) &&
      !/ones?$/.test(chunk.text) &&
      /^(?:sides?|ends?|face|half)$/.test(chunks[at + 1]?.text ?? "")
    )
      return undefined;
    // "the other two bolts": how many are left of them
    if (has(chunk, ROLE.other) && chunks[at + 1]?.number && chunks[at + 2]?.senses.part) {
      noun.det = true;
      continue;
    }
    // "order me another one": one more of the same, and not its counterpart
    if (chunk.text === "another one" && [at - 1, at - 2].some((back) => has(chunks[back], ROLE.need))) {
      noun.fresh = true;
      noun.one = true;
      return endAt(at);
    }
    if (has(chunk, ROLE.other)) {
      noun.other = true;
      return endAt(at);
    }
    if (has(chunk, ROLE.one) && (noun.place || noun.fresh || noun.old) && !senses.part) {
      noun.one = true;
      return endAt(at);
    }
    if (count !== undefined) {
      // "nineteen six studs" counts nothing; of "three of the eight studs" the first counts
      if (noun.count !== undefined && chunks[at - 1]?.number) {
        if (!isNextAbove(noun.count, count) || !sizedOrPart(chunks, at + 1)) return undefined;
        // "three, four bolts": nobody counted
        noun.count = undefined;
        noun.det = true;
        continue;
      }
      noun.count ??= count;
      if (oneOfMany(chunks[at + 1], named)) {
        noun.one = true;
        return endAt(at);
      }
      if (chunks[at + 1]?.text === "of" || chunks[at + 1]?.text === "of the") at += 1;
      // "two feet of tubing": measured, not counted
      else if (MEASURED_BY.test(chunks[at + 1]?.text ?? "") && /^of/.test(chunks[at + 2]?.text ?? "")) {
        noun.count = undefined;
        at += 2;
      }
      continue;
    }
    if (senses.place && !senses.condition) {
      noun.place = senses.place;
      const next = chunks[at + 1];
      // "pitted on the face, seat's worn": no part is called by its face
      if (next?.senses.part && /^(?:face|edge|hole)$/.test(senses.place)) return undefined;
      if (next?.text === "of" && has(chunks[at + 2], ROLE.it) && !partAhead(chunks, at + 2)) {
        // "the edge of it"
        noun.apart = true;
        noun.one = true;
        return endAt(at + 2);
      }
      // "kept the top": of a pair named before, its place says which
      if (noun.det && (!next || has(next, ROLE.and) || has(next, ROLE.but)) && isOneOfTwo(named.at(-1), senses.place)) {
        noun.one = true;
        return endAt(at);
      }
      if (next && /^(?:of|on|in|at)(?: the)?$/.test(next.text)) {
        if (!partAhead(chunks, at + 2)) return undefined;
        noun.apart = true;
        at += 1;
      }
      continue;
    }
    // "ran a new piece of tubing", "made up a new piece"
    if (noun.fresh && MEASURED_BY.test(chunk.text) && !senses.part) {
      if (/^of/.test(chunks[at + 1]?.text ?? "")) {
        at += 1;
        continue;
      }
      if (!/^(?:piece|section|length|stick)s?$/.test(chunk.text) || !RUNS.test(named.at(-1)?.part ?? ""))
        return undefined;
      noun.one = true;
      return endAt(at);
    }
    if (has(chunk, ROLE.fresh)) noun.fresh = true;
    else if (has(chunk, ROLE.old) && chunk.text !== "same") noun.old = true;
    else if (BOTH.has(chunk.text)) {
      // "replaced both, two nuts also"
      if (chunks[at + 1]?.number) return undefined;
      noun.both = true;
    } else if (noun.count !== undefined && countsThem(chunks, at)) {
      noun.one = true;
      return endAt(at);
    } else if (chunk.text === "them" && noun.count !== undefined) continue;
    // "at forty the packing weeps": the number counts nothing of what an article begins
    else if (chunks[at - 1]?.number && at > index && /^(?:the|a|an|this|that|these|those|my)$/.test(chunk.text))
      return undefined;
    else if (leadsIn(chunk, chunks[at + 1])) noun.det = true;
    else return undefined;
  }
  return undefined;
}

const sizedOrPart = (chunks: readonly Chunk[], at: number): boolean =>
  partAhead(chunks, has(chunks[at], ROLE.fresh) || chunks[at]?.text === "of the" ? at + 1 : at);

/** Whether a place tells which of an upper and a lower, an inlet and an outlet. */
const isOneOfTwo = (last: Named | undefined, place: Place): boolean =>
  last?.part !== undefined &&
  counterpart(last.part) !== last.part &&
  placed({ part: last.part, place }).place === undefined;

const REST = /^(?:rest|others|remainder)$/;

/** Several of a kind were spoken of, so that some of them may be left. */
const isMany = (last: Named | undefined): boolean =>
  last?.plural === true || (last?.count ?? 0) > 1 || (last?.part !== undefined && KIND_OF[last.part] === "bolting");

const isSaid = (chunk: Chunk | undefined): boolean =>
  has(chunk, ROLE.is) || chunk?.senses.condition !== undefined || chunk?.senses.severity !== undefined;

const RINGED = /^(?:packing|seals|o_ring|backup_ring|cage_o_ring|stem_guide_o_ring)$/;

/** "two of em are broke". */
function countsThem(chunks: readonly Chunk[], at: number): boolean {
  const chunk = chunks[at];
  return /^(?:them|em|those)$/.test(chunk?.text ?? "") && has(chunk, ROLE.it) && !partAhead(chunks, at + 1);
}

/** "the", "some gaskets", "that gasket". */
function leadsIn(chunk: Chunk, next: Chunk | undefined): boolean {
  if (has(chunk, ROLE.det) || chunk.text === "of") return true;
  // "put the same gasket back"
  if (chunk.text === "same" && next?.senses.part) return true;
  if (next?.senses.part && /^(?:some|complete|full|single|extra)$/.test(chunk.text)) return true;
  return has(chunk, ROLE.it) && POINTING.has(chunk.text);
}

function partAhead(chunks: readonly Chunk[], index: number): boolean {
  for (let at = index; at < index + 4; at += 1) {
    const chunk = chunks[at];
    if (!chunk) return false;
    if (chunk.senses.part) return true;
    if (!(has(chunk, ROLE.det) || chunk.senses.place || has(chunk, ROLE.old) || has(chunk, ROLE.one) || chunk.number))
      return false;
  }
  return false;
}

/** "vent the actuator": a word that is both part and verb is the verb where an object follows. */
const SEASON_LEADS = /^(?:this|last|next|every|since|till|until|by|come|before|after)$/;

/** "leaking since last spring", "since this spring": a time of year, unless something is said of it. */
function isSeason(chunks: readonly Chunk[], index: number): boolean {
  if (chunks[index]?.text !== "spring" || !SEASON_LEADS.test(chunks[index - 1]?.text ?? "")) return false;
  // "replaced this spring"
  if (chunks[index - 1]?.text === "this" && (chunks[index - 2]?.senses.work || chunks[index - 2]?.senses.placing))
    return false;
  const next = chunks[index + 1];
  return !(
    next?.senses.condition ||
    next?.senses.work ||
    has(next, ROLE.is) ||
    has(next, ROLE.has) ||
    has(next, ROLE.owed)
  );
}

function isVerbHere(chunks: readonly Chunk[], index: number): boolean {
  // "wants us to plug the holes"
  if (
    /^(?:plug|seat|pack|nut)$/.test(chunks[index]?.text ?? "") &&
    chunks[index - 1]?.text === "to" &&
    has(chunks[index + 1], ROLE.det)
  )
    return true;
  if (!chunks[index]?.senses.work?.some((one) => one.form === "base")) return false;
  const next = chunks[index + 1];
  // "bolts of the yoke"
  if (next?.text.startsWith("of")) return false;
  return (has(next, ROLE.det) || has(next, ROLE.it)) && !has(chunks[index - 1], ROLE.det);
}

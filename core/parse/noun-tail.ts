/** Step 5: what stands right behind a part's name, and which part a place or an owner makes of it. */

import type { Part, Place } from "../shapes/codes.ts";
import { KIND_OF } from "../shapes/part-kinds.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { wordTable } from "../vocabulary/notation.ts";
import { HOLES, OWNED } from "../vocabulary/parts.ts";
import { type Chunk, has } from "./chunks.ts";
import type { Named, Noun } from "./noun.ts";
import { counterpart, oppositePlace, placed } from "./places.ts";

/** Words that stand before a part and belong to its name. */
const ADJECTIVE_PLACES = new Set(["face", "edge", "groove", "hole", "inside", "outside", "center"]);

/** Takes a place said right behind the part, and settles which part a place makes of it. */
export function finish(chunks: readonly Chunk[], noun: Noun, named: readonly Named[]): Noun {
  const after = chunks[noun.to];
  // "plug face", "cage bottom": a place right behind the part, unless it begins the next one's name
  if (after?.senses.place && !noun.place && !after.used && !after.senses.condition) {
    const next = chunks[noun.to + 1];
    const opensNext =
      next && (next.senses.part || has(next, ROLE.one) || (has(next, ROLE.prep) && next.text.startsWith("of")));
    const saidOf = has(next, ROLE.is) || next?.senses.condition || has(next, ROLE.has) || has(next, ROLE.not);
    if (!opensNext && (ADJECTIVE_PLACES.has(after.senses.place) || saidOf)) {
      noun.place = after.senses.place;
      noun.to += 1;
    }
  }
  // "cage holes are plugged": no holes in it that should not be there
  const own = chunks[noun.to];
  if (
    noun.part &&
    !noun.place &&
    (WITH_HOLES.has(noun.part) || BOLTED_ON.has(noun.part)) &&
    OPENINGS.test(own?.text ?? "")
  ) {
    const next = chunks[noun.to + 1];
    if (BOLTED_ON.has(noun.part) || has(next, ROLE.is) || next?.senses.condition || next?.senses.work) {
      if (own?.text !== "windows") noun.place = "hole";
      noun.to += 1;
    }
  }
  // "breather hole", "supply port hole": a hole by nature, and none that should not be there
  if (noun.part && !noun.place && HOLES.has(noun.part) && own?.text === "hole" && !has(chunks[noun.to - 1], ROLE.has))
    noun.to += 1;
  // "the diaphragm of up": of the two, the upper
  const which = /^(?:of|for|on|at)$/.test(chunks[noun.to]?.text ?? "")
    ? UP_OR_DOWN[chunks[noun.to + 1]?.text ?? ""]
    : undefined;
  if (which && !noun.place && noun.part && placed({ part: noun.part, place: which }).part !== noun.part) {
    noun.place = which;
    noun.to += 2;
  }
  nameOwner(chunks, noun);
  if (noun.one || noun.other) resolveOne(noun, named.at(-1));
  else if (someOf(noun, named.at(-1)?.part)) noun.part = named.at(-1)?.part;
  else if (noun.part && noun.place && !noun.apart) Object.assign(noun, placed(noun));
  return noun;
}

const WITH_HOLES: ReadonlySet<Part> = new Set<Part>(["cage", "guide", "stem_guide", "plug", "trim", "lock_nut"]);
/** "the bonnet holes": those the bolts go through. */
const BOLTED_ON: ReadonlySet<Part> = new Set<Part>(["bonnet", "body", "flange", "yoke"]);
const OPENINGS = /^(?:holes|windows|ports)$/;

const UP_OR_DOWN: Partial<Record<string, Place>> = wordTable<Place>({
  up: "upper",
  above: "upper",
  down: "lower",
  below: "lower",
});

/** Parts through which a hole lets pressure by. */
const PORTED: ReadonlySet<Part> = new Set<Part>(["nut", "guide", "stem_guide", "lock_nut", "diaphragm_nut"]);

/** "the O-rings on the stem guide" are the stem guide's own, where the trade has a name for them. */
function nameOwner(chunks: readonly Chunk[], noun: Noun): void {
  const ported = noun.part === "vent_hole";
  const owners = noun.part && OWNED[noun.part];
  const prep = chunks[noun.to];
  if (
    !(owners || ported) ||
    !prep ||
    noun.one ||
    noun.place ||
    !/^(?:on|of|for|in|under|around)(?: the)?$/.test(prep.text)
  )
    return;
  let at = noun.to + 1;
  while (has(chunks[at], ROLE.det)) at += 1;
  const owner = chunks[at]?.senses.part;
  // "bleed hole in the nut": the nut's own
  if (ported && owner && PORTED.has(owner) && !prep.text.startsWith("for")) {
    Object.assign(noun, { part: owner, place: "hole", core: at, to: at + 1 });
    return;
  }
  const own = owner ? owners?.[owner] : undefined;
  if (!own || (at === noun.to + 1 && prep.text !== "of" && !prep.text.endsWith("the"))) return;
  noun.part = own;
  noun.core = at;
  noun.to = at + 1;
}

/** "bonnet bolts were loose", then "two studs are stripped": so many of the joint's own bolting. */
const someOf = (noun: Noun, last: Part | undefined): boolean =>
  noun.part === "bolting" && noun.count !== undefined && last !== undefined && KIND_OF[last] === "bolting";

/** Finds what "the lower one" and "the other one" stand for, after the part named last. */
function resolveOne(noun: Noun, last: Named | undefined): void {
  if (!last?.part) return;
  if (noun.other) {
    noun.part = counterpart(last.part);
    noun.place = last.place ? oppositePlace(last.place) : undefined;
  } else if (noun.place && !noun.apart) Object.assign(noun, placed({ part: last.part, place: noun.place }));
  else {
    noun.part = last.part;
    if (!noun.apart) noun.place = last.place;
  }
}

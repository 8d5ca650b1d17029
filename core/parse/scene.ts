/** Step 5: a phrase laid out in chunks, and what has been made of it so far. */

import type { Part, Test } from "../shapes/codes.ts";
import type { Entry } from "../shapes/entry.ts";
import { KIND_OF } from "../shapes/part-kinds.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { OF_THE_JOB } from "../vocabulary/talk.ts";
import { type Chunk, has } from "./chunks.ts";
import { countAt } from "./counts.ts";
import { type Named, type Noun, readNoun } from "./noun.ts";
import { placed } from "./places.ts";
import { type Told, toldIn } from "./told.ts";

const OWNED_GOODS: ReadonlySet<Part> = new Set<Part>([
  "o_ring",
  "gasket",
  "seals",
  "threads",
  "bolting",
  "backup_ring",
  "linkage",
]);
/** What is closed with such goods, and what only carries them: of these a quick list may be made. */
const HOUSES: ReadonlySet<Part> = new Set<Part>([
  "bonnet",
  "body",
  "housing",
  "upper_housing",
  "lower_housing",
  "flange",
  "actuator",
  "yoke",
]);
const HOLDS: ReadonlySet<Part> = new Set<Part>([
  "plug",
  "stem",
  "guide",
  "seat",
  "cage",
  "packing",
  "positioner",
  "controller",
  "float",
]);

/** What earlier phrases leave for the next one. */
export interface Carry {
  /** the part, or the parts, last named */
  parts: Named[];
  /** parts named lately, oldest first, each once */
  recent: Named[];
  /** entries of the last phrase that left any */
  last: Entry[];
  lastTest?: Test;
  /** the last phrase did nothing but name the part */
  awaits?: boolean;
}

/** An entry in the making: which chunks it came from, and which rule made it. */
export interface Draft {
  entry: Entry;
  chunks: number[];
  /** chunks that bear on it from elsewhere in the phrase */
  also?: number[];
  rule: string;
  /** the part was said in this phrase, not carried */
  named: boolean;
}

/** A phrase laid out in chunks, with the questions every rule asks of it. */
export class Scene {
  readonly chunks: Chunk[];
  readonly carry: Carry;
  readonly drafts: Draft[] = [];
  /** what of it somebody else told */
  readonly told: readonly Told[];
  /** what has been named so far in this phrase */
  named: Named[];
  recent: Named[];
  /** parts named in this phrase, in order, each once */
  namedHere: Named[] = [];

  constructor(chunks: Chunk[], carry: Carry) {
    this.chunks = chunks;
    this.carry = carry;
    this.told = toldIn(chunks);
    this.named = carry.parts;
    this.recent = carry.recent;
  }

  /** The chunk at `index`. */
  at(index: number): Chunk | undefined {
    return this.chunks[index];
  }

  /** Index of the first chunk from `index` on that is not a word without meaning here. */
  skipPlain(index: number): number {
    let at = index;
    while (this.isPlain(at)) at += 1;
    return at;
  }

  /** "uh", "the": a word without a meaning of its own. */
  isPlain(index: number): boolean {
    const chunk = this.chunks[index];
    return chunk !== undefined && !chunk.unknown && chunk.senses.plain === true;
  }

  /** A number that counts things, and not one with a unit behind it. */
  countAt(index: number): number | undefined {
    return countAt(this.chunks, index);
  }

  #nouns: (Noun | null | undefined)[] = [];

  /** Forgets the noun phrases found so far: numbers have been taken for measures since. */
  settle(): void {
    this.#nouns = [];
  }

  /** The noun phrase that starts at `index`. */
  noun(index: number): Noun | undefined {
    const known = this.#nouns[index];
    if (known !== undefined) return known ? { ...known } : undefined;
    const noun = readNoun(this.chunks, index, this.named);
    // "the lower one" and "two studs" depend on what was named last, so they are found anew each time
    if (!noun || !(noun.one || noun.other || noun.count))
      if (noun || !this.#maybeOne(index)) this.#nouns[index] = noun ?? null;
    return noun && { ...noun };
  }

  #maybeOne(index: number): boolean {
    return (
      this.chunks[index]?.number !== undefined ||
      has(this.chunks[index], ROLE.other) ||
      has(this.chunks[index], ROLE.one)
    );
  }

  /**
   * Noun phrases joined by "and" or standing one behind the other: "the seat and the plug". As objects, a last one
   * with a predicate of its own is left alone.
   */
  nouns(index: number, as: "subject" | "object"): { nouns: Noun[]; end: number } | undefined {
    const pair = this.pairOfPlaces(index);
    if (pair) return pair;
    const first = this.noun(index);
    if (!first) return undefined;
    let nouns = [first];
    let end = first.to;
    for (;;) {
      let at = end;
      // "the plug uh the seat", "plug no the seat": the first was a slip of the tongue
      while (
        as === "subject" &&
        /^(?:uh|um|er|ah)$/.test(this.chunks[at]?.text ?? "") &&
        /^(?:uh|um|no|nope)$/.test(this.chunks[at + 1]?.text ?? "")
      )
        at += 1;
      const slip = this.chunks[at];
      if (as === "subject" && slip && /^(?:uh|um|er|no|uhh|nope|ah|i mean)$/.test(slip.text) && !has(slip, ROLE.and)) {
        const meant = this.noun(at + 1);
        if (meant && !meant.count && (slip.text !== "no" || this.predicateFollows(meant.to))) {
          for (let one = nouns[nouns.length - 1]?.from ?? at; one <= at; one += 1) {
            const dropped = this.chunks[one];
            if (dropped) dropped.used = true;
          }
          nouns = [...nouns.slice(0, -1), meant];
          end = meant.to;
          continue;
        }
      }
      if (has(slip, ROLE.and) || has(slip, ROLE.or)) at += 1;
      else if (this.isPlain(at) && has(this.chunks[at + 1], ROLE.and)) at += 2;
      // "replaced the seat, also the plug"
      else if (as === "object" && slip?.text === "also" && this.noun(at + 1)?.det) at += 1;
      const next = this.noun(at);
      // "replaced the gasket with a new one": the new one is no second thing
      if (!next || (slip?.text === "with" && next.fresh)) break;
      // "replaced the bonnet bolts, four of them": how many of what was just named
      const counted = nouns.at(-1);
      if (
        as === "object" &&
        at === end &&
        next.one &&
        next.count !== undefined &&
        counted &&
        counted.count === undefined &&
        next.core > next.from &&
        !has(this.chunks[next.to], ROLE.is) &&
        !this.chunks[next.to]?.senses.condition
      ) {
        nouns = [...nouns.slice(0, -1), { ...counted, count: next.count }];
        end = next.to;
        continue;
      }
      if (as === "object" && this.predicateFollows(next.to)) break;
      // "greased the guide, new o rings": put in, and not greased
      if (as === "object" && at === end && next.fresh && !first.fresh) break;
      if (
        at === end &&
        as === "subject" &&
        (next.fresh || next.old || (first.fresh && first.one) || (next.det && !this.#listGoesOn(next.to)))
      )
        break;
      if (next.fresh !== first.fresh && as === "subject" && next.fresh) break;
      // "the bonnet o ring": the first tells whose the second is
      if (at === end && nouns.length === 1 && this.#isOwned(first, next)) {
        const { from, det, both, count, fresh, old } = first;
        nouns = [{ ...next, from, det, both, count, fresh, old }];
        end = next.to;
        continue;
      }
      // "the stem threads are stripped": side by side, the first tells which, unless more are listed
      if (
        as === "subject" &&
        at === end &&
        nouns.length === 1 &&
        !next.det &&
        !next.count &&
        this.#isCompound(first, next)
      ) {
        nouns = [{ ...next, from: first.from, det: first.det }];
        end = next.to;
        continue;
      }
      nouns.push(next);
      end = next.to;
    }
    // "both the bonnet bolts and the seat": one of each
    const oneOfEach = nouns.length === 2 && first.det === true;
    if (nouns.length > 1 && first.both && (oneOfEach || !first.plural)) for (const one of nouns) one.both = undefined;
    return { nouns, end };
  }

  /** "bonnet o ring", "plug o ring": soft goods and threads right behind what holds them, unless a list goes on. */
  #isOwned(first: Noun, next: Noun): boolean {
    if (!first.part || !next.part || first.plural || first.one || first.apart || next.one || next.other) return false;
    if (next.det || next.fresh || next.old || next.both || next.place || next.count !== undefined) return false;
    if (!OWNED_GOODS.has(next.part)) return false;
    // "seat, gasket both shot"
    if (this.chunks[next.to]?.text === "both" && !next.plural) return false;
    return HOUSES.has(first.part) || (HOLDS.has(first.part) && !this.#listGoesOn(next.to));
  }

  /** Two names side by side and a verb of the second's number: one thing, named by its last word. */
  #isCompound(first: Noun, next: Noun): boolean {
    const verb = this.chunks[next.to];
    // "the positioner's feedback arm came unhooked"
    const own = /^(?:came|come|wont|doesnt|went|fell)\b/.test(verb?.text ?? "") && verb?.senses.condition !== undefined;
    if (own && first.part && next.part && !next.det && !next.one && first.to - first.from < 3) return true;
    if (!first.part || !next.part || first.plural || first.one || next.one || next.place) return false;
    // "seat ring threads galled"
    if (next.part === "threads" && next.from === first.to) return true;
    return next.plural
      ? /^(?:are|were|have|look)$/.test(verb?.text ?? "")
      : /^(?:is|was|has|looks)$/.test(verb?.text ?? "");
  }

  /** "the inlet and outlet threads": two parts with one name between them. */
  pairOfPlaces(index: number): { nouns: Noun[]; end: number } | undefined {
    let at = index;
    while (has(this.chunks[at], ROLE.det) || this.chunks[at]?.text === "both") at += 1;
    const place = this.chunks[at]?.senses.place;
    if (!place || this.chunks[at]?.senses.part || !has(this.chunks[at + 1], ROLE.and)) return undefined;
    const second = this.noun(at + 2);
    if (!second?.part || second.from !== at + 2 || second.det) return undefined;
    const kind = KIND_OF[second.part] ?? second.part;
    const first = placed({ part: kind, place });
    if (!first.part || (first.part === kind && !second.place)) return undefined;
    return {
      nouns: [{ ...second, from: index, to: second.to, part: first.part, place: first.place }, second],
      end: second.to,
    };
  }

  /** "the bonnet gasket, the seat gasket and the cage o ring": a list ends with its "and". */
  #listGoesOn(index: number): boolean {
    if (has(this.chunks[index], ROLE.and)) return this.noun(index + 1)?.part !== undefined;
    const next = this.noun(index);
    return next !== undefined && next.from === index && this.#listGoesOn(next.to);
  }

  /** Whether something is said of the noun phrase that ends at `index`. */
  predicateFollows(index: number): boolean {
    let at = index;
    while (
      this.chunks[at] &&
      /^(?:still|also|just|all|both|too|really|pretty|kinda|a little|a bit|slightly|badly|real|very)$/.test(
        this.chunks[at]?.text ?? "",
      )
    )
      at += 1;
    const chunk = this.chunks[at];
    if (!chunk || chunk.unknown) return false;
    if (chunk.senses.condition && !this.noun(at)) return true;
    if (chunk.senses.severity && this.chunks[at + 1]?.senses.condition) return true;
    if (chunk.senses.outcome || chunk.senses.quantity === "torque") return true;
    // "regulator set thirty five"
    if (/^(?:set|reads|reading)$/.test(chunk.text) && this.chunks.slice(at + 1, at + 3).some((one) => one.number))
      return true;
    if (has(chunk, ROLE.owed) && !has(chunk, ROLE.and) && chunk.text !== "next time") return true;
    if (has(chunk, ROLE.not) && !has(chunk, ROLE.and)) return true;
    return (
      (has(chunk, ROLE.is) || has(chunk, ROLE.has)) &&
      !has(chunk, ROLE.prep) &&
      !has(chunk, ROLE.and) &&
      !has(chunk, ROLE.but)
    );
  }

  /** "isn't clicking, coil's burnt": between what was denied and here stand strange words that nothing is made of. */
  spokeElse(not: number, at: number): boolean {
    if (!/^(?:isnt|aint|wasnt|doesnt|dont|didnt|wont|not)$/.test(this.chunks[not]?.text ?? "")) return false;
    return this.chunks
      .slice(not + 1, at)
      .some((one) => one.unknown || (one.text.endsWith("s") && OF_THE_JOB.includes(one.text)));
  }

  /** Remembers what was named, for "it", "them" and "the other one". */
  name(nouns: readonly Named[]): void {
    const known = nouns.filter((one) => one.part);
    if (known.length === 0) return;
    this.named = known.map(({ part, place, plural, both, count }) => ({
      part,
      place,
      plural: plural || (count ?? 1) > 1 || undefined,
      both,
    }));
    const recent = this.recent.filter((old) => !known.some((one) => one.part === old.part && one.place === old.place));
    this.recent = [...recent, ...this.named].slice(-6);
    for (const one of this.named)
      if (!this.namedHere.some((old) => old.part === one.part && old.place === one.place)) this.namedHere.push(one);
  }

  /** These chunks have been made something of. */
  use(...indices: number[]): void {
    for (const index of indices) {
      const chunk = this.chunks[index];
      if (chunk) chunk.used = true;
    }
  }
}

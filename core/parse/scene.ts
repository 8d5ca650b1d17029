import type { Test } from "../shapes/codes.ts";
import type { Entry } from "../shapes/entry.ts";
import { KIND_OF } from "../vocabulary/parts.ts";
import { type Chunk, has } from "./chunks.ts";
import { ADJECTIVE_PLACES, type Named, type Noun } from "./noun.ts";
import { counterpart, oppositePlace, placed } from "./places.ts";

/** What earlier phrases leave for the next one. */
export interface Carry {
  /** the part, or the parts, last named */
  parts: Named[];
  /** parts named lately, oldest first, each once */
  recent: Named[];
  /** entries of the last phrase that left any */
  last: Entry[];
  lastTest?: Test;
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
  /** what has been named so far in this phrase */
  named: Named[];
  recent: Named[];
  /** parts named in this phrase, in order, each once */
  namedHere: Named[] = [];

  constructor(chunks: Chunk[], carry: Carry) {
    this.chunks = chunks;
    this.carry = carry;
    this.named = carry.parts;
    this.recent = carry.recent;
  }

  at(index: number): Chunk | undefined {
    return this.chunks[index];
  }

  /** Index of the first chunk from `index` on that is not a word without meaning here. */
  skipPlain(index: number): number {
    let at = index;
    while (this.isPlain(at)) at += 1;
    return at;
  }

  isPlain(index: number): boolean {
    const chunk = this.chunks[index];
    return chunk !== undefined && !chunk.unknown && chunk.senses.plain === true;
  }

  /** A number that counts things, and not one with a unit behind it. */
  countAt(index: number): number | undefined {
    const number = this.chunks[index]?.number;
    if (
      !number ||
      number.fraction ||
      number.upper !== undefined ||
      !Number.isInteger(number.value) ||
      number.value < 1 ||
      number.value > 200
    )
      return undefined;
    if (this.chunks[index]?.used || this.chunks[index + 1]?.senses.unit === "pound") return undefined;
    return number.value;
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
    const noun = this.#readNoun(index);
    // "the lower one" depends on what was named last, so it is found anew each time
    if (!noun || !(noun.one || noun.other)) if (noun || !this.#maybeOne(index)) this.#nouns[index] = noun ?? null;
    return noun && { ...noun };
  }

  #maybeOne(index: number): boolean {
    return (
      this.chunks[index]?.number !== undefined || has(this.chunks[index], "other") || has(this.chunks[index], "one")
    );
  }

  #readNoun(index: number): Noun | undefined {
    const noun: Noun = { part: undefined, from: index, to: index, core: index };
    for (let at = index; at < this.chunks.length && at < index + 9; at += 1) {
      const chunk = this.chunks[at] as Chunk;
      if (chunk.hazard || chunk.command || chunk.tag || chunk.talk || chunk.unknown) return undefined;
      const senses = chunk.senses;
      // "on top, lower housing's fine": the place is the last thing's, not this one's
      if (senses.part && noun.place && !noun.apart && /^(?:upper|lower|inlet|outlet)_/.test(senses.part))
        return undefined;
      if (senses.part && !this.#isVerbHere(at)) {
        noun.part = senses.part;
        noun.plural = senses.plural;
        noun.core = at;
        noun.to = at + 1;
        return this.#finish(noun);
      }
      const count = this.countAt(at);
      if (has(chunk, "other")) {
        noun.other = true;
        noun.core = at;
        noun.to = at + 1;
        return this.#finish(noun);
      }
      if (has(chunk, "one") && (noun.place || noun.fresh || noun.old) && !senses.part) {
        noun.one = true;
        noun.core = at;
        noun.to = at + 1;
        return this.#finish(noun);
      }
      if (count !== undefined) {
        // "three of the eight studs": the first counts
        noun.count ??= count;
        const next = this.chunks[at + 1];
        if (
          next &&
          (has(next, "is") || has(next, "has")) &&
          !next.senses.part &&
          !has(next, "and") &&
          this.named.length > 0 &&
          this.named.at(-1)?.plural
        ) {
          // "two studs are bent and one is missing"
          noun.one = true;
          noun.core = at;
          noun.to = at + 1;
          return this.#finish(noun);
        }
        if (this.chunks[at + 1]?.text === "of" || this.chunks[at + 1]?.text === "of the") at += 1;
        continue;
      }
      if (senses.place && !senses.condition) {
        noun.place = senses.place;
        const next = this.chunks[at + 1];
        if (next?.text === "of" && has(this.chunks[at + 2], "it") && !this.#partAhead(at + 2)) {
          // "the edge of it"
          noun.apart = true;
          noun.one = true;
          noun.core = at + 2;
          noun.to = at + 3;
          return this.#finish(noun);
        }
        if (next && /^(?:of|on|in|at)(?: the)?$/.test(next.text)) {
          if (!this.#partAhead(at + 2)) return undefined;
          noun.apart = true;
          at += 1;
        }
        continue;
      }
      if (has(chunk, "fresh")) {
        noun.fresh = true;
        continue;
      }
      if (has(chunk, "old") && chunk.text !== "same") {
        noun.old = true;
        continue;
      }
      if (chunk.text === "both" || chunk.text === "both of the" || chunk.text === "both of them") {
        noun.both = true;
        continue;
      }
      if (
        noun.count !== undefined &&
        (chunk.text === "them" || chunk.text === "em" || chunk.text === "those") &&
        has(chunk, "it") &&
        !this.#partAhead(at + 1)
      ) {
        // "two of em are broke"
        noun.one = true;
        noun.core = at;
        noun.to = at + 1;
        return this.#finish(noun);
      }
      if (chunk.text === "them" && noun.count !== undefined) continue;
      if (
        has(chunk, "det") ||
        chunk.text === "of" ||
        (chunk.text === "some" && this.chunks[at + 1]?.senses.part) ||
        (has(chunk, "it") &&
          (chunk.text === "that" ||
            chunk.text === "this" ||
            chunk.text === "those" ||
            chunk.text === "these" ||
            chunk.text === "all"))
      ) {
        noun.det = true;
        continue;
      }
      return undefined;
    }
    return undefined;
  }

  #partAhead(index: number): boolean {
    for (let at = index; at < index + 4; at += 1) {
      const chunk = this.chunks[at];
      if (!chunk) return false;
      if (chunk.senses.part) return true;
      if (!(has(chunk, "det") || chunk.senses.place || has(chunk, "old") || has(chunk, "one") || chunk.number))
        return false;
    }
    return false;
  }

  /** "vent the actuator": a word that is both part and verb is the verb where an object follows. */
  #isVerbHere(index: number): boolean {
    const senses = this.chunks[index]?.senses;
    if (!senses?.work?.some((one) => one.form === "base")) return false;
    const next = this.chunks[index + 1];
    return (has(next, "det") || has(next, "it")) && !has(this.chunks[index - 1], "det");
  }

  #finish(noun: Noun): Noun {
    const after = this.chunks[noun.to];
    // "plug face", "cage bottom": a place right behind the part, unless it begins the next one's name
    if (after?.senses.place && !noun.place && !after.used && !after.senses.condition) {
      const next = this.chunks[noun.to + 1];
      const opensNext =
        next && (next.senses.part || has(next, "one") || (has(next, "prep") && next.text.startsWith("of")));
      if (
        !opensNext &&
        (ADJECTIVE_PLACES.has(after.senses.place) ||
          has(next, "is") ||
          next?.senses.condition ||
          has(next, "has") ||
          has(next, "not"))
      ) {
        noun.place = after.senses.place;
        noun.to += 1;
      }
    }
    if (noun.one || noun.other) this.#resolveOne(noun);
    else if (noun.part && noun.place && !noun.apart) Object.assign(noun, placed(noun));
    return noun;
  }

  /** Finds what "the lower one" and "the other one" stand for. */
  #resolveOne(noun: Noun): void {
    const last = this.named[this.named.length - 1];
    if (!last?.part) return;
    const asked = { part: last.part, place: noun.place };
    if (noun.other)
      Object.assign(noun, { part: counterpart(last.part), place: last.place ? oppositePlace(last.place) : undefined });
    else if (noun.place && !noun.apart) Object.assign(noun, placed(asked));
    else if (noun.apart) noun.part = last.part;
    else Object.assign(noun, { part: last.part, place: last.place });
  }

  /** Noun phrases joined by "and" or standing one behind the other. As objects, a last one with a predicate of its own is left alone. */
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
      if (as === "subject" && slip && /^(?:uh|um|er|no|uhh|nope|ah|i mean)$/.test(slip.text) && !has(slip, "and")) {
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
      if (has(slip, "and") || has(slip, "or")) at += 1;
      else if (this.isPlain(at) && has(this.chunks[at + 1], "and")) at += 2;
      const next = this.noun(at);
      if (!next) break;
      if (as === "object" && this.predicateFollows(next.to)) break;
      if (
        at === end &&
        as === "subject" &&
        (next.fresh || next.old || first.fresh || (next.det && !this.#listGoesOn(next.to)))
      )
        break;
      if (next.fresh !== first.fresh && as === "subject" && next.fresh) break;
      nouns.push(next);
      end = next.to;
    }
    if (nouns.length > 1 && first.both && !first.plural) for (const one of nouns) one.both = undefined;
    return { nouns, end };
  }

  /** "the inlet and outlet threads": two parts with one name between them. */
  pairOfPlaces(index: number): { nouns: Noun[]; end: number } | undefined {
    let at = index;
    while (has(this.chunks[at], "det") || this.chunks[at]?.text === "both") at += 1;
    const place = this.chunks[at]?.senses.place;
    if (!place || this.chunks[at]?.senses.part || !has(this.chunks[at + 1], "and")) return undefined;
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
    if (has(this.chunks[index], "and")) return this.noun(index + 1)?.part !== undefined;
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
    if (has(chunk, "owed") && !has(chunk, "and")) return true;
    if (has(chunk, "not") && !has(chunk, "and")) return true;
    return (has(chunk, "is") || has(chunk, "has")) && !has(chunk, "prep") && !has(chunk, "and") && !has(chunk, "but");
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

  use(...indices: number[]): void {
    for (const index of indices) {
      const chunk = this.chunks[index];
      if (chunk) chunk.used = true;
    }
  }
}

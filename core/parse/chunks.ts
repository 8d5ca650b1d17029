/** Step 3: words to chunks, the longest stretch that a row knows. */

import type { Command, Hazard } from "../shapes/codes.ts";
import { PLAIN, ROLE, type RoleBit } from "../vocabulary/grammar.ts";
import type { Lexicon } from "../vocabulary/lexicon.ts";
import { OPENS } from "../vocabulary/opens.ts";
import { matchAt } from "../vocabulary/patterns.ts";
import { noSenses, type Senses } from "../vocabulary/senses.ts";
import { TALK } from "../vocabulary/talk.ts";
import { type NumberRead, readNumber } from "./numbers.ts";
import { readTag } from "./tags.ts";

/** A chunk keeps every sense its words can have; the clauses settle which one counts. */
export interface Chunk {
  /** first and one past last word */
  from: number;
  to: number;
  text: string;
  senses: Senses;
  number?: NumberRead;
  tag?: string;
  hazard?: Hazard;
  command?: Command;
  /** talk of something else, or an idiom that hides trade words */
  talk?: boolean;
  /** no row knows it */
  unknown?: boolean;
  /** an entry was read from it */
  used?: boolean;
}

/** Whether a chunk may play this part in a sentence ("and", "not", "it" ...). */
export const has = (chunk: Chunk | undefined, role: RoleBit): boolean =>
  chunk !== undefined && (chunk.senses.roles & role) !== 0;

/** A word of the trade: a part, what was found or done, a test, a unit, a tag. */
export const isTrade = (one: Chunk): boolean =>
  one.senses.part !== undefined ||
  one.senses.condition !== undefined ||
  one.senses.work !== undefined ||
  one.senses.test !== undefined ||
  one.senses.unit !== undefined ||
  one.senses.outcome !== undefined ||
  one.tag !== undefined;

/** The indices from `from` up to, and without, `to`. */
export function range(from: number, to: number): number[] {
  const indices: number[] = [];
  for (let at = from; at < to; at += 1) indices.push(at);
  return indices;
}

const NOTHING: Senses = noSenses();
const PLAINLY: Senses = { ...noSenses(), plain: true };
const NEGATION = new Set(["no", "not", "isnt", "without", "never", "aint", "zero", "any", "wasnt", "dont", "didnt"]);
const OFF_TOPIC_PREP = new Set(["of", "in", "with", "for", "from", "at", "about", "to"]);

/** "the seat ring is washed out" → "the", "seat ring", "is", "washed out". */
export function chunk(words: readonly string[], lexicon: Lexicon): Chunk[] {
  const chunks: Chunk[] = [];
  let at = 0;
  while (at < words.length) {
    const one = chunkAt(words, at, lexicon);
    chunks.push(isLikened(chunks, one) ? make(words, one.from, one.to, {}) : one);
    at = one.to;
  }
  return chunks;
}

/** "big as a doughnut", "hard as a hockey puck": what a part is likened to is no other talk. */
function isLikened(before: readonly Chunk[], one: Chunk): boolean {
  if (!one.talk && !one.unknown) return false;
  const [as, article] = before.slice(-2);
  return as?.text === "as" && /^(?:a|an|the|my|his|your|that|an old)$/.test(article?.text ?? "") && before.length > 2;
}

function make(words: readonly string[], from: number, to: number, is: Partial<Chunk>): Chunk {
  // every chunk is laid out alike, with all its keys: half the reading asks chunks for them
  return {
    from,
    to,
    text: to === from + 1 ? (words[from] as string) : words.slice(from, to).join(" "),
    senses: is.senses ?? NOTHING,
    number: is.number,
    tag: is.tag,
    hazard: is.hazard,
    command: is.command,
    talk: is.talk,
    unknown: is.unknown,
    used: undefined,
  };
}

function chunkAt(words: readonly string[], at: number, lexicon: Lexicon): Chunk {
  const word = words[at] as string;

  // a figure, or a sign like "%"
  const opens = word.charCodeAt(0) < 65 ? OPENS.number | OPENS.row : (lexicon.opens.get(word) ?? 0);
  const harmless = opens & OPENS.noHazard ? matchAt(lexicon.noHazard, words, at) : undefined;
  if (harmless) return make(words, at, harmless.end, { talk: true });
  const hazard = opens & OPENS.hazard ? matchAt(lexicon.hazards, words, at) : undefined;
  if (hazard) {
    const negated = NEGATION.has(words[at - 1] ?? "") && !NEGATION.has(word);
    // "no lock nut on the stem": the last word begins a part's name
    const part = lexicon.longest(words, hazard.end - 1);
    if (!negated && !longPast(words, hazard.end, hazard.code, lexicon) && !(part?.senses.part && part.end > hazard.end))
      return make(words, at, hazard.end, { hazard: hazard.code });
  }
  const call = opens & OPENS.call ? matchAt(lexicon.calls, words, at) : undefined;
  if (call) return make(words, at, call.end, { senses: PLAINLY });
  const idiom = opens & OPENS.idiom ? matchAt(lexicon.idioms, words, at) : undefined;
  const longest = opens & OPENS.row ? lexicon.longest(words, at) : undefined;
  // "i got gas on my monitor": no small words hold back a hazard that begins inside them
  const alarm = longest && !longest.senses.part ? alarmInside(words, at, longest.end, lexicon) : undefined;
  const known = alarm === undefined ? longest : lexicon.longest(words.slice(0, alarm), at);
  // "last week" is a time before today's, whatever else is said of it
  const dated = known !== undefined && (known.senses.roles & ROLE.past) !== 0 && known.end === idiom?.end;
  if (idiom && !dated && idiom.end >= (known?.end ?? 0)) return make(words, at, idiom.end, { talk: true });

  const tag = opens & OPENS.tag ? readTag(words, at) : undefined;
  if (tag && tag.end > (known?.end ?? 0)) return make(words, at, tag.end, { tag: tag.tag });

  const command = opens & OPENS.command ? matchAt(lexicon.commands, words, at) : undefined;
  if (command && command.end >= (known?.end ?? 0) && standsAlone(words, command.end, lexicon))
    return make(words, at, command.end, { command: command.code as Command });

  const number = opens & OPENS.number ? readNumber(words, at) : undefined;
  if (number && number.end >= (known?.end ?? 0) && !(number.bareOne && known && !(known.senses.roles & ROLE.one))) {
    return make(words, at, number.end, { number, senses: number.end === known?.end ? known.senses : NOTHING });
  }
  const strange = at > 0 && !lexicon.words.has(words[at - 1] as string) && !PLAIN.has(words[at - 1] as string);
  const named =
    known?.senses.work && !known.senses.part && known.end > at + 1 && (strange || word.endsWith("s"))
      ? lexicon.longest([word], 0)
      : undefined;
  // "threads on the bonnet", "socket bolt on the yoke": a name, and nothing that is screwed on
  if (named?.senses.part && (strange || named.senses.plural)) return make(words, at, at + 1, { senses: named.senses });
  // "seat leaks by": what it does, and no name of a test
  if (known?.senses.test && known.end === at + 2 && words[at + 1] === "leaks") {
    const part = lexicon.longest([word], 0);
    if (part?.senses.part) return make(words, at, at + 1, { senses: part.senses });
  }
  const end = known?.end ?? at + 1;
  const turned = (known || word === "side") && words[end] === "of" ? nameTurned(words, at, end, lexicon) : undefined;
  if (turned) return make(words, at, turned.end, { senses: turned.senses });
  const cut = known?.senses.part && known.end > at + 1 ? nameCut(words, at, known.end, lexicon) : undefined;
  if (cut) return make(words, at, cut.end, { senses: cut.senses });
  if (known) {
    // a trade word in a talk word's shape ("shoulder", "ball") stays a trade word: the lexicon has it
    return make(words, at, known.end, { senses: known.senses });
  }
  if (opens & OPENS.talk) return make(words, at, at + 1, { talk: true });
  if (opens & OPENS.plain) return make(words, at, at + 1, { senses: PLAINLY });
  return make(words, at, at + 1, { unknown: true });
}

/** Where a hazard begins behind the first word of a stretch and reaches beyond it. */
function alarmInside(words: readonly string[], from: number, end: number, lexicon: Lexicon): number | undefined {
  for (let at = from + 1; at < end; at += 1) {
    if (!((lexicon.opens.get(words[at] as string) ?? 0) & OPENS.hazard)) continue;
    const hazard = matchAt(lexicon.hazards, words, at);
    if (hazard && hazard.end > end && !matchAt(lexicon.noHazard, words, at)) return at;
  }
  return undefined;
}

/** "my cousin got hurt on a rig last year": who was hurt long ago needs no help now. */
function longPast(words: readonly string[], from: number, hazard: Hazard, lexicon: Lexicon): boolean {
  if (hazard !== "injury" && hazard !== "fire") return false;
  for (let at = from; at < Math.min(words.length, from + 6); at += 1)
    if ((lexicon.longest(words, at)?.senses.roles ?? 0) & ROLE.past) return true;
  return false;
}

/** "hole of the vent", "gasket of bonnet": a name turned round is the name. */
function nameTurned(words: readonly string[], at: number, end: number, lexicon: Lexicon) {
  const from = words[end + 1] === "the" ? end + 2 : end + 1;
  const whole = lexicon.longest(words, from);
  const isPlace = whole?.senses.place ?? /^(?:up|down|supply|signal)$/.test(words[from] ?? "");
  if (!whole || !(whole.senses.part || isPlace)) return undefined;
  const owner = words.slice(from, whole.end);
  const named = lexicon.longest([...owner, ...words.slice(at, end)], 0);
  const means = named?.senses.part ?? (isPlace ? named?.senses.place : undefined);
  return named && means && named.end === owner.length + end - at ? { senses: named.senses, end: whole.end } : undefined;
}

/** "seat, plug, cage gasket": a name ends before its last word where that word begins the next part's name. */
function nameCut(words: readonly string[], at: number, end: number, lexicon: Lexicon) {
  const next = lexicon.longest(words, end - 1);
  const last = words[end - 1] ?? "";
  // "pulled the bonnet, gasket's toast": the verb has its object, and what is said is said of the last word
  const verb = words[at - 1] === "the" ? lexicon.longest(words, at - 2)?.senses.work : undefined;
  if (
    next?.senses.part &&
    last.endsWith("s") &&
    verb?.some((one) => one.form === "past") &&
    lexicon.longest(words, end)?.senses.condition
  ) {
    const object = lexicon.longest(words.slice(at, end - 1), 0);
    if (object?.senses.part) return { senses: object.senses, end: end - 1 };
  }
  // "plug, stem both worn": two of them, though the second may be called by both words
  const both =
    words[end] === "both" &&
    !/^(?:sides|ends|faces|ways|of)$/.test(words[end + 1] ?? "") &&
    !saidTwice(words, end + 1, lexicon) &&
    next?.end === end &&
    !next.senses.plural &&
    !listed(words, at, lexicon);
  if (!next?.senses.part || (next.end <= end && !both)) return undefined;
  const head = lexicon.longest(words.slice(at, end - 1), 0);
  return head?.senses.part && head.end === end - 1 - at ? { senses: head.senses, end: end - 1 } : undefined;
}

/** "cage gasket both hard and cracked": two things said of one part. */
const saidTwice = (words: readonly string[], at: number, lexicon: Lexicon): boolean => {
  const first = lexicon.longest(words, at);
  return first?.senses.condition !== undefined && words[first.end] === "and";
};

/** "seat gasket and the cage gasket": another part is named just before. */
function listed(words: readonly string[], at: number, lexicon: Lexicon): boolean {
  let back = at - 1;
  while (/^(?:and|the|a|an|both)$/.test(words[back] ?? "")) back -= 1;
  return back >= 0 && lexicon.longest([words[back] as string], 0)?.senses.part !== undefined;
}

/** "what's left of that pizza", "all done with lunch": a command followed by something else is talk. */
function standsAlone(words: readonly string[], end: number, lexicon: Lexicon): boolean {
  const next = words[end];
  if (next === undefined) return true;
  // "done replacing the seat": the work, and not the job
  if (words[end - 1] === "done" && lexicon.longest(words, end)?.senses.work?.some((one) => one.form === "ing"))
    return false;
  for (let at = end; at < Math.min(words.length, end + 7); at += 1) if (TALK.has(words[at] as string)) return false;
  if (OFF_TOPIC_PREP.has(next)) {
    for (let at = end + 1; at < Math.min(words.length, end + 5); at += 1) {
      const word = words[at] as string;
      if (TALK.has(word)) return false;
      if (lexicon.longest(words, at)?.senses.part) return true;
      if (!PLAIN.has(word) && !lexicon.words.has(word)) return false;
    }
  }
  return true;
}

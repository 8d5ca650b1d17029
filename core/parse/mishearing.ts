/** Step 3a: words that a recogniser put for trade words ("fowled", "seat wring"). */

import { isEnglish } from "../vocabulary/english.ts";
import type { Opened } from "../vocabulary/first-words.ts";
import { PLAIN, ROLE } from "../vocabulary/grammar.ts";
import type { Lexicon } from "../vocabulary/lexicon.ts";
import type { ConfusionRow } from "../vocabulary/mishearings.ts";
import { ONES, SCALES, TEENS, TENS } from "../vocabulary/numerals.ts";
import { OPENS } from "../vocabulary/opens.ts";
import { phones, soundDistance } from "../vocabulary/sound.ts";
import { TALK, TOOLS } from "../vocabulary/talk.ts";

/**
 * What may have been meant. This step only proposes; whether a proposal is taken is decided by reading the phrase
 * with and without it and keeping what makes sense.
 */
export interface Proposal {
  /** words [from, to) of the phrase are meant as `mean` */
  from: number;
  to: number;
  mean: string[];
}

/** A proposal by sound: how far off, and whether it is only near. */
export interface Sounding extends Proposal {
  far: number;
  near?: boolean;
}

/** What is said behind these has not happened: "till I get it out". */
export const NOT_YET = /^(?:till|til|until|when|if|before|once|unless|after)$/;

const singular = (word: string) => (word.length > 3 && word.endsWith("s") ? word.slice(0, -1) : word);

const changes = (one: Proposal, words: readonly string[]) =>
  one.mean.join(" ") !== words.slice(one.from, one.to).join(" ");

/** Known confusions ("seat is eroted"), from left to right, the longest first. */
export function knownConfusions(words: readonly string[], lexicon: Lexicon): Proposal[] {
  const rows = lexicon.confusions;
  const found: Proposal[] = [];
  const singulars = words.some((word) => word.endsWith("s"))
    ? words.map((word) => (word.length > 2 && word.endsWith("s") ? word.slice(0, -1) : word))
    : words;
  let previous = "";
  for (let at = 0; at < words.length; ) {
    const opens = lexicon.opens.get(words[at] as string) ?? 0;
    const hit = opens & OPENS.confusion ? bestRow(rows, words, singulars, at, previous) : undefined;
    // "until I pull the bonnet": the order stands as it is, and is not yet carried out
    const later = hit && /^(?:i|we)$/.test(words[at - 1] ?? "") && NOT_YET.test(words[at - 2] ?? "");
    // "gasket turned hard", "stem went rusty": the verb of becoming stands as it was heard
    const becomes =
      hit?.to === at + 1 &&
      /^(?:went|turned)$/.test(words[at] as string) &&
      (words[at + 1] === "out" || lexicon.longest(words, at + 1)?.senses.condition !== undefined);
    const taken = hit && !later && !becomes && changes(hit, words) && changes(hit, singulars) ? hit : undefined;
    if (taken) found.push(taken);
    previous = taken ? (taken.mean.at(-1) as string) : (words[at] as string);
    at = taken ? taken.to : at + 1;
  }
  // "and the lower housing to", "the other one to", "cage is two": behind a part the last word is "too"
  const end = words.length - 1;
  const named = /^(?:is|are|was|were)$/.test(words[end - 1] ?? "") ? end - 1 : end;
  if (/^(?:to|two)$/.test(words[end] ?? "") && endsInPart(words, named, lexicon) && !found.some((one) => one.to > end))
    found.push({ from: end, to: end + 1, mean: ["too"] });
  return found;
}

const endsInPart = (words: readonly string[], end: number, lexicon: Lexicon): boolean =>
  [1, 2, 3].some((long) => {
    const known = end >= long ? lexicon.longest(words, end - long) : undefined;
    if (known?.end !== end) return false;
    return known.senses.part !== undefined || (known.senses.roles & ROLE.other) !== 0;
  });

/** The rows that may go on with the word behind: as heard, or, of a plural, as one. */
function candidates(opened: Opened<ConfusionRow> | undefined, second = ""): readonly ConfusionRow[] | undefined {
  return opened && (opened.bySecond.get(second) ?? opened.free);
}

function bestRow(
  rows: Lexicon["confusions"],
  words: readonly string[],
  singulars: readonly string[],
  at: number,
  previous: string,
): Proposal | undefined {
  const word = words[at] as string;
  const stem = singular(word);
  const own = candidates(rows.get(word), words[at + 1]);
  const ofStem = stem === word ? undefined : candidates(rows.get(stem), words[at + 1]);
  if (!own && !ofStem) return undefined;
  let best: { row: ConfusionRow; end: number } | undefined;
  for (const row of own && ofStem ? [...own, ...ofStem] : (own ?? ofStem ?? [])) {
    if (row.behind && !row.ahead && !row.behind.has(previous) && !row.behind.has(singular(previous))) continue;
    const exact = row.pattern.firsts.has(word) ? row.pattern.match(words, at) : -1;
    const end = exact > at || singulars === words ? exact : row.pattern.match(singulars, at);
    if (end <= at || (best && end <= best.end)) continue;
    const next = words[end] ?? "";
    const behind = row.behind === undefined || row.behind.has(previous) || row.behind.has(singular(previous));
    const ahead = row.ahead === undefined || row.ahead.has(next) || row.ahead.has(singular(next));
    // where a row names both sides, either one will do, unless it is a thing of other talk ("on the boat")
    const either = row.behind && row.ahead && !(TALK.has(word) && /^(?:the|a|an|my|his|that)$/.test(previous));
    if (!(either ? behind || ahead : behind && ahead)) continue;
    best = { row, end };
  }
  if (!best) return undefined;
  const heard = words.slice(at, best.end);
  const mean = best.row.mean.replace(/\$(\d)/g, (_, nth: string) => heard[Number(nth) - 1] ?? "");
  return { from: at, to: best.end, mean: mean.split(" ") };
}

interface Sounded {
  word: string;
  sound: string;
}

/** Trade words by their sound, and those that may begin like a given first sound. */
let sounds: { lexicon: Lexicon; words: Sounded[]; likeFirst: Map<string, Sounded[]> } | undefined;
function tradeSounds(lexicon: Lexicon, first: string): Sounded[] {
  if (sounds?.lexicon !== lexicon) {
    sounds = {
      lexicon,
      words: [...lexicon.tradeWords].filter((word) => word.length >= 4).map((word) => ({ word, sound: phones(word) })),
      likeFirst: new Map(),
    };
  }
  let list = sounds.likeFirst.get(first);
  if (!list) {
    list = sounds.words.filter((one) => soundDistance(first, one.sound.charAt(0)) <= 0.5);
    sounds.likeFirst.set(first, list);
  }
  return list;
}

/** Farther than this nothing is proposed: one strange word, one everyday word, several words run together. */
const NEAR = 0.2;
const NEAR_SPLIT = 0.14;
const CHOICES = 3;
const isNumberWord = (word: string) =>
  ONES[word] !== undefined || TEENS[word] !== undefined || TENS[word] !== undefined || SCALES[word] !== undefined;

/**
 * Trade words that unread words sound like, the nearest first, a list for each place. `unread` tells which words
 * nothing was made of; a stretch without any is left alone, however much it sounds like something.
 */
export function soundAlikes(
  words: readonly string[],
  unread: readonly boolean[],
  lexicon: Lexicon,
): (Proposal & { far: number })[][] {
  const found: (Proposal & { far: number })[][] = [];
  for (let at = 0; at < words.length; at += 1) {
    const here: (Proposal & { far: number })[] = [];
    for (let to = at + 1; to <= Math.min(words.length, at + 4); to += 1) {
      const span = words.slice(at, to);
      if (!unread.slice(at, to).some(Boolean) || span.some((word) => /\d/.test(word) || isNumberWord(word))) continue;
      const single = to === at + 1;
      const spelling = span.join("");
      if (spelling.length < 4) continue;
      // "Dave says": a speaker, however much the name sounds like a part ("diaph")
      if (tells(lexicon, words, to) || tells(lexicon, words, to - 1)) continue;
      // a plain English word is taken for another only where a known confusion says so
      if (single && (isEnglish(spelling) || TOOLS.has(spelling) || PLAIN.has(spelling))) continue;
      // nor is one guessed at by its letters whose sound is known
      if (single && lexicon.soundAlikes.get(spelling)?.some(({ heard, near }) => heard.length === 1 && !near)) continue;
      for (const { word, far } of nearest(spelling, lexicon, single ? NEAR : NEAR_SPLIT, single ? 3 : 5))
        here.push({ from: at, to, mean: [word], far });
    }
    if (here.length > 0) found.push(here.sort((a, b) => a.far - b.far).slice(0, CHOICES));
  }
  return found;
}

const tells = (lexicon: Lexicon, words: readonly string[], at: number): boolean =>
  ((lexicon.longest(words, at)?.senses.roles ?? 0) & ROLE.tells) !== 0;

/** Strange words come again: what they sound like is kept, up to so many. */
const MOST_KEPT = 4000;
let kept: { lexicon: Lexicon; by: Map<string, { word: string; far: number }[]> } | undefined;

/** The trade words that sound nearest, the nearest first. */
function nearest(spelling: string, lexicon: Lexicon, near: number, least: number): { word: string; far: number }[] {
  if (kept?.lexicon !== lexicon || kept.by.size > MOST_KEPT) kept = { lexicon, by: new Map() };
  const key = `${spelling} ${near}`;
  const known = kept.by.get(key);
  if (known) return known;
  const found = weigh(spelling, lexicon, near, least);
  kept.by.set(key, found);
  return found;
}

function weigh(spelling: string, lexicon: Lexicon, near: number, least: number): { word: string; far: number }[] {
  const sound = phones(spelling);
  const found: { word: string; far: number }[] = [];
  for (const one of tradeSounds(lexicon, sound.charAt(0))) {
    if (one.sound.length < least || Math.abs(one.sound.length - sound.length) > 2) continue;
    const far = soundDistance(sound, one.sound, near);
    if (far <= near) found.push({ word: one.word, far });
  }
  return found.sort((a, b) => a.far - b.far).slice(0, CHOICES);
}

/** What is known to sound like a word of the trade is next to that word, yet what was heard stands where both make sense. */
const SAME_SOUND = 0.02;
/** A phone apart: believed only where the whole phrase then makes sense. */
const NEAR_SOUND = 0.1;

/** Words of the trade that everyday words are known to sound like, a list for each place. */
export function knownAlikes(words: readonly string[], lexicon: Lexicon): Sounding[][] {
  const found: Sounding[][] = [];
  for (let at = 0; at < words.length; at += 1) {
    const rows = lexicon.soundAlikes.get(words[at] as string);
    const here = rows?.filter(({ heard }) => heard.every((word, nth) => words[at + nth] === word));
    if (here?.length)
      found.push(
        here.map(({ heard, mean, near }) => ({
          from: at,
          to: at + heard.length,
          mean: [mean],
          far: near ? NEAR_SOUND : SAME_SOUND,
          near,
        })),
      );
  }
  return found;
}

/** Numbers that are heard as small words. */
const AS_SMALL: Readonly<Record<string, string>> = {
  won: "one",
  to: "two",
  too: "two",
  for: "four",
  fore: "four",
  ate: "eight",
  tin: "ten",
};

/** "make that forty too": behind an amendment a number is awaited, at its end or ahead of a unit. */
export function asNumbers(words: readonly string[], lexicon: Lexicon): string[] {
  return words.map((word, at) => {
    const number = AS_SMALL[word];
    if (!number || (at > 0 && (number === "ten" || TENS[words[at - 1] as string] === undefined))) return word;
    const ends = at === words.length - 1 || lexicon.longest(words, at + 1)?.senses.unit !== undefined;
    return ends ? number : word;
  });
}

/** The phrase with proposals taken: its words, and for each the words of the phrase it stands for. */
export function respell(
  words: readonly string[],
  proposals: readonly Proposal[],
): { words: string[]; origin: [number, number][] } {
  const out: string[] = [];
  const origin: [number, number][] = [];
  for (let at = 0; at < words.length; ) {
    const one = proposals.find((proposal) => proposal.from === at);
    for (const word of one ? one.mean : [words[at] as string]) {
      out.push(word);
      origin.push(one ? [one.from, one.to] : [at, at + 1]);
    }
    at = one ? one.to : at + 1;
  }
  return { words: out, origin };
}

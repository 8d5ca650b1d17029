import { CONFUSIONS } from "../vocabulary/confusions.ts";
import { isEnglish } from "../vocabulary/english.ts";
import type { Lexicon } from "../vocabulary/lexicon.ts";
import { Pattern } from "../vocabulary/notation.ts";
import { phones, soundDistance } from "../vocabulary/sound.ts";

/**
 * Step 3a: words that a recogniser put for trade words. This step only proposes; whether a proposal is taken is
 * decided by reading the phrase with and without it and keeping what makes sense.
 */
export interface Proposal {
  /** words [from, to) of the phrase are meant as `mean` */
  from: number;
  to: number;
  mean: string[];
}

interface Row {
  pattern: Pattern;
  mean: string;
  behind?: Set<string>;
  ahead?: Set<string>;
}

let byFirst: Map<string, Row[]> | undefined;

function table(): Map<string, Row[]> {
  if (byFirst) return byFirst;
  byFirst = new Map();
  for (const { hear, mean, behind, ahead } of CONFUSIONS) {
    const row: Row = { pattern: new Pattern(hear), mean, behind: behind ? new Set(behind.split(" ")) : undefined, ahead: ahead ? new Set(ahead.split(" ")) : undefined };
    for (const first of row.pattern.firsts) {
      const list = byFirst.get(first);
      if (list) list.push(row);
      else byFirst.set(first, [row]);
    }
  }
  return byFirst;
}

const singular = (word: string) => (word.length > 3 && word.endsWith("s") ? word.slice(0, -1) : word);

/** Known confusions, from left to right, the longest first. */
export function knownConfusions(words: readonly string[]): Proposal[] {
  const rows = table();
  const found: Proposal[] = [];
  let previous = "";
  for (let at = 0; at < words.length; ) {
    const hit = bestRow(rows, words, at, previous);
    if (hit && hit.mean.join(" ") !== words.slice(hit.from, hit.to).join(" ")) found.push(hit);
    previous = hit ? (hit.mean.at(-1) as string) : (words[at] as string);
    at = hit ? hit.to : at + 1;
  }
  return found;
}

function bestRow(rows: Map<string, Row[]>, words: readonly string[], at: number, previous: string): Proposal | undefined {
  const word = words[at] as string;
  const stem = singular(word);
  const singulars = words.map((one, nth) => (nth >= at && nth < at + 4 ? singular(one) : one));
  let best: Proposal | undefined;
  for (const row of [...(rows.get(word) ?? []), ...(stem !== word ? (rows.get(stem) ?? []) : [])]) {
    const list = row.pattern.firsts.has(word) ? words : words.map((one, nth) => (nth === at ? stem : one));
    const exact = row.pattern.match(list, at);
    const end = exact > at ? exact : row.pattern.match(singulars, at);
    if (end <= at || (best && end <= best.to)) continue;
    const next = words[end] ?? "";
    const behind = row.behind === undefined || row.behind.has(previous) || row.behind.has(singular(previous));
    const ahead = row.ahead === undefined || row.ahead.has(next) || row.ahead.has(singular(next));
    // where a row names both sides, either one will do
    if (!(row.behind && row.ahead ? behind || ahead : behind && ahead)) continue;
    const heard = words.slice(at, end);
    best = { from: at, to: end, mean: row.mean.replace(/\$(\d)/g, (_, nth: string) => heard[Number(nth) - 1] ?? "").split(" ") };
  }
  return best;
}

/** Trade words by their sound. */
let sounds: { lexicon: Lexicon; words: { word: string; sound: string }[] } | undefined;
function tradeSounds(lexicon: Lexicon): { word: string; sound: string }[] {
  if (sounds?.lexicon !== lexicon) {
    sounds = { lexicon, words: [...lexicon.tradeWords].filter((word) => word.length >= 4).map((word) => ({ word, sound: phones(word) })) };
  }
  return sounds.words;
}

/** Near enough for one strange word; for several everyday words the match must be closer, and the word longer. */
const NEAR = 0.16;
const NEAR_SPLIT = 0.13;

/**
 * Trade words that unread words sound like. `unread` tells which words nothing was made of; a stretch without any
 * is left alone, however much it sounds like something.
 */
export function soundAlikes(words: readonly string[], unread: readonly boolean[], lexicon: Lexicon): Proposal[] {
  const found: Proposal[] = [];
  for (let at = 0; at < words.length; at += 1) {
    let best: (Proposal & { far: number }) | undefined;
    for (let to = at + 1; to <= Math.min(words.length, at + 4); to += 1) {
      const span = words.slice(at, to);
      if (!unread.slice(at, to).some(Boolean) || span.some((word) => /\d/.test(word))) continue;
      if (to === at + 1 && ((span[0]?.length ?? 0) < 4 || isEnglish(span[0] ?? ""))) continue;
      const match = nearest(span.join(""), lexicon, to === at + 1 ? NEAR : NEAR_SPLIT, to === at + 1 ? 3 : 5);
      if (match && (!best || match.far < best.far)) best = { from: at, to, mean: [match.word], far: match.far };
    }
    if (best) {
      found.push({ from: best.from, to: best.to, mean: best.mean });
      at = best.to - 1;
    }
  }
  return found;
}

/** The one trade word that sounds nearest; none where two are equally near. */
function nearest(spelling: string, lexicon: Lexicon, near: number, least: number): { word: string; far: number } | undefined {
  const sound = phones(spelling);
  let best: { word: string; sound: string; far: number } | undefined;
  let rival = Number.POSITIVE_INFINITY;
  for (const one of tradeSounds(lexicon)) {
    if (one.sound.length < least || Math.abs(one.sound.length - sound.length) > 2) continue;
    const far = soundDistance(sound, one.sound, near);
    if (far > near) continue;
    const sameWord = best !== undefined && (best.sound === one.sound || singular(best.word) === singular(one.word));
    if (!best || far < best.far) {
      if (best && !sameWord) rival = best.far;
      best = { word: one.word, sound: one.sound, far };
    } else if (far < rival && !sameWord) rival = far;
  }
  return best && best.far <= near && best.far < rival ? best : undefined;
}

/** The phrase with proposals taken: its words, and for each the words of the phrase it stands for. */
export function respell(words: readonly string[], proposals: readonly Proposal[]): { words: string[]; origin: [number, number][] } {
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

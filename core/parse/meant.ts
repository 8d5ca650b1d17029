/** Step 3a: a run of words as it was meant: read with and without each proposal, the one that makes sense is kept. */

import { isEnglish } from "../vocabulary/english.ts";
import { PLAIN, ROLE } from "../vocabulary/grammar.ts";
import type { Lexicon } from "../vocabulary/lexicon.ts";
import { type Chunk, has, isTrade } from "./chunks.ts";
import { type Fragment, readFragment } from "./fragment.ts";
import { knownAlikes, knownConfusions, type Proposal, respell, type Sounding, soundAlikes } from "./mishearing.ts";
import type { Carry } from "./scene.ts";

/** So many words are put right together; what was misheard farther off has no part in it. */
const BREATH = 80;

/** Reads words as they were meant. A long run is put right a breath at a time, and then read as a whole. */
export function readMeant(words: readonly string[], carry: Carry, lexicon: Lexicon): Fragment {
  if (words.length <= BREATH) return readBreath(words, carry, lexicon);
  const meant: Proposal[] = [];
  for (let from = 0; from < words.length; from += BREATH) {
    const breath = readBreath(words.slice(from, from + BREATH), carry, lexicon);
    for (const one of breath.respelled ?? []) meant.push({ ...one, from: from + one.from, to: from + one.to });
  }
  return meant.length > 0 ? readRespelled(words, meant, carry, lexicon) : readFragment(words, carry, lexicon);
}

/**
 * Reads words as they were meant: as heard, and with known mishearings undone, and takes whichever makes more sense.
 * Phrases with talk of other things in them are taken as heard.
 */
function readBreath(words: readonly string[], carry: Carry, lexicon: Lexicon): Fragment {
  const heard = readFragment(words, carry, lexicon);
  const confused = knownConfusions(words, lexicon).filter((one) => !isDate(heard, one) && !inIdiom(heard, one));
  if (complete(heard) && confused.every((one) => settled(heard, one))) return heard;
  const first = confused.length > 0 ? byConfusions(heard, words, confused, carry, lexicon) : heard;
  const together = first === heard && confused.length > 0 && byBoth(heard, words, confused, carry, lexicon);
  if (together) return together;
  const places = complete(first) ? [] : alikes(first, words, lexicon);
  if (places.length === 0) return first;
  const sounded = bySound(first, words, places, carry, lexicon);
  return sounded === first ? first : withLeftOver(sounded, words, confused, carry, lexicon);
}

/** "pack in is we ping": neither makes sense by itself, and with both there is nothing left over. */
function byBoth(
  heard: Fragment,
  words: readonly string[],
  confused: readonly Proposal[],
  carry: Carry,
  lexicon: Lexicon,
): Fragment | undefined {
  const base = readRespelled(words, confused, carry, lexicon);
  const places = alikes(base, words, lexicon);
  if (places.length === 0) return undefined;
  const both = bySound(base, words, places, carry, lexicon);
  const better = both !== base && complete(both) && sense(both) > sense(heard);
  return better && both.drafts.every(({ named }) => named) ? both : undefined;
}

/**
 * What the words left over sound like, from left to right. Sound alone is a weak witness: it is heard only where the
 * phrase speaks of a valve anyway, and of nothing else.
 */
function alikes(first: Fragment, words: readonly string[], lexicon: Lexicon): Sounding[][] {
  const { chunks } = first.scene;
  const taken = first.respelled ?? [];
  // "put a solo noid on the list"
  const speaksOfIt = (one: Chunk) => has(one, ROLE.again) || has(one, ROLE.old) || has(one, ROLE.onList);
  if (chunks.some((one) => one.hazard) || !chunks.some((one) => isTrade(one) || speaksOfIt(one))) return [];
  const known = chunks.some((one) => isWitness(one) || speaksOfIt(one))
    ? knownAlikes(words, lexicon)
        .map((choices) =>
          choices.filter((one) => !overlaps(one, taken) && !settled(first, one) && !inIdiom(first, one)),
        )
        .filter((choices) => choices.length > 0)
    : [];
  if (chunks.some((one) => one.talk && !known.some((choices) => overlaps(spanOf(one), choices)))) return [];
  const unread = words.map(() => false);
  for (const one of chunks) if (!one.used && one.unknown) unread.fill(true, one.from, one.to);
  if (!unread.includes(true)) return known;
  const guessed = soundAlikes(words, unread, lexicon);
  return [...known, ...guessed.filter((choices) => choices.some((one) => !overlaps(one, taken)))].sort(
    ([a], [b]) => (a?.from ?? 0) - (b?.from ?? 0),
  );
}

const spanOf = ({ from, to }: Chunk): Proposal => ({ from, to, mean: [] });

/** "seat wring is warn": once the ring is heard as one, what is said of it makes sense as well. */
function withLeftOver(
  sounded: Fragment,
  words: readonly string[],
  confused: readonly Proposal[],
  carry: Carry,
  lexicon: Lexicon,
): Fragment {
  let best = sounded;
  for (const one of confused) {
    const taken = best.respelled ?? [];
    if (overlaps(one, taken)) continue;
    const meant = readRespelled(
      words,
      [...taken, one].sort((a, b) => a.from - b.from),
      carry,
      lexicon,
    );
    if (sense(meant) > sense(best) && !meant.scene.chunks.some((chunk) => chunk.talk)) best = meant;
  }
  return best;
}

/** Every word that could mean something was made something of: there is nothing to put right. */
function complete({ scene, drafts }: Fragment): boolean {
  return (
    drafts.length > 0 &&
    scene.chunks.every((one) => one.used || !(one.unknown || one.talk || isTrade(one) || one.number))
  );
}

/** What was heard there was read as it stands, and not as one of two parts side by side. */
function settled({ scene }: Fragment, proposal: Proposal): boolean {
  return scene.chunks.every((one, at) => {
    if (one.from >= proposal.to || proposal.from >= one.to) return true;
    return (
      one.used === true &&
      says(one) &&
      !(one.senses.part && (scene.chunks[at + 1]?.senses.part || scene.chunks[at - 1]?.senses.part))
    );
  });
}

/** "last week" is a week, and no leak. */
function isDate({ scene }: Fragment, one: Proposal): boolean {
  return scene.chunks.some((chunk) => has(chunk, ROLE.past) && chunk.from < one.to && one.from < chunk.to);
}

const overlaps = (one: Proposal, others: readonly Proposal[]): boolean =>
  others.some((other) => one.from < other.to && other.from < one.to);

/** What a step away in sound costs, beside the words that are explained by taking it. */
const PER_DISTANCE = 6;

/** So many places at most: a phrase with more strange words than this is about something else. */
const MOST_PLACES = 6;

/** From left to right, the word that makes most sense at each place; none where none is worth its distance. */
function bySound(
  first: Fragment,
  words: readonly string[],
  places: readonly Sounding[][],
  carry: Carry,
  lexicon: Lexicon,
): Fragment {
  let kept: readonly Proposal[] = first.respelled ?? [];
  let best = first;
  let worth = sense(first);
  /** what made no sense at the place before: with the next word put right as well it may ("seed is warn") */
  let lone: readonly Sounding[] = [];
  for (const choices of places.slice(0, MOST_PLACES)) {
    let pick: { kept: readonly Proposal[]; meant: Fragment; worth: number } | undefined;
    const beside = (one: Proposal) => lone.filter((before) => before.to <= one.from && one.from - before.to < 3);
    const tries = [...choices.map((one) => [one]), ...choices.flatMap((one) => beside(one).map((two) => [two, one]))];
    for (const more of tries) {
      // two put right at once are believed only where neither is alone
      if ((pick && more.length > 1) || more.some((one) => overlaps(one, kept))) continue;
      const next = [...kept, ...more].sort((a, b) => a.from - b.from);
      const meant = readRespelled(words, next, carry, lexicon);
      const gain = sense(meant) - PER_DISTANCE * more.reduce((sum, one) => sum + one.far, 0);
      if (
        gain <= (pick?.worth ?? worth) ||
        meant.scene.chunks.some((chunk) => chunk.talk) ||
        more.some((one) => !supported(meant, one) || isDeed(meant, one)) ||
        (more.some((one) => one.near) && !complete(meant))
      )
        continue;
      pick = { kept: next, meant, worth: gain };
    }
    lone = pick ? [] : choices;
    if (!pick) continue;
    ({ kept, meant: best, worth } = pick);
  }
  return best;
}

/** Takes the proposals that help: all of them at first, then without each that is not missed. */
function byConfusions(
  heard: Fragment,
  words: readonly string[],
  proposals: readonly Proposal[],
  carry: Carry,
  lexicon: Lexicon,
): Fragment {
  const floor = sense(heard);
  let kept = [...proposals].sort((a, b) => a.from - b.from).slice(0, 10);
  let meant = readRespelled(words, kept, carry, lexicon);
  let worth = sense(meant);
  for (const one of [...kept]) {
    const without = kept.filter((other) => other !== one);
    const next = without.length > 0 ? readRespelled(words, without, carry, lexicon) : heard;
    const nextWorth = sense(next);
    if (nextWorth < worth) continue;
    kept = without;
    meant = next;
    worth = nextWorth;
  }
  // one wrong proposal may have spoilt another that stood beside it
  for (const one of proposals) {
    if (kept.includes(one) || proposals.length < 2) continue;
    const also = [...kept, one].sort((a, b) => a.from - b.from);
    const next = readRespelled(words, also, carry, lexicon);
    if (sense(next) <= worth) continue;
    kept = also;
    meant = next;
    worth = sense(next);
  }
  // a phrase made of nothing but corrections is no witness for any of them
  const everyday = kept.some((one) => words.slice(one.from, one.to).every(isEnglish));
  const plainly = [meant, heard].some(({ scene }) =>
    scene.chunks.some((one) => (everyday ? isWitness(one) : isTrade(one)) && !overlaps(spanOf(one), kept)),
  );
  return kept.length > 0 &&
    worth > floor &&
    (plainly ||
      heard.drafts.length > 0 ||
      (kept.length < words.length - 1 && !leavesPart(meant, kept) && !aloneInTalk(kept, meant))) &&
    !meant.scene.chunks.some((one) => one.talk)
    ? meant
    : heard;
}

/** A word of the trade that is not said of everything else as well ("bad", "in"). */
const isWitness = (one: Chunk): boolean => isTrade(one) && !PLAIN.has(one.text);

/** "no strings attached": heard as it is meant. */
const inIdiom = ({ scene }: Fragment, one: Proposal): boolean =>
  scene.chunks.some(({ talk, from, to }) => talk && to - from > one.to - one.from && one.from < to && from < one.to);

/** "the tide was high and the boat was fine": a part heard for nothing is no witness for the other. */
const leavesPart = ({ scene, drafts }: Fragment, kept: readonly Proposal[]): boolean =>
  drafts.length > 0 && scene.chunks.some((one) => one.senses.part && !one.used && overlaps(spanOf(one), kept));

/** "we laughed all day": everyday words, and nothing near them that speaks of a valve. */
function aloneInTalk(kept: readonly Proposal[], meant: Fragment): boolean {
  const [only, more] = kept;
  if (!only) return false;
  // what the log is asked or told to do is seldom said by chance
  if (meant.drafts.some(({ entry }) => /^(?:command|need|hazard)$/.test(entry.type))) return false;
  // "ditto for the seed", "the other one to": nor is that what was said be said again
  if (meant.scene.chunks.some((one) => one.used && (has(one, ROLE.again) || has(one, ROLE.other)))) return false;
  // "fall travel plans"; beside several a strange word may be one more of them ("plog is scared")
  if (meant.scene.chunks.some((one) => one.unknown && !one.used && !(more && !isEnglish(one.text)))) return true;
  if (more || only.to - only.from > 1 || only.mean.length > 1) return false;
  // "talked to two of those people": so many of them, and so much of nothing
  return !meant.scene.chunks.some(
    (one, at) =>
      /^(?:it|them|em|that|those|both)$/.test(one.text) ||
      (one.number && !/^of/.test(meant.scene.chunks[at + 1]?.text ?? "")),
  );
}

/** "skimmed the seat": an unknown verb with its object is a deed the log has no word for, and no condition that sounds like it. */
function isDeed({ scene }: Fragment, proposal: Proposal): boolean {
  const at = scene.chunks.findIndex((one) => one.from >= proposal.from);
  const chunk = scene.at(at);
  return (
    chunk?.senses.condition?.some((one) => one.form === "is") === true &&
    !has(scene.at(at - 1), ROLE.is) &&
    has(scene.at(at + 1), ROLE.det) &&
    scene.noun(at + 1)?.part !== undefined
  );
}

/** A word put right must be read together with a trade word that was heard as it is, and never onto a carried part alone. */
function supported(meant: Fragment, proposal: Proposal): boolean {
  const inside = (one: Chunk | undefined) => one !== undefined && one.from < proposal.to && proposal.from < one.to;
  return meant.drafts.some((draft) => {
    const chunks = [...draft.chunks, ...(draft.also ?? [])].map((at) => meant.scene.chunks[at]);
    if (!chunks.some(inside)) return false;
    const whole = draft.entry.type !== "finding" && draft.entry.type !== "work";
    return (
      draft.named ||
      whole ||
      meant.scene.chunks.some((one) => isTrade(one) && one.senses.part !== undefined && one.used)
    );
  });
}

/** The reading with these proposals taken. */
function readRespelled(
  words: readonly string[],
  proposals: readonly Proposal[],
  carry: Carry,
  lexicon: Lexicon,
): Fragment {
  const respelled = respell(words, proposals);
  const meant = readFragment(respelled.words, carry, lexicon);
  // its words stand for others in the phrase: point back at those
  for (const one of meant.scene.chunks) {
    const first = respelled.origin[one.from];
    const last = respelled.origin[one.to - 1];
    if (first && last) Object.assign(one, { from: first[0], to: last[1] });
  }
  return { ...meant, respelled: proposals };
}

/** How much of the words a reading makes something of, less what it leaves over or has to carry. */
function sense(fragment: Fragment): number {
  let total = 0;
  const { chunks } = fragment.scene;
  for (const { entry, named } of fragment.drafts)
    if ((entry.type === "finding" || entry.type === "work") && (!entry.part || !named)) total -= entry.part ? 0.5 : 2;
  for (const [at, one] of chunks.entries()) {
    if (one.unknown || one.talk) total -= one.used ? 0 : 2;
    else if (one.used) total += says(one) ? one.to - one.from : 0;
    else if (one.senses.part || one.senses.condition || one.senses.work || one.number) total -= 1.5;
    // two parts side by side are seldom two parts: "bonnet balls"
    if (one.senses.part && chunks[at + 1]?.senses.part && chunks[at + 2]?.text !== "both") total -= 1;
  }
  return total;
}

/** Whether a chunk carries meaning of its own, rather than holding others together. */
const says = (one: Chunk): boolean =>
  isTrade(one) ||
  one.number !== undefined ||
  one.hazard !== undefined ||
  one.command !== undefined ||
  has(one, ROLE.fresh) ||
  has(one, ROLE.too) ||
  has(one, ROLE.leave) ||
  one.senses.place !== undefined ||
  one.senses.severity !== undefined ||
  one.senses.extent !== undefined ||
  one.senses.quantity !== undefined ||
  one.senses.acts !== undefined ||
  one.senses.service !== undefined ||
  one.senses.verdict !== undefined ||
  one.senses.placing !== undefined;

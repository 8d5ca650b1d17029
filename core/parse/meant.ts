/** Step 3a: a run of words as it was meant: read with and without each proposal, the one that makes sense is kept. */

import { ROLE } from "../vocabulary/grammar.ts";
import type { Lexicon } from "../vocabulary/lexicon.ts";
import { type Chunk, has, isTrade } from "./chunks.ts";
import { type Fragment, readFragment } from "./fragment.ts";
import { knownConfusions, type Proposal, respell, soundAlikes } from "./mishearing.ts";
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
  if (first.scene.chunks.every((one) => !one.unknown && !one.talk)) return first;
  // sound alone is a weak witness: it is heard only where the phrase speaks of a valve anyway, and of nothing else
  if (
    first.scene.chunks.some((one) => one.talk || one.hazard) ||
    !first.scene.chunks.some((one) => isTrade(one) || has(one, ROLE.again))
  )
    return first;
  const unread = words.map(() => false);
  for (const one of first.scene.chunks) if (!one.used && one.unknown) unread.fill(true, one.from, one.to);
  const taken = first.respelled ?? [];
  const places = soundAlikes(words, unread, lexicon).filter((choices) => choices.some((one) => !overlaps(one, taken)));
  if (places.length === 0) return first;
  const sounded = bySound(first, words, places, carry, lexicon);
  return sounded === first ? first : withLeftOver(sounded, words, confused, carry, lexicon);
}

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
  places: readonly (Proposal & { far: number })[][],
  carry: Carry,
  lexicon: Lexicon,
): Fragment {
  let kept: (Proposal & { far?: number })[] = [...(first.respelled ?? [])];
  let best = first;
  let worth = sense(first);
  for (const choices of places.slice(0, MOST_PLACES)) {
    let pick: { kept: typeof kept; meant: Fragment; worth: number } | undefined;
    for (const one of choices) {
      if (overlaps(one, kept)) continue;
      const next = [...kept, one].sort((a, b) => a.from - b.from);
      const meant = readRespelled(words, next, carry, lexicon);
      const gain = sense(meant) - PER_DISTANCE * one.far;
      if (
        gain <= (pick?.worth ?? worth) ||
        meant.scene.chunks.some((chunk) => chunk.talk) ||
        !supported(meant, one) ||
        isDeed(meant, one)
      )
        continue;
      pick = { kept: next, meant, worth: gain };
    }
    if (!pick) continue;
    kept = pick.kept;
    best = pick.meant;
    worth = pick.worth;
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
  const plainly = [meant, heard].some(({ scene }) =>
    scene.chunks.some((one) => isTrade(one) && !overlaps({ from: one.from, to: one.to, mean: [] }, kept)),
  );
  return kept.length > 0 &&
    worth > floor &&
    (plainly || heard.drafts.length > 0 || (kept.length < words.length - 1 && !aloneInTalk(kept, meant))) &&
    !meant.scene.chunks.some((one) => one.talk)
    ? meant
    : heard;
}

/** "no strings attached": heard as it is meant. */
const inIdiom = ({ scene }: Fragment, one: Proposal): boolean =>
  scene.chunks.some(({ talk, from, to }) => talk && to - from > one.to - one.from && one.from < to && from < one.to);

/** "we laughed all day": one everyday word, and nothing near it that speaks of a valve. */
function aloneInTalk(kept: readonly Proposal[], meant: Fragment): boolean {
  const [only, more] = kept;
  if (!only || more) return false;
  // what the log is asked or told to do is seldom said by chance
  if (meant.drafts.some(({ entry }) => /^(?:command|need|hazard)$/.test(entry.type))) return false;
  // "fall travel plans"
  if (meant.scene.chunks.some((one) => one.unknown && !one.used)) return true;
  if (only.to - only.from > 1 || only.mean.length > 1) return false;
  return !meant.scene.chunks.some((one) => /^(?:it|them|em|that|those|both)$/.test(one.text) || one.number);
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
  one.senses.place !== undefined ||
  one.senses.severity !== undefined ||
  one.senses.extent !== undefined ||
  one.senses.quantity !== undefined ||
  one.senses.acts !== undefined ||
  one.senses.service !== undefined ||
  one.senses.verdict !== undefined ||
  one.senses.placing !== undefined;

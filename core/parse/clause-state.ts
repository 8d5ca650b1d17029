/** Step 5: what a predicate further on may still refer to. */

import type { Status } from "../shapes/codes.ts";
import type { Entry } from "../shapes/entry.ts";
import { KIND_OF } from "../shapes/part-kinds.ts";
import { type Chunk, range } from "./chunks.ts";
import type { Named, Noun } from "./noun.ts";
import type { Scene } from "./scene.ts";

/** The subject, and the small words that change what a predicate means, each by the index of its chunk. */
export interface ClauseState {
  /** the parts something is said of; `open` until something has been */
  subject: { nouns: Noun[]; open: boolean } | undefined;
  not: number | undefined;
  hedge: number | undefined;
  owed: number | undefined;
  did: number | undefined;
  found: number | undefined;
  /** words of another visit or of other people's telling: what follows is not today's */
  elsewhere: number | undefined;
  /** something was said of the subject since the marks above were set */
  said: boolean;
  /** where the clause began: unknown or off-topic words from here on make a carried part doubtful */
  since: number;
}

/** Nothing has been said. */
export function newState(): ClauseState {
  return {
    subject: undefined,
    not: undefined,
    hedge: undefined,
    owed: undefined,
    did: undefined,
    found: undefined,
    elsewhere: undefined,
    said: false,
    since: 0,
  };
}

/** Something was said, so the small words before it are spent: "not" in "not worn, bent" reaches "worn" alone. */
export function renew(state: ClauseState): void {
  if (!state.said) return;
  drop(state);
  state.said = false;
}

/** Drops the small words, said or not: "but" begins anew. */
export function reset(state: ClauseState): void {
  drop(state);
  state.elsewhere = undefined;
}

function drop(state: ClauseState): void {
  state.not = undefined;
  state.hedge = undefined;
  state.owed = undefined;
  state.did = undefined;
  state.found = undefined;
}

/** A clause ended for good: what carries on is its subject alone. */
export function endClause(state: ClauseState, at: number): void {
  reset(state);
  state.said = true;
  state.since = at;
}

/** These parts are what is spoken of ("seat and plug …"); `open` while nothing has been said of them. */
export function settleSubject(scene: Scene, state: ClauseState, nouns: Noun[], open: boolean): void {
  state.subject = { nouns, open };
  if (!open) {
    state.said = true;
    for (const noun of nouns) {
      // "the other three are fine": how many says which
      if (noun.one && noun.count !== undefined) scene.use(...range(noun.from, noun.to));
      const said = scene.at(noun.core)?.senses.part;
      if (noun.to > noun.from && (said === noun.part || (said && noun.part && KIND_OF[noun.part] === said)))
        scene.use(...range(noun.from, noun.to));
    }
  }
  scene.name(nouns);
}

/** Whether a carried part may be trusted: nothing in the clause that the log does not understand. */
export function clauseIsOurs(scene: Scene, from: number, to: number): boolean {
  const end = Math.min(scene.chunks.length, to);
  for (let at = Math.max(0, from); at < end; at += 1) {
    const chunk = scene.chunks[at];
    if (chunk?.talk || /^(?:my|his|your|our|their|mine|ours|yours|theirs)$/.test(chunk?.text ?? "")) return false;
    // "stripped on its keyway": a piece of the part, whatever it is called
    if (chunk?.unknown && scene.at(at - 1)?.text === "its" && scene.drafts.some((draft) => draft.named)) continue;
    if (chunk?.unknown && !chunk.used && !pointsBack(scene, at + 1, end)) return false;
  }
  return true;
}

/** "scale in the cage windows, cleaned it": behind a strange word, "it" is still the part found in the same breath. */
function pointsBack(scene: Scene, from: number, to: number): boolean {
  if (!scene.drafts.some((draft) => draft.named) || scene.chunks.some((one) => one.talk)) return false;
  return scene.chunks.slice(from, to).some((one) => /^(?:it|its|them|em)$/.test(one.text));
}

/** The parts that a predicate without its own is said of. */
export function carried(scene: Scene, state: ClauseState): Named[] {
  if (state.subject) return state.subject.nouns;
  return scene.named.length > 0 ? scene.named : [{ part: undefined }];
}

/** "changed the seat yesterday": what was done then is done; what was found then may be mended since. */
export const isYesterday = (chunk: Chunk | undefined): boolean => /^yesterday\b/.test(chunk?.text ?? "");

/** Leaves a work entry on a part, with the small words before it among its chunks. */
export function emitWork(
  scene: Scene,
  state: ClauseState,
  work: Extract<Entry, { type: "work" }>["work"],
  status: Status,
  target: Named,
  span: [number, number],
  rule: string,
): void {
  if (state.elsewhere !== undefined && !isYesterday(scene.at(state.elsewhere))) return;
  const entry: Extract<Entry, { type: "work" }> = { type: "work", work, status };
  if (target.part) entry.part = target.part;
  const count = target.count ?? (target.both ? 2 : undefined);
  if (count !== undefined) entry.count = count;
  // a hedge said of a finding does not reach the work after it
  if (
    state.hedge !== undefined &&
    !scene.drafts.some((draft) => draft.entry.type === "finding" && draft.chunks.includes(state.hedge as number))
  )
    entry.unsure = true;
  const chunks = range(span[0], span[1]);
  for (const mark of [state.not, state.owed, state.did, state.hedge])
    if (mark !== undefined && mark < span[0]) chunks.unshift(mark);
  scene.drafts.push({ entry, chunks, rule, named: target.part !== undefined });
  scene.use(...chunks);
  state.said = true;
}

/** Step 5b: "a quarter turn on the gland nut": so far it was turned, and that made it tight. */

import { ROLE } from "../vocabulary/grammar.ts";
import { has, range } from "./chunks.ts";
import { type ClauseState, emitWork, settleSubject } from "./clause-state.ts";
import type { Scene } from "./scene.ts";

/** What a turn makes tight, and what it sets. */
const TIGHTENS = /nut|bolting|packing|fitting/;
const SETS = /^(?:adjusting_screw|regulator|actuator_spring|spring)$/;

/** The turn that starts at `at`, with the part behind its "on the"; the index to go on from. */
export function readTurning(scene: Scene, state: ClauseState, at: number): number | undefined {
  const many = scene.at(at)?.number;
  if (!many || scene.at(at)?.used) return undefined;
  let turn = at + 1;
  while (/^(?:a|more)$/.test(scene.at(turn)?.text ?? "")) turn += 1;
  if (!/^(?:turns?|flats?)$/.test(scene.at(turn)?.text ?? "")) return undefined;
  const on = scene.at(turn + 1);
  if (!/^(?:on|to)\b/.test(on?.text ?? "") || !has(on, ROLE.prep)) {
    // "snugged it a quarter turn": how far is part of the work just said
    const last = scene.drafts.at(-1);
    if (last?.entry.type !== "work" || !/^(?:tightened|adjusted)$/.test(last.entry.work)) return undefined;
    last.chunks.push(...range(at, turn + 1));
    scene.use(...range(at, turn + 1));
    return turn + 1;
  }
  const noun = scene.noun(turn + 2);
  const work = TIGHTENS.test(noun?.part ?? "") ? "tightened" : SETS.test(noun?.part ?? "") ? "adjusted" : undefined;
  if (!noun || !work) return undefined;
  const status = state.not !== undefined ? "declined" : state.owed !== undefined ? "needed" : "done";
  emitWork(scene, state, work, status, { part: noun.part, place: noun.place }, [at, noun.to], "turned");
  settleSubject(scene, state, [noun], false);
  state.since = noun.to;
  return noun.to;
}

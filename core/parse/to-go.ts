/** Step 5b: "packing's got to go": what has to go is to be replaced. */

import { ROLE } from "../vocabulary/grammar.ts";
import { has } from "./chunks.ts";
import { type ClauseState, clauseIsOurs, emitWork, settleSubject } from "./clause-state.ts";
import type { Noun } from "./noun.ts";
import { pronoun } from "./pronouns.ts";
import type { Scene } from "./scene.ts";

/** What else may have to go: "bonnet has to go back on", "has to go in first", "it's gotta go to the shop". */
const ELSEWHERE =
  /^(?:back|in|on|to|out|up|down|over|off|through|into|onto|around|under|by|with|from|home|first|last|next|together|bad|wrong|get|see|at)\b/;

/** The replacement owed to what "has to go"; the index to go on from. */
export function readToGo(scene: Scene, state: ClauseState, at: number): number | undefined {
  const chunk = scene.at(at);
  if (chunk?.text !== "go" || state.owed === undefined || state.not !== undefined) return undefined;
  if (scene.chunks.slice(state.owed + 1, at).some((one) => !/^(?:to|have|be)$/.test(one.text))) return undefined;
  if (ELSEWHERE.test(scene.at(at + 1)?.text ?? "") || scene.at(at + 1)?.unknown || scene.at(at + 1)?.talk)
    return undefined;
  const nouns = state.subject?.open ? state.subject.nouns : pointedAt(scene, state);
  if (!nouns?.every((one) => one.part && one.part !== "valve") || !clauseIsOurs(scene, state.since, at))
    return undefined;
  const named = state.subject?.open === true;
  for (const one of nouns)
    emitWork(scene, state, "replaced", "needed", one, [named ? (one as Noun).from : state.owed, at + 1], "to_go");
  if (named) settleSubject(scene, state, nouns as Noun[], false);
  state.since = at + 1;
  return at + 1;
}

/** "it's gotta go", but "I gotta go" is somebody's leaving. */
function pointedAt(scene: Scene, state: ClauseState) {
  let back = (state.owed ?? 0) - 1;
  while (has(scene.at(back), ROLE.is) && !has(scene.at(back), ROLE.it)) back -= 1;
  const it = scene.at(back);
  return it && /^(?:its?|thats?|that one|this one|them|those|these|old one)$/.test(it.text)
    ? pronoun(scene, state, it.text)
    : undefined;
}

/** Step 5b: what was left as it is, or used again. */

import type { Status } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { has } from "./chunks.ts";
import { type ClauseState, clauseIsOurs, emitWork, reset, settleSubject } from "./clause-state.ts";
import type { Noun } from "./noun.ts";
import { pronoun } from "./pronouns.ts";
import type { Scene } from "./scene.ts";

/** "leaving it for now" leaves a replacement undone; "going back in" and "ran it again" reuse the part. */
export function readLeaving(scene: Scene, state: ClauseState, at: number): number | undefined {
  const chunk = scene.at(at);
  if (!chunk || chunk.used) return undefined;
  const reuse = has(chunk, ROLE.reuse);
  // "bonnet back on"
  if (chunk.text === "back" && scene.at(at + 1)?.text === "on" && state.subject?.open) {
    for (const one of state.subject.nouns)
      emitWork(scene, state, "installed", "done", one, [one.from, at + 2], "placed_installed");
    settleSubject(scene, state, state.subject.nouns, false);
    return at + 2;
  }
  if (!reuse && !has(chunk, ROLE.leave)) {
    // "left the old gasket in"
    if (/^(?:left|leaving|leave)$/.test(chunk.text)) return readLeft(scene, state, at);
    return undefined;
  }
  const nouns = state.subject
    ? state.subject.nouns
    : pronoun(scene, state, /\b(?:them|em|those|both)\b/.test(chunk.text) ? "them" : "it");
  if (!clauseIsOurs(scene, state.since, at + 1)) return undefined;
  if (
    !state.subject &&
    scene.named.length === 0 &&
    reuse &&
    !/\b(?:it|them|em|her|ones?|old|original)\b/.test(chunk.text)
  )
    return undefined;
  const denied = state.not === at - 1;
  const status: Status = reuse ? (denied ? "declined" : "done") : "declined";
  if (!reuse) state.not = undefined;
  for (const one of nouns)
    emitWork(
      scene,
      state,
      reuse ? "reused" : "replaced",
      status,
      { part: one.part, place: one.place, count: (one as Noun).both ? 2 : undefined },
      [at, at + 1],
      reuse ? "reused" : "left",
    );
  if (state.subject) state.subject.open = false;
  reset(state);
  state.since = at + 1;
  return at + 1;
}

/** "left the old gasket in" reuses it, "left the gasket alone" leaves its replacement undone. */
function readLeft(scene: Scene, state: ClauseState, at: number): number | undefined {
  const objects = scene.nouns(at + 1, "object");
  if (!objects) return undefined;
  const old = objects.nouns.some((one) => one.old);
  const next = scene.at(objects.end);
  const stays = next !== undefined && /^(?:in|on|alone|as is|be|in place|for now|there|in there|for)\b/.test(next.text);
  if (!old && !stays) return undefined;
  for (const one of objects.nouns)
    emitWork(
      scene,
      state,
      old ? "reused" : "replaced",
      old ? "done" : "declined",
      one,
      [at, objects.end + (stays ? 1 : 0)],
      old ? "left_old_in" : "left",
    );
  settleSubject(scene, state, objects.nouns, false);
  return objects.end + (stays ? 1 : 0);
}

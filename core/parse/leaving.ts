/** Step 5b: what was left as it is, or used again. */

import type { Status } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { spellings } from "../vocabulary/notation.ts";
import { has, range } from "./chunks.ts";
import { type ClauseState, clauseIsOurs, emitWork, reset, settleSubject } from "./clause-state.ts";
import type { Noun } from "./noun.ts";
import { pronoun } from "./pronouns.ts";
import type { Scene } from "./scene.ts";

/** What stands off the valve while it is worked on. */
const LIFTED = /^(?:bonnet|actuator|housing|upper_housing|lower_housing|yoke|positioner|packing_nut)$/;

/** What comes out of the body. */
const DRAWN =
  /^(?:seat|plug|stem|cage|trim|guide|stem_guide|packing|spring|actuator_spring|diaphragm|upper_diaphragm|lower_diaphragm)$/;

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
  // "bonnet's off"
  const next = scene.at(at + 1);
  if (
    state.subject?.open &&
    ((chunk.text === "off" && state.subject.nouns.every((one) => LIFTED.test(one.part ?? ""))) ||
      (chunk.text === "out" &&
        (has(scene.at(at - 1), ROLE.is) || state.subject.nouns.at(-1)?.det === true) &&
        state.subject.nouns.every((one) => DRAWN.test(one.part ?? "")))) &&
    (!next || has(next, ROLE.and) || has(next, ROLE.but) || next.text === "now" || scene.noun(at + 1))
  ) {
    // "need to get the bonnet off"
    const owed = state.owed !== undefined && (state.did === undefined || state.did < state.owed);
    for (const one of state.subject.nouns)
      emitWork(scene, state, "removed", owed ? "needed" : "done", one, [one.from, at + 1], "is_off");
    settleSubject(scene, state, state.subject.nouns, false);
    return at + 1;
  }
  if (!reuse && !has(chunk, ROLE.leave)) {
    // "left the old gasket in"
    if (LEFT.has(chunk.text)) return readLeft(scene, state, at);
    if (SKIPPED.has(chunk.text)) return readSkipped(scene, state, at);
    if (RAN.has(chunk.text) && (state.not === undefined || noWay(scene, state))) return readRunAgain(scene, state, at);
    return undefined;
  }
  // "replaced the kit, reused trim": what stands behind
  const behind = reuse && /^(?:reused|used again)$/.test(chunk.text) ? scene.noun(at + 1) : undefined;
  if (behind?.part && !state.subject?.open && !scene.predicateFollows(behind.to)) return undefined;
  const nouns = state.subject
    ? state.subject.nouns.length === 1 && /\bit\b/.test(chunk.text)
      ? pronoun(scene, state, "it")
      : state.subject.nouns
    : pronoun(scene, state, /\b(?:them|em|those|both)\b/.test(chunk.text) ? "them" : "it");
  // "left it all loose": how it was left
  const how = scene.at(scene.at(at + 1)?.text === "all" ? at + 2 : at + 1);
  if (!reuse && how?.senses.condition && !how.senses.part && !how.senses.work) return undefined;
  if (!clauseIsOurs(scene, state.since, at + 1)) return undefined;
  if (
    !state.subject &&
    scene.named.length === 0 &&
    reuse &&
    !/\b(?:it|them|em|her|ones?|old|original)\b/.test(chunk.text)
  )
    return undefined;
  // "put it back on"
  const on = reuse && /\bback$/.test(chunk.text) && next?.text === "on" && !scene.noun(at + 2);
  const end = on ? at + 2 : at + 1;
  const start = state.subject?.open ? (state.subject.nouns[0]?.from ?? at) : at;
  const denied = state.not === at - 1 || noWay(scene, state);
  const status: Status = reuse ? (denied ? "declined" : "done") : "declined";
  if (!reuse) state.not = undefined;
  for (const one of nouns)
    emitWork(
      scene,
      state,
      on ? "installed" : reuse ? "reused" : "replaced",
      status,
      { part: one.part, place: one.place, count: (one as Noun).both ? 2 : undefined },
      [Math.min(start, at), end],
      on ? "placed_installed" : reuse ? "reused" : "left",
    );
  if (state.subject) state.subject.open = false;
  reset(state);
  state.since = end;
  return end;
}

/** "no way that plug's going back in": what is denied so is denied across its part. */
const noWay = (scene: Scene, state: ClauseState): boolean =>
  state.not !== undefined && /\bno way\b/.test(scene.at(state.not)?.text ?? "");

const LEFT = spellings("left|leaving|leave");
const RAN = spellings("ran|run|running|used|using");
const SKIPPED = spellings(
  "skipped|skipping|skip|passed on|(held|holding|hold) off on|(didnt|did not) get to|didnt touch",
  "(havent|never|aint|not) (touched|touching)",
);

/** "skipped the packing", "held off on the diaphragm": what was not done to it is its replacement. */
function readSkipped(scene: Scene, state: ClauseState, at: number): number | undefined {
  const objects = scene.nouns(at + 1, "object");
  if (!objects?.nouns.every((one) => one.part && (one.det || one.plural || one.part === "packing"))) return undefined;
  const next = scene.at(objects.end);
  if (next?.senses.test || next?.unknown || next?.talk || next?.senses.work) return undefined;
  for (const one of objects.nouns) emitWork(scene, state, "replaced", "declined", one, [at, objects.end], "left");
  settleSubject(scene, state, objects.nouns, false);
  reset(state);
  state.since = objects.end;
  return objects.end;
}

/** "ran the old gasket", "run that diaphragm again": what is old was used again. */
function readRunAgain(scene: Scene, state: ClauseState, at: number): number | undefined {
  const objects = scene.nouns(at + 1, "object");
  const again = scene.at(objects?.end ?? at)?.text === "again";
  if (!objects?.nouns.every((one) => (one.old || (again && one.det)) && one.part)) return undefined;
  for (const one of objects.nouns)
    emitWork(
      scene,
      state,
      "reused",
      noWay(scene, state) ? "declined" : state.owed === undefined ? "done" : "needed",
      one,
      [at, objects.end + (again ? 1 : 0)],
      "left_old_in",
    );
  settleSubject(scene, state, objects.nouns, false);
  return objects.end + (again ? 1 : 0);
}

/** "left the lock nut off": it is not there. */
function readLeftOff(scene: Scene, state: ClauseState, at: number, nouns: Noun[], end: number): number {
  if (state.elsewhere === undefined)
    for (const one of nouns)
      scene.drafts.push({
        entry: { type: "finding", condition: "missing", part: one.part, ...(one.place ? { place: one.place } : {}) },
        chunks: range(at, end),
        rule: "left_off",
        named: true,
      });
  scene.use(...range(at, end));
  settleSubject(scene, state, nouns, false);
  return end;
}

/** "left the old gasket in" reuses it, "left the gasket alone" leaves its replacement undone. */
function readLeft(scene: Scene, state: ClauseState, at: number): number | undefined {
  const objects = scene.nouns(at + 1, "object");
  if (!objects) return undefined;
  const old = objects.nouns.some((one) => one.old);
  const next = scene.at(objects.end);
  if (scene.at(at)?.text === "left" && /^(?:off|out)$/.test(next?.text ?? "") && objects.nouns.every((one) => one.part))
    return readLeftOff(scene, state, at, objects.nouns, objects.end + 1);
  const asIs = next?.text === "as" && /^(?:is|it)$/.test(scene.at(objects.end + 1)?.text ?? "");
  const stays =
    asIs || (next !== undefined && /^(?:in|on|alone|as is|be|in place|for now|there|in there|for)\b/.test(next.text));
  // "leaving the packing", "gonna leave the cage, it's fine"
  const leaving =
    (scene.at(at)?.text === "leaving" || (scene.at(at)?.text === "leave" && state.owed === at - 1)) &&
    (next === undefined || has(next, ROLE.and) || has(next, ROLE.but) || has(next, ROLE.it));
  if (!old && !stays && !leaving) return undefined;
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

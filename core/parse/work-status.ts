/** Step 5b: whether a work was done, is owed, or was declined. */

import type { Status, Work } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import type { WorkForm } from "../vocabulary/senses.ts";
import { has } from "./chunks.ts";
import type { ClauseState } from "./clause-state.ts";
import type { Scene } from "./scene.ts";

/** "lapped" done, "needs lapping" owed, "didn't lap" declined. */
export function statusOf(scene: Scene, state: ClauseState, at: number, form: WorkForm, code: Work): Status {
  const not = state.not !== undefined ? scene.at(state.not) : undefined;
  if (not && (has(not, ROLE.declined) || has(not, ROLE.not))) return "declined";
  // "packing could be replaced"
  if (form === "past" && state.hedge === at - 1 && /^(?:could|might|may) be$/.test(scene.at(at - 1)?.text ?? ""))
    return "needed";
  if (form === "past")
    return state.owed !== undefined && (state.did === undefined || state.did < state.owed) ? "needed" : "done";
  // "took me an hour to get the bonnet off": it was got off
  if (form === "base" && scene.at(at - 1)?.text === "to" && TOOK.test(leadUp(scene, at))) return "done";
  // "pulled the cage and clean it": goes on with what was done
  const before = scene.drafts.at(-1);
  if (
    form === "base" &&
    state.owed === undefined &&
    scene.at(at - 1)?.text === "and" &&
    before?.entry.type === "work" &&
    before.entry.status === "done" &&
    Math.max(...before.chunks) === at - 2
  )
    return "done";
  // "so i tighten it": told as it was done
  if (form === "base" && state.owed === undefined && /^(?:i|we|he|they)$/.test(scene.at(at - 1)?.text ?? ""))
    return "done";
  // "run the gland down till she quit weeping": it was done until then
  if (
    form === "base" &&
    state.owed === undefined &&
    /\b(?:till|til|until) (?:it|she|he|they)? ?(?:quit|stopped|was|came|got|felt|seated|bottomed)\b/.test(
      followUp(scene, at),
    )
  )
    return "done";
  // "i flip did over": a recogniser's "flipped it"
  if (form === "base" && scene.at(at + 1)?.text === "did") return "done";
  // "have the instrument guys look at it": asked of others
  const asks =
    state.did !== undefined &&
    /^have$/.test(scene.at(state.did)?.text ?? "") &&
    !/^(?:i|we|ive|weve|you)$/.test(scene.at(state.did - 1)?.text ?? "") &&
    at - state.did > 1;
  if (form === "base" && asks) return "needed";
  // "just straighten it" is an order
  const did = state.did !== undefined && scene.at(state.did)?.text !== "just";
  if (form === "base") return did && state.owed === undefined ? "done" : "needed";
  if (form === "ing" || (form === "noun" && /ing\b/.test(scene.at(at)?.text ?? ""))) {
    // "going back in", "going in the trash": where it goes is settled
    if (code === "reused" || (code === "discarded" && scene.at(at)?.text === "going")) return "done";
    // "no bubbles after lapping the seat"
    if (/^(?:after|since|by|from|while|when)$/.test(scene.at(at - 1)?.text ?? "")) return "done";
    // "busted a stud getting the bonnet off": what one was at when it happened
    if (form === "ing" && behindDeed(scene, at)) return "done";
    // "had a hard time getting the seat out"
    if (form === "ing" && HARD_WON.test(leadUp(scene, at))) return "done";
    // "lapping done", "cleaning completed"
    if (
      /^(?:done|completed|complete|finished|carried out)$/.test(scene.at(at + 1)?.text ?? "") &&
      state.owed === undefined
    )
      return "done";
    if (form === "noun") return state.owed !== undefined ? "needed" : "done";
    return state.did !== undefined && state.owed === undefined && DONE_BEFORE.test(scene.at(state.did)?.text ?? "")
      ? "done"
      : "needed";
  }
  return state.owed !== undefined ? "needed" : "done";
}

/** Behind these an "-ing" was done: "ended up replacing the seat", "been cleaning it". */
const DONE_BEFORE = /^(?:finished|done|got done|did|ended up|wound up|been|has been|have been)$/;

/** "busted a stud", "stripped the threads": the deed, its article and its part, right before. */
function behindDeed(scene: Scene, at: number): boolean {
  const last = scene.drafts.at(-1);
  // "broke two studs off getting it apart"
  if (/^(?:off|out)$/.test(scene.at(at - 1)?.text ?? "")) at -= 1;
  if (last?.entry.type !== "finding" || Math.max(...last.chunks) !== at - 1) return false;
  // "snapped two getting the bonnet off"
  if (scene.at(at - 1)?.number) return scene.at(at - 2)?.senses.condition !== undefined;
  if (!scene.at(at - 1)?.senses.part) return false;
  let back = at - 2;
  const counted = scene.at(back)?.number !== undefined;
  while (scene.at(back)?.senses.place || scene.at(back)?.number) back -= 1;
  if (counted && scene.at(back)?.senses.condition) return true;
  return has(scene.at(back), ROLE.det) && scene.at(back - 1)?.senses.condition !== undefined;
}

const TOOK = /\b(?:took|managed|had a (?:time|hard time|heck of a time)|got|was able)\b/;
const followUp = (scene: Scene, at: number): string =>
  scene.chunks
    .slice(at + 1, at + 9)
    .map((one) => one.text)
    .join(" ");
const HARD_WON = /\b(?:a (?:hard |heck of a |rough |bad )?time|trouble|fun|managed|finished|got done)$/;
const leadUp = (scene: Scene, at: number): string =>
  scene.chunks
    .slice(Math.max(0, at - 6), at)
    .map((one) => one.text)
    .join(" ");

/** Step 5d: a phrase that only adds a part to what the last one said: "and a gland nut", "plus the plug". */

import { ROLE } from "../vocabulary/grammar.ts";
import { has } from "./chunks.ts";
import type { ClauseState } from "./clause-state.ts";
import { copyOnto } from "./copying.ts";
import { logNeeds } from "./needs.ts";
import type { Scene } from "./scene.ts";

/** The parts wanted, or worn, or done as well; the index to go on from. */
export function readGoingOn(scene: Scene, state: ClauseState, at: number): number | undefined {
  const lead = scene.at(at);
  if (!lead || scene.drafts.length > 0 || !(has(lead, ROLE.and) || lead.text === "also")) return undefined;
  if (scene.chunks.slice(0, at).some((one) => one.used || !one.senses.plain)) return undefined;
  const from = scene.at(at + 1)?.text === "also" ? at + 2 : at + 1;
  const added = scene.nouns(from, "object");
  if (!added?.nouns.every((one) => one.part && !one.fresh)) return undefined;
  const behind = scene.chunks.slice(added.end);
  if (behind.some((one) => !(has(one, ROLE.too) || /^(?:please|then)$/.test(one.text)))) return undefined;
  const last = scene.carry.last.at(-1)?.type;
  if (last === "need") return logNeeds(scene, state, at, scene.chunks.length, added.nouns);
  // "and the bonnet bolts" may as well begin what is said of them next
  const sure = behind.length > 0 || /also|plus/.test(`${lead.text} ${scene.at(at + 1)?.text}`);
  return sure && (last === "work" || last === "finding") ? copyOnto(scene, state, from) : undefined;
}

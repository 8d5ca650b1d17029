/** Step 5: what stands right behind a verb or a part. */

import { ROLE } from "../vocabulary/grammar.ts";
import { has, range } from "./chunks.ts";
import type { Scene } from "./scene.ts";

const WEATHER = /^(?:cold|heat|hot|sun|rain|snow|weather|ice|wind|water)$/;

/** "a leak in the gasket on his truck": the part is of something else. */
export function talkBehind(scene: Scene, to: number): boolean {
  for (let at = to; at < to + 5; at += 1) {
    const chunk = scene.at(at);
    if (!chunk) return false;
    // "stiff from the cold": what made it so
    if (chunk.talk && WEATHER.test(chunk.text) && range(to, at).some((back) => scene.at(back)?.text === "from"))
      return false;
    // "two bad discs in his back": somebody's, and no valve's
    const his = /^(?:my|his|her|your|their)$/.test(chunk.text) && has(scene.at(at - 1), ROLE.prep) && at > to;
    const owned = scene.at(at + 1);
    // "came apart in my hand"
    if (his && /^(?:hands?|fingers?)$/.test(owned?.text ?? "")) return false;
    if (his && owned && !owned.senses.part && !has(owned, ROLE.and) && !has(owned, ROLE.but) && !has(owned, ROLE.prep))
      return true;
    if (chunk.talk)
      return [1, 2, 3].some(
        (back) => at - back >= to && (has(scene.at(at - back), ROLE.prep) || has(scene.at(at - back), ROLE.det)),
      );
    // "plugs for the jalopy": whatever it is for, it is none of the valve's
    if (chunk.unknown && at - 2 >= to && scene.at(at - 2)?.text === "for" && has(scene.at(at - 1), ROLE.det))
      return true;
    // "loose behind the wheel of that truck": a strange thing, and whose it is
    if (chunk.unknown && /^of\b/.test(scene.at(at + 1)?.text ?? "") && [2, 3].some((one) => scene.at(at + one)?.talk))
      return true;
    if (/^(?:good|old|bad|new|nice|big|little)$/.test(chunk.text)) continue;
    if (chunk.senses.part || chunk.senses.condition || chunk.senses.work) return false;
  }
  return false;
}

/** "a crack in the windshield", "leaking in my tent": found on a thing that the log has no name for. */
export function strangeBehind(scene: Scene, to: number): boolean {
  const prep = scene.at(to);
  if (!has(prep, ROLE.prep) || has(prep, ROLE.and)) return false;
  let at = to + 1;
  const whose = OWNER.test(scene.at(at)?.text ?? "");
  while (has(scene.at(at), ROLE.det) || OWNER.test(scene.at(at)?.text ?? "")) at += 1;
  const thing = scene.at(at);
  if (at === to + 1 && !/\bthe$/.test(prep?.text ?? "")) return false;
  return thing?.talk === true || (whose && thing?.unknown === true);
}

const OWNER = /^(?:my|his|her|your|their|our)$/;

/** "the bolts on my deck": somebody's, and no valve's. */
export const onTheirs = (scene: Scene, to: number): boolean =>
  OWNER.test(scene.at(to + 1)?.text ?? "") && scene.at(to + 2)?.senses.part === undefined && strangeBehind(scene, to);

/** Whether a verb has something to act on right behind it: "cleaned out the cage". */
export function objectAhead(scene: Scene, at: number): boolean {
  let next = at + 1;
  while (scene.at(next) && isParticle(scene, next)) next += 1;
  return scene.noun(next)?.part !== undefined || has(scene.at(next), ROLE.it) || has(scene.at(next), ROLE.det);
}

/** "out", "up on", "good": a small word that goes with a verb. */
export const isParticle = (scene: Scene, at: number): boolean => {
  const chunk = scene.at(at);
  return (
    chunk !== undefined &&
    /^(?:out|up|off|down|back|in|on|over|around|away|apart|real|good|well|really|on the|up on|out of)$/.test(
      chunk.text,
    ) &&
    !has(chunk, ROLE.and) &&
    !chunk.senses.unit
  );
};

/** "scored plug, bent stem, cracked yoke": each condition before its part, to the last. */
export function listedBefore(scene: Scene, from: number): boolean {
  let at = from;
  while (has(scene.at(at), ROLE.and)) at += 1;
  return isFault(scene, at) && partBehind(scene, at) !== undefined;
}

/** "stem is bent, scored plug": a condition before a part of which nothing else is said. */
export function standsBefore(scene: Scene, at: number): boolean {
  const to = isFault(scene, at) ? partBehind(scene, at) : undefined;
  if (to === undefined) return false;
  const next = scene.at(to)?.senses;
  // "scored plug replaced" may be said of the plug, "scored plug, swapped both" is not
  const worked = next?.work?.some((one) => !one.with) && !objectAhead(scene, to);
  return !worked && !(next?.verdict && !next.condition);
}

const isFault = (scene: Scene, at: number): boolean =>
  scene.at(at)?.senses.condition?.some((one) => one.form === "is" && one.code !== "ok") ?? false;

/** One past the bare part behind, where nothing is said of it, or it opens a list of such. */
function partBehind(scene: Scene, at: number): number | undefined {
  const noun = scene.noun(at + 1);
  if (!noun?.part || noun.det || noun.from !== at + 1 || noun.fresh) return undefined;
  // "bent stem, that's the whole story"
  const told = has(scene.at(noun.to), ROLE.it);
  return told || !scene.predicateFollows(noun.to) || listedBefore(scene, noun.to) ? noun.to : undefined;
}

/** Whether what stands here is no order but a substance: "grease was put on". */
export const isPutOn = (scene: Scene, at: number): boolean =>
  /^(?:has been|have been|had been|was|were|got|is|gets)$/.test(scene.at(at + 1)?.text ?? "") &&
  scene.at(at + 2)?.senses.placing !== undefined &&
  scene.at(at)?.senses.work?.some((one) => one.form === "noun") === true;

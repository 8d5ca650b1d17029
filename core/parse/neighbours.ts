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
    if (chunk.talk)
      return [1, 2, 3].some(
        (back) => at - back >= to && (has(scene.at(at - back), ROLE.prep) || has(scene.at(at - back), ROLE.det)),
      );
    if (/^(?:good|old|bad|new|nice|big|little)$/.test(chunk.text)) continue;
    if (chunk.senses.part || chunk.senses.condition || chunk.senses.work) return false;
  }
  return false;
}

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

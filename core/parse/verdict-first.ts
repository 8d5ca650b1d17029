/** Step 5a: the verdict first, then its part. */

import { ROLE } from "../vocabulary/grammar.ts";
import { has } from "./chunks.ts";
import type { Noun } from "./noun.ts";
import type { Scene } from "./scene.ts";

/** "no damage, upper housing, no damage, lower housing": the same shape once more. */
export function saysAgain(scene: Scene, from: number): boolean {
  let at = from;
  if (has(scene.at(at), ROLE.not)) at += 1;
  if (!scene.at(at)?.senses.condition) return false;
  at += 1;
  while (has(scene.at(at), ROLE.prep) || has(scene.at(at), ROLE.det)) at += 1;
  return scene.noun(at)?.part !== undefined;
}

/** "torn at the center, that lower diaphragm": the part said last, with nothing more said of it. */
export function verdictFirst(scene: Scene, from: number): { nouns: Noun[]; end: number } | undefined {
  let at = from;
  while (
    scene.isPlain(at) &&
    !has(scene.at(at), ROLE.det) &&
    !has(scene.at(at), ROLE.it) &&
    !has(scene.at(at), ROLE.is) &&
    !has(scene.at(at), ROLE.and) &&
    at < from + 2
  )
    at += 1;
  if (scene.chunks.slice(0, from).some((one) => one.talk)) return undefined;
  const behind = scene.nouns(at, "object");
  if (
    !behind?.nouns[0]?.part ||
    behind.nouns.some((one) => one.fresh) ||
    (scene.predicateFollows(behind.end) && !saysAgain(scene, behind.end))
  )
    return undefined;
  if (
    scene.at(behind.end)?.senses.work ||
    scene.at(behind.end)?.senses.placing ||
    scene.at(behind.end)?.unknown ||
    scene.at(behind.end)?.number
  )
    return undefined;
  return behind;
}

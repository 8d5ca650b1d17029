/** Step 4a: a pressure said of the stroke, of what is under the seat, or of the line. */

import { ROLE } from "../vocabulary/grammar.ts";
import { has } from "./chunks.ts";
import type { Measure } from "./measure.ts";
import type { Scene } from "./scene.ts";

/** "cracks open at four psi", "starts moving at five pounds": the signal at which it moves. */
export function movesAt(scene: Scene, measure: Measure): boolean {
  let at = measure.from - 1;
  if (scene.chunks[at]?.senses.bound) at -= 1;
  // "nine psi to start moving"
  if (
    /^to (?:start|begin|crack|lift|unseat)\b/.test(
      scene.chunks
        .slice(measure.to, measure.to + 3)
        .map((one) => one.text)
        .join(" "),
    )
  )
    return true;
  // "takes twenty pounds to get it moving"
  if (/^(?:takes|took|taking|needs|needed|need)$/.test(scene.chunks[at]?.text ?? ""))
    return /^to (?:get (?:it|her) (?:moving|to move|off|open|going)|open|move|crack|lift|start|stroke|unseat|budge)/.test(
      scene.chunks
        .slice(measure.to, measure.to + 4)
        .map((one) => one.text)
        .join(" "),
    );
  if (!/^(?:at|by|till|until|around|with)$/.test(scene.chunks[at]?.text ?? "")) return false;
  return MOVES.test(
    scene.chunks
      .slice(Math.max(0, at - 3), at)
      .map((one) => one.text)
      .join(" "),
  );
}

const MOVES =
  /\b(?:opens|open|opened|closes|closed|shuts|lifts|lifted|lifting|starts moving|starts to move|started moving|started to move|begins to move|cracks|seats|off (?:the|its) seat|off seat)$/;

/** "fifty psi under the seat", "put sixty on the seat". */
export const underSeat = (scene: Scene, measure: Measure): boolean =>
  /^(?:under|below|behind|on)/.test(scene.chunks[measure.to]?.text ?? "") &&
  /^(?:seat|plug)$/.test(scene.noun(measure.to + 1)?.part ?? "");

/** "thirty pounds on the actuator": where the part stands that the air is on. */
export function airOn(scene: Scene, measure: Measure): number | undefined {
  const part = /^(?:on|to|in)\b/.test(scene.chunks[measure.to]?.text ?? "") ? scene.noun(measure.to + 1) : undefined;
  return /^(?:actuator|diaphragm|upper_diaphragm|housing)$/.test(part?.part ?? "") ? part?.core : undefined;
}

/** "on the line", "on the header". */
const onLine = (scene: Scene, from: number): boolean =>
  /^(?:line|header|separator|system)$/.test(
    scene.chunks[has(scene.chunks[from], ROLE.det) ? from + 1 : from]?.text ?? "",
  );

export const onIt = (scene: Scene, measure: Measure) => {
  const next = scene.chunks[measure.to];
  return (
    has(next, ROLE.prep) &&
    /^(?:on|behind|to)/.test(next?.text ?? "") &&
    (has(scene.chunks[measure.to + 1], ROLE.it) ||
      onLine(scene, measure.to + 1) ||
      scene.chunks[measure.to + 1]?.senses.part !== undefined)
  );
};

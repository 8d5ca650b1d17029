/** Step 4a: a number that says once more what was measured before: of the next joint, of the other way, as it is now. */

import type { Quantity, Unit } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { STROKES_TO } from "../vocabulary/tests.ts";
import { has } from "./chunks.ts";
import { BOLTED, isPressureWord, type Measure, TORQUES } from "./measure.ts";
import type { Scene } from "./scene.ts";

/** The unit of a bare number behind a word for what it is of; none where the word does not settle it. */
export function unitOfBare(quantity: Quantity): Measure["unit"] {
  if (quantity === "torque") return "ft_lbf";
  if (quantity === "temperature") return "degF";
  if (quantity === "length" || quantity === "travel") return "in";
  return isPressureWord(quantity) ? "psi" : undefined;
}

/** "closes in three seconds, opens in five": the same unit once more. */
export function durationAgain({ chunks }: Scene, at: number): Measure | undefined {
  const number = chunks[at]?.number;
  const way = chunks[at - 1]?.text === "in" && MOVING.test(chunks[at - 2]?.text ?? "");
  // "ten seconds to open and eight to close"
  const aim = chunks[at + 1]?.text === "to" && STROKES_TO.test(chunks[at + 2]?.text ?? "");
  if (!number || !(way || aim)) return undefined;
  const unit = chunks.slice(0, at - 1).findLast((one) => one.senses.unit)?.senses.unit;
  if (unit !== "s" && unit !== "min") return undefined;
  return { from: at, to: at + 1, value: number.value, upper: number.upper, unit, quantity: "duration" };
}

/** "opened at five pounds and was full open at fourteen": the signal at which it is. */
export function signalAgain({ chunks }: Scene, at: number): Measure | undefined {
  const number = chunks[at]?.number;
  if (!number || chunks[at - 1]?.text !== "at" || number.fraction) return undefined;
  if (!/^(?:full|full open|wide open|open|closed|shut|seated|fully open)$/.test(chunks[at - 2]?.text ?? ""))
    return undefined;
  const pressed = chunks
    .slice(0, at - 2)
    .findLastIndex((one) => one.senses.unit === "pound" || one.senses.unit === "psi");
  if (pressed < 0 || !/^(?:at|to)$/.test(chunks[pressed - 2]?.text ?? "")) return undefined;
  return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "psi", quantity: "signal_pressure" };
}

const MOVING = /^(?:opens?|opened|closes?|closed|shuts?|strokes?|stroked)$/;

/** "forty two foot pounds on the body bolts, thirty on the bonnet": the same unit once more. */
export function torqueAgain(scene: Scene, at: number): Measure | undefined {
  const number = scene.chunks[at]?.number;
  if (!number || !/^on/.test(scene.chunks[at + 1]?.text ?? "") || !scene.noun(at + 2)?.part) return undefined;
  const unit = scene.chunks.slice(0, at).findLast((one) => TORQUES.has(one.senses.unit ?? ""))?.senses.unit;
  if (!unit) return undefined;
  return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: unit as Unit, quantity: "torque" };
}

/** "bonnet bolts at forty", then "body's at thirty": the torque of one joint more. */
export function jointAlike(scene: Scene, at: number): Measure | undefined {
  const { chunks } = scene;
  const number = chunks[at]?.number;
  const next = chunks[at + 1];
  if (!number || number.fraction || number.value < 5) return undefined;
  if (next && !has(next, ROLE.and) && !has(next, ROLE.but)) return undefined;
  const led = /^(?:at|to)$/.test(chunks[at - 1]?.text ?? "");
  let back = led ? at - 2 : at - 1;
  while (has(chunks[back], ROLE.is)) back -= 1;
  // "bonnet bolts at thirty five, packing nut fifteen"
  const part = chunks[back]?.senses.part ?? "";
  const alone = BOLTED.test(part) && chunks.slice(0, back).some((one) => BOLTED.test(one.senses.part ?? ""));
  if (led ? !JOINTS.test(part) : !alone) return undefined;
  const unit = torqueUnitBefore(scene, back);
  return unit && { from: at, to: at + 1, value: number.value, upper: number.upper, unit, quantity: "torque" };
}

/** The unit of the torque said last, here or in the phrase before; none where another quantity was said since. */
function torqueUnitBefore(scene: Scene, at: number): Measure["unit"] | undefined {
  const said = scene.chunks.slice(0, at).findLast((one) => one.senses.quantity || one.senses.unit);
  if (said)
    return TORQUES.has(said.senses.unit ?? "")
      ? (said.senses.unit as Unit)
      : said.senses.quantity === "torque"
        ? "ft_lbf"
        : undefined;
  // "body bolts at sixty, packing nut fifteen"
  const joined = scene.chunks.findIndex((one, nth) => nth < at && BOLTED.test(one.senses.part ?? ""));
  if (
    joined >= 0 &&
    scene.chunks.slice(joined, at).some((one, nth, all) => one.number && /^(?:at|to)$/.test(all[nth - 1]?.text ?? ""))
  )
    return "ft_lbf";
  const last = scene.carry.last.findLast((entry) => entry.type === "reading");
  return last?.type === "reading" && last.quantity === "torque" ? last.unit : undefined;
}

const JOINTS = /^(?:bonnet|body|flange|yoke|packing|housing|upper_housing|lower_housing|stem_connector)$/;

const RAISED =
  /^(?:bumped|raised|upped|cranked|dialed|dialled|turned|lowered|dropped|backed|set|reset|brought|adjusted)$/;

/** "supply was at eighteen, bumped it up to twenty": the same quantity, as it is now. */
export function raisedTo(scene: Scene, at: number): Measure | undefined {
  const { chunks } = scene;
  const number = chunks[at]?.number;
  if (!number || !/^(?:to|at)$/.test(chunks[at - 1]?.text ?? "")) return undefined;
  let back = at - 2;
  while (/^(?:up|down|back|back up|back down)$/.test(chunks[back]?.text ?? "")) back -= 1;
  if (!has(chunks[back], ROLE.it) || !RAISED.test(chunks[back - 1]?.text ?? "")) return undefined;
  for (let before = back - 2; before >= 0; before -= 1) {
    const quantity = chunks[before]?.senses.quantity;
    const unit = quantity && unitOfBare(quantity);
    if (unit) return { from: at, to: at + 1, value: number.value, upper: number.upper, unit, quantity };
  }
  const before = scene.carry.last.findLast((entry) => entry.type === "reading");
  if (before?.type === "reading" && isPressureWord(before.quantity))
    return {
      from: at,
      to: at + 1,
      value: number.value,
      upper: number.upper,
      unit: before.unit,
      quantity: before.quantity,
    };
  // "regulator's creeping, set it back to thirty"
  const [it] = [
    ...chunks.slice(0, back).flatMap((one) => one.senses.part ?? []),
    ...scene.carry.parts.map((one) => one.part),
  ].slice(-1);
  if (it === "regulator")
    return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "psi", quantity: "supply_pressure" };
  return undefined;
}

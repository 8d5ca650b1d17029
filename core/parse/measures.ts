/** Step 4a: every measure of a phrase: numbers with units, and bare numbers that their words settle. */

import type { Quantity } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { spellings } from "../vocabulary/notation.ts";
import { bare, pressedTo, TESTED } from "./bare-numbers.ts";
import { has } from "./chunks.ts";
import { isPressure, isRate, type Measure } from "./measure.ts";
import type { Scene } from "./scene.ts";

/** "signal at nine psi", "torqued to twenty six": every measure, from left to right. */
export function findMeasures(scene: Scene): Measure[] {
  const { chunks } = scene;
  const measures: Measure[] = [];
  for (let at = 0; at < chunks.length; at += 1) {
    const chunk = chunks[at];
    const half = inchAndHalf(scene, at) ?? oneEachMinute(scene, at);
    if (half) {
      measures.push(half);
      at = half.to - 1;
      continue;
    }
    if (!chunk?.number || chunk.used) continue;
    // what was said by mistake comes to nothing, and back as unread
    if (isSlip(scene, at)) continue;
    const measure = withUnit(scene, at) ?? bare(scene, at) ?? pressedTo(scene, at);
    if (!measure) continue;
    const bound = boundAt(scene, measure);
    if (bound !== undefined) Object.assign(measure, { bound: chunks[bound]?.senses.bound, boundAt: bound });
    // "tested 50 psi": the deed says no more than the test does
    if (measure.lead === undefined && TESTED.test(chunks[measure.from - 1]?.text ?? "") && isPressed(measure))
      measure.lead = measure.from - 1;
    measures.push(measure);
    at = measure.to - 1;
  }
  return measures;
}

const isPressed = ({ unit }: Measure) => unit === "pound" || isPressure(unit);

/** "bolts at thirty, no, thirty five foot pounds": the number before the "no" was a slip of the tongue. */
const isSlip = (scene: Scene, at: number): boolean =>
  /^(?:no|nope|er|uh|um|wait|no wait)$/.test(scene.chunks[at + 1]?.text ?? "") &&
  scene.chunks[at + 2]?.number !== undefined;

/** "inch and a half", "an inch": the one is not said. */
export const INCH = spellings("[(an|full) ]inch");

/** "inch and a half". */
function inchAndHalf(scene: Scene, at: number): Measure | undefined {
  const [inch, and, fraction] = scene.chunks.slice(at, at + 3);
  // "a full inch of travel"
  if (inch?.text === "full" && and?.senses.unit === "in" && /^inch/.test(and.text))
    return { from: at, to: at + 2, value: 1, unit: "in" };
  if (!inch || !INCH.has(inch.text) || and?.text !== "and" || !fraction?.number?.fraction || fraction.number.value >= 1)
    return undefined;
  return { from: at, to: at + 3, value: 1 + fraction.number.value, unit: "in" };
}

/** "a drop a minute": one of them. */
function oneEachMinute({ chunks }: Scene, at: number): Measure | undefined {
  const unit = chunks[at + 1]?.senses.unit;
  if (!isRate(unit) || !/^an?$/.test(chunks[at]?.text ?? "")) return undefined;
  const measure: Measure = { from: at, to: at + 2, value: 1, unit: unit as Measure["unit"] };
  const bound = chunks[at - 1]?.senses.bound;
  return bound ? { ...measure, bound } : measure;
}

function withUnit(scene: Scene, at: number): Measure | undefined {
  const { chunks } = scene;
  const number = chunks[at]?.number;
  if (!number) return undefined;
  let unitAt = at + 1;
  // "thirty to thirty five foot pounds" is read as one number already; "a couple of seconds" has a word between
  if (chunks[unitAt]?.text === "of" || chunks[unitAt]?.text === "and a half") unitAt += 1;
  // "half a minute"
  if (number.fraction && chunks[unitAt]?.text === "a" && /^half$/.test(chunks[at]?.text ?? "")) unitAt += 1;
  const unit = chunks[unitAt]?.senses.unit;
  if (!unit) return undefined;
  const text = chunks[unitAt]?.text ?? "";
  const after = chunks[unitAt + 1];
  // "one eighty F", but "two F C V" begins a tag
  if (/^[cf]$/.test(text) && (number.value < 20 || after?.text.length === 1)) return undefined;
  if (text === "in" && (chunks[at - 1]?.senses.placing || chunks[at - 1]?.senses.work)) return undefined;
  // "put four in", "got 3 in there": a unit only where it is written as one
  if (
    text === "in" &&
    (!/^[\d./]/.test(chunks[at]?.text ?? "") ||
      after?.number ||
      has(after, ROLE.det) ||
      has(after, ROLE.it) ||
      after?.text === "there")
  )
    return undefined;
  if (text === "bar" && number.value < 0.05) return undefined;
  const half =
    chunks[unitAt + 1]?.text === "and" &&
    chunks[unitAt + 2]?.number?.value === 0.5 &&
    chunks[unitAt + 2]?.text === "a half"
      ? 0.5
      : 0;
  let end = unitAt + (half ? 3 : 1);
  if (unit === "thou")
    return {
      from: at,
      to: end,
      value: Number((number.value / 1000).toPrecision(12)),
      upper: number.upper === undefined ? undefined : number.upper / 1000,
      unit: "in",
    };
  if (text === "percent" && chunks[end]?.text === "open") end += 1;
  const of = /\bof (supply|signal)$/.exec(text)?.[1];
  const quantity = of && (`${of}_pressure` as Quantity);
  const below =
    /^(?:minus|negative)$/.test(chunks[at - 1]?.text ?? "") &&
    (unit === "degree" || unit === "degF" || unit === "degC");
  if (below) return { from: at - 1, to: end, value: -number.value, unit };
  return {
    from: at,
    to: end,
    value: number.value + half,
    upper: number.upper,
    unit,
    ...(quantity ? { quantity } : {}),
  };
}

/** Bounds said behind their number: "ninety psi or so", "thirty pounds or better". */
const BEHIND = /^(?:or |give or take|tops)/;

/** The chunk that says how near the number is meant: "about", "at least", "or so". */
function boundAt(scene: Scene, measure: Measure): number | undefined {
  for (let back = measure.from - 1; back >= 0 && back >= measure.from - 2; back -= 1) {
    const chunk = scene.chunks[back];
    if (!chunk) break;
    // "over a three minute period": how long it went on, and no less than that
    if (chunk.text === "over" && scene.chunks[back + 1]?.text === "a") return undefined;
    if (chunk.senses.bound) return back;
    if (!(chunk.text === "at" || chunk.text === "to" || chunk.text === "a" || chunk.senses.plain)) break;
  }
  // "max upstream ninety psi": before the word that says of what
  const said = scene.chunks[measure.from - 1]?.senses.quantity ? scene.chunks[measure.from - 2] : undefined;
  if (/^(?:max|maximum|min|minimum)$/.test(said?.text ?? "") && said?.senses.bound) return measure.from - 2;
  const after = scene.chunks[measure.to];
  const behind = after?.senses.bound && (BEHIND.test(after.text) || !scene.chunks[measure.to + 1]);
  return behind ? measure.to : undefined;
}

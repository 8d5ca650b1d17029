/** Step 4a: numbers with units, and bare numbers behind a word that says what they are of. */

import type { Quantity, Unit } from "../shapes/codes.ts";
import type { Reading } from "../shapes/entry.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { wordTable } from "../vocabulary/notation.ts";
import { type Chunk, has } from "./chunks.ts";
import type { Noun } from "./noun.ts";
import type { Scene } from "./scene.ts";

/** A number with its unit, "twenty eight foot pounds": chunks [from, to). */
export interface Measure {
  from: number;
  to: number;
  value: number;
  upper?: number;
  unit?: Unit | "pound" | "degree";
  bound?: Reading["bound"];
  quantity?: Quantity;
  /** the chunk that says what it is of */
  word?: number;
  /** a chunk that leads up to it and says no more than it does: "tested" at sixty, "leaking" three cc a minute */
  lead?: number;
  /** index of the noun it is said of */
  noun?: Noun;
}

export const PRESSURES = new Set<string>(["psi", "kPa", "bar", "in_H2O"]);

export const TORQUES = new Set<string>(["ft_lbf", "in_lbf", "N_m"]);

export const RATES = new Set<string>(["bubble/min", "drop/min", "mL/min"]);

export const BOLTED = /bolting|nut|threads|bolt/;

export const isPressure = (unit: string | undefined) => unit !== undefined && PRESSURES.has(unit);

export const isRate = (unit: string | undefined) => unit !== undefined && RATES.has(unit);

export const isPressureWord = (quantity: Quantity | undefined) => quantity?.endsWith("pressure") ?? false;

/** "signal at nine psi", "torqued to twenty six": every measure, from left to right. */
export function findMeasures(scene: Scene): Measure[] {
  const { chunks } = scene;
  const measures: Measure[] = [];
  for (let at = 0; at < chunks.length; at += 1) {
    const chunk = chunks[at];
    const half = inchAndHalf(scene, at);
    if (half) {
      measures.push(half);
      at = half.to - 1;
      continue;
    }
    if (!chunk?.number || chunk.used) continue;
    const measure = withUnit(scene, at) ?? bare(scene, at) ?? pressedTo(scene, at);
    if (!measure) continue;
    measure.bound = boundOf(scene, measure);
    measures.push(measure);
    at = measure.to - 1;
  }
  return measures;
}

/** "inch and a half", "an inch": the one is not said. */
export const INCH = /^(?:an |full )?inch$/;

/** "inch and a half". */
function inchAndHalf(scene: Scene, at: number): Measure | undefined {
  const [inch, and, fraction] = scene.chunks.slice(at, at + 3);
  // "a full inch of travel"
  if (inch?.text === "full" && and?.senses.unit === "in" && /^inch/.test(and.text))
    return { from: at, to: at + 2, value: 1, unit: "in" };
  if (
    !inch ||
    !INCH.test(inch.text) ||
    and?.text !== "and" ||
    !fraction?.number?.fraction ||
    fraction.number.value >= 1
  )
    return undefined;
  return { from: at, to: at + 3, value: 1 + fraction.number.value, unit: "in" };
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
  if (text === "f" && (number.value < 20 || after?.text.length === 1)) return undefined;
  if (text === "in" && (chunks[at - 1]?.senses.placing || chunks[at - 1]?.senses.work)) return undefined;
  // "put four in", "got 3 in there": a unit only where it is written as one
  if (
    text === "in" &&
    (!/^[\d./]/.test(chunks[at]?.text ?? "") || has(after, ROLE.det) || has(after, ROLE.it) || after?.text === "there")
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
  return {
    from: at,
    to: end,
    value: number.value + half,
    upper: number.upper,
    unit,
    ...(quantity ? { quantity } : {}),
  };
}

/** The unit of a bare number behind a word for what it is of; none where the word does not settle it. */
function unitOfBare(quantity: Quantity): Measure["unit"] {
  if (quantity === "torque") return "ft_lbf";
  if (quantity === "length" || quantity === "travel") return "in";
  return isPressureWord(quantity) ? "psi" : undefined;
}

/** "torqued to twenty six", "signal's at nine", "bonnet bolts at thirty". */
function bare(scene: Scene, at: number): Measure | undefined {
  const { chunks } = scene;
  const number = chunks[at]?.number;
  if (!number || number.bareOne) return undefined;
  const next = chunks[at + 1];
  if (next && ROUNDS.test(next.text)) return undefined;
  if (
    next &&
    (next.senses.part ||
      (next.senses.unit && !(next.text === "in" && has(chunks[at + 2], ROLE.det))) ||
      (has(next, ROLE.prep) && next.text.startsWith("of")) ||
      has(next, ROLE.one) ||
      has(next, ROLE.fresh))
  )
    return undefined;
  // an unknown noun is what is counted, an unknown deed ("bumped it up") is not
  if ((next?.unknown && !next.text.endsWith("ed")) || scene.noun(at)?.part) return undefined;
  let sawJoint = false;
  let sawSet = false;
  const alike = torqueAgain(scene, at);
  if (alike) return alike;
  const raised = raisedTo(scene, at);
  if (raised) return raised;
  const told = saidBehind(scene, at);
  if (told) return told;
  for (let back = at - 1; back >= 0 && back >= at - 7; back -= 1) {
    const chunk = chunks[back];
    if (!chunk) break;
    // "torqued in three passes to thirty"
    if (ROUNDS.test(chunk.text) && chunks[back - 1]?.number) {
      back -= 1;
      continue;
    }
    const spoken =
      (chunk.senses.part === "gauge" ? gaugeOf(chunk.text) : chunk.senses.quantity) ??
      (sawSet && chunk.senses.part === "regulator" ? "supply_pressure" : undefined);
    const unit = spoken && unitOfBare(spoken);
    const lead = chunks.findIndex((one, index) => index > back && index < at && /^check/.test(one.text));
    if (unit)
      return {
        from: at,
        to: at + 1,
        value: number.value,
        upper: number.upper,
        unit,
        quantity: spoken,
        lead: lead < 0 ? (chunk.senses.part === "gauge" ? back : undefined) : lead,
      };
    if (sawJoint && tightens(chunk))
      return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "ft_lbf", quantity: "torque" };
    if (/^set/.test(chunk.text)) sawSet = true;
    if (chunk.text === "at" || chunk.text === "to" || chunk.senses.placing || chunk.text === "got") sawJoint = true;
    const part = chunk.senses.part;
    // "tightened the stem connector to forty"
    let verb = back - 1;
    while (has(chunks[verb], ROLE.det)) verb -= 1;
    if (
      part &&
      chunks[at - 1]?.text === "to" &&
      chunks[verb] &&
      (tightens(chunks[verb] as Chunk) || chunks[verb]?.senses.quantity === "torque")
    )
      return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "ft_lbf", quantity: "torque" };
    if (part && BOLTED.test(part))
      return sawJoint || isTorqueVerb(chunks, back)
        ? { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "ft_lbf", quantity: "torque" }
        : undefined;
    const passable =
      /^(?:running|sitting|reading|set|setting|holding|pull|pulled|checks out|checked out)$/.test(chunk.text) ||
      has(chunk, ROLE.is) ||
      has(chunk, ROLE.prep) ||
      chunk.senses.bound ||
      chunk.senses.plain ||
      has(chunk, ROLE.it) ||
      has(chunk, ROLE.det) ||
      has(chunk, ROLE.has);
    if (!passable) return undefined;
  }
  return undefined;
}

/** "forty two foot pounds on the body bolts, thirty on the bonnet": the same unit once more. */
function torqueAgain(scene: Scene, at: number): Measure | undefined {
  const number = scene.chunks[at]?.number;
  if (!number || !/^on/.test(scene.chunks[at + 1]?.text ?? "") || !scene.noun(at + 2)?.part) return undefined;
  const unit = scene.chunks.slice(0, at).findLast((one) => TORQUES.has(one.senses.unit ?? ""))?.senses.unit;
  if (!unit) return undefined;
  return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: unit as Unit, quantity: "torque" };
}

/** "six hundred upstream", "three to fifteen signal": what it is stands right behind, and no other number behind that. */
function saidBehind(scene: Scene, at: number): Measure | undefined {
  const [number, word, next] = scene.chunks.slice(at, at + 3);
  const quantity = word?.senses.quantity;
  if (!number?.number || !quantity || next?.number || has(next, ROLE.is) || has(next, ROLE.prep)) return undefined;
  const before = scene.chunks[at - 1]?.senses.quantity;
  if (before && isPressureWord(before) && isPressureWord(quantity)) return undefined;
  if (isPressureWord(quantity) && quantity !== "pressure" && number.number.value >= 2)
    return {
      from: at,
      to: at + 1,
      value: number.number.value,
      upper: number.number.upper,
      unit: "psi",
      quantity,
      lead: at + 1,
    };
  // "seven eighths travel"
  if (quantity === "travel" && number.number.fraction)
    return {
      from: at,
      to: at + 1,
      value: number.number.value,
      upper: number.number.upper,
      unit: "in",
      quantity,
      lead: at + 1,
    };
  return undefined;
}

/** "torque bonnet bolts thirty". */
function isTorqueVerb(chunks: readonly Chunk[], part: number): boolean {
  let at = part - 1;
  while (has(chunks[at], ROLE.det)) at -= 1;
  return chunks[at]?.senses.quantity === "torque";
}

const ROUNDS = /^(?:pass|passes|steps?|stages?|rounds?)$/;
const RAISED =
  /^(?:bumped|raised|upped|cranked|dialed|dialled|turned|lowered|dropped|backed|set|reset|brought|adjusted)$/;

/** "supply was at eighteen, bumped it up to twenty": the same quantity, as it is now. */
function raisedTo(scene: Scene, at: number): Measure | undefined {
  const { chunks } = scene;
  const number = chunks[at]?.number;
  if (!number || chunks[at - 1]?.text !== "to") return undefined;
  let back = at - 2;
  while (/^(?:up|down|back|back up|back down)$/.test(chunks[back]?.text ?? "")) back -= 1;
  if (!has(chunks[back], ROLE.it) || !RAISED.test(chunks[back - 1]?.text ?? "")) return undefined;
  for (let before = back - 2; before >= 0; before -= 1) {
    const quantity = chunks[before]?.senses.quantity;
    const unit = quantity && unitOfBare(quantity);
    if (unit) return { from: at, to: at + 1, value: number.value, upper: number.upper, unit, quantity };
  }
  return undefined;
}

/** "tightened them to sixty", but "snugged up" and the like measure nothing. */
const tightens = (chunk: Chunk): boolean =>
  /^tighten/.test(chunk.text) && (chunk.senses.work?.some((one) => one.code === "tightened") ?? false);

/** "tested it at a hundred and fifty", "bubble tight at sixty", "three cc a minute at fifty": psi, where a test says so. */
function pressedTo(scene: Scene, at: number): Measure | undefined {
  const { chunks } = scene;
  const number = chunks[at]?.number;
  // "with fifteen on the diaphragm"
  if (
    number &&
    !number.fraction &&
    number.value >= 2 &&
    chunks[at + 1]?.text === "on" &&
    /^(?:actuator|housing|diaphragm|upper_diaphragm)$/.test(scene.noun(at + 2)?.part ?? "")
  )
    return {
      from: at,
      to: at + 1,
      value: number.value,
      upper: number.upper,
      unit: "psi",
      quantity: "signal_pressure",
      lead: scene.noun(at + 2)?.core,
    };
  // "with a hundred on it"
  if (
    number &&
    !number.fraction &&
    number.value >= 5 &&
    chunks[at - 1]?.text === "with" &&
    chunks[at + 1]?.text === "on" &&
    has(chunks[at + 2], ROLE.it)
  )
    return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "psi" };
  // "holding two hundred"
  if (
    number &&
    !number.fraction &&
    number.value >= 10 &&
    /^(?:holding|held|holds)$/.test(chunks[at - 1]?.text ?? "") &&
    !chunks[at + 1]?.unknown &&
    !chunks[at + 1]?.talk &&
    !scene.noun(at)?.part
  )
    return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "psi" };
  if (!number || number.fraction || number.value < 1 || !/^(?:at|to)$/.test(chunks[at - 1]?.text ?? ""))
    return undefined;
  const measure: Measure = { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "psi" };
  const verdictAt = (index: number): boolean => {
    const { outcome, verdict } = chunks[index]?.senses ?? {};
    return outcome !== undefined
      ? outcome.test !== "stroke"
      : verdict !== undefined && LEAKS_OR_HOLDS.test(chunks[index]?.text ?? "");
  };
  let back = at - 2;
  while (has(chunks[back], ROLE.it) || chunks[back]?.senses.part === "valve" || chunks[back]?.text === "the") back -= 1;
  const before = chunks[back];
  if (before && TESTED.test(before.text)) return { ...measure, lead: back };
  if (before && (before.senses.test || isRate(before.senses.unit))) return measure;
  if (chunks[at - 1]?.text !== "at") return undefined;
  if (verdictAt(back)) return measure;
  // "at fifty it's leaking by"
  let next = at + 1;
  while (has(chunks[next], ROLE.it) || has(chunks[next], ROLE.is) || chunks[next]?.text === "and") next += 1;
  return verdictAt(next) ? measure : undefined;
}

/** "the supply gauge says thirty five": the gauge tells what it measures. */
export function gaugeOf(text: string): Quantity | undefined {
  const of = /^(?:the )?(supply|signal|upstream|downstream|inlet|outlet|output)\b/.exec(text)?.[1];
  return of === undefined ? undefined : GAUGES[of];
}

const GAUGES: Record<string, Quantity> = wordTable({
  supply: "supply_pressure",
  signal: "signal_pressure",
  output: "signal_pressure",
  upstream: "upstream_pressure",
  inlet: "upstream_pressure",
  downstream: "downstream_pressure",
  outlet: "downstream_pressure",
});

const TESTED = /^(?:test|tests|tested|testing|retested|pressure tested)$/;
const LEAKS_OR_HOLDS = /leak|hold|held|tight|bubble|drop|weep|seep/;

function boundOf(scene: Scene, measure: Measure): Reading["bound"] | undefined {
  for (let back = measure.from - 1; back >= 0 && back >= measure.from - 2; back -= 1) {
    const chunk = scene.chunks[back];
    if (!chunk) break;
    if (chunk.senses.bound) {
      chunk.used = true;
      return chunk.senses.bound;
    }
    if (!(chunk.text === "at" || chunk.text === "to" || chunk.text === "a" || chunk.senses.plain)) break;
  }
  const after = scene.chunks[measure.to];
  if (after && (after.text === "or so" || after.text === "give or take")) return "about";
  return undefined;
}

/** Step 4a: numbers said without a unit, where the words around them settle it. */

import type { Quantity } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { wordTable } from "../vocabulary/notation.ts";
import { bubblesAt } from "./bubbles.ts";
import { type Chunk, has } from "./chunks.ts";
import { BOLTED, gaugeOf, isPressureWord, isRate, type Measure } from "./measure.ts";
import { durationAgain, jointAlike, raisedTo, signalAgain, torqueAgain, unitOfBare } from "./measured-again.ts";
import type { Scene } from "./scene.ts";

/** "torqued to twenty six", "signal's at nine", "bonnet bolts at thirty". */
export function bare(scene: Scene, at: number): Measure | undefined {
  const { chunks } = scene;
  const number = chunks[at]?.number;
  if (!number || number.bareOne) return undefined;
  const next = chunks[at + 1];
  if (next && ROUNDS.test(next.text)) return undefined;
  const torqued = torquedTo(chunks, at);
  if (
    next &&
    ((next.senses.part && !torqued) ||
      (next.senses.unit &&
        !(next.text === "in" && (has(chunks[at + 2], ROLE.det) || !/^[\d./]/.test(chunks[at]?.text ?? "")))) ||
      (has(next, ROLE.prep) && next.text.startsWith("of")) ||
      has(next, ROLE.one) ||
      has(next, ROLE.fresh))
  )
    return undefined;
  // an unknown noun is what is counted, an unknown deed ("bumped it up") is not
  if ((next?.unknown && !next.text.endsWith("ed")) || (scene.noun(at)?.part && !torqued)) return undefined;
  let sawJoint = false;
  let sawSet = false;
  const alike = torqueAgain(scene, at) ?? jointAlike(scene, at) ?? durationAgain(scene, at) ?? signalAgain(scene, at);
  if (alike) return alike;
  const raised = raisedTo(scene, at);
  if (raised) return raised;
  if (pulledOn(scene, at))
    return {
      from: at,
      to: at + 1,
      value: number.value,
      upper: number.upper,
      unit: "ft_lbf",
      quantity: "torque",
      lead: at - 1,
    };
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
    const side = at - back <= 3 && /^at$/.test(chunks[at - 1]?.text ?? "") ? SIDES[chunk.text] : undefined;
    const spoken =
      side ??
      (chunk.senses.part === "gauge" ? gaugeOf(chunk.text) : chunk.senses.quantity) ??
      (sawSet && chunk.senses.part === "regulator" ? "supply_pressure" : undefined);
    // "line temp's one forty", but "temp's ninety five today" is the weather
    const weather = spoken === "temperature" && /^temp(?:erature)?$/.test(chunk.text) && !chunks[back - 1]?.senses.part;
    const unit = spoken && !weather ? unitOfBare(spoken) : undefined;
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
      /^(?:tracks|tracking|tracked|running|sitting|reading|set|setting|holding|pull|pulled|checks out|checked out)$/.test(
        chunk.text,
      ) ||
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

/** "bolts torqued to fifty five, packing nut's good": the number is the bolts', and counts no nuts. */
function torquedTo(chunks: readonly Chunk[], at: number): boolean {
  if (!/^(?:to|at)$/.test(chunks[at - 1]?.text ?? "")) return false;
  // "body bolts at sixty, bonnet bolts at thirty five"
  let joint = at - 2;
  while (has(chunks[joint], ROLE.is)) joint -= 1;
  if (BOLTED.test(chunks[joint]?.senses.part ?? "")) return true;
  for (let back = at - 2; back >= 0 && back >= at - 5; back -= 1) {
    if (chunks[back]?.senses.quantity === "torque") return true;
    if (chunks[back]?.number || has(chunks[back], ROLE.and)) return false;
  }
  return false;
}

/** "six hundred upstream", "three to fifteen signal": what it is stands right behind, and no other number behind that. */
function saidBehind(scene: Scene, at: number): Measure | undefined {
  // "nine on the signal"
  let of = at + 1;
  if (scene.chunks[of]?.text === "on") of += has(scene.chunks[of + 1], ROLE.det) ? 2 : 1;
  const number = scene.chunks[at];
  const word = scene.chunks[of];
  const next = scene.chunks[of + 1];
  const quantity = word?.senses.quantity;
  if (of > at + 1 && !(isPressureWord(quantity) && (!next || has(next, ROLE.and) || has(next, ROLE.it))))
    return undefined;
  if (!number?.number || !quantity || next?.number || has(next, ROLE.is) || has(next, ROLE.prep)) return undefined;
  const before = scene.chunks[at - 1]?.senses.quantity;
  // "thirty pounds supply, six to thirty signal": the word before has its number
  const had = scene.chunks[at - 2]?.senses.unit !== undefined || scene.chunks[at - 2]?.number !== undefined;
  if (before && !had && isPressureWord(before) && isPressureWord(quantity)) return undefined;
  if (isPressureWord(quantity) && quantity !== "pressure" && number.number.value >= 2)
    return {
      from: at,
      to: at + 1,
      value: number.number.value,
      upper: number.number.upper,
      unit: "psi",
      quantity,
      lead: of,
    };
  // "seven eighths travel", "four and five eighths long"
  const long = /^(?:long|thick|wide|deep|across)$/.test(word.text);
  if (long && !Number.isInteger(number.number.value) && number.number.upper === undefined)
    return { from: at, to: at + 1, value: number.number.value, unit: "in", quantity: "length", lead: at + 1 };
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

/** "pulled forty on em": with a wrench, and nothing was pulled off. */
function pulledOn(scene: Scene, at: number): boolean {
  const { chunks } = scene;
  if (!/^(?:pulled|pull)$/.test(chunks[at - 1]?.text ?? "") || (chunks[at]?.number?.value ?? 0) < 10) return false;
  if (!/^on\b/.test(chunks[at + 1]?.text ?? "")) return false;
  const many = /^(?:them|em|those|all of them|them all|each|each one)$/.test(chunks[at + 2]?.text ?? "");
  return many || BOLTED.test(scene.noun(at + 2)?.part ?? "");
}

/** "torque bonnet bolts thirty". */
function isTorqueVerb(chunks: readonly Chunk[], part: number): boolean {
  let at = part - 1;
  // "checked the torque on the body bolts, sixty"
  while (has(chunks[at], ROLE.det) || /^on\b/.test(chunks[at]?.text ?? "")) at -= 1;
  return chunks[at]?.senses.quantity === "torque";
}

/** "inlet's at four hundred". */
const SIDES: Partial<Record<string, Quantity>> = wordTable<Quantity>({
  inlet: "upstream_pressure",
  inlets: "upstream_pressure",
  outlet: "downstream_pressure",
  outlets: "downstream_pressure",
});

const ROUNDS = /^(?:pass|passes|steps?|stages?|rounds?)$/;
/** "tightened them to sixty", but "snugged up" and the like measure nothing. */
const tightens = (chunk: Chunk): boolean =>
  /^tighten/.test(chunk.text) && (chunk.senses.work?.some((one) => one.code === "tightened") ?? false);

/** "tested it at a hundred and fifty", "bubble tight at sixty", "three cc a minute at fifty": psi, where a test says so. */
export function pressedTo(scene: Scene, at: number): Measure | undefined {
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
  // "put fifty on it": pressure, where a test follows
  if (
    number &&
    !number.fraction &&
    number.value >= 5 &&
    /^(?:put|got|had|have|run|ran)$/.test(chunks[at - 1]?.text ?? "") &&
    chunks[at + 1]?.text === "on" &&
    has(chunks[at + 2], ROLE.it) &&
    chunks.slice(at + 3).some((one) => one.senses.outcome?.test === "seat_leak" || one.senses.verdict)
  )
    return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "psi" };
  // "fifty on it, blowing by": nothing else stands before it
  if (
    number &&
    !number.fraction &&
    number.value >= 10 &&
    (at === 0 || has(chunks[at - 1], ROLE.and) || chunks[at - 1]?.senses.bound || chunks[at - 1]?.text === "a") &&
    chunks[at + 1]?.text === "on" &&
    has(chunks[at + 2], ROLE.it) &&
    sealTold(chunks.slice(at + 3, at + 6))
  )
    return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "psi" };
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
    /^(?:holding|held|holds|hold|wont hold|wouldnt hold|didnt hold|doesnt hold|will not hold|cant hold)$/.test(
      chunks[at - 1]?.text ?? "",
    ) &&
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
  // "seat leaks by a little at fifty"
  while (chunks[back]?.senses.severity || chunks[back]?.text === "by") back -= 1;
  if (chunks[at - 1]?.text === "at" && back >= 0 && back < at - 2 && (verdictAt(back) || chunks[back]?.senses.test))
    return measure;
  if (before && TESTED.test(before.text)) return { ...measure, lead: back };
  if (before && (before.senses.test || isRate(before.senses.unit) || bubblesAt(scene, back))) return measure;
  if (chunks[at - 1]?.text !== "at") return undefined;
  // "packing test good at three hundred"
  if (before?.senses.verdict && chunks.slice(0, back).some((one) => one.senses.test)) return measure;
  if (verdictAt(back)) return measure;
  // "at fifty it's leaking by"
  let next = at + 1;
  while (has(chunks[next], ROLE.it) || has(chunks[next], ROLE.is) || chunks[next]?.text === "and") next += 1;
  return verdictAt(next) ? measure : undefined;
}

/** A verdict on the seat, before anything else is spoken of. */
const sealTold = (chunks: readonly Chunk[]): boolean =>
  chunks.some(({ senses }) => senses.outcome?.test === "seat_leak" || senses.verdict) &&
  !chunks.some((one) => one.unknown || one.talk);

export const TESTED = /^(?:test|tests|retest|retests|tested|testing|retested|pressure tested)$/;
const LEAKS_OR_HOLDS = /leak|hold|held|tight|bubble|drop|weep|seep/;

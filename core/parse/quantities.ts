/** Step 4a: what each measure is of: by the nearest word that says so, else by its unit, its test or its bolts. */

import type { Quantity } from "../shapes/codes.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { STROKES_TO, STROKING } from "../vocabulary/tests.ts";
import { has } from "./chunks.ts";
import { BOLTED, gaugeOf, isPressure, isPressureWord, type Measure, PRESSURES, RATES, TORQUES } from "./measure.ts";
import { nounOf } from "./measured-part.ts";
import { INCH } from "./measures.ts";
import { airOn, movesAt, onIt, underSeat } from "./pressed-where.ts";
import type { Scene } from "./scene.ts";

/** What each measure is of. `size` measures name the valve; a measure that nothing supports is left unread. */
export function settleMeasures(
  scene: Scene,
  measures: readonly Measure[],
  testAt: (at: number) => string | undefined,
): { readings: Measure[]; sizes: Measure[] } {
  const readings: Measure[] = [];
  const sizes: Measure[] = [];
  const claimed = new Set<number>();
  for (const [nth, measure] of measures.entries()) {
    const low = measures[nth - 1]?.to ?? 0;
    const high = measures[nth + 1]?.from ?? scene.chunks.length;
    const sure =
      TORQUES.has(measure.unit ?? "") ||
      PRESSURES.has(measure.unit ?? "") ||
      measure.unit === "degF" ||
      measure.unit === "degC" ||
      RATES.has(measure.unit ?? "");
    if (isTalkOf(scene, low, high, sure)) continue;
    const word = measure.quantity ? undefined : nearestQuantity(scene, measure, low, high, claimed);
    const quantity = quantityOf(scene, measure, word?.quantity, low, high, testAt);
    if (quantity === "size") {
      sizes.push(measure);
    } else if (quantity) {
      if (word && word.quantity === quantity) {
        claimed.add(word.at);
        scene.use(word.at);
      }
      const noun = nounOf(scene, measure, quantity, low, high);
      readings.push({
        ...measure,
        lead: measure.lead ?? leakBefore(scene, measure),
        quantity,
        noun,
        word: word?.quantity === quantity ? word.at : bareWord(scene, measure, low),
        unit: unitFor(measure, quantity),
      });
    } else continue;
    for (let at = measure.from; at < measure.to; at += 1) scene.use(at);
    if (measure.lead !== undefined) scene.use(measure.lead);
    if (measure.boundAt !== undefined) scene.use(measure.boundAt);
    const said = bareWord(scene, measure, low);
    if (said !== undefined) scene.use(said);
  }
  return { readings, sizes };
}

/** "leaking three cc a minute", "leak is about forty": the rate says it better, and holds the word. */
function leakBefore(scene: Scene, measure: Measure): number | undefined {
  let at = measure.from - 1;
  while (scene.at(at)?.senses.bound || /^(?:is|was|at|measured|measures|was measured)$/.test(scene.at(at)?.text ?? ""))
    at -= 1;
  const leaks = scene.chunks[at]?.senses.condition?.some((one) => one.code === "leaking");
  return leaks && RATES.has(measure.unit ?? "") ? at : undefined;
}

/** The torque or pressure word behind which a bare number stands. */
function bareWord(scene: Scene, measure: Measure, low: number): number | undefined {
  if (!measure.quantity) return undefined;
  for (let at = measure.from - 1; at >= low && at >= measure.from - 5; at -= 1)
    if (scene.chunks[at]?.senses.quantity === measure.quantity || scene.chunks[at]?.senses.part === "regulator")
      return at;
  return undefined;
}

/** A number said about something else: talk or unknown words around it and nothing of the trade. */
function isTalkOf(scene: Scene, low: number, high: number, sure: boolean): boolean {
  let foreign = 0;
  for (let at = low; at < high; at += 1) {
    const chunk = scene.chunks[at];
    if (!chunk) continue;
    if (chunk.talk) foreign += 2;
    else if (chunk.unknown) foreign += sure ? 0.5 : 1;
    else if (chunk.senses.part || chunk.senses.test || chunk.senses.outcome || STROKING.test(chunk.text)) return false;
    else if (
      foreign < 2 &&
      chunk.senses.work &&
      !chunk.senses.plain &&
      chunk.senses.work.every((one) => one.form !== "noun" && !one.with)
    )
      return false;
    else if (
      chunk.senses.quantity &&
      chunk.senses.quantity !== "duration" &&
      chunk.senses.quantity !== "length" &&
      foreign < 2 &&
      chunk.senses.quantity !== "torque"
    )
      return false;
  }
  return foreign > (sure ? 0.9 : 0);
}

function unitFor(measure: Measure, quantity: Quantity): Measure["unit"] {
  if (measure.unit === "pound") return quantity === "torque" ? "ft_lbf" : "psi";
  if (measure.unit === "degree") return "degF";
  return measure.unit;
}

function nearestQuantity(
  scene: Scene,
  measure: Measure,
  low: number,
  high: number,
  claimed: ReadonlySet<number>,
): { quantity: Quantity; at: number } | undefined {
  let best: { quantity: Quantity; at: number; far: number } | undefined;
  const offer = (at: number, far: number) => {
    const chunk = scene.chunks[at];
    // "the supply gauge says thirty five": the gauge tells what it measures
    // "regulator set at thirty five psi"
    if (
      chunk?.senses.part === "regulator" &&
      at < measure.from &&
      (setTo(scene, at, measure.from) || setIt(scene, measure))
    ) {
      if (fits(measure, "supply_pressure") && (!best || far < best.far))
        best = { quantity: "supply_pressure", at, far };
      return;
    }
    const quantity =
      chunk?.senses.part === "gauge" ? gaugeOf(chunk.text) : (chunk?.senses.quantity ?? sideOf(scene, at));
    if (!quantity || claimed.has(at) || !fits(measure, quantity)) return;
    if (!best || far < best.far) best = { quantity, at, far };
  };
  for (let at = measure.from - 1, far = 1; at >= low && far < 9; at -= 1, far += 1) {
    const chunk = scene.chunks[at];
    // "signal's down to eight pounds", "a solid eleven", "pegged at thirty": how the number stands, and no finding
    const then = scene.chunks[at + 1]?.text;
    const stands =
      chunk?.text === "solid" ||
      (chunk?.text === "down" && then === "to") ||
      (chunk?.text === "pegged" && then === "at");
    if (chunk?.senses.condition && !chunk.senses.verdict && !chunk.senses.outcome && !stands) break;
    offer(at, vague(chunk) ? far + 5 : far);
  }
  for (let at = measure.to, far = 1; at < high && far < 6; at += 1, far += 1) {
    const chunk = scene.chunks[at];
    if (chunk?.senses.condition || chunk?.hazard || has(chunk, ROLE.but)) break;
    // what follows an "and" or another part belongs to the next thing said
    if (has(chunk, ROLE.and) || (chunk?.senses.work && !chunk.senses.quantity)) break;
    // what is said behind a number belongs to it only when it follows at once
    const loose =
      at > measure.to && !has(scene.chunks[at - 1], ROLE.prep) && !has(scene.chunks[at - 1], ROLE.det) ? 2 : 0;
    // "signal is nine pounds, supply is thirty five": what has a number of its own behind it begins anew
    const anew = chunk?.senses.quantity && opensOwn(scene, at) ? 4 : 0;
    offer(at, (vague(chunk) ? far + 5 : far) + loose + anew);
  }
  return best;
}

/** "set at", "is at", "turned up to": between a regulator and what it gives. */
function setTo(scene: Scene, from: number, to: number): boolean {
  const between = scene.chunks
    .slice(from + 1, to)
    .map((one) => one.text)
    .join(" ");
  return /^(?:is |was |s )?(?:set|adjusted|turned|reset|running|sitting|backed|cranked|dialed|down|up|at|to|about|back| )+$/.test(
    between,
  );
}

/** "set it back to": what was named before is set. */
function setIt({ chunks }: Scene, measure: Measure): boolean {
  let back = measure.from - 1;
  if (!/^(?:to|at)$/.test(chunks[back]?.text ?? "")) return false;
  do back -= 1;
  while (/^(?:up|down|back|back up|back down)$/.test(chunks[back]?.text ?? ""));
  return (
    has(chunks[back], ROLE.it) &&
    /^(?:set|reset|turned|dialed|backed|bumped|cranked|adjusted|brought)$/.test(chunks[back - 1]?.text ?? "")
  );
}

/** "supply is at thirty five": a quantity that leads up to a number. */
function opensOwn(scene: Scene, at: number): boolean {
  let next = at + 1;
  while (has(scene.chunks[next], ROLE.is) || scene.chunks[next]?.text === "at" || scene.chunks[next]?.senses.bound)
    next += 1;
  return scene.chunks[next]?.number !== undefined && !scene.chunks[next + 2]?.senses.quantity;
}

/** "inlet's at four fifty": a side of the valve, where a pressure is said of it. */
function sideOf(scene: Scene, at: number): Quantity | undefined {
  const side = scene.chunks[at];
  const next = scene.chunks[at + 1];
  if (!/^(?:inlet|outlet)s?$/.test(side?.text ?? "")) return undefined;
  if (!(next?.number || next?.text === "at" || has(next, ROLE.is))) return undefined;
  return side?.text.startsWith("in") ? "upstream_pressure" : "downstream_pressure";
}

/** "measures", "long": what they are the length of may be said more exactly. */
const vague = (chunk: Scene["chunks"][number] | undefined) =>
  /^(?:measures|measured|long|across|wide|deep)$/.test(chunk?.text ?? "");

function fits(measure: Measure, quantity: Quantity): boolean {
  const unit = measure.unit;
  if (quantity === "torque") return unit === "pound" || TORQUES.has(unit ?? "");
  if (isPressureWord(quantity)) return unit === "pound" || PRESSURES.has(unit ?? "");
  if (quantity === "leak_rate") return RATES.has(unit ?? "");
  if (quantity === "travel" || quantity === "length") return unit === "in" || unit === "mm";
  if (quantity === "temperature") return unit === "degF" || unit === "degC" || unit === "degree";
  if (quantity === "duration") return unit === "s" || unit === "min";
  return unit === "%";
}

const SIZES_IN = new Set([0.25, 0.375, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 6, 8, 10, 12, 14, 16, 18, 20, 24]);

function quantityOf(
  scene: Scene,
  measure: Measure,
  word: Quantity | undefined,
  low: number,
  high: number,
  testAt: (at: number) => string | undefined,
): Quantity | "size" | undefined {
  if (measure.quantity) return measure.quantity;
  const unit = measure.unit;
  if (TORQUES.has(unit ?? "")) return "torque";
  if (RATES.has(unit ?? "")) return "leak_rate";
  const bolted = boltedNear(scene, measure, low, high);
  if (unit === "pound" || isPressure(unit)) {
    if (unit === "pound" && (word === "torque" || (!word && bolted) || (bolted && !isPressureWord(word))))
      return "torque";
    if (word && word !== "pressure") return word;
    if (airOn(scene, measure) !== undefined) return "signal_pressure";
    const test = testAt(measure.from);
    if (test === "seat_leak") return "upstream_pressure";
    if (test === "stroke") return "signal_pressure";
    if (test === "actuator") return "signal_pressure";
    if (actuatorNear(scene, low, high) || movesAt(scene, measure)) return "signal_pressure";
    if (underSeat(scene, measure)) return "upstream_pressure";
    // bare "pounds" need something of the trade beside them: weights and money are said in pounds too
    return word === "pressure" || isPressure(unit) || test || word || onIt(scene, measure) ? "pressure" : undefined;
  }
  if (unit === "in" || unit === "mm") {
    if (word) return word;
    if (unit === "in" && sizeSaid(scene, measure)) return "size";
    const test = testAt(measure.from);
    if (test === "stroke") return "travel";
    return nounOf(scene, measure, "length", low, high) || foundBefore(scene, measure, low) ? "length" : undefined;
  }
  if (unit === "degF" || unit === "degC") return "temperature";
  if (unit === "degree") return word === "temperature" || isRunningAt(scene, measure, low) ? "temperature" : undefined;
  if (unit === "s" || unit === "min") {
    // "eight seconds to open"
    const toStroke =
      scene.chunks[measure.to]?.text === "to" && STROKES_TO.test(scene.chunks[measure.to + 1]?.text ?? "");
    if (
      word === "duration" ||
      toStroke ||
      strokesIn(scene, measure) ||
      eachWay(scene, measure) ||
      heldFor(scene, measure)
    )
      return "duration";
    const test = testAt(measure.from);
    return test ? "duration" : undefined;
  }
  if (unit === "%") return talkFree(scene, low, high) ? "percent_open" : undefined;
  return undefined;
}

/** "body's at a hundred and eighty degrees": a part at so many degrees is that warm; turned so far, it has no "at". */
function isRunningAt(scene: Scene, measure: Measure, low: number): boolean {
  let at = measure.from - 1;
  if (scene.chunks[at]?.senses.bound) at -= 1;
  if (!/^(?:at|running|running at|sitting at)$/.test(scene.chunks[at]?.text ?? "")) return false;
  for (let back = at - 1; back >= low; back -= 1)
    if (scene.chunks[back]?.senses.part || /^(?:process|fluid|line|flow)$/.test(scene.chunks[back]?.text ?? ""))
      return true;
  return false;
}

/** "opens in four seconds": how long it took. */
export const strokesIn = (scene: Scene, measure: Measure): boolean => {
  const at = scene.chunks[measure.from - 1]?.senses.bound ? measure.from - 2 : measure.from - 1;
  return (
    /^(?:in|within)$/.test(scene.chunks[at]?.text ?? "") &&
    /^(?:opens|closes|shuts|opened|closed|strokes|stroked|strokes open|strokes closed|cycles|open|close)$/.test(
      scene.chunks[at - 1]?.text ?? "",
    )
  );
};

/** "a hole in the diaphragm about a quarter inch". */
const foundBefore = (scene: Scene, measure: Measure, low: number): boolean =>
  scene.chunks
    .slice(Math.max(low, measure.from - 8), measure.from)
    .some((one) => one.senses.condition?.some(({ form }) => form === "has"));

/** "held twenty psi for ten minutes". */
const heldFor = (scene: Scene, measure: Measure): boolean =>
  scene.chunks[measure.from - 1]?.text === "for" &&
  (scene.chunks
    .slice(Math.max(0, measure.from - 7), measure.from - 1)
    .some((one) => /^(?:held|holds|holding)/.test(one.text) && !one.talk) ||
    // "thirty pounds on it for ten minutes, no drop"
    scene.chunks
      .slice(measure.to, measure.to + 3)
      .some((one) => /^(?:no |held|holding|not (?:leak|a drop))/.test(one.text) && one.senses.verdict));

/** "stroke time open six seconds, close four seconds". */
function eachWay(scene: Scene, measure: Measure): boolean {
  if (!/^(?:open|opening|close|closing|shut|closed)$/.test(scene.chunks[measure.from - 1]?.text ?? "")) return false;
  return scene.chunks.slice(0, measure.from).some((one) => /\bstrok/.test(one.text));
}

function talkFree(scene: Scene, low: number, high: number): boolean {
  for (let at = low; at < high; at += 1) if (scene.chunks[at]?.talk || scene.chunks[at]?.unknown) return false;
  return true;
}

/** "two inch", "3 in valve": the nominal size, unless a length is asked for. */
function sizeSaid(scene: Scene, measure: Measure): boolean {
  if (!SIZES_IN.has(measure.value) || measure.upper !== undefined) return false;
  // "LCV-118 2 in": right behind its tag
  if (scene.chunks[measure.from - 1]?.tag) return true;
  const text = scene.chunks[measure.to - 1]?.text ?? "";
  if (scene.chunks[measure.from]?.text.startsWith("full")) return false;
  // "a hole about a quarter inch": no valve is told so
  if (measure.value < 1 && measure.bound && scene.chunks[measure.to]?.senses.part !== "valve") return false;
  // "bent about a quarter inch", "worn half an inch": how far, and no valve's size
  let back = measure.from - 1;
  while (scene.chunks[back]?.senses.bound || /^(?:a|an|by)$/.test(scene.chunks[back]?.text ?? "")) back -= 1;
  if (scene.chunks[back]?.senses.condition?.some((one) => one.code !== "ok")) return false;
  if (has(scene.chunks[back], ROLE.is)) back -= 1;
  // "stroke is three quarters inch"
  if (/^(?:stroke|full stroke|full travel)$/.test(scene.chunks[back]?.text ?? "")) return false;
  if (/^(?:off|moved|dropped|raised|lifted)$/.test(scene.chunks[back]?.text ?? "")) return false;
  if (text !== "inch" && text !== "in" && !INCH.has(scene.chunks[measure.from]?.text ?? "")) return false;
  const next = scene.chunks[measure.to];
  if (next?.unknown || next?.talk) return false;
  // "its a three inch stem is scored", "three inch seat's worn": said without a stop, the part opens what comes next
  if (next?.senses.part && next.senses.part !== "valve") return opensNext(scene, measure);
  return !has(next, ROLE.prep) || next?.text === "on" || next?.text === "in" || next?.text === "with";
}

/** "it's a three inch", and then a part of which something is said. */
const opensNext = (scene: Scene, measure: Measure): boolean => {
  const article = scene.chunks[measure.from - 1]?.text ?? "";
  const it = scene.chunks[measure.from - 2];
  return (
    /^(?:a|an)$/.test(article) &&
    /^(?:its|it is|thats|this is|is|shes|this ones)$/.test(it?.text ?? "") &&
    scene.predicateFollows(measure.to + 1)
  );
};

function boltedNear(scene: Scene, measure: Measure, low: number, high: number): boolean {
  for (let at = Math.max(low, measure.from - 6); at < Math.min(high, measure.to + 5); at += 1) {
    const part = scene.chunks[at]?.senses.part;
    if (part && BOLTED.test(part)) return true;
  }
  return false;
}

function actuatorNear(scene: Scene, low: number, high: number): boolean {
  for (let at = low; at < high; at += 1) {
    const part = scene.chunks[at]?.senses.part;
    if (part === "actuator" || part === "upper_diaphragm") return true;
  }
  return false;
}

import type { Quantity, Unit } from "../shapes/codes.ts";
import type { Reading } from "../shapes/entry.ts";
import { has, type Noun, type Scene } from "./scene.ts";
import { STROKING } from "./tests.ts";

/**
 * Step 4a: numbers with units become readings. What a number is of is settled by the nearest word that says so,
 * else by its unit, else by the test or the bolts it is said with.
 */
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
  /** index of the noun it is said of */
  noun?: Noun;
}

const PRESSURES = new Set<string>(["psi", "kPa", "bar", "in_H2O"]);
const TORQUES = new Set<string>(["ft_lbf", "in_lbf", "N_m"]);
const RATES = new Set<string>(["bubble/min", "drop/min", "mL/min"]);
const BOLTED = /bolting|nut|threads|bolt/;

export const isPressure = (unit: string | undefined) => unit !== undefined && PRESSURES.has(unit);
export const isRate = (unit: string | undefined) => unit !== undefined && RATES.has(unit);
const isPressureWord = (quantity: Quantity | undefined) => quantity?.endsWith("pressure") ?? false;

/** Finds numbers with units, and bare numbers behind a word that says what they are of. */
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
    const measure = withUnit(scene, at) ?? bare(scene, at);
    if (!measure) continue;
    measure.bound = boundOf(scene, measure);
    measures.push(measure);
    at = measure.to - 1;
  }
  return measures;
}

/** "inch and a half": the one is not said. */
function inchAndHalf(scene: Scene, at: number): Measure | undefined {
  const [inch, and, fraction] = scene.chunks.slice(at, at + 3);
  if (!inch || !/^(?:an )?inch$/.test(inch.text) || and?.text !== "and" || !fraction?.number?.fraction || fraction.number.value >= 1) return undefined;
  return { from: at, to: at + 3, value: 1 + fraction.number.value, unit: "in" };
}

function withUnit(scene: Scene, at: number): Measure | undefined {
  const { chunks } = scene;
  const number = chunks[at]?.number;
  if (!number) return undefined;
  let unitAt = at + 1;
  // "thirty to thirty five foot pounds" is read as one number already; "a couple of seconds" has a word between
  if (chunks[unitAt]?.text === "of" || chunks[unitAt]?.text === "and a half") unitAt += 1;
  const unit = chunks[unitAt]?.senses.unit;
  if (!unit) return undefined;
  const text = chunks[unitAt]?.text ?? "";
  const after = chunks[unitAt + 1];
  // "put four in", "got 3 in there": a unit only where it is written as one
  if (text === "in" && (!/^[\d./]/.test(chunks[at]?.text ?? "") || has(after, "det") || has(after, "it") || after?.text === "there")) return undefined;
  if (text === "bar" && number.value < 0.05) return undefined;
  const half = chunks[unitAt + 1]?.text === "and" && chunks[unitAt + 2]?.number?.value === 0.5 && chunks[unitAt + 2]?.text === "a half" ? 0.5 : 0;
  let end = unitAt + (half ? 3 : 1);
  // "two pounds of torque": a second word for the same thing
  if (unit === "thou") return { from: at, to: end, value: Number((number.value / 1000).toPrecision(12)), upper: number.upper === undefined ? undefined : number.upper / 1000, unit: "in" };
  if (text === "percent" && chunks[end]?.text === "open") end += 1;
  return { from: at, to: end, value: number.value + half, upper: number.upper, unit };
}

/** "torqued to twenty six", "signal's at nine", "bonnet bolts at thirty". */
function bare(scene: Scene, at: number): Measure | undefined {
  const { chunks } = scene;
  const number = chunks[at]?.number;
  if (!number || number.bareOne) return undefined;
  const next = chunks[at + 1];
  if (next && (next.senses.part || next.senses.unit || (has(next, "prep") && next.text.startsWith("of")) || has(next, "one") || has(next, "fresh") || has(next, "more" as never))) return undefined;
  if (next?.unknown || scene.noun(at)?.part) return undefined;
  let sawJoint = false;
  for (let back = at - 1; back >= 0 && back >= at - 5; back -= 1) {
    const chunk = chunks[back];
    if (!chunk) break;
    if (chunk.senses.quantity === "torque") return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "ft_lbf", quantity: "torque" };
    if (chunk.senses.quantity === "length" || chunk.senses.quantity === "travel") return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "in", quantity: chunk.senses.quantity };
    if (isPressureWord(chunk.senses.quantity)) return { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "psi", quantity: chunk.senses.quantity };
    if (chunk.text === "at" || chunk.text === "to" || chunk.senses.placing || chunk.text === "got") sawJoint = true;
    const part = chunk.senses.part;
    if (part && BOLTED.test(part)) return sawJoint ? { from: at, to: at + 1, value: number.value, upper: number.upper, unit: "ft_lbf", quantity: "torque" } : undefined;
    const passable = /^(?:running|sitting|reading|set|setting|holding|pull|pulled)$/.test(chunk.text) || has(chunk, "is") || has(chunk, "prep") || chunk.senses.bound || chunk.senses.plain || has(chunk, "it") || has(chunk, "det") || has(chunk, "has");
    if (!passable) return undefined;
  }
  return undefined;
}

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

/** What each measure is of. `size` measures name the valve; a measure that nothing supports is left unread. */
export function settleMeasures(scene: Scene, measures: readonly Measure[], testAt: (at: number) => string | undefined): { readings: Measure[]; sizes: Measure[] } {
  const readings: Measure[] = [];
  const sizes: Measure[] = [];
  const claimed = new Set<number>();
  for (const [nth, measure] of measures.entries()) {
    const low = measures[nth - 1]?.to ?? 0;
    const high = measures[nth + 1]?.from ?? scene.chunks.length;
    if (isTalkOf(scene, low, high, TORQUES.has(measure.unit ?? "") || PRESSURES.has(measure.unit ?? "") || measure.unit === "degF" || measure.unit === "degC" || RATES.has(measure.unit ?? ""))) continue;
    const word = measure.quantity ? undefined : nearestQuantity(scene, measure, low, high, claimed);
    const quantity = settle(scene, measure, word?.quantity, low, high, testAt);
    if (quantity === "size") {
      sizes.push(measure);
    } else if (quantity) {
      if (word && word.quantity === quantity) {
        claimed.add(word.at);
        scene.use(word.at);
      }
      const noun = nounOf(scene, measure, quantity, low, high);
      readings.push({ ...measure, quantity, noun, word: word?.quantity === quantity ? word.at : bareWord(scene, measure, low), unit: unitFor(measure, quantity) });
    } else continue;
    for (let at = measure.from; at < measure.to; at += 1) scene.use(at);
    if (measure.quantity) for (let at = measure.from - 1; at >= low && at >= measure.from - 5; at -= 1) if (scene.chunks[at]?.senses.quantity === measure.quantity) { scene.use(at); break; }
  }
  return { readings, sizes };
}

/** The torque or pressure word behind which a bare number stands. */
function bareWord(scene: Scene, measure: Measure, low: number): number | undefined {
  if (!measure.quantity) return undefined;
  for (let at = measure.from - 1; at >= low && at >= measure.from - 5; at -= 1) if (scene.chunks[at]?.senses.quantity === measure.quantity) return at;
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
    else if (foreign < 2 && chunk.senses.work && !chunk.senses.plain && chunk.senses.work.every((one) => one.form !== "noun" && !one.with)) return false;
    else if (chunk.senses.quantity && chunk.senses.quantity !== "duration" && chunk.senses.quantity !== "length" && foreign < 2 && chunk.senses.quantity !== "torque") return false;
  }
  return foreign > (sure ? 0.9 : 0);
}

function unitFor(measure: Measure, quantity: Quantity): Measure["unit"] {
  if (measure.unit === "pound") return quantity === "torque" ? "ft_lbf" : "psi";
  if (measure.unit === "degree") return "degF";
  return measure.unit;
}

function nearestQuantity(scene: Scene, measure: Measure, low: number, high: number, claimed: ReadonlySet<number>): { quantity: Quantity; at: number } | undefined {
  let best: { quantity: Quantity; at: number; far: number } | undefined;
  const offer = (at: number, far: number) => {
    const chunk = scene.chunks[at];
    // "the supply gauge says thirty five": the gauge tells what it measures
    const quantity = chunk?.senses.part === "gauge" ? gaugeOf(chunk.text) : chunk?.senses.quantity;
    if (!quantity || claimed.has(at) || !fits(measure, quantity)) return;
    if (!best || far < best.far) best = { quantity, at, far };
  };
  for (let at = measure.from - 1, far = 1; at >= low && far < 9; at -= 1, far += 1) {
    const chunk = scene.chunks[at];
    if (chunk?.senses.condition && !chunk.senses.verdict && !chunk.senses.outcome) break;
    offer(at, vague(chunk) ? far + 5 : far);
  }
  for (let at = measure.to, far = 1; at < high && far < 6; at += 1, far += 1) {
    const chunk = scene.chunks[at];
    if (chunk?.senses.condition || chunk?.hazard || has(chunk, "but")) break;
    // what follows an "and" or another part belongs to the next thing said
    if (has(chunk, "and") || (chunk?.senses.work && !chunk.senses.quantity)) break;
    // what is said behind a number belongs to it only when it follows at once
    const loose = at > measure.to && !has(scene.chunks[at - 1], "prep") && !has(scene.chunks[at - 1], "det") ? 2 : 0;
    offer(at, (vague(chunk) ? far + 5 : far) + loose);
  }
  return best;
}

const gaugeOf = (text: string): Quantity | undefined => (text.startsWith("supply") ? "supply_pressure" : text.startsWith("signal") ? "signal_pressure" : undefined);

/** "measures", "long": what they are the length of may be said more exactly. */
const vague = (chunk: Scene["chunks"][number] | undefined) => /^(?:measures|measured|long|across|wide|deep)$/.test(chunk?.text ?? "");

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

function settle(scene: Scene, measure: Measure, word: Quantity | undefined, low: number, high: number, testAt: (at: number) => string | undefined): Quantity | "size" | undefined {
  if (measure.quantity) return measure.quantity;
  const unit = measure.unit;
  if (TORQUES.has(unit ?? "")) return "torque";
  if (RATES.has(unit ?? "")) return "leak_rate";
  const bolted = boltedNear(scene, measure, low, high);
  if (unit === "pound" || isPressure(unit)) {
    if (unit === "pound" && (word === "torque" || (!word && bolted) || (bolted && !isPressureWord(word)))) return "torque";
    if (word && word !== "pressure") return word;
    const test = testAt(measure.from);
    if (test === "seat_leak") return "upstream_pressure";
    if (test === "stroke") return "signal_pressure";
    if (test === "actuator") return "signal_pressure";
    if (word === "pressure" || isPressure(unit)) return actuatorNear(scene, low, high) ? "signal_pressure" : "pressure";
    // bare "pounds" need something of the trade beside them: weights and money are said in pounds too
    return test || word || onIt(scene, measure) || actuatorNear(scene, low, high) ? "pressure" : undefined;
  }
  if (unit === "in" || unit === "mm") {
    if (word) return word;
    if (unit === "in" && sizeSaid(scene, measure)) return "size";
    const test = testAt(measure.from);
    if (test === "stroke") return "travel";
    return nounOf(scene, measure, "length", low, high) ? "length" : undefined;
  }
  if (unit === "degF" || unit === "degC") return "temperature";
  if (unit === "degree") return word === "temperature" ? "temperature" : undefined;
  if (unit === "s" || unit === "min") {
    if (word === "duration") return "duration";
    const test = testAt(measure.from);
    return test ? "duration" : undefined;
  }
  if (unit === "%") return talkFree(scene, low, high) ? "percent_open" : undefined;
  return undefined;
}

function talkFree(scene: Scene, low: number, high: number): boolean {
  for (let at = low; at < high; at += 1) if (scene.chunks[at]?.talk || scene.chunks[at]?.unknown) return false;
  return true;
}

/** "two inch", "3 in valve": the nominal size, unless a length is asked for. */
function sizeSaid(scene: Scene, measure: Measure): boolean {
  if (!SIZES_IN.has(measure.value) || measure.upper !== undefined) return false;
  const text = scene.chunks[measure.to - 1]?.text ?? "";
  if (text !== "inch" && text !== "in" && !/^(?:an )?inch$/.test(scene.chunks[measure.from]?.text ?? "")) return false;
  const next = scene.chunks[measure.to];
  if (next?.unknown || next?.talk) return false;
  if (next?.senses.part && next.senses.part !== "valve") return false;
  return !has(next, "prep") || next?.text === "on" || next?.text === "in" || next?.text === "with";
}

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

const onIt = (scene: Scene, measure: Measure) => {
  const next = scene.chunks[measure.to];
  return has(next, "prep") && /^(?:on|behind|to)/.test(next?.text ?? "") && (has(scene.chunks[measure.to + 1], "it") || scene.chunks[measure.to + 1]?.senses.part !== undefined);
};

/** A reading names its part only when the words do: the part just before it, or "on the bonnet bolts" just after. */
function nounOf(scene: Scene, measure: Measure, quantity: Quantity, low: number, high: number): Noun | undefined {
  if (quantity === "temperature") {
    // "the oil temperature": the part stands right before the word
    const word = scene.chunks.findIndex((one, at) => at >= low && at < high && one.senses.quantity === "temperature");
    return word > 0 && scene.chunks[word - 1]?.senses.part ? nounEndingAt(scene, word - 1) : undefined;
  }
  if (isPressureWord(quantity) || quantity === "duration" || quantity === "percent_open" || quantity === "travel") return undefined;
  if (quantity === "leak_rate") {
    for (let at = low; at < high; at += 1) {
      const noun = scene.chunks[at]?.senses.part ? scene.noun(at) : undefined;
      if (noun && (noun.part === "packing" || noun.part === "packing_nut")) return { ...noun, part: "packing" };
      if (scene.chunks[at]?.senses.test === "packing") return { part: "packing", from: at, to: at + 1, core: at };
    }
    return undefined;
  }
  let at = measure.to;
  while (at < high && (has(scene.chunks[at], "prep") || scene.chunks[at]?.senses.quantity || scene.chunks[at]?.senses.plain || (quantity === "length" && scene.chunks[at]?.senses.condition?.some((one) => one.form === "has")))) at += 1;
  const joined = scene.chunks[measure.to];
  if (at < high && joined && (has(joined, "prep") || joined.senses.quantity)) {
    const noun = scene.noun(at);
    if (noun?.part && at > measure.to) return noun;
  }
  for (let back = measure.from - 1; back >= low && back >= measure.from - 8; back -= 1) {
    const chunk = scene.chunks[back];
    if (chunk?.senses.part) {
      const noun = nounEndingAt(scene, back);
      // "put the bonnet back on, torqued to fifty": what was put on is not what was torqued
      const handled = scene.chunks[(noun?.from ?? back) - 1];
      if (quantity === "torque" && noun?.part && !/bolting|nut|screw|threads|connector/.test(noun.part) && (handled?.senses.work || handled?.senses.placing)) return undefined;
      return noun;
    }
    if (chunk?.senses.condition && quantity !== "length") return undefined;
    if (has(chunk, "and") && quantity === "torque") return undefined;
  }
  return undefined;
}

/** The noun phrase whose part stands at `core`, with what stands before it. */
export function nounEndingAt(scene: Scene, core: number): Noun | undefined {
  for (let from = Math.max(0, core - 4); from <= core; from += 1) {
    const noun = scene.noun(from);
    if (noun?.core === core) return noun;
  }
  return undefined;
}

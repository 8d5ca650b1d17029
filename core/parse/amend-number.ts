/** Step 6: a number put right. */

import type { Entry, Reading } from "../shapes/entry.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { UNIT_ROWS } from "../vocabulary/measures.ts";
import { has } from "./chunks.ts";
import type { Fragment } from "./fragment.ts";
import { findMeasures } from "./measures.ts";
import type { Scene } from "./scene.ts";
import { lastIndex, replaceAt } from "./standing.ts";

/** More than this is no count of parts on one valve. */
const MOST_COUNTED = 1000;

/** "correction, four" and then more: the number comes before anything else that is said. */
export function bareNumberLeads(scene: Scene): boolean {
  const at = scene.chunks.findIndex((one) => !one.senses.plain || one.number !== undefined);
  const chunk = scene.chunks[at];
  // "the short one" is no number
  if (!chunk?.number || chunk.used || (chunk.number.bareOne && scene.chunks.length > 1)) return false;
  const next = scene.chunks[at + 1];
  return !(
    next?.senses.part ||
    next?.senses.unit ||
    next?.unknown ||
    next?.talk ||
    has(next, ROLE.prep) ||
    has(next, ROLE.and)
  );
}

/** "make that thirty five foot pounds", "correction, five eighths", "make that four". */
export function amendNumber(before: readonly Entry[], fragment: Fragment): Entry[] | undefined {
  const readings = fragment.drafts.filter((draft) => draft.entry.type === "reading");
  const finding = fragment.drafts.some((draft) => draft.entry.type === "finding" || draft.entry.type === "work");
  if (readings.length > 0 && !finding) {
    let result: Entry[] = [...before];
    let matched = false;
    for (const { entry } of readings) {
      const reading = entry as Reading;
      const at = [...result.keys()].reverse().find((nth) => {
        const old = result[nth];
        return (
          old?.type === "reading" &&
          (old.quantity === reading.quantity || old.unit === reading.unit || related(old, reading))
        );
      });
      if (at === undefined) continue;
      const old = result[at] as Reading;
      const quantity =
        reading.quantity === "pressure" && old.quantity.endsWith("pressure")
          ? old.quantity
          : reading.unit === old.unit
            ? specific(reading)
              ? reading.quantity
              : old.quantity
            : reading.quantity;
      const next: Reading = { ...old, quantity, value: reading.value, unit: reading.unit };
      if (reading.upper === undefined) delete next.upper;
      else next.upper = reading.upper;
      if (reading.bound) next.bound = reading.bound;
      else delete next.bound;
      if (reading.part) next.part = reading.part;
      result = replaceAt(result, at, next);
      matched = true;
    }
    if (matched) return withVerdict(result, fragment);
  }
  const count = halfRate(fragment.scene, before) ?? bareNumber(fragment.scene);
  if (!count || finding) return undefined;
  const last = before.at(-1);
  if (!last) return undefined;
  // the nearest number spoken is the one corrected
  const numbered = RATE_HALVES[count.unit as Reading["unit"]]
    ? before.findLastIndex((one) => one.type === "reading" && one.quantity === "leak_rate")
    : lastNumbered(before);
  const target = numbered >= 0 ? before[numbered] : undefined;
  if (target?.type === "reading") {
    // "forty minutes" puts no pressure right
    if (count.unit && count.unit !== target.unit && kindOf(count.unit) !== kindOf(target.unit)) return undefined;
    const next: Reading = { ...target, value: count.value };
    if (count.upper === undefined) delete next.upper;
    else next.upper = count.upper;
    if (count.unit) next.unit = count.unit as Reading["unit"];
    return replaceAt(before, numbered, next);
  }
  if (!Number.isInteger(count.value) || count.value < 1 || count.value > MOST_COUNTED || count.unit) return undefined;
  if (target && (target.type === "work" || target.type === "finding" || target.type === "need"))
    return replaceAt(before, numbered, { ...target, count: count.value });
  if (last.type === "work" || last.type === "need")
    return replaceAt(before, before.length - 1, { ...last, count: count.value });
  return undefined;
}

const kindOf = (unit: string) => UNIT_ROWS.find((row) => row.code === unit)?.of;

const specific = (reading: Reading) => reading.quantity.endsWith("_pressure");

const related = (old: Reading, reading: Reading) =>
  (old.quantity === "travel" && reading.quantity === "length") ||
  (old.quantity.endsWith("pressure") && reading.quantity.endsWith("pressure")) ||
  (old.quantity === "torque" && reading.unit === "psi" && reading.quantity === "pressure");

function lastNumbered(entries: readonly Entry[]): number {
  for (let at = entries.length - 1; at >= 0; at -= 1) {
    const entry = entries[at];
    if (entry?.type === "reading") return at;
    if (
      entry &&
      (entry.type === "work" || entry.type === "finding" || entry.type === "need") &&
      entry.count !== undefined
    )
      return at;
  }
  return -1;
}

/** "make that three bubbles": of a rate said before, the half of its unit is enough. */
function halfRate(
  scene: Scene,
  before: readonly Entry[],
): { value: number; upper?: number; unit?: string } | undefined {
  const rate = before.findLast((one) => one.type === "reading" && one.quantity === "leak_rate") as Reading | undefined;
  const at = scene.chunks.findIndex((one) => one.number !== undefined);
  const number = scene.chunks[at]?.number;
  const half = scene.chunks[at + 1];
  if (!rate || !number || !half || !RATE_HALVES[rate.unit]?.test(half.text)) return undefined;
  scene.use(at, at + 1);
  return { value: number.value, upper: number.upper, unit: rate.unit };
}

const RATE_HALVES: Partial<Record<Reading["unit"], RegExp>> = {
  "bubble/min": /^bub(?:ble)?s?$/,
  "drop/min": /^drops?$/,
  "mL/min": /^(?:ccs?|mls?|milliliters?|millilitres?)$/,
};

function bareNumber(scene: Scene): { value: number; upper?: number; unit?: string } | undefined {
  const measure = findMeasures(scene)[0];
  if (measure)
    return {
      value: measure.value,
      upper: measure.upper,
      unit: measure.unit === "pound" || measure.unit === "degree" ? undefined : measure.unit,
    };
  const chunk = scene.chunks.find((one) => one.number && !(one.number.bareOne && scene.chunks.length > 2));
  if (!chunk?.number) return undefined;
  // "correction, six rings": of the packing counted before
  const rings = (one: (typeof scene.chunks)[number], at: number) =>
    /^rings?$/.test(one.text) && scene.chunks[at - 1] === chunk;
  const others = scene.chunks.some((one, at) => !rings(one, at) && (one.unknown || one.talk || one.senses.part));
  if (others && !bareNumberLeads(scene)) return undefined;
  chunk.used = true;
  return { value: chunk.number.value, upper: chunk.number.upper };
}

function withVerdict(entries: Entry[], fragment: Fragment): Entry[] {
  const test = fragment.drafts.find((draft) => draft.entry.type === "test" && draft.entry.result !== null)?.entry;
  if (!test) return entries;
  const at = lastIndex(entries, "test");
  return at >= 0 ? replaceAt(entries, at, { ...(entries[at] as Entry), ...test } as Entry) : entries;
}

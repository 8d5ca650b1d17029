import type { Entry, Finding, Reading, ValveEntry, WorkEntry } from "../shapes/entry.ts";
import { findMeasures } from "./measures.ts";
import type { Fragment } from "./fragment.ts";
import { readTagDigits } from "./tags.ts";
import { type Draft, has, type Named, placed, type Scene } from "./scene.ts";

/**
 * Step 6: an amendment. The new words replace the matching slot of the last entry of their kind; a new part
 * amends every entry of that phrase that shares the old one; digits alone amend a number or a tag.
 * Returns what the entries become, or nothing where the words amend nothing (then they are plain talk).
 */
export function amend(before: readonly Entry[], words: readonly string[], whole: Fragment): Entry[] | undefined {
  if (before.length === 0) return undefined;
  // what is said first amends; what follows it in the same breath is new
  const byPlace = [...whole.drafts].sort((a, b) => Math.min(...a.chunks) - Math.min(...b.chunks));
  const first = byPlace[0];
  const same = (draft: Draft) => draft === first || (first?.entry.type === "reading" && draft.entry.type === "test" && draft.entry.result === null) || (draft.entry.type === first?.entry.type && draft.entry.type === "reading" && byPlace.length === 2);
  const renamed = partThenWork(before, whole, byPlace);
  if (renamed) return renamed;
  const leads = bareNumberLeads(whole.scene);
  const fragment: Fragment = { ...whole, drafts: leads ? [] : whole.drafts.filter(same) };
  const rest = (leads ? whole.drafts : whole.drafts.filter((draft) => !same(draft))).map((draft) => draft.entry);
  const amended = amendBy(before, words, fragment);
  return amended && [...amended, ...rest];
}

/** "I mean the actuator spring, gonna have to change it": the part is put right, the work is new. */
function partThenWork(before: readonly Entry[], whole: Fragment, byPlace: readonly Draft[]): Entry[] | undefined {
  const first = byPlace[0];
  if (first?.entry.type !== "work" || !first.entry.part) return undefined;
  const at = whole.scene.chunks.findIndex((one) => !one.senses.plain && !has(one, "det"));
  const noun = whole.scene.noun(at);
  const last = [...before].reverse().find((one) => "part" in one && one.part);
  if (!noun?.part || noun.part !== first.entry.part || !last || !("part" in last) || last.part === noun.part) return undefined;
  if (whole.scene.chunks[noun.to]?.senses.work) return undefined;
  const { part } = noun;
  return [...before.map((one) => ("part" in one && one.part === last.part ? ({ ...one, part } as Entry) : one)), ...whole.drafts.map((draft) => draft.entry)];
}

/** "correction, four" and then more: the number comes before anything else that is said. */
function bareNumberLeads(scene: Scene): boolean {
  const at = scene.chunks.findIndex((one) => !one.senses.plain || one.number !== undefined);
  const chunk = scene.chunks[at];
  if (!chunk?.number || chunk.used) return false;
  const next = scene.chunks[at + 1];
  return !(next?.senses.part || next?.senses.unit || next?.unknown || next?.talk || has(next, "prep") || has(next, "and"));
}

function amendBy(before: readonly Entry[], words: readonly string[], fragment: Fragment): Entry[] | undefined {
  return (
    amendTag(before, words, fragment) ??
    amendValve(before, fragment) ??
    amendNumber(before, words, fragment) ??
    amendTest(before, fragment) ??
    amendWhole(before, fragment) ??
    amendDetail(before, fragment) ??
    amendPart(before, fragment)
  );
}

const lastIndex = <T extends Entry["type"]>(entries: readonly Entry[], ...types: T[]): number => {
  for (let at = entries.length - 1; at >= 0; at -= 1) if (types.includes(entries[at]?.type as T)) return at;
  return -1;
};

const replaceAt = (entries: readonly Entry[], at: number, entry: Entry): Entry[] => entries.map((one, nth) => (nth === at ? entry : one));

function amendTag(before: readonly Entry[], words: readonly string[], fragment: Fragment): Entry[] | undefined {
  const at = lastIndex(before, "valve");
  const valve = before[at] as ValveEntry | undefined;
  const named = fragment.drafts.find((draft) => draft.entry.type === "valve" && draft.entry.tag);
  if (named && named.entry.type === "valve") return valve ? replaceAt(before, at, { ...valve, ...named.entry }) : undefined;
  if (!valve?.tag || at !== before.length - 1) return undefined;
  const start = words.findIndex((word, nth) => nth < 3 && readTagDigits(words, nth) !== undefined && word !== "to");
  if (start < 0) return undefined;
  const digits = readTagDigits(words, start);
  if (!digits || fragment.drafts.some((draft) => draft.entry.type === "reading")) return undefined;
  if (fragment.drafts.some((draft) => draft.entry.type === "valve") || fragment.scene.chunks.some((one) => one.unknown || one.talk)) return undefined;
  const [letters, old = ""] = valve.tag.split("-");
  const trailing = /[A-Z]$/.exec(old)?.[0] ?? "";
  return replaceAt(before, at, { ...valve, tag: `${letters}-${digits.digits}${trailing}` });
}

function amendValve(before: readonly Entry[], fragment: Fragment): Entry[] | undefined {
  const draft = fragment.drafts.find((one) => one.entry.type === "valve");
  const at = lastIndex(before, "valve");
  if (!draft || at < 0) return undefined;
  return replaceAt(before, at, { ...(before[at] as ValveEntry), ...draft.entry } as Entry);
}

/** "make that thirty five foot pounds", "correction, five eighths", "make that four". */
function amendNumber(before: readonly Entry[], words: readonly string[], fragment: Fragment): Entry[] | undefined {
  const readings = fragment.drafts.filter((draft) => draft.entry.type === "reading");
  const finding = fragment.drafts.some((draft) => draft.entry.type === "finding" || draft.entry.type === "work");
  if (readings.length > 0 && !finding) {
    let result: Entry[] = [...before];
    let matched = false;
    for (const { entry } of readings) {
      const reading = entry as Reading;
      const at = [...result.keys()].reverse().find((nth) => {
        const old = result[nth];
        return old?.type === "reading" && (old.quantity === reading.quantity || old.unit === reading.unit || related(old, reading));
      });
      if (at === undefined) continue;
      const old = result[at] as Reading;
      const quantity = reading.quantity === "pressure" && old.quantity.endsWith("pressure") ? old.quantity : reading.unit === old.unit ? (specific(reading) ? reading.quantity : old.quantity) : reading.quantity;
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
  const count = bareNumber(fragment.scene);
  if (!count || finding) return undefined;
  const last = before.at(-1);
  const at = before.length - 1 - [...before].reverse().findIndex((one) => one.type === "reading" || (one.type !== "test" && "count" in one && one.count !== undefined) || one.type === "need");
  const old = before[at];
  if (!old || !last) return undefined;
  // the nearest number spoken is the one corrected
  const numbered = lastNumbered(before);
  const target = numbered >= 0 ? before[numbered] : undefined;
  if (target?.type === "reading") {
    const next: Reading = { ...target, value: count.value };
    if (count.upper === undefined) delete next.upper;
    else next.upper = count.upper;
    if (count.unit) next.unit = count.unit as Reading["unit"];
    return replaceAt(before, numbered, next);
  }
  if (!Number.isInteger(count.value) || count.value < 1 || count.unit) return undefined;
  if (target && (target.type === "work" || target.type === "finding" || target.type === "need")) return replaceAt(before, numbered, { ...target, count: count.value });
  if (last.type === "work" || last.type === "need") return replaceAt(before, before.length - 1, { ...last, count: count.value });
  void words;
  return undefined;
}

const specific = (reading: Reading) => reading.quantity.endsWith("_pressure");
const related = (old: Reading, reading: Reading) =>
  (old.quantity === "travel" && reading.quantity === "length") || (old.quantity.endsWith("pressure") && reading.quantity.endsWith("pressure")) || (old.quantity === "torque" && reading.unit === "psi" && reading.quantity === "pressure");

function lastNumbered(entries: readonly Entry[]): number {
  for (let at = entries.length - 1; at >= 0; at -= 1) {
    const entry = entries[at];
    if (entry?.type === "reading") return at;
    if (entry && (entry.type === "work" || entry.type === "finding" || entry.type === "need") && entry.count !== undefined) return at;
  }
  return -1;
}

function bareNumber(scene: Scene): { value: number; upper?: number; unit?: string } | undefined {
  const measure = findMeasures(scene)[0];
  if (measure) return { value: measure.value, upper: measure.upper, unit: measure.unit === "pound" || measure.unit === "degree" ? undefined : measure.unit };
  const chunk = scene.chunks.find((one) => one.number);
  if (!chunk?.number) return undefined;
  const others = scene.chunks.some((one) => one.unknown || one.talk || one.senses.part);
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

function amendTest(before: readonly Entry[], fragment: Fragment): Entry[] | undefined {
  const at = lastIndex(before, "test");
  const said = fragment.drafts.find((draft) => draft.entry.type === "test")?.entry;
  if (said?.type === "test" && at >= 0) {
    const old = before[at];
    if (old?.type === "test") return replaceAt(before, at, { ...old, test: said.test, result: said.result ?? old.result });
  }
  if (at === before.length - 1 && at >= 0 && fragment.drafts.length === 0) {
    const verdict = fragment.scene.chunks.find((one) => one.senses.verdict)?.senses.verdict;
    const old = before[at];
    if (verdict && old?.type === "test") return replaceAt(before, at, { ...old, result: verdict });
  }
  return undefined;
}

/** "it's scored", "I mean replaced it", "seat's eroded": a whole finding or work in place of the last. */
function amendWhole(before: readonly Entry[], fragment: Fragment): Entry[] | undefined {
  const said = fragment.drafts.map((draft) => ({ ...draft, entry: draft.entry }));
  const findings = said.filter((draft) => draft.entry.type === "finding");
  const works = said.filter((draft) => draft.entry.type === "work");
  const needs = said.filter((draft) => draft.entry.type === "need");
  const hazards = said.filter((draft) => draft.entry.type === "hazard");
  if (findings.length + works.length + needs.length + hazards.length === 0) return undefined;
  let result = [...before];
  for (const { entry, named } of findings) {
    if (entry.type !== "finding") continue;
    const at = lastOnPart(result, "finding", named ? entry.part : undefined);
    const old = result[at] as Finding | undefined;
    if (!old) {
      result.splice(lastIndex(result, "finding") + 1, 0, entry);
      continue;
    }
    const part = named ? entry.part : old.part;
    const next: Finding = { ...old, ...entry, part };
    if (part === undefined) delete next.part;
    for (const key of ["absent", "unsure"] as const) if (!(key in entry)) delete next[key];
    if (entry.condition === "ok" || entry.condition !== old.condition) {
      for (const key of ["severity", "extent"] as const) if (!(key in entry) && (entry.condition === "ok" || entry.condition === "missing")) delete next[key];
    }
    if (named && entry.part !== old.part && !("place" in entry)) delete next.place;
    result = replaceAt(result, at, next);
    if (named && entry.part !== old.part) result = result.map((one) => (one.type === "work" && one.part === old.part ? { ...one, part: entry.part } : one));
  }
  for (const { entry, named } of works) {
    if (entry.type !== "work") continue;
    const at = lastIndex(result, "work");
    const old = result[at] as WorkEntry | undefined;
    if (!old) {
      result.splice(lastIndex(result, "finding", "valve") + 1, 0, named ? entry : { ...entry, part: (result.at(-1) as Finding | undefined)?.part ?? entry.part });
      continue;
    }
    const next: WorkEntry = { ...old, work: entry.work, status: entry.status, part: named && entry.part ? entry.part : old.part };
    if (entry.count !== undefined) next.count = entry.count;
    if (next.part === undefined) delete next.part;
    if (!entry.unsure) delete next.unsure;
    result = replaceAt(result, at, next);
  }
  for (const { entry } of needs) {
    const at = lastIndex(result, "need");
    if (at >= 0) result = replaceAt(result, at, { ...(result[at] as Entry), ...entry } as Entry);
    else result.push(entry);
  }
  for (const { entry } of hazards) {
    const at = lastIndex(result, "hazard");
    result = at >= 0 ? replaceAt(result, at, entry) : [...result, entry];
  }
  return result;
}

function lastOnPart(entries: readonly Entry[], type: "finding", part: string | undefined): number {
  if (part) for (let at = entries.length - 1; at >= 0; at -= 1) if (entries[at]?.type === type && (entries[at] as Finding).part === part) return at;
  return lastIndex(entries, type);
}

/** "badly bent", "both sides", "outlet side", "not the edge": a detail of the last finding. */
function amendDetail(before: readonly Entry[], fragment: Fragment): Entry[] | undefined {
  const { chunks } = fragment.scene;
  if (chunks.some((one) => one.unknown || one.talk || one.senses.part)) return undefined;
  const extent = chunks.find((one) => one.senses.extent)?.senses.extent;
  const severity = chunks.find((one) => one.senses.severity && !has(one, "it"))?.senses.severity;
  const place = chunks.find((one) => one.senses.place)?.senses.place;
  const word = chunks.find((one) => one.senses.condition)?.senses.condition?.[0]?.code;
  const at = lastIndex(before, "finding");
  const old = before[at] as Finding | undefined;
  const named = place ? renamedByPlace(before, place) : undefined;
  if (named) return named;
  if (!old || (!extent && !severity && !place && !word)) return undefined;
  const next: Finding = { ...old };
  if (extent) next.extent = extent;
  if (severity) next.severity = severity;
  if (place) next.place = place;
  if (word && !severity) next.condition = word;
  return replaceAt(before, at, next);
}

/** "I mean the lower": a place that makes another part of the one just named. */
function renamedByPlace(before: readonly Entry[], place: Finding["place"]): Entry[] | undefined {
  const last = [...before].reverse().find((one) => "part" in one && one.part);
  if (!last || !("part" in last) || !last.part) return undefined;
  const renamed = placed({ part: last.part, place });
  if (renamed.place !== undefined || renamed.part === last.part) return undefined;
  return before.map((one) => ("part" in one && one.part === last.part && one.type !== "need" ? ({ ...one, part: renamed.part } as Entry) : one));
}

/** "correction, bonnet": every entry of that phrase that shares the old part. */
function amendPart(before: readonly Entry[], fragment: Fragment): Entry[] | undefined {
  const { chunks } = fragment.scene;
  if (fragment.drafts.length > 0 || chunks.some((one) => one.unknown || one.talk)) return undefined;
  const index = chunks.findIndex((_, at) => fragment.scene.noun(at)?.part !== undefined);
  if (index < 0 || index > 3) return undefined;
  const noun = fragment.scene.noun(index) as Named;
  const last = [...before].reverse().find((one) => "part" in one && one.part);
  const bare = before.at(-1);
  if (!last || !("part" in last)) {
    if (bare && (bare.type === "finding" || bare.type === "work")) return replaceAt(before, before.length - 1, { ...bare, part: noun.part } as Entry);
    return undefined;
  }
  const old = last.part;
  for (const [at, chunk] of fragment.scene.chunks.entries()) if (chunk.senses.part) fragment.scene.use(at);
  return before.map((one) => {
    if (!("part" in one) || one.part !== old) return one;
    const next = { ...one, part: noun.part } as Finding;
    if (next.type === "finding") {
      if (noun.place) next.place = noun.place;
    }
    if (noun.count !== undefined) next.count = noun.count;
    return next as Entry;
  });
}

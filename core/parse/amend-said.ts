/** Step 6: a finding, a work or a detail put right. */

import type { Entry, Finding, WorkEntry } from "../shapes/entry.ts";
import { ROLE } from "../vocabulary/grammar.ts";
import { has } from "./chunks.ts";
import type { Fragment } from "./fragment.ts";
import { placed } from "./places.ts";
import { lastFindingOn, lastIndex, replaceAt } from "./standing.ts";

/** "it's scored", "I mean replaced it", "seat's eroded": a whole finding or work in place of the last. */
export function amendWhole(before: readonly Entry[], fragment: Fragment): Entry[] | undefined {
  const said = fragment.drafts;
  const findings = said.filter((draft) => draft.entry.type === "finding");
  const works = said.filter((draft) => draft.entry.type === "work");
  const needs = said.filter((draft) => draft.entry.type === "need");
  const hazards = said.filter((draft) => draft.entry.type === "hazard");
  if (findings.length + works.length + needs.length + hazards.length === 0) return undefined;
  let result = [...before];
  for (const { entry, named } of findings) {
    if (entry.type !== "finding") continue;
    const at = lastFindingOn(result, named ? entry.part : undefined);
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
      for (const key of ["severity", "extent"] as const)
        if (!(key in entry) && (entry.condition === "ok" || entry.condition === "missing")) delete next[key];
    }
    if (named && entry.part !== old.part && !("place" in entry)) delete next.place;
    result = replaceAt(result, at, next);
    if (named && entry.part !== old.part)
      result = result.map((one) => (one.type === "work" && one.part === old.part ? { ...one, part: entry.part } : one));
  }
  for (const { entry, named } of works) {
    if (entry.type !== "work") continue;
    const at = lastIndex(result, "work");
    const old = result[at] as WorkEntry | undefined;
    if (!old) {
      result.splice(
        lastIndex(result, "finding", "valve") + 1,
        0,
        named ? entry : { ...entry, part: (result.at(-1) as Finding | undefined)?.part ?? entry.part },
      );
      continue;
    }
    const next: WorkEntry = {
      ...old,
      work: entry.work,
      status: entry.status,
      part: named && entry.part ? entry.part : old.part,
    };
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

/** "badly bent", "both sides", "outlet side", "not the edge": a detail of the last finding. */
export function amendDetail(before: readonly Entry[], fragment: Fragment): Entry[] | undefined {
  const { chunks } = fragment.scene;
  if (chunks.some((one) => one.unknown || one.talk || one.senses.part)) return undefined;
  const extent = chunks.find((one) => one.senses.extent)?.senses.extent;
  const severity = chunks.find((one) => one.senses.severity && !has(one, ROLE.it))?.senses.severity;
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
  return before.map((one) =>
    "part" in one && one.part === last.part && one.type !== "need" ? ({ ...one, part: renamed.part } as Entry) : one,
  );
}

import type { Part } from "../shapes/codes.ts";
import type { Consequences, FollowUp } from "../shapes/consequence.ts";
import { isKind, isSoft, isTrim, ofKind, reaches } from "./parts.ts";
import type { Bench } from "./rule.ts";
import { isDone } from "./visit.ts";

/** Parts fitted today, and parts that what is owed will take. Kits and seals stay one line each. */
export function partsList(bench: Bench, owed: readonly FollowUp[]): Consequences["parts"] {
  const { entries } = bench.today;
  const replaced = new Map<Part, number>();
  const installed = new Map<Part, number>();
  for (const entry of entries) {
    if (entry.type !== "work" || entry.status !== "done" || entry.unsure || entry.part === undefined) continue;
    const into = entry.work === "replaced" ? replaced : entry.work === "installed" ? installed : undefined;
    into?.set(entry.part, (into.get(entry.part) ?? 0) + (entry.count ?? 1));
  }
  // A part replaced and then said to be put in is one part, not two.
  const used = new Map<Part, number>(replaced);
  for (const [part, count] of installed) used.set(part, Math.max(count, used.get(part) ?? 0));

  const needed = new Map<Part, number>();
  for (const one of owed) {
    if (one.do !== "replace" || one.part === undefined) continue;
    if (entries.some((entry) => isDone(entry, ["replaced", "installed"], one.part, bench.family))) continue;
    needed.set(one.part, Math.max(one.count ?? 1, needed.get(one.part) ?? 0));
  }
  return { used: lines(used), needed: lines(needed) };
}

function lines(counts: ReadonlyMap<Part, number>): { part: Part; count: number }[] {
  return [...counts].map(([part, count]) => ({ part, count }));
}

/**
 * Items of the inspection list not heard in this job. A part is heard where a finding, work or reading names it or a
 * set that holds it. A general word is taken for both of a pair ("diaphragm" for upper and lower), not for one of
 * many: "gasket" says nothing of which of four.
 */
export function missingItems({ family, today }: Bench): Part[] {
  const heard = new Set<Part>();
  for (const entry of today.entries) {
    if (entry.type !== "finding" && entry.type !== "work" && entry.type !== "reading") continue;
    if (entry.part) heard.add(entry.part);
    if (entry.resolved) heard.add(entry.resolved);
  }
  return family.inspection.filter(
    (item) =>
      ![...heard].some(
        (said) =>
          reaches(said, item, family, false) ||
          (isKind(said, item) && ofKind(said, family).length <= 2) ||
          (said === "seals" && isSoft(item, family)) ||
          (said === "trim" && isTrim(item, family)),
      ),
  );
}

import type { Part } from "../../shapes/codes.ts";
import { isSoft } from "../parts.ts";
import type { Bench } from "../rule.ts";
import { isSet } from "./explode.ts";

/** This many soft goods replaced in one job is a change of the seals, not a find. */
const SEAL_CHANGE = 3;

/** Parts replaced because they were found bad, over the jobs of like valves; a change of all seals is planned work. */
export function findsOf(benches: readonly Bench[]): { finds: Map<Part, number>; jobs: number } {
  const finds = new Map<Part, number>();
  let jobs = 0;
  for (const { visits, family } of benches)
    for (const { entries } of visits) {
      if (!entries.some((entry) => entry.type === "finding" || entry.type === "work")) continue;
      jobs += 1;
      const replaced = entries.flatMap((entry) =>
        entry.type === "work" && entry.work === "replaced" && entry.status === "done" && entry.part && !entry.unsure
          ? [{ part: entry.part, count: entry.count ?? 1 }]
          : [],
      );
      const planned =
        replaced.some(({ part }) => isSet(part)) ||
        replaced.filter(({ part }) => isSoft(part, family)).length >= SEAL_CHANGE;
      for (const { part, count } of replaced) {
        if (isSet(part) || part === "valve" || (planned && isSoft(part, family))) continue;
        finds.set(part, (finds.get(part) ?? 0) + count);
      }
    }
  return { finds, jobs };
}

import { boltPasses, PASSES_SOURCE } from "../compute/bolt-passes.ts";
import { familyOf } from "../families/index.ts";
import type { Part, Unit } from "../shapes/codes.ts";
import type { FollowUp } from "../shapes/consequence.ts";
import type { Entry } from "../shapes/entry.ts";
import type { Family, Valve } from "../shapes/valve.ts";
import { reaches } from "./parts.ts";

/** How one joint of a valve is tightened: its bolts in order, round by round, and the torque limits where known. */
export interface BoltingPlan {
  part: Part;
  count: number;
  rounds: { name: string; told: string; torque?: string; order: number[] }[];
  limit?: { min: number; max: number; unit: Unit };
  /** said in this job, worked on or owed again: to be shown first */
  wanted: boolean;
  retorque: boolean;
  source: string;
}

/**
 * The bolted joints of a valve of known size. A circle without a cross pattern (odd, fewer than 4) has no plan here:
 * the maker's order governs it, and it is left out rather than guessed.
 */
export function boltingPlans(
  valve: Valve,
  entries: readonly Entry[],
  followUps: readonly FollowUp[],
  families: readonly Family[] = [],
): BoltingPlan[] {
  const family = familyOf(valve.family, families);
  const size = entries.findLast((entry) => entry.type === "valve" && entry.size_in !== undefined);
  const size_in = size?.type === "valve" ? size.size_in : valve.size_in;
  if (size_in === undefined) return [];
  const fits = (line: { size_in: [number, number] }) => size_in >= line.size_in[0] && size_in <= line.size_in[1];
  return family.bolts.flatMap((line): BoltingPlan[] => {
    const { part, count } = line;
    if (!fits(line) || count < 4 || count % 2 === 1) return [];
    const limit = family.torque.find((one) => one.part === part && fits(one));
    const retorque = followUps.some((one) => one.do === "retorque" && reaches(one.part, part, family, true));
    const said = entries.some(
      (entry) =>
        (entry.type === "reading" || entry.type === "work") && entry.part && reaches(entry.part, part, family, true),
    );
    return [
      {
        part,
        count,
        rounds: boltPasses(count).map(({ name, told, percent: [low, high], order }) => ({
          name,
          told,
          order,
          ...(limit ? { torque: range((low / 100) * limit.min, (high / 100) * limit.max) } : {}),
        })),
        ...(limit ? { limit: { min: limit.min, max: limit.max, unit: limit.unit } } : {}),
        wanted: retorque || said,
        retorque,
        source: `${PASSES_SOURCE}${limit ? `; limits: ${limit.source}` : ""}; bolt count: ${family.sources?.bolts ?? family.source}`,
      },
    ];
  });
}

function range(low: number, high: number): string {
  return `${Number(low.toPrecision(2))} to ${Number(high.toPrecision(2))}`;
}

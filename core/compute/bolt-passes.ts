import { boltSequence } from "./bolt-sequence.ts";

/** One round of the wrench. */
export interface BoltPass {
  name: string;
  /** share of the target torque, per cent */
  percent: [number, number];
  /** the bolts in order, 1-based, clockwise */
  order: number[];
  /** as a person is told it */
  told: string;
}

export const PASSES_SOURCE =
  "common practice after ASME PCC-1: three rounds in the cross pattern, then round the circle; percentages from memory";

/**
 * The rounds in which `n` bolts are tightened. Throws RangeError where there is no cross pattern (odd, fewer than 4).
 * Percentages are of the target torque, which the maker's or the site's procedure sets.
 */
export function boltPasses(n: number): BoltPass[] {
  const cross = boltSequence(n);
  const round = Array.from({ length: n }, (_, i) => i + 1);
  return [
    { name: "Snug", percent: [10, 20], order: cross, told: "snug by hand, faces parallel, in the cross pattern" },
    { name: "Round 1", percent: [20, 30], order: cross, told: "20 to 30 % of the target, in the cross pattern" },
    { name: "Round 2", percent: [50, 70], order: cross, told: "50 to 70 % of the target, in the cross pattern" },
    { name: "Round 3", percent: [100, 100], order: cross, told: "all of the target, in the cross pattern" },
    {
      name: "Round 4",
      percent: [100, 100],
      order: round,
      told: "all of the target, clockwise one after another, until no nut turns any more",
    },
  ];
}

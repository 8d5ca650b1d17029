import { fitWeibull, type WeibullFit } from "../compute/weibull.ts";
import type { Life } from "../shapes/valve.ts";
import type { SeatStory } from "./seat-story.ts";
import { monthFigure, spokenMonths } from "./words.ts";

/** What the lives of seat sides say about the one in place. */
export interface Pattern {
  /** months that 9 in 10 sides like this one last from here on, at the lower 90 % bound */
  bound: number;
  established: boolean;
  /** how many worn sides, at what ages, and what follows: for a technician */
  why: string;
}

const OWN_ENOUGH = 3;
const TOGETHER_ENOUGH = 5;
/** The 80 % interval of B10 may span no more than this. */
const STEADY = 3;

/**
 * Fits the valve's own lives where at least 3 have ended, else own and like valves' together where at least 5 have.
 * `age`: how old the sound side in place was when last seen, months. Nothing where there is no fit.
 */
export function wearPattern(seat: SeatStory, fleet: readonly Life[], age: number): Pattern | undefined {
  const own = seat.lives;
  const pooled = ended(own) < OWN_ENOUGH;
  const lives = pooled ? [...own, ...fleet.filter(isLife)] : own;
  if (pooled && ended(lives) < TOGETHER_ENOUGH) return undefined;
  const fit = fitWeibull(lives);
  if (!fit.ok) return undefined;
  if (!fit.converged)
    return { bound: 0, established: false, why: "the fit to the lives did not converge, so no pattern is claimed" };
  const low = fit.lowerBound(0.1, 0.9);
  const high = fit.upperBound(0.1, 0.9);
  const bound = fit.waitBound(age);
  if (!Number.isFinite(bound)) return undefined;
  const established = fit.ended >= OWN_ENOUGH && high <= STEADY * low * (1 + 1e-9);
  return { bound, established, why: tell(lives, fit, pooled, age, bound, established, low, high, seat.changed) };
}

function tell(
  lives: readonly Life[],
  fit: WeibullFit,
  pooled: boolean,
  age: number,
  bound: number,
  established: boolean,
  low: number,
  high: number,
  changed: number,
): string {
  const worn = lives.filter((life) => life.upper !== undefined);
  const from = Math.min(...worn.map((life) => life.lower));
  const to = Math.max(...worn.map((life) => life.upper as number));
  const times = worn.length === 1 ? "once" : worn.length === 2 ? "twice" : `${worn.length} times`;
  const ran = changed === 0 ? "" : `, ${changed} of them through a change of service`;
  const seen = `worn ${times} at ${monthFigure(from)} to ${spokenMonths(to)}${pooled ? " on this and like valves" : ""}${ran}`;
  const held = fit.held
    ? `; the ages say too little of the spread, shape held at ${fit.held === "greatest" ? 20 : 0.2}`
    : "";
  if (!established)
    return `${seen}, no steady pattern yet (the first tenth is worn after ${monthFigure(low)} to ${Number.isFinite(high) ? spokenMonths(high) : "any number of months"})${held}`;
  return age > 0
    ? `${seen}${held}; of sides sound at ${spokenMonths(age)} about 9 in 10 last ${spokenMonths(bound)} more`
    : `${seen}${held}; about 9 in 10 sides last ${spokenMonths(bound)} or more`;
}

function ended(lives: readonly Life[]): number {
  return lives.reduce((sum, life) => sum + (life.upper === undefined ? 0 : 1), 0);
}

/** A length of nothing is no life; neither is one that ends before it begins. */
function isLife(life: Life): boolean {
  return life.upper === undefined ? life.lower > 0 : life.upper >= life.lower && life.upper > 0;
}

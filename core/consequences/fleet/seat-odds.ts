import { earlier, later, monthsBetween } from "../../compute/calendar.ts";
import { fitWeibull, type WeibullFit } from "../../compute/weibull.ts";
import type { Life } from "../../shapes/valve.ts";
import type { Bench } from "../rule.ts";

/** How likely a seat side is to be found worn at its next look. */
export interface SeatOdds {
  chance: number;
  /** what it rests on */
  from: string;
}

const OWN_ENOUGH = 3;

/** What all sides of one family and service say together: a fit where there is one, and how often a look found wear. */
export interface SeatRecord {
  lives: Life[];
  fit: WeibullFit | undefined;
  looks: number;
  worn: number;
}

export function seatRecord(benches: readonly Bench[]): SeatRecord {
  const lives = benches.flatMap((bench) => bench.seat.lives);
  const fit = fitWeibull(lives);
  let looks = 0;
  let worn = 0;
  for (const { visits } of benches)
    for (const { entries } of visits) {
      const seat = entries.filter((entry) => entry.type === "finding" && entry.part === "seat" && !entry.unsure);
      if (seat.length === 0) continue;
      looks += 1;
      if (
        seat.some(
          (entry) =>
            entry.type === "finding" && !entry.absent && entry.condition !== "ok" && entry.condition !== "intact",
        )
      )
        worn += 1;
    }
  return { lives, fit: fit.ok && fit.converged && fit.ended >= OWN_ENOUGH ? fit : undefined, looks, worn };
}

/**
 * The chance that the side in place is worn by `on`: 1 - R(t + x) / R(t) by the valve's own lives where three have
 * ended, else by those of like valves; without a fit or an age, the share of looks that found wear, drawn a little
 * towards a half (Jeffreys), since no share of few looks is nothing.
 */
export function seatOdds(bench: Bench, like: SeatRecord, on: string): SeatOdds {
  const { seat } = bench;
  const ended = seat.lives.filter((life) => life.upper !== undefined).length;
  const own = ended >= OWN_ENOUGH ? fitWeibull(seat.lives) : undefined;
  const fit = own?.ok && own.converged ? own : like.fit;
  if (fit && seat.side === "sound" && seat.age !== undefined && seat.seenOn !== undefined) {
    const until = seat.age + Math.max(0, monthsBetween(seat.seenOn, later(seat.seenOn, earlier(on, "9999-12-31"))));
    const hazard = (age: number) => (age / fit.scale) ** fit.shape;
    const chance = -Math.expm1(hazard(seat.age) - hazard(until));
    return { chance, from: fit === own ? "by its own seat lives" : "by the seat lives of like valves" };
  }
  return {
    chance: (like.worn + 0.5) / (like.looks + 1),
    from: `worn at ${like.worn} of ${like.looks} looks at like seats`,
  };
}

import { addDays, addMonths, later, MONTH_DAYS, spokenDate, wholeDays } from "../compute/calendar.ts";
import type { Due } from "../shapes/consequence.ts";
import type { Life } from "../shapes/valve.ts";
import type { Bench } from "./rule.ts";
import { type Pattern, wearPattern } from "./wear-pattern.ts";
import { spokenMonths } from "./words.ts";

/** Severe service looks after this long until a pattern shows. */
const START_MONTHS = 1;
const WEEK_DAYS = 7;
const WEEK_MONTHS = WEEK_DAYS / MONTH_DAYS;
/** In normal service a pattern never asks sooner than this. */
const NORMAL_FLOOR_MONTHS = 1;

type Basis = Due["basis"];
interface Term {
  on: string;
  months: number;
  basis: Basis;
  why: string;
}

/** When the seat is next to be looked at, counted from the last job that saw it. */
export function seatDate(bench: Bench, fleet: readonly Life[]): Due {
  const { seat, valve, family, on } = bench;
  const severe = valve.service === "severe";
  const cap: { months: number; basis: Basis; source: string } =
    valve.interval_months === undefined
      ? {
          months: family.intervals.seat_inspection_months,
          basis: "interval",
          source: family.intervals.source,
        }
      : { months: valve.interval_months, basis: "site", source: "site setting" };
  const start: { months: number; basis: Basis } =
    cap.months < START_MONTHS
      ? { months: cap.months, basis: cap.basis }
      : { months: START_MONTHS, basis: "severe_start" };

  if (seat.seenOn === undefined) {
    const { months, basis } = severe ? start : cap;
    return {
      task: "seat_inspection",
      on,
      months,
      basis,
      why: "no job on record has seen the seat, so it is due at once",
    };
  }
  const seen = seat.seenOn;
  const latest: Term = {
    on: addMonths(seen, cap.months),
    months: cap.months,
    basis: cap.basis,
    why: `seat last seen ${spokenDate(seen)}; ${severe ? "never longer than" : "every"} ${spokenMonths(cap.months)} (${cap.source})`,
  };
  // Only a sound side of known age can be told how long it has left; of another, only whether there is a pattern.
  const aged = seat.side === "sound" && seat.age !== undefined;
  const pattern = aged || severe ? wearPattern(seat, fleet, seat.age ?? 0) : undefined;
  const term = severe ? severeTerm(bench, seen, start, latest, pattern, aged) : normalTerm(seen, latest, pattern);
  return {
    task: "seat_inspection",
    ...term,
    why: `${term.why}, so ${term.on < on ? "it was due" : "look again by"} ${spokenDate(term.on)}`,
  };
}

function severeTerm(
  bench: Bench,
  seen: string,
  start: { months: number; basis: Basis },
  latest: Term,
  pattern: Pattern | undefined,
  aged: boolean,
): Term {
  if (pattern?.established && aged) {
    const on = addDays(seen, Math.max(WEEK_DAYS, wholeDays(pattern.bound)));
    return on > latest.on
      ? { ...latest, why: `${pattern.why}; ${latest.why}` }
      : patternTerm(on, pattern, Math.max(pattern.bound, WEEK_MONTHS));
  }
  const first: Term = {
    on: addMonths(seen, start.months),
    ...start,
    why: `severe service, seat last seen ${spokenDate(seen)}, start at ${spokenMonths(start.months)}${reason(bench, pattern)}`,
  };
  if (pattern?.established) return first;
  const shortest = Math.min(...bench.seat.lives.flatMap((life) => (life.upper === undefined ? [] : [life.upper])));
  if (!Number.isFinite(shortest)) return first;
  const half = addDays(seen, Math.max(WEEK_DAYS, wholeDays(shortest / 2)));
  if (half >= first.on) return first;
  return {
    on: half,
    months: round(Math.max(shortest / 2, WEEK_MONTHS)),
    basis: "severe_start",
    why: `severe service, seat last seen ${spokenDate(seen)}; one side was worn within ${spokenMonths(shortest)}, and half of that is taken until a pattern shows`,
  };
}

function normalTerm(seen: string, latest: Term, pattern: Pattern | undefined): Term {
  if (!pattern?.established) return latest;
  const floor = addMonths(seen, NORMAL_FLOOR_MONTHS);
  const told = addDays(seen, wholeDays(pattern.bound));
  const on = later(floor, told);
  return on < latest.on ? patternTerm(on, pattern, Math.max(pattern.bound, NORMAL_FLOOR_MONTHS)) : latest;
}

function patternTerm(on: string, pattern: Pattern, months: number): Term {
  const floored = months > pattern.bound ? `; never sooner than ${months === WEEK_MONTHS ? "a week" : "a month"}` : "";
  return { on, months: round(months), basis: "wear_pattern", why: `${pattern.why}${floored}` };
}

function reason(bench: Bench, pattern: Pattern | undefined): string {
  if (bench.seat.side === "worn") return ", the worn side was left in";
  if (pattern?.established) return ", the age of the side in place is not known";
  if (pattern) return `: ${pattern.why}`;
  return " until a pattern shows";
}

function round(months: number): number {
  return Math.round(months * 10) / 10;
}

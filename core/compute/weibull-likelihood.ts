import type { Life } from "../shapes/valve.ts";

/**
 * The log-likelihood of a Weibull distribution for lives that ended within an interval, ended at a known age
 * (`lower` = `upper`) or had not ended (no `upper`), with its slopes, in b = shape and a = -shape ln scale.
 * In these two it is concave: one maximum, and every set where it exceeds a level is convex.
 */

/** A life, and how many of them were alike (1 where nothing is said). */
export type CountedLife = Life & { count?: number };

/** Lives with ages as logarithms, measured from `unit` so that powers stay near 1. */
export interface Lives {
  /** the age, in the caller's unit, whose logarithm is 0 */
  unit: number;
  /** 0 still sound at `low`, 1 ended between `low` and `high`, 2 ended at `low`, 3 ended before `high` */
  kind: Uint8Array;
  low: Float64Array;
  high: Float64Array;
  count: Float64Array;
  /** how many ended */
  ended: number;
}

/** Value, slopes and second slopes of the log-likelihood at one point. */
export interface Slopes {
  l: number;
  a: number;
  b: number;
  aa: number;
  ab: number;
  bb: number;
}

/**
 * Sorts lives by kind and takes logarithms; lives of length 0 are no lives and are left out.
 * Gives a sentence where no likelihood can have a maximum, or where a life is not one.
 */
export function prepareLives(given: readonly CountedLife[]): { lives: Lives } | { why: string } {
  const kept = given.filter(
    (life) => (life.count ?? 1) > 0 && (life.upper === undefined ? life.lower > 0 : life.upper > 0),
  );
  if (given.some((life) => !(life.lower >= 0) || (life.upper !== undefined && !(life.upper >= life.lower))))
    return { why: "a life ends before it begins" };
  const finite = kept.filter((life) => Number.isFinite(life.lower));
  let logs = 0;
  let known = 0;
  let ended = 0;
  let soundOnce = false;
  for (const life of finite) {
    const age = life.lower > 0 ? life.lower : (life.upper as number);
    if (Number.isFinite(age)) {
      logs += Math.log(age);
      known += 1;
    }
    if (life.upper !== undefined && life.upper !== Number.POSITIVE_INFINITY) ended += life.count ?? 1;
    if (life.lower > 0) soundOnce = true;
  }
  if (ended === 0) return { why: "no life has ended yet" };
  if (!soundOnce) return { why: "no side was ever found sound before it was found worn" };
  const centre = logs / known;
  const kind = new Uint8Array(finite.length);
  const low = new Float64Array(finite.length);
  const high = new Float64Array(finite.length);
  const count = new Float64Array(finite.length);
  finite.forEach((life, i) => {
    const open = life.upper === undefined || life.upper === Number.POSITIVE_INFINITY;
    kind[i] = open ? 0 : life.lower === life.upper ? 2 : life.lower === 0 ? 3 : 1;
    low[i] = life.lower > 0 ? Math.log(life.lower) - centre : 0;
    high[i] = open ? 0 : Math.log(life.upper as number) - centre;
    count[i] = life.count ?? 1;
  });
  return { lives: { unit: Math.exp(centre), kind, low, high, count, ended } };
}

/**
 * The log-likelihood at (a, b), its slopes written into `out`. Ages are in `lives.unit`; an exact life's density
 * is per that unit. ln[F(u) - F(l)] is taken as -A + ln(1 - e^-(B - A)), which loses no digits where the
 * difference of two near ones would.
 */
export function slopesAt(lives: Lives, a: number, b: number, out: Slopes): Slopes {
  let l = 0;
  let la = 0;
  let lb = 0;
  let aa = 0;
  let ab = 0;
  let bb = 0;
  const { kind, low, high, count } = lives;
  for (let i = 0; i < kind.length; i++) {
    const n = count[i] as number;
    const x = low[i] as number;
    const sort = kind[i] as number;
    if (sort === 2) {
      const e = Math.exp(a + b * x);
      l += n * (Math.log(b) - x + a + b * x - e);
      la += n * (1 - e);
      lb += n * (1 / b + x - e * x);
      aa -= n * e;
      ab -= n * e * x;
      bb -= n * (1 / (b * b) + e * x * x);
      continue;
    }
    let atLow = 0;
    if (sort !== 3) {
      atLow = Math.exp(a + b * x);
      l -= n * atLow;
      la -= n * atLow;
      lb -= n * atLow * x;
      aa -= n * atLow;
      ab -= n * atLow * x;
      bb -= n * atLow * x * x;
    }
    if (sort === 0) continue;
    const y = high[i] as number;
    const atHigh = Math.exp(a + b * y);
    const gap = sort === 3 ? atHigh : atLow * Math.expm1(b * (y - x));
    // Beyond this the life ends in its interval for certain as far as a double can tell.
    if (!(gap < 700)) continue;
    l += n * Math.log(-Math.expm1(-gap));
    const w = 1 / Math.expm1(gap);
    const gapB = atHigh * y - atLow * x;
    const second = w * (1 + w);
    la += n * w * gap;
    lb += n * w * gapB;
    aa += n * (w * gap - second * gap * gap);
    ab += n * (w * gapB - second * gap * gapB);
    bb += n * (w * (atHigh * y * y - atLow * x * x) - second * gapB * gapB);
  }
  out.l = Number.isNaN(l) ? Number.NEGATIVE_INFINITY : l;
  out.a = la;
  out.b = lb;
  out.aa = aa;
  out.ab = ab;
  out.bb = bb;
  return out;
}

/** A fresh place for slopes. */
export function noSlopes(): Slopes {
  return { l: 0, a: 0, b: 0, aa: 0, ab: 0, bb: 0 };
}

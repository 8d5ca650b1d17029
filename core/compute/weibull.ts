import { chiSquareOneQuantile } from "./normal-quantile.ts";
import { type CountedLife, type Lives, prepareLives } from "./weibull-likelihood.ts";
import { climb } from "./weibull-newton.ts";
import { type Fence, highest, type Peak, type ShapeRange } from "./weibull-peak.ts";
import { farthest, type Level } from "./weibull-region.ts";

/** The shape is held here, in the fit and in the region: beyond lie only sets that say nothing about it. */
export const LEAST_SHAPE = 0.2;
export const GREATEST_SHAPE = 20;

/** 2(l_max - l) for a two-sided 80 %, a one-sided 90 % likelihood bound. */
export const NINE_IN_TEN = 1.6424;

/** A Weibull distribution fitted to lives; ages in the unit of the lives. */
export interface WeibullFit {
  ok: true;
  shape: number;
  scale: number;
  /** natural, nothing dropped; an exact life counts its density per unit of age */
  logLikelihood: number;
  converged: boolean;
  /** lives that ended */
  ended: number;
  /** where the shape stands at an end of its range: the lives alone would let it run on */
  held?: "least" | "greatest";
  /** age by which a share `p` has ended, 0 < p < 1 */
  quantile(p: number): number;
  /** one-sided likelihood-ratio lower bound of that age, 0.5 <= confidence < 1 */
  lowerBound(p: number, confidence: number): number;
  /** one-sided upper bound; Infinity where it has no end */
  upperBound(p: number, confidence: number): number;
  /** with one still sound at `age`: the further time that 9 in 10 last */
  wait(age: number): number;
  /** the least such wait that the lives still make likely: one-sided 90 % bound */
  waitBound(age: number): number;
}

/** There is none: a sentence saying why, and no number. */
export interface NoEstimate {
  ok: false;
  problem: "no_estimate";
  why: string;
}

/**
 * Fits by maximum likelihood; see `prepareLives` for what counts as a life.
 * `shape` fixes the shape and fits the scale alone. Bounds keep to the same range of shapes.
 * Throws RangeError for a shape that is not above 0, or for a share or confidence out of its range.
 */
export function fitWeibull(lives: readonly CountedLife[], options: { shape?: number } = {}): WeibullFit | NoEstimate {
  const { shape } = options;
  if (shape !== undefined && !(shape > 0 && Number.isFinite(shape))) throw new RangeError("a shape is above 0");
  const prepared = prepareLives(lives);
  if ("why" in prepared) return { ok: false, problem: "no_estimate", why: prepared.why };
  const data = prepared.lives;
  const range: ShapeRange = { least: shape ?? LEAST_SHAPE, greatest: shape ?? GREATEST_SHAPE };
  const { peak, agreed } = top(data, range, shape === undefined ? STARTS : [shape]);
  if (!Number.isFinite(peak.l) || !Number.isFinite(peak.a))
    return { ok: false, problem: "no_estimate", why: "the lives lie too far apart to be reckoned" };
  const held =
    shape !== undefined
      ? undefined
      : peak.b >= GREATEST_SHAPE
        ? "greatest"
        : peak.b <= LEAST_SHAPE
          ? "least"
          : undefined;
  const bound = (p: number, confidence: number, side: "least" | "greatest"): number => {
    share(p);
    if (!(confidence >= 0.5 && confidence < 1)) throw new RangeError("a confidence is at least 0.5 and below 1");
    return quantileEnd(data, range, peak, p, chiSquareOneQuantile(2 * confidence - 1), side);
  };
  return {
    ok: true,
    shape: peak.b,
    scale: data.unit * Math.exp(-peak.a / peak.b),
    logLikelihood: peak.l - exactOnes(data) * Math.log(data.unit),
    converged: peak.converged && agreed,
    ended: data.ended,
    held,
    quantile: (p) => data.unit * Math.exp(logQuantile(peak, share(p))),
    lowerBound: (p, confidence) => bound(p, confidence, "least"),
    upperBound: (p, confidence) => bound(p, confidence, "greatest"),
    wait: (age) => data.unit * waitAt(peak, age / data.unit),
    waitBound: (age) =>
      age > 0 ? waitEnd(data, range, peak, age) : quantileEnd(data, range, peak, 0.1, NINE_IN_TEN, "least"),
  };
}

/** Shapes to climb from, one on either side of where wear mostly lies. */
const STARTS: readonly number[] = [1.2, 5];

/**
 * The highest of several climbs. The likelihood has one top, so they must meet: where they do not, the steps ran out
 * or the digits did, and the fit says that it did not converge.
 */
function top(data: Lives, range: ShapeRange, starts: readonly number[]): { peak: Peak; agreed: boolean } {
  const free = range.least < range.greatest;
  // Where all lives share an age the height only rises with the shape, until the digits run out on a flat roof.
  if (free && shareAnAge(data)) return top(data, { least: range.greatest, greatest: range.greatest }, [range.greatest]);
  const quick = free ? starts.map((b) => climb(data, range, { a: 0, b })) : [];
  // A top at the edge of the range, or a climb that lost its way, is for the careful search, from every start.
  const peaks =
    quick.length > 0 && quick.every((one) => one !== undefined)
      ? quick
      : starts.map((b) => highest(data, range, { a: 0, b }));
  const peak = peaks.reduce((best, one) => (one.l > best.l ? one : best));
  const agreed = peaks.every((one) => one.converged && peak.l - one.l <= 1e-8 * (1 + Math.abs(peak.l)));
  return { peak, agreed };
}

/** Whether one age fits every life: none was sound beyond the age by which another had ended. Touching counts. */
function shareAnAge(data: Lives): boolean {
  let soundAt = Number.NEGATIVE_INFINITY;
  let endedBy = Number.POSITIVE_INFINITY;
  for (let i = 0; i < data.kind.length; i++) {
    const kind = data.kind[i] as number;
    if (kind !== 3) soundAt = Math.max(soundAt, data.low[i] as number);
    if (kind === 1 || kind === 3) endedBy = Math.min(endedBy, data.high[i] as number);
    if (kind === 2) endedBy = Math.min(endedBy, data.low[i] as number);
  }
  return soundAt <= endedBy;
}

function share(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError("a share lies between 0 and 1");
  return p;
}

function exactOnes(data: Lives): number {
  let sum = 0;
  for (let i = 0; i < data.kind.length; i++) if (data.kind[i] === 2) sum += data.count[i] as number;
  return sum;
}

/** ln(-ln(1 - p)): where a + b ln t stands when a share p has ended. */
const standing = (p: number) => Math.log(-Math.log1p(-p));

const logQuantile = (peak: Peak, p: number) => (standing(p) - peak.a) / peak.b;

/** All (a, b) with one quantile lie on a straight line a = c - b s, s its logarithm. */
function quantileEnd(
  data: Lives,
  range: ShapeRange,
  peak: Peak,
  p: number,
  limit: number,
  side: "least" | "greatest",
): number {
  const c = standing(p);
  const level: Level = {
    fence: (s): Fence => ({
      allowed: side === "least" ? "above" : "below",
      at: (b) => ({ a: c - b * s, slope: -s, bend: 0 }),
    }),
    aPerS: (b) => -b,
  };
  return data.unit * Math.exp(farthest(data, range, peak, level, logQuantile(peak, p), limit, side));
}

const LOG_NINE_IN_TEN = -Math.log(0.9);

/** x with R(age + x) / R(age) = 0.9; the plain difference of two ages would cancel. */
function waitAt(peak: Peak, age: number): number {
  if (!(age > 0)) return Math.exp(logQuantile(peak, 0.1));
  const grown = LOG_NINE_IN_TEN * Math.exp(-peak.a - peak.b * Math.log(age));
  if (grown === Number.POSITIVE_INFINITY) return Math.exp(logQuantile(peak, 0.1));
  return age * Math.expm1(Math.log1p(grown) / peak.b);
}

/**
 * All (a, b) with one wait x at one age t lie on a = ln k - b ln t - ln(e^(b r) - 1), r = ln(1 + x/t):
 * convex in b, so that "a wait no longer than x" is a convex set and the least wait is met once.
 */
function waitEnd(data: Lives, range: ShapeRange, peak: Peak, age: number): number {
  const t = age / data.unit;
  const logT = Math.log(t);
  const logK = Math.log(LOG_NINE_IN_TEN);
  const level: Level = {
    fence: (s): Fence => {
      const r = Math.log1p(Math.exp(s) / t);
      return {
        allowed: "above",
        at: (b) => {
          const grown = -Math.expm1(-b * r);
          return {
            a: logK - b * logT - b * r - Math.log(grown),
            slope: -logT - r / grown,
            bend: (r * r * Math.exp(-b * r)) / (grown * grown),
          };
        },
      };
    },
    aPerS: (b, s) => {
      const x = Math.exp(s);
      return ((-b / -Math.expm1(-b * Math.log1p(x / t))) * x) / (t + x);
    },
  };
  return data.unit * Math.exp(farthest(data, range, peak, level, Math.log(waitAt(peak, t)), NINE_IN_TEN, "least"));
}

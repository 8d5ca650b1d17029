import type { Lives } from "./weibull-likelihood.ts";
import { type Fence, highest, type Peak, type ShapeRange } from "./weibull-peak.ts";

/**
 * How far a quantile or a wait can move while the likelihood stays near its maximum: the ends of the region
 * 2(l_max - l) <= limit. Source: W. Q. Meeker, L. A. Escobar, "Statistical Methods for Reliability Data" (1998),
 * likelihood-ratio intervals; the region and its limit as the contract fixes them.
 */

/** A family of curves: all (a, b) at which the quantity has logarithm `s`, and how fast a moves with s there. */
export interface Level {
  fence(s: number): Fence;
  aPerS(b: number, s: number): number;
}

/** Beyond this many times e^+-60 a bound has run to nothing or has no end. */
const FAR = 60;

/**
 * The logarithm of the least (or greatest) value of the quantity over the region.
 * -Infinity or Infinity where the region runs out without an end.
 */
export function farthest(
  lives: Lives,
  range: ShapeRange,
  peak: Peak,
  level: Level,
  sAtPeak: number,
  limit: number,
  side: "least" | "greatest",
): number {
  if (!(limit > 0) || !Number.isFinite(sAtPeak)) return sAtPeak;
  const target = peak.l - limit / 2;
  const away = side === "least" ? -1 : 1;
  let near = sAtPeak;
  let beyond = sAtPeak + away * FAR;
  let start: { a: number; b: number } = peak;
  let s = sAtPeak + away * 0.3;
  let hop = 0.3;
  let bracketed = false;
  for (let step = 0; step < 200; step++) {
    const best = highest(lives, range, start, level.fence(s));
    const over = best.l - target;
    if (over > 0) near = s;
    else {
      beyond = s;
      bracketed = true;
    }
    if (Number.isFinite(best.l)) start = best;
    const rate = best.slopes.a * level.aPerS(best.b, s);
    let next = s - over / rate;
    if (!bracketed) {
      // Newton's step may fall short again and again on the flat way out; a growing hop may not.
      hop *= 2;
      next = s + away * Math.min(Math.max(Math.abs(next - s), hop / 4), hop);
      if (!Number.isFinite(next)) next = s + away * hop;
      if (Math.abs(next - sAtPeak) > FAR) return away * Number.POSITIVE_INFINITY;
    } else if (!Number.isFinite(next) || (next - near) * away <= 0 || (next - beyond) * away >= 0) {
      next = (near + beyond) / 2;
    }
    if (Math.abs(next - s) <= 1e-10 * (1 + Math.abs(s))) return next;
    s = next;
  }
  return s;
}

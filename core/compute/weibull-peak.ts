import { type Lives, noSlopes, type Slopes, slopesAt } from "./weibull-likelihood.ts";

/**
 * The highest point of the log-likelihood, over everything or over one side of a curve a(b).
 * Both sides used here are convex sets, so what is sought is the one root of a slope that only falls:
 * Newton's steps, held between the last two points known to lie on either side of it. Where the search starts
 * cannot change where it ends.
 */

/** Least and greatest shape. */
export interface ShapeRange {
  least: number;
  greatest: number;
}

/** A curve a(b) with its first and second slopes, and the side of it that is allowed. */
export interface Fence {
  allowed: "above" | "below";
  at(b: number): { a: number; slope: number; bend: number };
}

export interface Peak {
  a: number;
  b: number;
  l: number;
  slopes: Slopes;
  /** false where the steps ran out before the slope vanished */
  converged: boolean;
}

const STEPS = 200;

/** The best a for one shape: the slope in a falls from the number of ended lives to minus infinity. */
export function bestA(lives: Lives, b: number, start: number, slopes: Slopes): { a: number; converged: boolean } {
  let a = start;
  let under = Number.NEGATIVE_INFINITY;
  let over = Number.POSITIVE_INFINITY;
  for (let step = 0; step < STEPS; step++) {
    slopesAt(lives, a, b, slopes);
    if (slopes.a > 0) under = a;
    else if (slopes.a < 0) over = a;
    else return { a, converged: slopes.a === 0 };
    let move = -slopes.a / slopes.aa;
    // Far from the top the bend is nothing but last digits, of either sign: then only the slope tells the way.
    if (!(slopes.aa < 0) || !Number.isFinite(move)) move = slopes.a > 0 ? 3 : -3;
    move = Math.max(-3, Math.min(3, move));
    if (Math.abs(move) <= 1e-13 * (1 + Math.abs(a))) return { a, converged: true };
    const next = a + move;
    a = next > under && next < over ? next : (under + over) / 2;
  }
  return { a, converged: false };
}

/** The highest point with the shape in `range`, on the allowed side of `fence` where there is one. */
export function highest(lives: Lives, range: ShapeRange, start: { a: number; b: number }, fence?: Fence): Peak {
  const slopes = noSlopes();
  let { a } = start;
  let b = Math.max(range.least, Math.min(range.greatest, start.b));
  let under = range.least;
  let over = range.greatest;
  let ran = true;

  /** Slope and bend along b of the best height at that b. */
  const along = (): { slope: number; bend: number } => {
    if (fence) {
      const edge = fence.at(b);
      slopesAt(lives, edge.a, b, slopes);
      const pushes = fence.allowed === "above" ? slopes.a <= 0 : slopes.a >= 0;
      if (pushes || !Number.isFinite(slopes.l)) {
        a = edge.a;
        return {
          slope: slopes.b + slopes.a * edge.slope,
          bend: slopes.bb + 2 * slopes.ab * edge.slope + slopes.aa * edge.slope * edge.slope + slopes.a * edge.bend,
        };
      }
    }
    const best = bestA(lives, b, a, slopes);
    ran = ran && best.converged;
    a = best.a;
    return { slope: slopes.b, bend: slopes.bb - (slopes.ab * slopes.ab) / slopes.aa };
  };

  for (let step = 0; step < STEPS; step++) {
    const { slope, bend } = along();
    const done = (): Peak => ({ a, b, l: slopes.l, slopes, converged: ran });
    if (slope === 0 || range.least === range.greatest) return done();
    if (Number.isNaN(slope)) return { ...done(), converged: false };
    if (slope > 0) {
      if (b >= range.greatest) return done();
      under = b;
    } else {
      if (b <= range.least) return done();
      over = b;
    }
    let next = b - slope / bend;
    if (!(bend < 0)) next = slope > 0 ? over : under;
    if (next >= over) next = over === range.greatest ? over : (b + over) / 2;
    else if (next <= under) next = under === range.least ? under : (b + under) / 2;
    if (Math.abs(next - b) <= 1e-11 * b) return done();
    b = next;
  }
  return { a, b, l: slopes.l, slopes, converged: false };
}

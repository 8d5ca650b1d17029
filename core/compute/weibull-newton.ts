import { type Lives, noSlopes, type Slopes, slopesAt } from "./weibull-likelihood.ts";
import type { Peak, ShapeRange } from "./weibull-peak.ts";

/** A climb that has not arrived by then is left to the careful search. */
const STEPS = 40;

/**
 * The highest point by Newton's steps in both directions at once, each shortened until it climbs. Quick where the top
 * lies well inside the range of shapes, as it does for most sets; nothing where it does not arrive there.
 */
export function climb(lives: Lives, range: ShapeRange, start: { a: number; b: number }): Peak | undefined {
  let here: Slopes = noSlopes();
  let there: Slopes = noSlopes();
  let { a, b } = start;
  slopesAt(lives, a, b, here);
  for (let step = 0; step < STEPS; step++) {
    const bend = here.aa * here.bb - here.ab * here.ab;
    // The likelihood is concave, so this fails only where the digits have run out.
    if (!(bend > 0 && here.aa < 0)) return undefined;
    let da = (here.ab * here.b - here.bb * here.a) / bend;
    let db = (here.ab * here.a - here.aa * here.b) / bend;
    // Each full step squares what is left to go: after one this short nothing is.
    const arrived = Math.abs(da) <= 1e-9 * (1 + Math.abs(a)) && Math.abs(db) <= 1e-9 * b;
    const room = db < 0 ? b - range.least : range.greatest - b;
    const longest = Math.max(Math.abs(da) / 3, Math.abs(db) / Math.min(0.6 * b, 0.9 * room));
    if (longest > 1) {
      da /= longest;
      db /= longest;
    }
    let tries = 0;
    do {
      slopesAt(lives, a + da, b + db, there);
      // At the top itself the last digits of the height go up and down by chance.
      if (there.l >= here.l || arrived) break;
      da /= 2;
      db /= 2;
    } while (++tries < 30);
    if (tries === 30) return settled(lives, a, b, here);
    a += da;
    b += db;
    [here, there] = [there, here];
    // Creeping up to an end of the range: the top lies at it or beyond.
    if (b < range.least * 1.001 || b > range.greatest * 0.999) return undefined;
    if (arrived) return { a, b, l: here.l, slopes: here, converged: true };
  }
  return undefined;
}

/** No shorter step climbs: this is the top, if the slopes say so too. */
function settled(lives: Lives, a: number, b: number, slopes: Slopes): Peak | undefined {
  const flat = 1e-7 * (1 + lives.ended);
  if (Math.abs(slopes.a) > flat || Math.abs(slopes.b * b) > flat) return undefined;
  return { a, b, l: slopes.l, slopes, converged: true };
}

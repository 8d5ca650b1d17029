import { normalBelow } from "./normal.ts";
import { evenChiSquare } from "./poisson.ts";

/** Whether the failures of a repaired thing come faster or slower as it ages. */
export interface FailureTrend {
  failures: number;
  /** Laplace: standard normal where there is no trend; above 0 the failures crowd towards the end */
  laplace: { u: number; p: number };
  /** MIL-HDBK-189: 2 x sum of ln(end / age); chi-square with `freedom` where there is no trend, small where they crowd
   *  towards the end */
  handbook: { chiSquare: number; freedom: number; p: number };
  /** power-law growth of the count with age (Crow, AMSAA), less its bias: above 1 they come ever faster */
  growth: number;
  /** of the two tests at one in ten, two-sided: what both say, or `none` */
  says: "faster" | "slower" | "none";
}

export interface NoTrend {
  ok: false;
  problem: "no_trend";
  why: string;
}

export const TREND_SOURCE =
  "Laplace test and MIL-HDBK-189 power-law test, as in NIST e-Handbook 8.2.3.4; growth by Crow (AMSAA)";

/**
 * `ages` at failure, above 0 and at most `end`, in any order; `end`: the age at which looking stopped. Looked at up to
 * a set day, all count; where looking stopped with the last failure (`stopped: "failure"`) that one tells nothing.
 * Both p are two-sided. Fewer than 3 telling failures: no trend, and a sentence why.
 */
export function failureTrend(
  ages: readonly number[],
  end: number,
  stopped: "time" | "failure" = "time",
): ({ ok: true } & FailureTrend) | NoTrend {
  const no = (why: string): NoTrend => ({ ok: false, problem: "no_trend", why });
  if (!(end > 0) || ages.some((age) => !(age > 0 && age <= end))) return no("an age lies outside the time looked over");
  const telling = stopped === "time" ? [...ages] : [...ages].sort((a, b) => a - b).slice(0, -1);
  const n = telling.length;
  if (n < 3) return no(`${n} ${n === 1 ? "failure is" : "failures are"} too few to show a trend`);
  const mean = telling.reduce((sum, age) => sum + age, 0) / n;
  const u = (mean - end / 2) / (end / Math.sqrt(12 * n));
  const logs = telling.reduce((sum, age) => sum + Math.log(end / age), 0);
  const freedom = 2 * n;
  const below = evenChiSquare(2 * logs, freedom);
  const laplace = { u, p: 2 * normalBelow(-Math.abs(u)) };
  const handbook = { chiSquare: 2 * logs, freedom, p: Math.min(1, 2 * Math.min(below, 1 - below)) };
  // Both are asked, since each is best against another kind of growth; where they differ nothing is claimed.
  const sure = laplace.p <= 0.1 && handbook.p <= 0.1;
  const says = !sure ? "none" : u > 0 && below < 0.5 ? "faster" : u < 0 && below > 0.5 ? "slower" : "none";
  return { ok: true, failures: ages.length, laplace, handbook, growth: logs > 0 ? (n - 1) / logs : n, says };
}

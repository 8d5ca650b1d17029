/**
 * Quantiles of the normal distribution, and of chi-square with one degree of freedom, which is its square.
 * Source: M. J. Wichura, "Algorithm AS 241: the percentage points of the normal distribution",
 * Applied Statistics 37 (1988) 477-484, routine PPND16, about 1 part in 10^16.
 */

const CENTRE_TOP = [
  2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457, 13731.693765509461125,
  1971.5909503065514427, 133.14166789178437745, 3.387132872796366608,
];
const CENTRE_BELOW = [
  5226.495278852854561, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867, 5394.1960214247511077,
  687.1870074920579083, 42.313330701600911252, 1,
];
const MIDDLE_TOP = [
  7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177, 1.27045825245236838258,
  3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734,
];
const MIDDLE_BELOW = [
  1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966, 0.14810397642748007459,
  0.68976733498510000455, 1.6763848301838038494, 2.05319162663775882187, 1,
];
const TAIL_TOP = [
  2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386, 0.026532189526576123093,
  0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772,
];
const TAIL_BELOW = [
  2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
  0.0148753612908506148525, 0.13692988092273580531, 0.59983220655588793769, 1,
];

/** z with a share `p` of the standard normal below it. Throws RangeError unless 0 < p < 1. */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`a share lies between 0 and 1, not at ${p}`);
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * along(CENTRE_TOP, r)) / along(CENTRE_BELOW, r);
  }
  const r = Math.sqrt(-Math.log(Math.min(p, 1 - p)));
  const far =
    r <= 5
      ? along(MIDDLE_TOP, r - 1.6) / along(MIDDLE_BELOW, r - 1.6)
      : along(TAIL_TOP, r - 5) / along(TAIL_BELOW, r - 5);
  return q < 0 ? -far : far;
}

/** The value that chi-square with one degree of freedom stays under with probability `p`, 0 <= p < 1. */
export function chiSquareOneQuantile(p: number): number {
  return p === 0 ? 0 : normalQuantile((1 + p) / 2) ** 2;
}

function along(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * x + coefficient;
  return sum;
}

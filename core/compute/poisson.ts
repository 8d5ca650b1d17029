/**
 * Counts of rare things: the Poisson distribution, and chi-square with an even number of degrees of freedom, which is
 * the same sum read the other way: P(chi-square(2k) > x) = P(Poisson(x / 2) < k). Counts of failures need no other
 * degrees of freedom, so no gamma function is needed and nothing is cut short.
 * Source: N. L. Johnson, S. Kotz, "Discrete Distributions" (1969), the Poisson chapter.
 */

/** P(at most `k` of what comes at `mean` on average), `mean` >= 0. */
export function poissonAtMost(k: number, mean: number): number {
  if (!(mean >= 0)) throw new RangeError(`a mean is 0 or more, not ${mean}`);
  if (k < 0) return 0;
  if (mean === 0) return 1;
  const most = Math.floor(k);
  // The smaller tail is summed: away from the mean its terms fall fast and none cancels.
  if (most < mean) return tail(most, mean, "down");
  return 1 - tail(most + 1, mean, "up");
}

/** P(at least `k`). */
export function poissonAtLeast(k: number, mean: number): number {
  if (!(mean >= 0)) throw new RangeError(`a mean is 0 or more, not ${mean}`);
  const least = Math.ceil(k);
  if (least <= 0) return 1;
  if (mean === 0) return 0;
  if (least > mean) return tail(least, mean, "up");
  return 1 - tail(least - 1, mean, "down");
}

/** The fewest that are enough with probability `p`, 0 <= p < 1. */
export function poissonCovering(mean: number, p: number): number {
  if (!(p >= 0 && p < 1)) throw new RangeError(`a share lies between 0 and 1, not at ${p}`);
  // The slack keeps a mean of 0.0513 from needing one more for the last bit of 0.95.
  const enough = p - 1e-12;
  let k = Math.max(0, Math.floor(mean) - 1);
  while (k > 0 && poissonAtMost(k - 1, mean) >= enough) k -= 1;
  while (poissonAtMost(k, mean) < enough) k += 1;
  return k;
}

/** P(chi-square with `freedom` degrees of freedom <= x); `freedom` even, 2 or more. */
export function evenChiSquare(x: number, freedom: number): number {
  return poissonAtLeast(half(freedom), Math.max(0, x) / 2);
}

/** The value that chi-square with an even `freedom` stays under with probability `p`, 0 <= p < 1. */
export function evenChiSquareQuantile(p: number, freedom: number): number {
  if (!(p >= 0 && p < 1)) throw new RangeError(`a share lies between 0 and 1, not at ${p}`);
  const k = half(freedom);
  if (p === 0) return 0;
  let low = 0;
  let high = k + 1;
  while (poissonAtLeast(k, high) < p) {
    low = high;
    high *= 2;
  }
  // The density of the sum at its mean: Newton's step, held between what is known to be below and above.
  let mean = (low + high) / 2;
  for (let step = 0; step < 200; step++) {
    const over = poissonAtLeast(k, mean) - p;
    if (over === 0) break;
    if (over > 0) high = mean;
    else low = mean;
    const density = Math.exp((k - 1) * Math.log(mean) - mean - logFactorial(k - 1));
    let next = mean - over / density;
    if (!(next > low && next < high)) next = (low + high) / 2;
    if (Math.abs(next - mean) <= 1e-15 * mean) break;
    mean = next;
  }
  return 2 * mean;
}

function half(freedom: number): number {
  if (!(Number.isInteger(freedom / 2) && freedom >= 2))
    throw new RangeError(`degrees of freedom are even here, 2 or more, not ${freedom}`);
  return freedom / 2;
}

/** Sum of the terms from `k` on, away from the mean. */
function tail(k: number, mean: number, way: "up" | "down"): number {
  let term = Math.exp(k * Math.log(mean) - mean - logFactorial(k));
  let sum = 0;
  for (let i = k; term > sum * 1e-17 && i >= 0; ) {
    sum += term;
    if (way === "up") term *= mean / ++i;
    else term *= i-- / mean;
  }
  return sum;
}

/** ln k!: summed while that is short, then Stirling's series (Abramowitz and Stegun 6.1.41), good to 1e-16 there. */
function logFactorial(k: number): number {
  if (k < 40) {
    let product = 1;
    for (let i = 2; i <= k; i++) product *= i;
    return Math.log(product);
  }
  const n = k + 1;
  const inverse = 1 / (n * n);
  const series = (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse / 1680))) / n;
  return (n - 0.5) * Math.log(n) - n + 0.5 * Math.log(2 * Math.PI) + series;
}

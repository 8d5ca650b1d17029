/**
 * The share of the standard normal below `z`, to 1 part in 10^14 of the smaller tail.
 * Source: the series of G. Marsaglia, "Evaluating the normal distribution", Journal of Statistical Software 11 (2004);
 * beyond 3 the continued fraction of the tail, Abramowitz and Stegun 26.2.14, from its far end.
 */
export function normalBelow(z: number): number {
  if (Number.isNaN(z)) throw new RangeError("no share lies below what is not a number");
  const far = Math.abs(z);
  const density = Math.exp(-0.5 * far * far) / Math.sqrt(2 * Math.PI);
  if (far > 3) {
    let fraction = far;
    for (let k = 150; k >= 1; k--) fraction = far + k / fraction;
    const beyond = density / fraction;
    return z < 0 ? beyond : 1 - beyond;
  }
  let term = far;
  let sum = far;
  for (let k = 3; term > sum * 1e-17; k += 2) {
    term *= (far * far) / k;
    sum += term;
  }
  return z < 0 ? 0.5 - density * sum : 0.5 + density * sum;
}

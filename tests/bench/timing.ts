/** Milliseconds that `work` takes. */
export function took(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/**
 * The median time of each of several works, run turn and turn about, so that a machine that changes speed changes it
 * for all of them alike. The first round warms up and does not count.
 */
export function medians(rounds: number, works: readonly (() => void)[]): number[] {
  const times: number[][] = works.map(() => []);
  for (let round = 0; round <= rounds; round++) {
    for (const [n, work] of works.entries()) {
      const ms = took(work);
      if (round > 0) times[n]?.push(ms);
    }
  }
  return times.map((ms) => ms.sort((a, b) => a - b)[Math.floor(ms.length / 2)] ?? Number.NaN);
}

export const perSecond = (count: number, ms: number): number => (1000 * count) / ms;

/** 12,345 or 1.23: three figures that mean something, no more. */
export function figure(value: number): string {
  return value >= 100 ? Math.round(value).toLocaleString("en-US") : String(Number(value.toPrecision(3)));
}

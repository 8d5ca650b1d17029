/** A small seeded generator (mulberry32, public domain): the same seed tells the same story on every machine. */
export interface Chance {
  /** from 0 up to 1 */
  next(): number;
  /** a whole number, both ends included */
  between(least: number, most: number): number;
  pick<T>(from: readonly T[]): T;
  /** true this often, 0 to 1 */
  happens(often: number): boolean;
  /** a Weibull life by inversion, in the unit of `scale` */
  life(shape: number, scale: number): number;
}

export function chance(seed: number): Chance {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const between = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
  return {
    next,
    between,
    pick: (from) => from[between(0, from.length - 1)] as (typeof from)[number],
    happens: (often) => next() < often,
    life: (shape, scale) => scale * (-Math.log(1 - next())) ** (1 / shape),
  };
}

/** A seeded stream of chance: the same seed gives the same phrases, so that a failure can be said again. */
export interface Chance {
  /** a whole number from 0 up to, but not with, `below` */
  below(below: number): number;
  pick<T>(list: readonly T[]): T;
}

/** mulberry32: 32 bits of state, good enough to shuffle words. Source: public domain, from memory. */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (limit: number): number => Math.floor(next() * limit);
  return { below, pick: (list) => list[below(list.length)] as (typeof list)[number] };
}

/**
 * Which diameter starts each turn of the cross, for circles of a multiple of 4 bolts.
 * Source: ASME PCC-1 legacy cross-pattern table, as restated alike in public for 4 to 24; 28 and 32 from memory.
 */
const STARTS: Record<number, readonly number[]> = {
  4: [1],
  8: [1, 2],
  12: [1, 2, 3],
  16: [1, 3, 2, 4],
  20: [1, 3, 5, 2, 4],
  24: [1, 4, 2, 5, 3, 6],
  28: [1, 4, 6, 2, 5, 3, 7],
  32: [1, 5, 3, 7, 2, 6, 4, 8],
};

/**
 * The order in which to tighten `n` bolts, numbered clockwise from 1. Multiples of 4 go by two diameters at right
 * angles in turn; other even circles by opposite pairs, never a neighbour next (from memory: the table has none).
 * Throws RangeError for an odd number, or for fewer than 4.
 */
export function boltSequence(n: number): number[] {
  if (!Number.isInteger(n) || n < 4 || n % 2 === 1)
    throw new RangeError(`a cross pattern needs an even number of bolts, 4 or more, not ${n}`);
  if (n % 4 === 0) {
    const quarter = n / 4;
    return (STARTS[n] ?? oddThenEven(quarter)).flatMap((a) => [a, a + 2 * quarter, a + quarter, a + 3 * quarter]);
  }
  const half = n / 2;
  // Of six bolts the odd ones first would put 3 after 4: they go round in turn instead.
  const starts = half === 3 ? [1, 2, 3] : oddThenEven(half);
  return starts.flatMap((a) => [a, a + half]);
}

function oddThenEven(count: number): number[] {
  const all = Array.from({ length: count }, (_, i) => i + 1);
  return [...all.filter((a) => a % 2 === 1), ...all.filter((a) => a % 2 === 0)];
}

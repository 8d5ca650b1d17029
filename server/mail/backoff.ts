const FIRST_MS = 30_000;
const LONGEST_MS = 3_600_000;

/** How long a message is tried for: a weekend without a mail server loses none. */
export const GIVE_UP_MS = 3 * 86_400_000;

/** How long to wait after the nth attempt in a row that failed for now: half a minute, doubling, at most an hour. */
export function waitAfter(attempts: number): number {
  return Math.min(FIRST_MS * 2 ** Math.max(0, attempts - 1), LONGEST_MS);
}

/** How long each thing lives, in one place. */

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** a code is shown on one screen and opened on another, or mailed to nobody */
export const DEVICE_CODE_MS = 10 * MINUTE_MS;
export const PASSWORD_CODE_MS = 60 * MINUTE_MS;
/** a session not used for a shift, or older than three days, is over */
export const SESSION_IDLE_MS = 8 * HOUR_MS;
export const SESSION_MOST_MS = 72 * HOUR_MS;
/** the use of a session is written down no more often than this */
export const SESSION_STEP_MS = 5 * MINUTE_MS;

/** so many wrong passwords for one name, then a wait that doubles with each further one up to the longest */
export const TRIES_A_NAME = 5;
export const FIRST_LOCK_MS = MINUTE_MS;
export const LONGEST_LOCK_MS = HOUR_MS;
/** an address may stand for a whole office, or for a proxy with everybody behind it */
export const TRIES_AN_ADDRESS = 30;
export const ADDRESS_LOCK_MS = 15 * MINUTE_MS;
/** a count that nobody added to for so long starts afresh */
export const TRIES_FORGOTTEN_MS = 24 * HOUR_MS;

/** The moment so many milliseconds from now, negative: ago, as stored (see moments.ts). */
export function momentIn(ms: number): string {
  return `${new Date(Date.now() + ms).toISOString().slice(0, 23)}000000Z`;
}

/** A stored moment for an answer. */
export const momentOut = (utc: string): string => `${utc.slice(0, 23)}Z`;

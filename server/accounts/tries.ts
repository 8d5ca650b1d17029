import { eq, inArray, lt } from "drizzle-orm";
import { signInTries } from "../db/people-tables.ts";
import type { Tx } from "../db/writer.ts";
import { now } from "../moments.ts";
import {
  ADDRESS_LOCK_MS,
  FIRST_LOCK_MS,
  LONGEST_LOCK_MS,
  momentIn,
  TRIES_A_NAME,
  TRIES_AN_ADDRESS,
  TRIES_FORGOTTEN_MS,
} from "./lifetimes.ts";
import { sha256 } from "./secrets.ts";

/** What a try is counted by: the name that was typed, whether anybody bears it or not, and where it came from. */
export interface TryKeys {
  name: string;
  address: string;
}

export const tryKeys = (nameKey: string, address: string): TryKeys => ({
  name: sha256(`name:${nameKey}`),
  address: sha256(`address:${address}`),
});

/**
 * Counts a try before its password is looked at, so that many at once are not all let through before the first is
 * found wrong. Answers the seconds to wait where there were too many; a try that is made to wait is not counted.
 */
export async function countTry(tx: Tx, keys: TryKeys): Promise<{ ok: true } | { ok: false; waitS: number }> {
  await tx.delete(signInTries).where(lt(signInTries.since, momentIn(-TRIES_FORGOTTEN_MS)));
  const rows = await tx
    .select()
    .from(signInTries)
    .where(inArray(signInTries.key, [keys.name, keys.address]));
  const until = rows
    .flatMap((row) => row.lockedUntil ?? [])
    .sort()
    .at(-1);
  if (until !== undefined && until > now().utc) {
    return { ok: false, waitS: Math.max(1, Math.ceil((Date.parse(until) - Date.now()) / 1000)) };
  }
  const failuresOf = (key: string) => (rows.find((row) => row.key === key)?.failures ?? 0) + 1;
  const ofName = failuresOf(keys.name);
  const ofAddress = failuresOf(keys.address);
  await put(tx, keys.name, ofName, ofName >= TRIES_A_NAME ? nameLockMs(ofName) : undefined);
  // after its wait an address starts afresh: an office behind one address must be able to go on
  if (ofAddress > TRIES_AN_ADDRESS) await put(tx, keys.address, 0, ADDRESS_LOCK_MS);
  else await put(tx, keys.address, ofAddress, undefined);
  return { ok: true };
}

/** One minute after the fifth wrong one, then twice as long each time, an hour at most. */
function nameLockMs(failures: number): number {
  return Math.min(FIRST_LOCK_MS * 2 ** (failures - TRIES_A_NAME), LONGEST_LOCK_MS);
}

async function put(tx: Tx, key: string, failures: number, lockMs: number | undefined): Promise<void> {
  const lockedUntil = lockMs === undefined ? null : momentIn(lockMs);
  await tx
    .insert(signInTries)
    .values({ key, failures, since: now().utc, lockedUntil })
    .onConflictDoUpdate({ target: signInTries.key, set: { failures, lockedUntil, since: now().utc } });
}

/** The password was right: the name's count is wiped, and this try does not count against the address. */
export async function forgiveTry(tx: Tx, keys: TryKeys): Promise<void> {
  await tx.delete(signInTries).where(eq(signInTries.key, keys.name));
  const [row] = await tx.select().from(signInTries).where(eq(signInTries.key, keys.address));
  if (row && row.failures > 0) await put(tx, keys.address, row.failures - 1, undefined);
}

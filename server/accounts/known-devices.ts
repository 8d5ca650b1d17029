import { eq, inArray } from "drizzle-orm";
import type { Store } from "../db/open.ts";
import { devices, people } from "../db/people-tables.ts";

/** An enrolled device and whose it is, as far as a call asks. */
export type KnownDevice = Awaited<ReturnType<typeof lookUp>>[number];

/** What is asked together. */
interface Asked {
  hashes: Set<string>;
  found: Promise<Map<string, KnownDevice>>;
}
const asking = new WeakMap<Store, Asked>();

/**
 * The device whose token has this hash. Every call asks this, and nothing is remembered, so that who is revoked is
 * revoked at once, whoever did it. Calls that come in the same turn of the loop are asked for with one statement: fifty
 * devices that say a phrase each had a third of all time go into fifty of them.
 */
export async function deviceOf(store: Store, hash: string): Promise<KnownDevice | undefined> {
  let asked = asking.get(store);
  if (!asked) {
    const hashes = new Set<string>();
    asked = { hashes, found: endOfTurn().then(() => close(store, hashes)) };
    asking.set(store, asked);
  }
  asked.hashes.add(hash);
  return (await asked.found).get(hash);
}

async function close(store: Store, hashes: ReadonlySet<string>): Promise<Map<string, KnownDevice>> {
  // from its statement on nobody may join
  asking.delete(store);
  return new Map((await lookUp(store, [...hashes])).map((one) => [one.tokenHash, one]));
}

/** Only what is asked for: each column costs as much again as the row. */
const lookUp = (store: Store, hashes: readonly string[]) =>
  store.db
    .select({
      id: devices.id,
      tokenHash: devices.tokenHash,
      until: devices.until,
      revokedAt: devices.revokedAt,
      person: people.id,
      roles: people.roles,
      sites: people.sites,
      leftAt: people.leftAt,
    })
    .from(devices)
    .innerJoin(people, eq(people.id, devices.person))
    .where(inArray(devices.tokenHash, [...hashes]));

const endOfTurn = () => new Promise<void>((resolve) => setImmediate(resolve));

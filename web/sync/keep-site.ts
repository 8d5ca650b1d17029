import type { KnownValve, ListedValve } from "../state/state.ts";
import type { Shelf } from "../storage/shelf.ts";
import { knowValve } from "./valves.ts";

/** More than a field has; a list far longer is not meant for one phone. */
const MOST = 300;
/** So many at once: the phrases said meanwhile go first, and a shop's link is thin. */
const AT_ONCE = 2;

/**
 * Fetches the valves of the device's site with their history while there is a network, so that the last visit is said
 * at the valve where there is none. A valve that the device knows as of its last visit is not asked for again.
 */
export async function keepSite(
  shelf: Pick<Shelf, "valve" | "keepValve">,
  valves: readonly ListedValve[],
  site: string | undefined,
  know: (tag: string, site: string | undefined) => Promise<KnownValve | undefined> = (tag, at) =>
    knowValve(shelf as Shelf, tag, at),
): Promise<void> {
  const wanted = valves.filter((one) => !site || one.site === site).slice(0, MOST);
  const queue = wanted[Symbol.iterator]();
  const work = async (): Promise<void> => {
    for (const one of queue) {
      const kept = await shelf.valve(one.tag, one.site);
      if (kept && isFresh(kept, one)) continue;
      await know(one.tag, one.site);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
}

function isFresh(kept: KnownValve, listed: ListedValve): boolean {
  const last = kept.history
    .map(({ on }) => on)
    .sort()
    .at(-1);
  return last === listed.lastOn && kept.ownFamily?.number === listed.ownFamily;
}

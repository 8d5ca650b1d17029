import type { CardPhrase } from "./state.ts";

/** By `saidAt`, then by id: the order of the record. Compared as instants, for offsets may differ. */
export function inOrderSaid(a: CardPhrase, b: CardPhrase): number {
  return Date.parse(a.saidAt) - Date.parse(b.saidAt) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
}

/**
 * The phrases of the open job as this page has them, and as the device holds them: another tab may have added some, or
 * sent them. What this page is just writing down, or could not, it knows better.
 */
export function caughtUp(here: readonly CardPhrase[], held: readonly CardPhrase[]): CardPhrase[] {
  const own = new Map(here.map((one) => [one.id, one]));
  const both = held.map((row) => {
    const mine = own.get(row.id);
    own.delete(row.id);
    if (!mine) return row;
    const ahead =
      mine.delivery === "keeping" ||
      mine.delivery === "not_kept" ||
      // the store was read before it was marked in it
      (mine.delivery === "kept" && row.delivery === "waiting" && mine.confidence === row.confidence);
    return { ...(ahead ? mine : row), alertSeen: mine.alertSeen ?? row.alertSeen };
  });
  return [...both, ...own.values()].sort(inOrderSaid);
}

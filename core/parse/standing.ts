/** Step 6: the entries that stand, found and replaced; a list is never edited in place. */

import type { Entry, Finding } from "../shapes/entry.ts";

/** Index of the last entry of these types, or -1. */
export const lastIndex = <T extends Entry["type"]>(entries: readonly Entry[], ...types: T[]): number => {
  for (let at = entries.length - 1; at >= 0; at -= 1) if (types.includes(entries[at]?.type as T)) return at;
  return -1;
};

/** The list with the entry at `at` replaced. */
export const replaceAt = (entries: readonly Entry[], at: number, entry: Entry): Entry[] =>
  entries.map((one, nth) => (nth === at ? entry : one));

/** Index of the last finding on this part, else of the last finding, or -1. */
export function lastFindingOn(entries: readonly Entry[], part: string | undefined): number {
  if (part)
    for (let at = entries.length - 1; at >= 0; at -= 1)
      if (entries[at]?.type === "finding" && (entries[at] as Finding).part === part) return at;
  return lastIndex(entries, "finding");
}

/** A key that does not apply is left out. */
export function without(entry: Entry): Entry {
  for (const key in entry) if (entry[key as keyof Entry] === undefined) return withoutUndefined(entry);
  return entry;
}

function withoutUndefined(entry: Entry): Entry {
  return Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== undefined)) as Entry;
}

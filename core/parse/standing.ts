import type { Entry, Finding } from "../shapes/entry.ts";

export const lastIndex = <T extends Entry["type"]>(entries: readonly Entry[], ...types: T[]): number => {
  for (let at = entries.length - 1; at >= 0; at -= 1) if (types.includes(entries[at]?.type as T)) return at;
  return -1;
};

export const replaceAt = (entries: readonly Entry[], at: number, entry: Entry): Entry[] =>
  entries.map((one, nth) => (nth === at ? entry : one));

export function lastOnPart(entries: readonly Entry[], type: "finding", part: string | undefined): number {
  if (part)
    for (let at = entries.length - 1; at >= 0; at -= 1)
      if (entries[at]?.type === type && (entries[at] as Finding).part === part) return at;
  return lastIndex(entries, type);
}

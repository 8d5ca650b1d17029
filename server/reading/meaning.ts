import { createHash } from "node:crypto";

/** What an entry carries about its own origin, beside what it says. */
const BESIDE = new Set(["words", "rule", "confidence", "phrase", "at", "resolved", "assumed", "doubtful"]);

/** The contract's keys alone, in one order: two readings mean the same where these agree. */
export function meaning(tag: string, entry: object): string {
  const keys = Object.entries(entry).filter(([key]) => !BESIDE.has(key));
  const sorted = Object.fromEntries(keys.sort(([a], [b]) => (a < b ? -1 : 1)));
  return `${tag ? `${tag} ` : ""}${JSON.stringify(sorted)}`;
}

/** A short name of what words and the entries read from them mean, to tell later whether it is still the same. */
export function nameMeaning(text: string, entries: readonly object[]): string {
  const all = JSON.stringify([text, ...entries.map((entry) => meaning("", entry))]);
  return createHash("sha256").update(all).digest("hex").slice(0, 24);
}

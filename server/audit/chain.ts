import { createHash } from "node:crypto";

/** What an act's record says, before it is chained. */
export interface Act {
  n: number;
  at: string;
  person: string | null;
  by: string;
  act: string;
  /** canonical JSON */
  about: string;
}

/** What stands in the place of a hash before the first record. */
export const BEFORE_FIRST = "0".repeat(64);

/** SHA-256 over the hash before it and the record's own canonical JSON: a change anywhere breaks every hash after it. */
export function chainHash(before: string, { n, at, person, by, act, about }: Act): string {
  const own = canonical({ n, at, person, by, act, about });
  return createHash("sha256").update(before).update("\n").update(own).digest("hex");
}

/** JSON with the keys of every object in order and no spaces: one text a value. */
export function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
  if (typeof value === "object" && value !== null) {
    const fields = Object.entries(value)
      .filter(([, one]) => one !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, one]) => `${JSON.stringify(key)}:${canonical(one)}`);
    return `{${fields.join(",")}}`;
  }
  return JSON.stringify(value);
}

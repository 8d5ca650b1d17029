import { asc, desc, gt } from "drizzle-orm";
import type { AuditRecord } from "../../core/shapes/people.ts";
import { momentOut } from "../accounts/lifetimes.ts";
import { namesOf } from "../accounts/people.ts";
import type { Store } from "../db/open.ts";
import { audit } from "../db/people-tables.ts";
import { BEFORE_FIRST, chainHash } from "./chain.ts";

/** The latest acts, the last one first, each with the name of who did it. */
export async function lastActs(store: Store, most: number): Promise<AuditRecord[]> {
  const names = await namesOf(store.db);
  const rows = await store.db.select().from(audit).orderBy(desc(audit.n)).limit(most);
  return rows.map((row) => ({
    n: row.n,
    at: momentOut(row.at),
    ...(row.person ? { person: row.person, name: names.get(row.person) } : {}),
    by: row.by,
    act: row.act,
    about: JSON.parse(row.about) as Record<string, unknown>,
    hash: row.hash,
  }));
}

export type Verified =
  | { ok: true; records: number; last: string }
  /** `n`: the first record that is not as it was written, or is missing */
  | { ok: false; n: number; problem: string };

const A_PAGE = 1000;

/**
 * Walks the whole chain from its first record. What was cut off at its end cannot be seen from the chain alone:
 * `expect`, a number and hash noted down earlier, must still stand in it.
 */
export async function verifyTrail(store: Store, expect?: { n: number; hash: string }): Promise<Verified> {
  let before = BEFORE_FIRST;
  let n = 0;
  for (;;) {
    const rows = await store.db.select().from(audit).where(gt(audit.n, n)).orderBy(asc(audit.n)).limit(A_PAGE);
    for (const { hash, ...own } of rows) {
      n++;
      if (own.n !== n) return { ok: false, n, problem: "the record is missing" };
      if (chainHash(before, own) !== hash) return { ok: false, n, problem: "the record is not as it was written" };
      if (expect?.n === n && expect.hash !== hash) {
        return { ok: false, n, problem: "the chain up to here was written anew: the hash noted down is another" };
      }
      before = hash;
    }
    if (rows.length < A_PAGE) break;
  }
  if (expect && expect.n > n) return { ok: false, n: n + 1, problem: `the trail ends before record ${expect.n}` };
  return { ok: true, records: n, last: before };
}

import { and, eq, isNull, lt } from "drizzle-orm";
import type { OneTimeCode } from "../../core/shapes/people.ts";
import type { Who } from "../access.ts";
import { record } from "../audit/record.ts";
import { oneTimeCodes } from "../db/people-tables.ts";
import type { Tx } from "../db/writer.ts";
import { now } from "../moments.ts";
import { DEVICE_CODE_MS, momentIn, momentOut, PASSWORD_CODE_MS, TRIES_FORGOTTEN_MS } from "./lifetimes.ts";
import { type PersonRow, personOf } from "./people.ts";
import { isHashOf, newToken, sha256 } from "./secrets.ts";

/**
 * A code that is taken once and lives for minutes: shown as a link, it turns a phone into an enrolled device or lets a
 * person choose a password. It stands behind the # of the link, which no browser sends to a server and no log keeps.
 */
export async function makeCode(
  tx: Tx,
  who: Who,
  person: PersonRow,
  wish: { for: OneTimeCode["for"]; until: string | null },
): Promise<OneTimeCode> {
  await tx.delete(oneTimeCodes).where(lt(oneTimeCodes.expiresAt, momentIn(-TRIES_FORGOTTEN_MS)));
  const code = newToken("code");
  const expiresAt = momentIn(wish.for === "device" ? DEVICE_CODE_MS : PASSWORD_CODE_MS);
  await tx
    .insert(oneTimeCodes)
    .values({ codeHash: sha256(code), person: person.id, for: wish.for, until: wish.until, expiresAt, usedAt: null });
  await record(tx, who, "code_made", { for: wish.for, person: person.id, until: wish.until });
  const screen = wish.for === "device" ? "enrol" : "set-password";
  return { code, for: wish.for, path: `/#/${screen}?code=${code}`, expiresAt: momentOut(expiresAt) };
}

/** Takes a code: whose it is, once. Undefined where it is unknown, used, too old, for something else. */
export async function takeCode(
  tx: Tx,
  code: string,
  what: OneTimeCode["for"],
): Promise<{ person: PersonRow; until: string | null } | undefined> {
  const codeHash = sha256(code);
  const [row] = await tx.select().from(oneTimeCodes).where(eq(oneTimeCodes.codeHash, codeHash));
  if (!row || !isHashOf(row.codeHash, code) || row.for !== what) return undefined;
  if (row.usedAt !== null || row.expiresAt <= now().utc) return undefined;
  const person = await personOf(tx, row.person);
  if (!person) return undefined;
  await tx
    .update(oneTimeCodes)
    .set({ usedAt: now().utc })
    .where(and(eq(oneTimeCodes.codeHash, codeHash), isNull(oneTimeCodes.usedAt)));
  return { person, until: row.until };
}

export const CODE_SPENT =
  "This code is not good any more: it is taken once and within minutes. Ask for another; until then nothing is lost.";

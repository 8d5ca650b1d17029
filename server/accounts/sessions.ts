import { and, eq, isNull, lt, ne } from "drizzle-orm";
import { sessions } from "../db/people-tables.ts";
import type { Tx } from "../db/writer.ts";
import { newId } from "../ids.ts";
import { now } from "../moments.ts";
import { momentIn, SESSION_MOST_MS } from "./lifetimes.ts";
import { newToken, sha256 } from "./secrets.ts";

/** Begins a session: always with a token of its own, so that none brought along beforehand is ever raised to one. */
export async function beginSession(tx: Tx, person: string): Promise<{ id: string; token: string }> {
  // over for so long that nobody can come back to them
  await tx.delete(sessions).where(lt(sessions.beganAt, momentIn(-2 * SESSION_MOST_MS)));
  const token = newToken("session");
  const id = newId();
  const at = now().utc;
  await tx.insert(sessions).values({ id, person, tokenHash: sha256(token), beganAt: at, usedAt: at, endedAt: null });
  return { id, token };
}

/** Ends the session that a cookie named, whoever's it was; nothing where it names none. */
export async function endSessionOf(tx: Tx, token: string): Promise<void> {
  await tx
    .update(sessions)
    .set({ endedAt: now().utc })
    .where(and(eq(sessions.tokenHash, sha256(token)), isNull(sessions.endedAt)));
}

/** Ends every session of a person but one. */
export async function endOtherSessions(tx: Tx, person: string, but: string | undefined): Promise<void> {
  await tx
    .update(sessions)
    .set({ endedAt: now().utc })
    .where(
      and(eq(sessions.person, person), isNull(sessions.endedAt), but === undefined ? undefined : ne(sessions.id, but)),
    );
}

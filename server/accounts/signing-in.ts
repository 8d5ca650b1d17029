import { and, eq, isNull } from "drizzle-orm";
import type { Who } from "../access.ts";
import { record } from "../audit/record.ts";
import type { Store } from "../db/open.ts";
import { people, sessions } from "../db/people-tables.ts";
import { Refusal } from "../errors.ts";
import { now } from "../moments.ts";
import { CODE_SPENT, takeCode } from "./codes.ts";
import { revokeDevice } from "./devices.ts";
import { nameKeyOf, personNamed, personOf } from "./people.ts";
import { hashPassword, isPassword } from "./secrets.ts";
import { beginSession, endOtherSessions, endSessionOf } from "./sessions.ts";
import { countTry, forgiveTry, tryKeys } from "./tries.ts";

/** Passwords are hashed and compared outside any transaction: it takes tens of milliseconds, and nothing waits for it. */

const WRONG = "Name and password do not fit. Try again, or ask a lead for a link to choose a new password.";

/** Signs a person in; answers the session's token. `brought` is what the cookie held before: it is ended, not raised. */
export async function signIn(
  store: Store,
  from: { who: Who; address: string; brought: string | undefined },
  sent: { name: string; password: string },
): Promise<string> {
  const keys = tryKeys(nameKeyOf(sent.name), from.address);
  await tryOrWait(store, keys);
  const person = await personNamed(store.db, sent.name);
  if (!(await isPassword(person?.password, sent.password)) || !person) {
    // a stranger's name is not written down: it may be a password typed into the wrong field
    await store.write((tx) => record(tx, from.who, "sign_in_refused", person ? { person: person.id } : {}));
    throw new Refusal(401, WRONG);
  }
  return store.write(async (tx) => {
    // he may have left, or changed his password, while this one was compared
    const still = await personOf(tx, person.id);
    if (still?.password !== person.password) throw new Refusal(401, WRONG);
    await forgiveTry(tx, keys);
    if (from.brought !== undefined) await endSessionOf(tx, from.brought);
    const session = await beginSession(tx, person.id);
    await record(tx, { person: person.id, by: `session:${session.id}` }, "signed_in", {});
    return session.token;
  });
}

async function tryOrWait(store: Store, keys: ReturnType<typeof tryKeys>): Promise<void> {
  const counted = await store.write((tx) => countTry(tx, keys));
  if (counted.ok) return;
  const minutes = Math.ceil(counted.waitS / 60);
  const detail = `Too many wrong tries. Wait ${minutes} ${minutes === 1 ? "minute" : "minutes"}, then try again; or ask a lead for a link to choose a new password.`;
  throw new Refusal(429, detail, { headers: { "retry-after": String(counted.waitS) } });
}

/** Ends the caller's session; a device is given back by its own token, and refused from then on. */
export async function signOut(store: Store, who: Who): Promise<void> {
  const { session, device } = who;
  if (device !== undefined) await store.write((tx) => revokeDevice(tx, who, device));
  if (session === undefined) return;
  await store.write(async (tx) => {
    await tx
      .update(sessions)
      .set({ endedAt: now().utc })
      .where(and(eq(sessions.id, session), isNull(sessions.endedAt)));
    await record(tx, who, "signed_out", {});
  });
}

/** Sets a password by a one-time code, ends whatever sessions there were, and signs in. Answers the session's token. */
export async function firstPassword(
  store: Store,
  brought: string | undefined,
  sent: { code: string; password: string },
): Promise<string> {
  const hashed = await hashPassword(sent.password);
  return store.write(async (tx) => {
    const taken = await takeCode(tx, sent.code, "password");
    if (!taken) throw new Refusal(403, CODE_SPENT);
    const { person } = taken;
    await tx.update(people).set({ password: hashed }).where(eq(people.id, person.id));
    if (brought !== undefined) await endSessionOf(tx, brought);
    await endOtherSessions(tx, person.id, undefined);
    // whoever was locked out by wrong tries has shown by the code who he is
    await forgiveTry(tx, tryKeys(person.nameKey, ""));
    const session = await beginSession(tx, person.id);
    const who = { person: person.id, by: `session:${session.id}` };
    await record(tx, who, "password_set", { person: person.id, how: "code" });
    await record(tx, who, "signed_in", {});
    return session.token;
  });
}

/** Changes the caller's own password and ends every other session. */
export async function changePassword(
  store: Store,
  who: Who,
  address: string,
  sent: { was: string; password: string },
): Promise<void> {
  const person = who.person === undefined ? undefined : await personOf(store.db, who.person);
  if (!person?.password) throw new Refusal(409, "There is no password yet: ask a lead for a link to choose one.");
  // counted like a sign-in: a screen left open must not be a place to guess at
  const keys = tryKeys(person.nameKey, address);
  await tryOrWait(store, keys);
  if (!(await isPassword(person.password, sent.was))) {
    await store.write((tx) => record(tx, who, "password_change_refused", {}));
    throw new Refusal(403, "The password so far is not that one. Nothing was changed.");
  }
  const hashed = await hashPassword(sent.password);
  await store.write(async (tx) => {
    await forgiveTry(tx, keys);
    await tx.update(people).set({ password: hashed }).where(eq(people.id, person.id));
    await endOtherSessions(tx, person.id, who.session);
    await record(tx, who, "password_set", { person: person.id, how: "changed" });
  });
}

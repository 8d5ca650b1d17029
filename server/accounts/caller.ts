import { eq } from "drizzle-orm";
import type { Context } from "hono";
import { type Door, NOBODY, type Who } from "../access.ts";
import { StoreBusy, StoreFull } from "../db/failures.ts";
import type { Store } from "../db/open.ts";
import { people, sessions } from "../db/people-tables.ts";
import { now } from "../moments.ts";
import { cookieToken } from "./cookie.ts";
import { deviceOf } from "./known-devices.ts";
import { momentIn, SESSION_IDLE_MS, SESSION_MOST_MS, SESSION_STEP_MS } from "./lifetimes.ts";
import { type PersonRow, rolesOf, sitesOfPerson } from "./people.ts";
import { EVERY_RIGHT, rightsOf } from "./roles.ts";
import { isHashOf, sha256 } from "./secrets.ts";
import { EVERY_SITE } from "./sites-seen.ts";
import { isAtThisMachine } from "./this-machine.ts";

/** Why a caller is not let in, in words that say what to do. */
export interface Barred {
  detail: string;
}
type Caller = { ok: true; who: Who } | { ok: false; barred: Barred };

/**
 * Whoever is signed in, else the enrolled device, else, while nobody is enrolled, whoever is at this machine. Signed in
 * at an enrolled device, a person acts in his own name: its page sends the token with every call all the same.
 */
export async function whoCalls(c: Context, store: Store, door: Door): Promise<Caller> {
  const sent = c.req.header("authorization");
  const cookie = cookieToken(c, door);
  if (cookie !== undefined) {
    const signedIn = await bySessionToken(store, cookie);
    if (signedIn.ok || sent === undefined) return signedIn;
  }
  if (sent !== undefined) return byToken(store, /^Bearer +(\S+)$/i.exec(sent)?.[1]);
  if (await isAnyoneEnrolled(store)) return barred(UNKNOWN);
  if (door.loopback && isAtThisMachine(c)) {
    return { ok: true, who: { ...NOBODY, rights: EVERY_RIGHT, sees: EVERY_SITE, by: "open" } };
  }
  return barred(NOBODY_ENROLLED);
}

export const ENROL_FIRST = 'npm run -s enrol -- --name "A. Person" --role lead';
const NOBODY_ENROLLED = `Nobody is enrolled here yet, and this call does not come from the machine itself. There, run: ${ENROL_FIRST}`;
const UNKNOWN = "This needs someone who is known here. Sign in, or open the link with which a lead enrols this device.";
const AGAIN = "What was said on it stays on it. Ask a lead to enrol it again: People, then Enrol a device.";

async function byToken(store: Store, token: string | undefined): Promise<Caller> {
  if (token === undefined) return barred("Send the header as: Authorization: Bearer TOKEN");
  const device = await deviceOf(store, sha256(token));
  if (!device || !isHashOf(device.tokenHash, token)) return barred(`This device is not enrolled here. ${AGAIN}`);
  if (device.revokedAt || device.leftAt) return barred(`This device’s enrolment was revoked. ${AGAIN}`);
  if (device.until && device.until <= now().utc) return barred(`This device’s enrolment has ended. ${AGAIN}`);
  return { ok: true, who: whoOfDevice({ ...device, id: device.person }, device.id) };
}

/** What of a person a call goes by. */
type Calling = Pick<PersonRow, "id" | "roles" | "sites">;

export function whoOfDevice(person: Calling, device: string): Who {
  return known(person, { device, by: `device:${device}` });
}

export async function bySessionToken(store: Store, token: string): Promise<Caller> {
  const [found] = await store.db
    .select({ session: sessions, person: people })
    .from(sessions)
    .innerJoin(people, eq(people.id, sessions.person))
    .where(eq(sessions.tokenHash, sha256(token)));
  const over =
    !found ||
    !isHashOf(found.session.tokenHash, token) ||
    found.session.endedAt !== null ||
    found.person.leftAt !== null ||
    found.session.usedAt <= momentIn(-SESSION_IDLE_MS) ||
    found.session.beganAt <= momentIn(-SESSION_MOST_MS);
  if (over) return barred("You are signed out. Sign in again.");
  const { session, person } = found;
  if (session.usedAt < momentIn(-SESSION_STEP_MS)) await noteUse(store, session.id);
  return { ok: true, who: known(person, { session: session.id, by: `session:${session.id}` }) };
}

async function noteUse(store: Store, session: string): Promise<void> {
  try {
    await store.write(async (tx) => {
      await tx.update(sessions).set({ usedAt: now().utc }).where(eq(sessions.id, session));
    });
  } catch (cause) {
    // a store that cannot be written can still be read from: the session only ends the sooner for it
    if (!(cause instanceof StoreBusy || cause instanceof StoreFull)) throw cause;
  }
}

function known(person: Calling, how: Partial<Who> & { by: string }): Who {
  const roles = rolesOf(person);
  const sees = sitesOfPerson(person);
  return { ...NOBODY, ...how, person: person.id, roles, rights: rightsOf(roles, sees), sees };
}

const barred = (detail: string): Caller => ({ ok: false, barred: { detail } });

/** Once somebody is, nobody ever undoes it: who leaves is still written down. So a yes need not be asked for again. */
const enrolled = new WeakSet<Store>();
export async function isAnyoneEnrolled(store: Store): Promise<boolean> {
  if (enrolled.has(store)) return true;
  const [any] = await store.db.select({ id: people.id }).from(people).limit(1);
  if (any) enrolled.add(store);
  return any !== undefined;
}

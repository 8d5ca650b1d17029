import { and, asc, eq, isNull } from "drizzle-orm";
import type { Device, Person } from "../../core/shapes/people.ts";
import { ROLES, type Role } from "../../core/shapes/roles.ts";
import type { Who } from "../access.ts";
import { record } from "../audit/record.ts";
import type { Store } from "../db/open.ts";
import { devices, people, sessions } from "../db/people-tables.ts";
import type { Tx } from "../db/writer.ts";
import { newId } from "../ids.ts";
import { now } from "../moments.ts";
import { momentOut } from "./lifetimes.ts";

export type PersonRow = typeof people.$inferSelect;
export type Done<T> = { ok: true; value: T } | { ok: false; status: 404 | 409; problem: string };

export const rolesOf = (row: PersonRow): Role[] => JSON.parse(row.roles) as Role[];
export const nameKeyOf = (name: string): string => name.trim().replace(/\s+/g, " ").normalize("NFKC").toLowerCase();

/** Those who have not left first, by name; each with the devices enrolled for them, the newest first. */
export async function everyone(store: Store): Promise<Person[]> {
  const [rows, all] = await Promise.all([
    store.db.select().from(people).orderBy(asc(people.nameKey)),
    store.db.select().from(devices).orderBy(asc(devices.enrolledAt)),
  ]);
  return rows
    .map((row): Person => {
      const own = all.filter((one) => one.person === row.id).reverse();
      return {
        id: row.id,
        name: row.name,
        roles: rolesOf(row),
        password: row.password !== null,
        enrolledAt: momentOut(row.enrolledAt),
        ...(row.leftAt ? { leftAt: momentOut(row.leftAt) } : {}),
        devices: own.map(deviceOut),
      };
    })
    .sort((a, b) => Number(Boolean(a.leftAt)) - Number(Boolean(b.leftAt)));
}

function deviceOut(row: typeof devices.$inferSelect): Device {
  return {
    id: row.id,
    name: row.name,
    enrolledAt: momentOut(row.enrolledAt),
    ...(row.until ? { until: momentOut(row.until) } : {}),
    ...(row.revokedAt ? { revokedAt: momentOut(row.revokedAt) } : {}),
  };
}

/** The names of people by their ids, those who have left too: what they said is still theirs. */
export async function namesOf(db: Pick<Tx, "select">): Promise<Map<string, string>> {
  const rows = await db.select({ id: people.id, name: people.name }).from(people);
  return new Map(rows.map((row) => [row.id, row.name]));
}

export async function personNamed(tx: Pick<Tx, "select">, name: string): Promise<PersonRow | undefined> {
  const [row] = await tx
    .select()
    .from(people)
    .where(and(eq(people.nameKey, nameKeyOf(name)), isNull(people.leftAt)));
  return row;
}

export async function personOf(tx: Pick<Tx, "select">, id: string): Promise<PersonRow | undefined> {
  const [row] = await tx
    .select()
    .from(people)
    .where(and(eq(people.id, id), isNull(people.leftAt)));
  return row;
}

export async function addPerson(tx: Tx, who: Who, name: string, roles: readonly Role[]): Promise<Done<PersonRow>> {
  if (await personNamed(tx, name)) return no(409, `${name} is enrolled already: choose a name that tells them apart.`);
  const row: PersonRow = {
    id: newId(),
    name,
    nameKey: nameKeyOf(name),
    roles: rolesText(roles),
    enrolledAt: now().utc,
    leftAt: null,
    password: null,
  };
  await tx.insert(people).values(row);
  await record(tx, who, "person_enrolled", { person: row.id, name, roles: rolesOf(row) });
  return { ok: true, value: row };
}

/** Gives a person other roles. The last lead stays one, or nobody here could enrol anybody. */
export async function changeRoles(tx: Tx, who: Who, id: string, roles: readonly Role[]): Promise<Done<PersonRow>> {
  const row = await personOf(tx, id);
  if (!row) return no(404, NO_PERSON);
  if (!roles.includes("lead") && (await isLastLead(tx, row))) return no(409, LAST_LEAD);
  const changed = { ...row, roles: rolesText(roles) };
  if (changed.roles === row.roles) return { ok: true, value: row };
  await tx.update(people).set({ roles: changed.roles }).where(eq(people.id, id));
  await record(tx, who, "roles_changed", { person: id, roles: rolesOf(changed), before: rolesOf(row) });
  return { ok: true, value: changed };
}

/** Somebody is no longer one of us: every device and session of theirs ends with it. What they said stays theirs. */
export async function letGo(tx: Tx, who: Who, id: string): Promise<Done<undefined>> {
  const row = await personOf(tx, id);
  if (!row) return no(404, NO_PERSON);
  if (await isLastLead(tx, row)) return no(409, LAST_LEAD);
  const at = now().utc;
  await tx.update(people).set({ leftAt: at, password: null }).where(eq(people.id, id));
  await tx
    .update(devices)
    .set({ revokedAt: at })
    .where(and(eq(devices.person, id), isNull(devices.revokedAt)));
  await tx
    .update(sessions)
    .set({ endedAt: at })
    .where(and(eq(sessions.person, id), isNull(sessions.endedAt)));
  await record(tx, who, "person_left", { person: id });
  return { ok: true, value: undefined };
}

const NO_PERSON = "No such person is enrolled here. GET /api/people lists those who are.";
const LAST_LEAD = "This is the only lead: make somebody else a lead first, or nobody could enrol people here.";

async function isLastLead(tx: Tx, row: PersonRow): Promise<boolean> {
  if (!rolesOf(row).includes("lead")) return false;
  const all = await tx.select().from(people).where(isNull(people.leftAt));
  return !all.some((one) => one.id !== row.id && rolesOf(one).includes("lead"));
}

/** Each role once, in the order of the table. */
const rolesText = (roles: readonly Role[]) => JSON.stringify(ROLES.filter((role) => roles.includes(role)));

const no = (status: 404 | 409, problem: string) => ({ ok: false as const, status, problem });

import { and, asc, eq, inArray, isNull } from "drizzle-orm";
import type { Device, Person, PersonChange } from "../../core/shapes/people.ts";
import { ROLES, type Role } from "../../core/shapes/roles.ts";
import type { Who } from "../access.ts";
import { record } from "../audit/record.ts";
import type { Store } from "../db/open.ts";
import { devices, people, sessions } from "../db/people-tables.ts";
import { sites } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { newId } from "../ids.ts";
import { now } from "../moments.ts";
import { momentOut } from "./lifetimes.ts";
import { EVERY_SITE, type SitesSeen, seesSites } from "./sites-seen.ts";

export type PersonRow = typeof people.$inferSelect;
export type Done<T> = { ok: true; value: T } | { ok: false; status: 403 | 404 | 409; problem: string };

export const rolesOf = (row: Pick<PersonRow, "roles">): Role[] => JSON.parse(row.roles) as Role[];
export const sitesOfPerson = (row: Pick<PersonRow, "sites">): SitesSeen =>
  row.sites === null ? EVERY_SITE : (JSON.parse(row.sites) as string[]);
export const nameKeyOf = (name: string): string => name.trim().replace(/\s+/g, " ").normalize("NFKC").toLowerCase();

/** Whether he may manage this person: whoever is kept to sites manages those who are kept to no others than his. */
export const manages = ({ sees }: Pick<Who, "sees">, row: PersonRow): boolean => seesSites(sees, sitesOfPerson(row));

/**
 * Those whom he manages: those who have not left first, by name; each with the devices enrolled for them, the newest
 * first.
 */
export async function everyone(store: Store, who: Pick<Who, "sees">): Promise<Person[]> {
  const [rows, all] = await Promise.all([
    store.db.select().from(people).orderBy(asc(people.nameKey)),
    store.db.select().from(devices).orderBy(asc(devices.enrolledAt)),
  ]);
  return rows
    .filter((row) => manages(who, row))
    .map((row): Person => {
      const own = all.filter((one) => one.person === row.id).reverse();
      return {
        id: row.id,
        name: row.name,
        roles: rolesOf(row),
        ...sitesOut(row),
        password: row.password !== null,
        enrolledAt: momentOut(row.enrolledAt),
        ...(row.leftAt ? { leftAt: momentOut(row.leftAt) } : {}),
        devices: own.map(deviceOut),
      };
    })
    .sort((a, b) => Number(Boolean(a.leftAt)) - Number(Boolean(b.leftAt)));
}

export function sitesOut(row: PersonRow): { sites?: string[] } {
  const kept = sitesOfPerson(row);
  return kept === EVERY_SITE ? {} : { sites: [...kept] };
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

/** Somebody whom he manages; to him there is nobody else. */
export async function personManaged(tx: Tx, who: Pick<Who, "sees">, id: string): Promise<PersonRow | undefined> {
  const row = await personOf(tx, id);
  return row && manages(who, row) ? row : undefined;
}

/** Enrols a person. A name is one person's at all sites alike, since people sign in by it. */
export async function addPerson(
  tx: Tx,
  who: Who,
  { name, roles, sites: kept }: { name: string; roles: readonly Role[]; sites?: readonly string[] | undefined },
): Promise<Done<PersonRow>> {
  const refused = await mayNotKeepTo(tx, who, kept ?? null);
  if (refused) return refused;
  if (await personNamed(tx, name)) return no(409, `${name} is enrolled already: choose a name that tells them apart.`);
  const row: PersonRow = {
    id: newId(),
    name,
    nameKey: nameKeyOf(name),
    roles: rolesText(roles),
    sites: sitesText(kept ?? null),
    enrolledAt: now().utc,
    leftAt: null,
    password: null,
  };
  await tx.insert(people).values(row);
  await record(tx, who, "person_enrolled", { person: row.id, name, roles: rolesOf(row), ...sitesOut(row) });
  return { ok: true, value: row };
}

/**
 * Gives a person other roles, or keeps him or her to other sites. The last lead of every site stays one, or nobody here
 * could enrol anybody at any site.
 */
export async function changePerson(tx: Tx, who: Who, id: string, change: PersonChange): Promise<Done<PersonRow>> {
  const row = await personManaged(tx, who, id);
  if (!row) return no(404, NO_PERSON);
  const refused = change.sites === undefined ? undefined : await mayNotKeepTo(tx, who, change.sites);
  if (refused) return refused;
  const changed = {
    ...row,
    ...(change.roles ? { roles: rolesText(change.roles) } : {}),
    ...(change.sites === undefined ? {} : { sites: sitesText(change.sites) }),
  };
  if (!leadsEverySite(changed) && (await isLastLead(tx, row))) return no(409, LAST_LEAD);
  if (changed.roles === row.roles && changed.sites === row.sites) return { ok: true, value: row };
  await tx.update(people).set({ roles: changed.roles, sites: changed.sites }).where(eq(people.id, id));
  if (changed.roles !== row.roles)
    await record(tx, who, "roles_changed", { person: id, roles: rolesOf(changed), before: rolesOf(row) });
  if (changed.sites !== row.sites)
    await record(tx, who, "sites_changed", { person: id, sites: sitesOfPerson(changed), before: sitesOfPerson(row) });
  return { ok: true, value: changed };
}

/** Somebody is no longer one of us: every device and session of theirs ends with it. What they said stays theirs. */
export async function letGo(tx: Tx, who: Who, id: string): Promise<Done<undefined>> {
  const row = await personManaged(tx, who, id);
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

export const NO_PERSON = "No such person is enrolled here. GET /api/people lists those who are.";
const LAST_LEAD =
  "This is the only lead who sees every site: make somebody else one first, or nobody could enrol people here.";

const leadsEverySite = (row: PersonRow) => rolesOf(row).includes("lead") && sitesOfPerson(row) === EVERY_SITE;

async function isLastLead(tx: Tx, row: PersonRow): Promise<boolean> {
  if (!leadsEverySite(row)) return false;
  const all = await tx.select().from(people).where(isNull(people.leftAt));
  return !all.some((one) => one.id !== row.id && leadsEverySite(one));
}

/** Why he may not keep anybody to these sites (null: to none): they reach beyond his own, or a key is mistyped. */
async function mayNotKeepTo(tx: Tx, who: Pick<Who, "sees">, kept: readonly string[] | null) {
  const { sees } = who;
  if (sees !== EVERY_SITE && !seesSites(sees, kept ?? EVERY_SITE))
    return no(403, `You are kept to ${sees.join(", ")}: keep others to those, or ask a lead who sees every site.`);
  if (kept === null) return undefined;
  const rows = await tx
    .select({ site: sites.site })
    .from(sites)
    .where(inArray(sites.site, [...kept]));
  const unknown = kept.filter((site) => !rows.some((row) => row.site === site));
  if (unknown.length === 0) return undefined;
  return no(409, `No site ${unknown.join(", ")} is set up: whoever is kept to it would see nothing. Set it up first.`);
}

/** Each role once, in the order of the table. */
const rolesText = (roles: readonly Role[]) => JSON.stringify(ROLES.filter((role) => roles.includes(role)));
const sitesText = (kept: readonly string[] | null) => kept && JSON.stringify([...new Set(kept)].sort());

const no = (status: 403 | 404 | 409, problem: string) => ({ ok: false as const, status, problem });

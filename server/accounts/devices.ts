import { and, eq, isNull } from "drizzle-orm";
import type { Who } from "../access.ts";
import { record } from "../audit/record.ts";
import { devices, people } from "../db/people-tables.ts";
import type { Tx } from "../db/writer.ts";
import { newId } from "../ids.ts";
import { now } from "../moments.ts";
import { type Done, manages, type PersonRow } from "./people.ts";
import { newToken, sha256 } from "./secrets.ts";

/** Enrols a device for a person: its token is answered here, once, and only its hash is kept. */
export async function enrolDevice(
  tx: Tx,
  who: Who,
  person: PersonRow,
  about: { name: string; until: string | null },
): Promise<{ id: string; token: string }> {
  const token = newToken("device");
  const id = newId();
  await tx.insert(devices).values({
    id,
    person: person.id,
    name: about.name,
    tokenHash: sha256(token),
    enrolledAt: now().utc,
    until: about.until,
    revokedAt: null,
  });
  await record(tx, who, "device_enrolled", { device: id, person: person.id, name: about.name, until: about.until });
  return { id, token };
}

/** From this moment on the device is refused; what it has not sent stays on it. */
export async function revokeDevice(tx: Tx, who: Who, id: string): Promise<Done<undefined>> {
  const [found] = await tx
    .select({ device: devices, owner: people })
    .from(devices)
    .innerJoin(people, eq(people.id, devices.person))
    .where(eq(devices.id, id));
  if (!found || !manages(who, found.owner))
    return {
      ok: false,
      status: 404,
      problem: "No such device is enrolled here. GET /api/people lists those that are.",
    };
  const { device: row } = found;
  if (row.revokedAt) return { ok: true, value: undefined };
  await tx
    .update(devices)
    .set({ revokedAt: now().utc })
    .where(and(eq(devices.id, id), isNull(devices.revokedAt)));
  await record(tx, who, "device_revoked", { device: id, person: row.person });
  return { ok: true, value: undefined };
}

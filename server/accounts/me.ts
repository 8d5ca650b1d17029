import { eq } from "drizzle-orm";
import type { Caller } from "../../core/shapes/people.ts";
import type { Who } from "../access.ts";
import type { Store } from "../db/open.ts";
import { devices, people } from "../db/people-tables.ts";
import { momentOut } from "./lifetimes.ts";
import { sitesOut } from "./people.ts";

/** The caller as the page is told of him. */
export async function callerOf(store: Store, who: Who): Promise<Caller> {
  const [person] = who.person ? await store.db.select().from(people).where(eq(people.id, who.person)) : [];
  const [device] = who.device ? await store.db.select().from(devices).where(eq(devices.id, who.device)) : [];
  return {
    open: person === undefined,
    ...(person ? { id: person.id, name: person.name } : {}),
    roles: [...who.roles],
    rights: [...who.rights],
    ...(person ? sitesOut(person) : {}),
    by: device ? "device" : person ? "session" : "open",
    ...(device ? { device: device.name } : {}),
    ...(device?.until ? { until: momentOut(device.until) } : {}),
    password: Boolean(person?.password),
  };
}

import { and, asc, eq } from "drizzle-orm";
import type { Family, OwnFamily, Valve } from "../../core/index.ts";
import { familySchema } from "../../core/shapes/valve.ts";
import { ofSites, type SitesSeen } from "../accounts/sites-seen.ts";
import { siteFamilies } from "../db/tables.ts";
import type { Reads } from "./what-is-known.ts";

/** A site's own families by their codes. */
export type OwnFamilies = ReadonlyMap<string, OwnFamily>;

/** The families that a site set up for itself, as they stand now. */
export async function ownFamiliesAt(db: Reads, site: string): Promise<OwnFamilies> {
  return (await ownFamiliesOf(db, [site])).get(site) ?? new Map();
}

/** The same of several sites at once. */
export async function ownFamiliesOf(db: Reads, seen: SitesSeen): Promise<Map<string, OwnFamilies>> {
  const rows = await db
    .select()
    .from(siteFamilies)
    .where(and(ofSites(seen, siteFamilies.site)))
    .orderBy(asc(siteFamilies.site), asc(siteFamilies.family), asc(siteFamilies.number));
  const sites = new Map<string, Map<string, OwnFamily>>();
  for (const { site, family, number, known } of rows) {
    const own = sites.get(site) ?? new Map<string, OwnFamily>();
    // of several the last, which is the newest, stays
    if (known === null) own.delete(family);
    else own.set(family, { number, data: readFamily(known) });
    sites.set(site, own);
  }
  return sites;
}

/** As the core takes them. */
export const dataOf = (own: OwnFamilies | undefined): Family[] => [...(own?.values() ?? [])].map((one) => one.data);

/** The one of a site's own that a valve is of. */
export const ownFamilyOf = (valve: Valve, own: OwnFamilies): OwnFamily | undefined =>
  valve.family === undefined ? undefined : own.get(valve.family);

/** How often each code was set up or taken back. */
export async function timesSetUp(db: Reads, site: string, family: string): Promise<number> {
  const rows = await db
    .select({ number: siteFamilies.number })
    .from(siteFamilies)
    .where(and(eq(siteFamilies.site, site), eq(siteFamilies.family, family)));
  return rows.length;
}

function readFamily(text: string): Family {
  const read = familySchema.safeParse(JSON.parse(text));
  if (!read.success) throw new Error("a stored valve family does not read", { cause: read.error });
  return read.data;
}

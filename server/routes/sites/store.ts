import { asc, eq } from "drizzle-orm";
import type { Keeping, Site } from "../../../core/index.ts";
import type { Who } from "../../access.ts";
import { ofSites, type SitesSeen } from "../../accounts/sites-seen.ts";
import { record } from "../../audit/record.ts";
import type { Store } from "../../db/open.ts";
import { sites } from "../../db/tables.ts";
import { keepingOf } from "../../keepsakes/keeping.ts";
import { now } from "../../moments.ts";
import { todayIn } from "../../reading/what-is-known.ts";

export async function sitesOf(store: Store, seen: SitesSeen): Promise<(Site & { today: string; keeping: Keeping })[]> {
  const rows = await store.db
    .select({ site: sites.site, name: sites.name, zone: sites.zone })
    .from(sites)
    .where(ofSites(seen, sites.site))
    .orderBy(asc(sites.name), asc(sites.site));
  return Promise.all(
    rows.map(async (row) => ({ ...row, today: todayIn(row.zone), keeping: await keepingOf(store.db, row.site) })),
  );
}

export async function siteOf(store: Store, key: string): Promise<Site | undefined> {
  const [row] = await store.db
    .select({ site: sites.site, name: sites.name, zone: sites.zone })
    .from(sites)
    .where(eq(sites.site, key));
  return row;
}

/** Sets up a site, or gives it another name or zone. */
export async function setUpSite(store: Store, site: Site, who: Who): Promise<void> {
  await store.write(async (tx) => {
    await tx
      .insert(sites)
      .values({ ...site, createdAt: now().utc })
      .onConflictDoUpdate({ target: sites.site, set: { name: site.name, zone: site.zone } });
    await record(tx, who, "site_set_up", { ...site });
  });
}

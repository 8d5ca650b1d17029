import { eq } from "drizzle-orm";
import type { Keeping } from "../../core/index.ts";
import { KEEPING_UNLESS_SAID } from "../../core/shapes/keepsake-bounds.ts";
import type { Who } from "../access.ts";
import { record } from "../audit/record.ts";
import type { Store } from "../db/open.ts";
import { siteKeeping } from "../db/tables.ts";
import type { Reads } from "../reading/what-is-known.ts";

/** What a site does with the sound of phrases. */
export async function keepingOf(db: Reads, site: string): Promise<Keeping> {
  const [row] = await db
    .select({ clips: siteKeeping.clips, days: siteKeeping.days })
    .from(siteKeeping)
    .where(eq(siteKeeping.site, site));
  return row ?? KEEPING_UNLESS_SAID;
}

export async function setKeeping(store: Store, site: string, keeping: Keeping, who: Who): Promise<void> {
  await store.write(async (tx) => {
    await tx
      .insert(siteKeeping)
      .values({ site, ...keeping })
      .onConflictDoUpdate({ target: siteKeeping.site, set: keeping });
    await record(tx, who, "keeping_set", { site, ...keeping });
  });
}

/** The moment, as stored, before which a site's sound is too old to keep; undefined where none ever is. */
export function tooOldBefore(keeping: Keeping, now: Date): string | undefined {
  if (keeping.clips === "for_good") return undefined;
  const iso = new Date(now.getTime() - keeping.days * 86_400_000).toISOString();
  return `${iso.slice(0, 23)}000000Z`;
}

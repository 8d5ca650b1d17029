import { randomBytes } from "node:crypto";
import { eq } from "drizzle-orm";
import type { Who } from "../../access.ts";
import { isHashOf, sha256 } from "../../accounts/secrets.ts";
import { record } from "../../audit/record.ts";
import type { Store } from "../../db/open.ts";
import { calendarFeeds } from "../../db/report-tables.ts";
import { now } from "../../moments.ts";

/** Since when a site's calendar has an address; undefined where it has none. */
export async function feedOf(store: Store, site: string): Promise<string | undefined> {
  const [row] = await store.db.select().from(calendarFeeds).where(eq(calendarFeeds.site, site));
  return row?.madeAt;
}

/** Makes an address and answers its secret, which is told this once; an earlier address no longer leads anywhere. */
export async function openFeed(store: Store, site: string, who: Who): Promise<string> {
  const secret = randomBytes(32).toString("base64url");
  const set = { secret: sha256(secret), madeAt: now().utc };
  await store.write(async (tx) => {
    await tx
      .insert(calendarFeeds)
      .values({ site, ...set })
      .onConflictDoUpdate({ target: calendarFeeds.site, set });
    await record(tx, who, "calendar_opened", { site });
  });
  return secret;
}

/** Takes the address back; whether there was one. */
export async function closeFeed(store: Store, site: string, who: Who): Promise<boolean> {
  return store.write(async (tx) => {
    const gone = await tx.delete(calendarFeeds).where(eq(calendarFeeds.site, site)).returning();
    if (gone.length > 0) await record(tx, who, "calendar_closed", { site });
    return gone.length > 0;
  });
}

/** The site whose calendar this secret opens. */
export async function siteOfFeed(store: Store, secret: string): Promise<string | undefined> {
  const [row] = await store.db
    .select()
    .from(calendarFeeds)
    .where(eq(calendarFeeds.secret, sha256(secret)));
  return row && isHashOf(row.secret, secret) ? row.site : undefined;
}

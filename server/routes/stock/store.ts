import { asc, eq } from "drizzle-orm";
import type { Stock } from "../../../core/index.ts";
import type { Who } from "../../access.ts";
import { record } from "../../audit/record.ts";
import type { Store } from "../../db/open.ts";
import { siteStock } from "../../db/tables.ts";

/** What a site has on its shelves; empty where it never said. */
export async function stockAt(store: Store, site: string): Promise<Record<string, number>> {
  const rows = await store.db
    .select({ part: siteStock.part, count: siteStock.count })
    .from(siteStock)
    .where(eq(siteStock.site, site))
    .orderBy(asc(siteStock.part));
  return Object.fromEntries(rows.map((row) => [row.part, row.count]));
}

/** Keeps a site's stock whole: what it does not name is no longer known. */
export async function keepStock(store: Store, site: string, stock: Stock, who: Who): Promise<void> {
  const rows = Object.entries(stock).map(([part, count]) => ({ site, part, count }));
  await store.write(async (tx) => {
    await tx.delete(siteStock).where(eq(siteStock.site, site));
    // a statement takes a limited number of values at once
    for (let at = 0; at < rows.length; at += 100) await tx.insert(siteStock).values(rows.slice(at, at + 100));
    await record(tx, who, "stock_set", { site, parts: rows.length });
  });
}

import { and, eq } from "drizzle-orm";
import type { FamilySent } from "../../../core/index.ts";
import type { Who } from "../../access.ts";
import { record } from "../../audit/record.ts";
import type { Store } from "../../db/open.ts";
import { jobs, siteFamilies, valveTags } from "../../db/tables.ts";
import type { Tx } from "../../db/writer.ts";
import { now } from "../../moments.ts";
import { ownFamiliesAt, timesSetUp } from "../../reading/site-families.ts";

/**
 * Keeps a site's own family, or takes it back; what was said of it before stays in the record. Answers false where
 * there is none to take back.
 */
export function keepFamily(store: Store, site: string, sent: FamilySent, who: Who): Promise<boolean> {
  return store.write(async (tx) => {
    const family = "family" in sent ? sent.family.family : sent.withdraw;
    const known = "family" in sent ? JSON.stringify(sent.family) : null;
    if (known === null && !(await ownFamiliesAt(tx, site)).has(family)) return false;
    const number = (await timesSetUp(tx, site, family)) + 1;
    await tx.insert(siteFamilies).values({ site, family, number, known, madeAt: now().utc });
    await reckonAnew(tx, site);
    await record(tx, who, known === null ? "family_taken_back" : "family_set_up", { site, family, number });
    return true;
  });
}

/** Limits, dates and the parts taken for the valve's own may all be others now; what was signed stays as it is. */
async function reckonAnew(tx: Tx, site: string): Promise<void> {
  await tx.update(valveTags).set({ stale: 1 }).where(eq(valveTags.site, site));
  await tx
    .update(jobs)
    .set({ unweighed: 1 })
    .where(and(eq(jobs.site, site), eq(jobs.signed, 0)));
}

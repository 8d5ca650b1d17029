import { and, asc, count, desc, eq, gt, inArray, sql } from "drizzle-orm";
import type { JobToSign } from "../../../core/index.ts";
import { CERTAIN } from "../../../core/shapes/review-reasons.ts";
import { momentOut } from "../../accounts/lifetimes.ts";
import { namesOf } from "../../accounts/people.ts";
import { ofSites, type SitesSeen } from "../../accounts/sites-seen.ts";
import type { Store } from "../../db/open.ts";
import { reviewItems } from "../../db/review-tables.ts";
import { jobs, phrases } from "../../db/tables.ts";
import { localDay, writeMoment } from "../../moments.ts";
import type { JobRow } from "../../reading/keep-reading.ts";
import { type Reads, zoneOf } from "../../reading/what-is-known.ts";
import { newestSignature } from "../../review/standing.ts";
import { weighChanged } from "../../review/weigh-changed.ts";

/** Jobs of these sites that wait to be signed, the oldest first; or those signed, the latest first. */
export async function jobsToSign(
  store: Store,
  seen: SitesSeen,
  wish: { state: "open" | "signed"; after?: string; most: number },
): Promise<{ jobs: JobToSign[]; next?: string }> {
  await weighChanged(store, seen);
  const { db } = store;
  const [startedAt = "", id = ""] = wish.after?.split("~") ?? [];
  const signed = wish.state === "signed";
  const beyond = signed
    ? sql`(${jobs.startedAt}, ${jobs.id}) < (${startedAt}, ${id})`
    : sql`(${jobs.startedAt}, ${jobs.id}) > (${startedAt}, ${id})`;
  const rows = await db
    .select()
    .from(jobs)
    .where(
      and(
        ofSites(seen, jobs.site),
        eq(jobs.signed, Number(signed)),
        // a job in which nothing was said has nothing to sign
        gt(jobs.revision, 0),
        wish.after === undefined ? undefined : beyond,
      ),
    )
    .orderBy(...(signed ? [desc(jobs.startedAt), desc(jobs.id)] : [asc(jobs.startedAt), asc(jobs.id)]))
    .limit(wish.most + 1);
  const shown = rows.slice(0, wish.most);
  const last = shown.at(-1);
  return {
    jobs: await toSign(db, shown),
    ...(rows.length > wish.most && last ? { next: `${last.startedAt}~${last.id}` } : {}),
  };
}

/** Jobs as they stand before a lead signs them. */
export async function toSign(db: Reads, rows: readonly JobRow[]): Promise<JobToSign[]> {
  if (rows.length === 0) return [];
  const ids = rows.map((row) => row.id);
  const items = await db
    .select({
      job: reviewItems.job,
      state: reviewItems.state,
      certain: sql<number>`case when ${reviewItems.weight} >= ${CERTAIN} then 1 else 0 end`,
      tag: sql<string>`min(${reviewItems.tag})`,
      count: count(),
    })
    .from(reviewItems)
    .where(inArray(reviewItems.job, ids))
    .groupBy(reviewItems.job, reviewItems.state, sql`3`);
  const said = await db
    .select({ job: phrases.job, person: phrases.person, count: count() })
    .from(phrases)
    .where(and(inArray(phrases.site, [...new Set(rows.map((row) => row.site))]), inArray(phrases.job, ids)))
    .groupBy(phrases.job, phrases.person);
  const names = await namesOf(db);
  const name = (person: string | null) => (person === null ? undefined : names.get(person));
  const zones = new Map<string, string | undefined>();
  const made: JobToSign[] = [];
  for (const row of rows) {
    if (!zones.has(row.site)) zones.set(row.site, await zoneOf(db, row.site));
    const own = items.filter((one) => one.job === row.id);
    const sum = (holds: (one: (typeof own)[number]) => boolean) =>
      own.filter(holds).reduce((all, one) => all + one.count, 0);
    const phrasesOf = said.filter((one) => one.job === row.id);
    const total = phrasesOf.reduce((all, one) => all + one.count, 0);
    const tag = own[0]?.tag || row.tag || "";
    const last = await newestSignature(db, row.id);
    const by = last && name(last.person);
    made.push({
      id: row.id,
      ...(row.site ? { site: row.site } : {}),
      ...(tag ? { tag } : {}),
      day: localDay({ utc: row.startedAt, offset: row.startedOffset }, zones.get(row.site)),
      startedAt: writeMoment({ utc: row.startedAt, offset: row.startedOffset }),
      by: phrasesOf.flatMap((one) => name(one.person) ?? []),
      phrases: total,
      doubtful: sum((one) => one.state === "open" && one.certain === 0),
      certain: sum((one) => one.state === "open" && one.certain === 1),
      asked: sum((one) => one.state === "asked"),
      state: row.signed ? "signed" : "open",
      ...(last?.act === "signed"
        ? { ...(by === undefined ? {} : { signedBy: by }), signedAt: momentOut(last.madeAt) }
        : {}),
      cameAfter: last?.act === "signed" ? Math.max(0, total - last.phrases) : 0,
      ...(last?.act === "reopened"
        ? { reopened: { ...(by === undefined ? {} : { by }), at: momentOut(last.madeAt), why: last.why ?? "" } }
        : {}),
    });
  }
  return made;
}

import { eq } from "drizzle-orm";
import type { Store } from "../db/open.ts";
import { jobs } from "../db/tables.ts";
import { todayIn } from "../reading/what-is-known.ts";
import { dueWithin } from "../routes/due/store.ts";
import { siteOf } from "../routes/sites/store.ts";
import { dayJobs } from "./day-jobs.ts";
import type { DayData } from "./day-report.ts";
import { jobsOfDays } from "./jobs-of-days.ts";

const DUE_DAYS = 30;

/** A site's day as the log has it; undefined for a site that nobody set up and no job ever named. */
export async function dayData(store: Store, key: string, day?: string): Promise<DayData | undefined> {
  const site = await siteOf(store, key);
  if (!site && !(await isNamed(store, key))) return undefined;
  const on = day ?? todayIn(site?.zone);
  const days = await jobsOfDays(store, key, on, on);
  const done = await dayJobs(store, { site: key, day: on, zone: site?.zone }, days.get(on) ?? []);
  const { due } = await dueWithin(store, [key], DUE_DAYS, { asOf: on });
  return { site: { key, name: site?.name ?? key, zone: site?.zone }, day: on, jobs: done, due, dueDays: DUE_DAYS };
}

async function isNamed(store: Store, key: string): Promise<boolean> {
  const [any] = await store.db.select({ id: jobs.id }).from(jobs).where(eq(jobs.site, key)).limit(1);
  return any !== undefined;
}

import { eq } from "drizzle-orm";
import { namesOf } from "../accounts/people.ts";
import type { Store } from "../db/open.ts";
import { jobs } from "../db/tables.ts";
import { clockTime } from "../moments.ts";
import { todayIn } from "../reading/what-is-known.ts";
import { newestSignature } from "../review/standing.ts";
import { dueWithin } from "../routes/due/store.ts";
import { jobView } from "../routes/jobs/store.ts";
import { siteOf } from "../routes/sites/store.ts";
import type { DayData, DayJob } from "./day-report.ts";
import { jobsOfDays } from "./jobs-of-days.ts";

const DUE_DAYS = 30;

/** A site's day as the log has it; undefined for a site that nobody set up and no job ever named. */
export async function dayData(store: Store, key: string, day?: string): Promise<DayData | undefined> {
  const site = await siteOf(store, key);
  if (!site && !(await isNamed(store, key))) return undefined;
  const on = day ?? todayIn(site?.zone);
  const done: DayJob[] = [];
  const ids = ((await jobsOfDays(store, key, on, on)).get(on) ?? []).map((one) => one.id);
  for (const id of ids) {
    // a day of hundreds of jobs takes seconds: others are answered in between
    await new Promise((turn) => setImmediate(turn));
    const job = await jobView(store, id);
    if (!job) continue;
    const signed = await signedOf(store, job.id);
    done.push({
      ...(signed ? { signed } : {}),
      time: clock(job.startedAt, site?.zone),
      by: [...new Set(job.phrases.flatMap((one) => one.by ?? []))],
      shares: job.valves.map(({ tag, ...share }) => ({ tag: tag ?? "", ...share })),
      phrases: job.phrases.map(({ saidAt, text, unread, alerts }) => ({
        time: clock(saidAt, site?.zone),
        text,
        unread: unread.map((one) => one.text),
        alerts,
      })),
    });
  }
  const { due } = await dueWithin(store, key, DUE_DAYS, { asOf: on });
  return { site: { key, name: site?.name ?? key, zone: site?.zone }, day: on, jobs: done, due, dueDays: DUE_DAYS };
}

/** Who signed a job, where it stands signed. */
async function signedOf(store: Store, id: string): Promise<DayJob["signed"]> {
  const [job] = await store.db.select({ signed: jobs.signed }).from(jobs).where(eq(jobs.id, id));
  const last = job?.signed ? await newestSignature(store.db, id) : undefined;
  if (!last) return undefined;
  const by = last.person === null ? undefined : (await namesOf(store.db)).get(last.person);
  return by === undefined ? {} : { by };
}

async function isNamed(store: Store, key: string): Promise<boolean> {
  const [any] = await store.db.select({ id: jobs.id }).from(jobs).where(eq(jobs.site, key)).limit(1);
  return any !== undefined;
}

/** HH:MM at the site; without a zone, as the device's own clock said. */
function clock(iso: string, zone: string | undefined): string {
  return zone ? clockTime(new Date(iso).toISOString(), zone).slice(0, 5) : iso.slice(11, 16);
}

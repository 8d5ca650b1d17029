import { busyDay } from "./busy-day.ts";
import { chance } from "./chance.ts";
import { type DemoSite, SITES, VALVES } from "./field.ts";
import type { DemoJob } from "./job.ts";
import { daysAfter, momentAt, workdayBefore } from "./times.ts";
import { visitsOf } from "./visits.ts";

/** A job as it is delivered, with the moments and the ids that a device would have given it. */
export interface DemoDelivery {
  job: { id: string; tag: string; site: string; startedAt: string };
  phrases: { id: string; job: string; text: string; saidAt: string; how: "typed" | "heard"; confidence?: number }[];
  told: DemoJob;
}

const SEED = 20_240_817;
const DAYS_BACK = 548;

/** The whole story, oldest job first: eighteen months up to the last workday before `today`. */
export function tellStory(today: string): { jobs: DemoDelivery[]; busy: { site: DemoSite; day: string } } {
  const last = workdayBefore(today);
  const first = daysAfter(last, -DAYS_BACK);
  const jobs = VALVES.flatMap((valve, n) => visitsOf(valve, first, last, chance(SEED + n)));
  const busy = { site: SITES[0] as DemoSite, day: last };
  jobs.push(...busyDay(busy.site.site, busy.day));
  jobs.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.starts - b.starts));
  return { jobs: jobs.map((job, n) => deliveryOf(job, n)), busy };
}

function deliveryOf(told: DemoJob, n: number): DemoDelivery {
  const luck = chance(SEED * 3 + n);
  const zone = SITES.find((one) => one.site === told.site)?.zone ?? "Etc/UTC";
  const startedAt = momentAt(told.day, told.starts, zone);
  const job = { id: uuid7(startedAt, luck), tag: told.tag, site: told.site, startedAt };
  let at = told.starts;
  const phrases = told.say.map(({ say }) => {
    at += luck.between(25, 400);
    const saidAt = momentAt(told.day, at, zone);
    const typed = told.style === "short";
    return {
      id: uuid7(saidAt, luck),
      job: job.id,
      text: say,
      saidAt,
      ...(typed ? { how: "typed" as const } : { how: "heard" as const, confidence: luck.between(78, 99) / 100 }),
    };
  });
  return { job, phrases, told };
}

/** A UUID of version 7 whose random bits come from the story's seed, so that telling it twice makes no new job. */
function uuid7(moment: string, luck: { next(): number }): string {
  const time = Date.parse(moment).toString(16).padStart(12, "0");
  const hex = (count: number) =>
    Array.from({ length: count }, () => Math.floor(luck.next() * 16).toString(16)).join("");
  return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(3)}-${"89ab"[Math.floor(luck.next() * 4)]}${hex(3)}-${hex(12)}`;
}

import { BY_ITSELF } from "../audit/record.ts";
import type { Log } from "../log.ts";
import { addDays } from "../moments.ts";
import { allSettings, keepLastDay } from "../routes/sending/store.ts";
import { siteOf } from "../routes/sites/store.ts";
import { lastRun } from "./day-end.ts";
import { type Issuing, issue } from "./issue.ts";
import { recordOfDays } from "./record-digest.ts";

/** How far back a day is still sent, or corrected, by itself: a phone may come into the network days later. */
const LOOK_BACK_DAYS = 14;

/**
 * Sees to every site whose day has ended since it was last seen to: what was said goes to the outbox, as do days
 * before it that were added to or amended after they went. Safe to repeat: a version is made once.
 */
export async function runSchedule(given: Issuing & { log: Log }): Promise<void> {
  const { store, log } = given;
  for (const settings of await allSettings(store)) {
    const { site } = settings;
    const zone = (await siteOf(store, site))?.zone;
    if (!zone) continue;
    const day = lastRun(given.clock(), zone, settings);
    if (day <= settings.lastDay) continue;
    const from = [settings.since, addDays(day, -LOOK_BACK_DAYS)].sort()[1] ?? day;
    if (settings.recipients.length > 0 || !given.server) {
      const record = await recordOfDays(store, site, from, day);
      for (let one = from; one <= day; one = addDays(one, 1)) {
        const quiet = settings.quiet && one > settings.lastDay;
        if (!record.has(one) && !quiet) continue;
        const issued = await issue(given, site, one, { by: "clock", who: BY_ITSELF });
        if (issued.ok) log.info("report handed to the outbox", { day: one, version: issued.version });
      }
    }
    await keepLastDay(store, site, day);
  }
}

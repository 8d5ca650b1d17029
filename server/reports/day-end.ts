import type { ReportSettings } from "../../core/index.ts";
import { addDays, clockTime, localDay, momentOf } from "../moments.ts";

/**
 * When a site's day ends. The day is the site's calendar day; its report goes at the site's hour of that day, or,
 * where the hour lies before noon, of the morning after: a night shift's report at 06:00 is of the day before.
 * Compared on the wall's own clock, so that an hour which the spring leaves out comes when the clock has passed it,
 * and one which the autumn has twice comes at its first: whoever asks keeps the last day, and goes by no earlier one.
 */
type When = Pick<ReportSettings, "hour" | "weekends">;

/** Days from a day to that on which its report goes. */
const nights = (hour: string): number => (hour < "12:00" ? 1 : 0);

/** The latest day that has ended at this site. */
export function lastEnded(at: Date, zone: string, hour: string): string {
  const now = momentOf(at);
  const today = localDay(now, zone);
  const passed = clockTime(now.utc, zone).slice(0, 5) >= hour;
  return addDays(today, (passed ? 0 : -1) - nights(hour));
}

/** The latest day whose end is acted on: a weekend's waits for Monday's hour where nothing goes on weekends. */
export function lastRun(at: Date, zone: string, when: When): string {
  let day = lastEnded(at, zone, when.hour);
  while (!when.weekends && isWeekend(sentOn(day, when.hour))) day = addDays(day, -1);
  return day;
}

/** The calendar day on which a day's report goes. */
export function sentOn(day: string, hour: string): string {
  return addDays(day, nights(hour));
}

/** The calendar day on which it goes where weekends may be left out. */
export function goesOn(day: string, when: When): string {
  let on = sentOn(day, when.hour);
  while (!when.weekends && isWeekend(on)) on = addDays(on, 1);
  return on;
}

function isWeekend(day: string): boolean {
  const weekday = new Date(`${day}T00:00:00Z`).getUTCDay();
  return weekday === 0 || weekday === 6;
}

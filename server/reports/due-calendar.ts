import { createHash } from "node:crypto";
import ical, { ICalCalendarMethod, ICalEventTransparency } from "ical-generator";
import { type DueLine, dueSentence, taskName } from "../../core/index.ts";

/** Due dates as a calendar (RFC 5545): a whole day each, which shows nobody as busy. */
export function dueCalendar(site: { key: string; name: string }, due: readonly DueLine[], at: Date): string {
  const calendar = ical({
    // the one text that the calendar maker does not escape, and that calendars do not agree on how to read
    name: `Valves due at ${oneLine(site.name).replace(/[\\;,]/g, " ")}`,
    prodId: { company: "Handsfull", product: "log", language: "EN" },
    method: ICalCalendarMethod.PUBLISH,
    // how often a calendar looks again, in seconds
    ttl: 3_600,
  });
  for (const line of due) {
    calendar.createEvent({
      id: uidOf(site.key, line),
      stamp: at,
      start: noon(line.on),
      allDay: true,
      transparency: ICalEventTransparency.TRANSPARENT,
      summary: `${oneLine(line.tag)}: ${taskName(line.task)}${line.overdue > 0 ? " (overdue)" : ""}`,
      description: oneLine(`${dueSentence(line)}. ${line.why}`),
    });
  }
  return calendar.toString();
}

/** The same for a task of a valve whenever it is told: a date that moves moves the event, and makes no second one. */
function uidOf(site: string, { tag, task }: DueLine): string {
  return `${createHash("sha256")
    .update(JSON.stringify([site, tag, task]))
    .digest("hex")
    .slice(0, 32)}@handsfull`;
}

/** The calendar writes the day of a moment in UTC. */
const noon = (day: string): Date => new Date(`${day}T12:00:00Z`);

/** Calendars fold and escape; what turns the reading direction or breaks lines has no place in one. */
const oneLine = (text: string): string =>
  text.replace(/[\p{Cc}\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069]+/gu, " ");

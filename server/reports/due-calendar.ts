import { createHash } from "node:crypto";
import { type DueLine, dueSentence, taskName } from "../../core/index.ts";
import { addDays } from "../moments.ts";
import { capital } from "../wording/names.ts";
import { calendarLines, calendarText } from "./calendar-lines.ts";

/** How often a calendar looks again. */
const AGAIN = "PT1H";

/** Due dates as a calendar (RFC 5545): a whole day each, which shows nobody as busy. */
export function dueCalendar(site: { key: string; name: string }, due: readonly DueLine[], at: Date): string {
  // the one text that is not escaped, since calendars do not agree on how to read it
  const name = `Valves due at ${oneLine(site.name).replace(/[\\;,]/g, " ")}`;
  const stamp = `${at.toISOString().slice(0, 19).replace(/[-:]/g, "")}Z`;
  return calendarLines([
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Handsfull//log//EN",
    "METHOD:PUBLISH",
    `NAME:${name}`,
    `X-WR-CALNAME:${name}`,
    `REFRESH-INTERVAL;VALUE=DURATION:${AGAIN}`,
    `X-PUBLISHED-TTL:${AGAIN}`,
    ...due.flatMap((line) => eventLines(site.key, line, stamp)),
    "END:VCALENDAR",
  ]);
}

function eventLines(site: string, line: DueLine, stamp: string): string[] {
  const what = `${oneLine(line.tag)}: ${taskName(line.task)}${line.overdue > 0 ? " (overdue)" : ""}`;
  return [
    "BEGIN:VEVENT",
    `UID:${uidOf(site, line)}`,
    "SEQUENCE:0",
    `DTSTAMP:${stamp}`,
    `DTSTART;VALUE=DATE:${line.on.replaceAll("-", "")}`,
    // one day long is what it is without an end as well (3.6.1), but not every calendar knows
    `DTEND;VALUE=DATE:${addDays(line.on, 1).replaceAll("-", "")}`,
    `SUMMARY:${calendarText(what)}`,
    "TRANSP:TRANSPARENT",
    `DESCRIPTION:${calendarText(oneLine(`${dueSentence(line)}. ${capital(line.why)}`))}`,
    "END:VEVENT",
  ];
}

/** The same for a task of a valve whenever it is told: a date that moves moves the event, and makes no second one. */
function uidOf(site: string, { tag, task }: DueLine): string {
  return `${createHash("sha256")
    .update(JSON.stringify([site, tag, task]))
    .digest("hex")
    .slice(0, 32)}@handsfull`;
}

/** What turns the reading direction or breaks lines has no place in one. */
const oneLine = (text: string): string =>
  text.replace(/[\p{Cc}\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069]+/gu, " ");

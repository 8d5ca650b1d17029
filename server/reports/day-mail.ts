import type { Store } from "../db/open.ts";
import type { DayData } from "./day-report.ts";
import { makeReport } from "./day-report.ts";
import { dueCalendar } from "./due-calendar.ts";
import { entriesCsv } from "./entries-csv.ts";
import { entryRows } from "./entry-rows.ts";
import { type Envelope, letterMail, reportLetter } from "./mail.ts";
import { reportPdf } from "./pdf.ts";

/** A site's day as one mail: text and page, and the same as PDF, the entries as CSV, what is due as a calendar. */
export async function dayMail(store: Store, data: DayData, version: number, about: Envelope): Promise<Buffer> {
  const { site, day } = data;
  const report = makeReport(data, version);
  // the PDF is set in a thread of its own: all the rest is made meanwhile
  const setting = reportPdf(report);
  const making = async () => ({
    letter: reportLetter(report),
    csv: entriesCsv(await entryRows(store, site.key, day, day)),
    calendar: dueCalendar(site, data.due, about.date ?? new Date()),
  });
  const [pdf, { letter, csv, calendar }] = await Promise.all([setting, making()]);
  const name = `valve-work-${day}${version > 1 ? `-correction-${version - 1}` : ""}`;
  return letterMail(letter, about, [
    { filename: `${name}.pdf`, content: pdf, contentType: "application/pdf" },
    {
      filename: `entries-${day}.csv`,
      content: csv,
      contentType: "text/csv; charset=utf-8",
    },
    {
      filename: `due-${day}.ics`,
      content: calendar,
      contentType: "text/calendar; charset=utf-8; method=PUBLISH",
    },
  ]);
}

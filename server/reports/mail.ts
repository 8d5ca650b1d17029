import { readFileSync } from "node:fs";
import MailComposer from "nodemailer/lib/mail-composer";
import { REPORT_CSS } from "../places.ts";
import type { Report } from "./day-report.ts";
import { reportPage } from "./page.tsx";
import { reportText } from "./text.ts";

export const DEFAULT_FROM = "Handsfull <log@localhost>";

/** The report as one mail (RFC 5322) with a text and an HTML part. */
export async function reportMail(report: Report, from: string = DEFAULT_FROM): Promise<Buffer> {
  const composer = new MailComposer({
    from,
    // a header is one line, whatever a site is called
    subject: report.title.replace(/\s+/g, " "),
    text: reportText(report),
    html: reportPage(report, { css: readFileSync(REPORT_CSS, "utf8") }),
    headers: { "Auto-Submitted": "auto-generated" },
    disableFileAccess: true,
    disableUrlAccess: true,
  });
  return new Promise((resolve, reject) => {
    composer.compile().build((cause, message) => (cause ? reject(cause) : resolve(message)));
  });
}

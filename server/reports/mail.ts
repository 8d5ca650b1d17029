import { readFileSync } from "node:fs";
import addressparser from "nodemailer/lib/addressparser";
import MailComposer from "nodemailer/lib/mail-composer";
import { REPORT_CSS } from "../places.ts";
import type { Report } from "./day-report.ts";
import { reportPage } from "./page.tsx";
import { reportText } from "./text.ts";

export interface Envelope {
  from: string;
  to?: string[];
  messageId?: string;
  date?: Date;
  /** the report that this one corrects */
  inReplyTo?: string | undefined;
}

export interface Attachment {
  filename: string;
  content: string | Buffer;
  contentType: string;
}

/** The report as a mail says it. */
export interface Letter {
  title: string;
  text: string;
  html: string;
}

export const reportLetter = (report: Report): Letter => ({
  title: report.title,
  text: reportText(report),
  html: reportPage(report, { css: readFileSync(REPORT_CSS, "utf8") }),
});

/** A letter as one mail (RFC 5322) with a text and an HTML part, and what is attached. */
export async function letterMail(letter: Letter, about: Envelope, attachments: Attachment[] = []): Promise<Buffer> {
  const composer = new MailComposer({
    from: about.from,
    to: about.to,
    // a header is one line, whatever a site is called
    subject: letter.title.replace(/\s+/g, " "),
    messageId: about.messageId,
    date: about.date,
    inReplyTo: about.inReplyTo,
    references: about.inReplyTo,
    text: letter.text,
    html: letter.html,
    attachments,
    headers: { "Auto-Submitted": "auto-generated" },
    // as it goes over the wire, so that a file of it is the same bytes
    newline: "windows",
    disableFileAccess: true,
    disableUrlAccess: true,
  });
  return new Promise((resolve, reject) => {
    composer.compile().build((cause, message) => (cause ? reject(cause) : resolve(message)));
  });
}

/** "log@example.com" of "Log <log@example.com>". */
export function addressOnly(from: string): string {
  const [first] = addressparser(from, { flatten: true });
  return first?.address ?? "";
}

export const domainOf = (from: string): string => addressOnly(from).split("@")[1] || "localhost";

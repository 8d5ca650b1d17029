import { spawnSync } from "node:child_process";
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import ICAL from "ical.js";
import { type AddressObject, type Attachment, simpleParser } from "mailparser";
import { describe, expect, it } from "vitest";
import { dayData } from "../../../server/reports/day-data.ts";
import { dayMail } from "../../../server/reports/day-mail.ts";
import { bench, folder, job, phrase } from "../app-under-test.ts";

const DAY = "2026-03-04";
const NASTY = [
  'note <script>alert(1)</script> <b>bold</b> &amp; "quoted"',
  'note =HYPERLINK("http://example.com";"x")',
  "note +1+1 @SUM(A1) -2 |cmd",
  "note line one\r\nBcc: all@example.com\r\n\r\nbody",
  "note \u202egnol\u202c \u200fright to left\u2066",
  "note 😀👩‍🔧 ≥ 35 µm at 40 °C, żółw, 中文, שלום",
  "the frobnitz squeals ≥ 35 µm at 40 °C by the żółw 中文 😀",
  `note ${"a".repeat(10_000)}`,
  `note ${"word ".repeat(2_000)}`,
];

/** A day of nasty words at a site and valve of nasty names, as it is mailed. */
async function nastyDay(words: string[] = NASTY) {
  const { ask, store } = await bench();
  const site = "=north\u202e<i>";
  await ask("PUT", `/api/sites/${encodeURIComponent(site)}`, {
    name: 'North; <b>Pad</b>, "A" \\ \u202e😀\r\nBcc: all@example.com',
    zone: "America/Denver",
  });
  const one = job({ site, tag: "=LCV;213,<I>" });
  await ask("POST", "/api/phrases", {
    jobs: [one],
    phrases: ["smell gas", "seat worn one side", "won't hold", ...words].map((text, n) => phrase(one, text, n)),
  });
  const data = await dayData(store, site, DAY);
  if (!data) throw new Error("no data");
  const about = { from: "Log <log@example.com>", to: ["a@example.com", "b@example.com"], messageId: "<x@example.com>" };
  const mail = await dayMail(store, data, 1, about);
  return { mail, parsed: await simpleParser(mail), data };
}

const named = (all: Attachment[], end: string) => {
  const found = all.find((one) => one.filename?.endsWith(end));
  if (!found) throw new Error(`nothing attached that ends with ${end}`);
  return found;
};

describe("the mail of a day, whatever was said", () => {
  it("has the headers it was given and no others, in lines that every server takes", async () => {
    const { mail, parsed } = await nastyDay();
    expect([...parsed.headers.keys()].sort()).toEqual(
      ["auto-submitted", "content-type", "date", "from", "message-id", "mime-version", "subject", "to"].sort(),
    );
    expect((parsed.to as AddressObject).value.map((one) => one.address)).toEqual(["a@example.com", "b@example.com"]);
    expect(parsed.subject).not.toMatch(/[\r\n]/);
    const lines = mail.toString("latin1").split("\r\n");
    expect(lines.filter((one) => one.length > 998).map((one) => one.slice(0, 300))).toEqual([]);
    expect(mail.toString("latin1")).not.toMatch(/[^\r]\n|\r[^\n]/);
    expect(parsed.attachments.map((one) => [one.filename, one.contentType])).toEqual([
      ["valve-work-2026-03-04.pdf", "application/pdf"],
      ["entries-2026-03-04.csv", "text/csv"],
      ["due-2026-03-04.ics", "text/calendar"],
    ]);
  });

  it("says the same in text and page, the words kept as words", async () => {
    const { parsed } = await nastyDay();
    const html = String(parsed.html);
    expect(html).not.toMatch(/<script|<b>|<i>/i);
    for (const part of [parsed.text ?? "", html]) {
      expect(part).toContain("żółw");
      expect(part).toContain("A hazard was called: gas.");
      expect(part).toContain("a".repeat(10_000));
    }
    expect(parsed.text).toContain("<script>alert(1)</script>");
  });
});

describe("entries as CSV", () => {
  it("read back as they were, and no field begins a formula", async () => {
    const { parsed } = await nastyDay();
    const csv = named(parsed.attachments, ".csv").content;
    expect(csv.subarray(0, 3)).toEqual(Buffer.from([0xef, 0xbb, 0xbf]));
    const rows = parse(csv, { bom: true, columns: true }) as Record<string, string>[];
    expect(rows.length).toBeGreaterThan(7);
    for (const row of rows) for (const value of Object.values(row)) expect(value).not.toMatch(/^[=+\-@\t\r|]/);
    const notes = rows.filter((row) => row.type === "note");
    expect(notes.map((row) => row.said)).toEqual(NASTY.filter((one) => one.startsWith("note")));
    expect(rows[0]?.site).toBe("'=north\u202e<i>");
    expect(rows.find((row) => row.type === "finding")).toMatchObject({
      sentence: "The seat was found worn on one side.",
      part: "seat",
      condition: "worn",
      extent: "one_side",
      said: "seat worn one side",
      day: DAY,
    });
  });
});

describe("due dates as a calendar", () => {
  it("read by another reader: whole days, one event a task, names as they are", async () => {
    const { parsed, data } = await nastyDay();
    const calendar = new ICAL.Component(ICAL.parse(named(parsed.attachments, ".ics").content.toString("utf8")));
    expect(calendar.getFirstPropertyValue("x-wr-calname")).toBe(
      'Valves due at North  <b>Pad</b>  "A"    😀 Bcc: all@example.com',
    );
    const events = calendar.getAllSubcomponents("vevent").map((one) => new ICAL.Event(one));
    expect(events.length).toBe(data.due.length);
    expect(events.length).toBeGreaterThan(0);
    for (const [n, event] of events.entries()) {
      expect(event.startDate.isDate).toBe(true);
      expect(event.startDate.toString()).toBe(data.due[n]?.on);
      expect(event.summary).toMatch(/^=LCV;213,<I>: (Seat inspection|Seal replacement)/);
      expect(event.description).not.toMatch(/[\r\n]/);
    }
    expect(new Set(events.map((one) => one.uid)).size).toBe(events.length);
  });
});

describe("the report as PDF", () => {
  const has = spawnSync("pdftotext", ["-v"]).error === undefined;
  const without = "pdftotext is not here (apt-get install -y poppler-utils): the PDF is only seen to be one";
  if (!has) process.stderr.write(`${without}\n`);

  it(
    has ? "says the same, with the signs of the trade, and says so where its font lacks a character" : without,
    async () => {
      const { parsed } = await nastyDay();
      const { content } = named(parsed.attachments, ".pdf");
      expect(content.subarray(0, 5).toString()).toBe("%PDF-");
      if (!has) return;
      const path = join(await folder(), "day.pdf");
      await writeFile(path, content);
      const { stdout } = spawnSync("pdftotext", ["-layout", path, "-"], { encoding: "utf8" });
      const text = stdout.replace(/\s+/g, " ");
      for (const words of [
        'in the words "smell gas"',
        "The seat was found worn on one side.",
        "≥ 35 µm at 40 °C by the żółw",
        "<script>alert(1)</script>",
        "does not say that any valve is safe",
        "stands for characters that this PDF's font has not",
        "page 1 of",
      ])
        expect(text).toContain(words);
      // nothing runs off the paper: all ten thousand letters are on it
      expect((stdout.match(/a/g) ?? []).length).toBeGreaterThan(10_000);
      const fonts = spawnSync("pdffonts", [path], { encoding: "utf8" }).stdout.split("\n").slice(2).filter(Boolean);
      expect(fonts.length).toBeGreaterThan(0);
      for (const font of fonts) expect(font).toMatch(/Roboto.*\byes\s+yes\s+yes\b/);
    },
  );
});

import { spawnSync } from "node:child_process";
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Report } from "../../../../server/reports/day-report.ts";
import { reportPdf } from "../../../../server/reports/pdf.ts";
import { reportText } from "../../../../server/reports/text.ts";
import { folder } from "../../app-under-test.ts";

const has = spawnSync("pdftotext", ["-v"]).error === undefined;
const named = (name: string) => (has ? name : `${name}: not tried, pdftotext is not here`);

/** What another reader finds in it, and what that reader complains of. */
async function read(pdf: Buffer): Promise<{ text: string; info: string; spoken: string; complaints: string }> {
  const path = join(await folder(), "day.pdf");
  await writeFile(path, pdf);
  const ask = (command: string, ...rest: string[]) => {
    const { stdout, stderr } = spawnSync(command, rest, { encoding: "utf8", maxBuffer: 1e8 });
    complaints += stderr;
    return stdout;
  };
  let complaints = "";
  const text = ask("pdftotext", path, "-");
  const info = ask("pdfinfo", path);
  const spoken = ask("pdfinfo", "-struct-text", path);
  return { text, info, spoken, complaints };
}

/** An invented day in which every word can be told from every other. */
function markedDay(): Report {
  let marks = 0;
  const mark = () => `mark${++marks}mark`;
  const many = <T>(make: () => T) => Array.from({ length: 12 }, make);
  return {
    title: mark(),
    correction: mark(),
    site: "north",
    day: "2026-03-04",
    hazards: many(() => ({ time: mark(), valve: mark(), what: mark(), words: mark() })),
    failed: many(() => ({ valve: mark(), what: mark() })),
    reviewed: mark(),
    valves: many(() => ({
      valve: mark(),
      about: mark(),
      time: mark(),
      by: [mark()],
      done: many(() => `${mark()}.`),
      tests: [`${mark()}.`],
      checks: [`${mark()}.`],
    })),
    followUps: many(() => ({
      valve: mark(),
      what: mark(),
      when: mark(),
      why: mark(),
      urgent: marks % 2 === 0,
      owner: mark(),
    })),
    parts: {
      used: many(() => ({ count: 2, part: mark(), valves: mark() })),
      needed: many(() => ({ count: 1, part: mark(), valves: mark() })),
    },
    dueDays: 30,
    due: many(() => ({ valve: mark(), what: mark(), overdue: false, why: mark() })),
    notUnderstood: many(() => ({ time: mark(), valve: mark(), text: mark(), words: [], what: mark() })),
    totals: many(() => ({ what: mark(), count: 3 })),
    caution: mark(),
    zone: mark(),
  };
}

describe("a report set as PDF", () => {
  it(named("says the words of the mail in the mail's order, with the page's number at each foot"), async () => {
    const report = markedDay();
    const pdf = await reportPdf(report);
    expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
    if (!has) return;
    const { text, info, spoken, complaints } = await read(pdf);
    expect(complaints).toBe("");
    expect(info).toMatch(new RegExp(`^Title: +${report.title}$`, "m"));
    const pages = text.split("\f").slice(0, -1);
    expect(pages.length).toBeGreaterThan(3);
    for (const [at, page] of pages.entries()) expect(page).toContain(`page ${at + 1} of ${pages.length}`);
    const marks = (words: string) => words.match(/mark\d+mark/g) ?? [];
    const [title = "", ...rest] = marks(reportText(report));
    const [first, ...said] = marks(text).filter((one, at) => at === 0 || one !== title);
    expect(first).toBe(title);
    // the mail names a hazard's time first, then its valve; the same here, and so on to the last word
    expect(said).toEqual(rest);
    // and so it is read out, heads as heads, lists as lists, without the footers
    expect(info).toMatch(/^Tagged: +yes$/m);
    expect(marks(spoken)).toEqual([title, ...rest]);
    expect(spoken).not.toMatch(/page \d/);
    expect(spoken).toMatch(
      /^ {2}H2 \(block\)\n {4}"Follow-ups"\n {2}L \(block\)\n {4}LI \(block\)\n {6}LBody \(block\)\n {8}"mark/m,
    );
  });

  it(named("holds a text of a hundred thousand letters whole, in words or in one"), async () => {
    const day = { ...markedDay(), hazards: [], failed: [], followUps: [], due: [] };
    const said = ["gasket ".repeat(20_000), "b".repeat(100_000), "ż".repeat(1_000), "W/".repeat(10_000)];
    const pdf = await reportPdf({
      ...day,
      notUnderstood: said.map((text) => ({ time: "10:00", valve: "LCV-7", text, words: [], what: "nothing" })),
    });
    if (!has) return;
    const { text, complaints } = await read(pdf);
    expect(complaints).toBe("");
    const count = (what: RegExp) => (text.match(what) ?? []).length;
    expect(count(/\bgasket\b/g)).toBe(20_000);
    expect(count(/b/g)).toBeGreaterThanOrEqual(100_000);
    expect(count(/ż/g)).toBe(1_000);
    expect(count(/W/g)).toBeGreaterThanOrEqual(10_000);
  });

  it("comes out the same for each of several asked for at once, and for the next one after", async () => {
    const reports = [markedDay(), { ...markedDay(), title: "another day" }];
    const made = await Promise.all(reports.map(reportPdf));
    expect(made.map((pdf) => pdf.subarray(-6).toString())).toEqual(["%%EOF\n", "%%EOF\n"]);
    expect(made[0]?.length).not.toBe(made[1]?.length);
    expect((await reportPdf(markedDay())).length).toBe(made[0]?.length);
  });

  it("says so where it could not be set, and sets the next one all the same", async () => {
    const broken = { ...markedDay(), title: undefined as unknown as string };
    const [first, second] = await Promise.allSettled([reportPdf(broken), reportPdf(markedDay())]);
    expect(first).toMatchObject({ status: "rejected", reason: { message: "the report could not be set as PDF" } });
    expect(second?.status).toBe("fulfilled");
  });
});

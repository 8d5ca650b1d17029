import { simpleParser } from "mailparser";
import { describe, expect, it } from "vitest";
import { bench, folder, job, phrase } from "../app-under-test.ts";
import { run } from "../running.ts";

describe("npm run report", () => {
  it("writes the day as a mail that a parser reads: text and page say the same", { timeout: 40_000 }, async () => {
    const { ask, url } = await bench();
    await ask("PUT", "/api/sites/north", { name: "North\r\nBcc: all@example.com <b>Pad</b>", zone: "America/Denver" });
    const one = job({ site: "north", tag: "LCV-213" });
    const said = [
      "smell gas",
      "seat worn on one side",
      "flipped it",
      "won't hold",
      "the frobnitz <script>alert(1)</script> is blargled",
    ];
    await ask("POST", "/api/phrases", { jobs: [one], phrases: said.map((text, n) => phrase(one, text, n)) });
    const { code, out } = await run("server/commands/report.ts", ["--site", "north", "--day", "2026-03-04"], {
      DATABASE_URL: url,
      MAIL_FROM: "Log <log@example.com>",
    });
    expect(code).toBe(0);
    const mail = await simpleParser(out);
    expect(mail.subject).toMatch(/^Valve work, North Bcc: all@example.com <b>Pad<\/b>, 2026-03-04$/);
    expect(mail.bcc).toBeUndefined();
    expect(mail.from?.value[0]).toEqual({ name: "Log", address: "log@example.com" });
    expect(mail.messageId).toMatch(/^<.+@.+>$/);
    const html = String(mail.html);
    expect(html).not.toContain("<script");
    expect(html).not.toContain("<b>Pad");
    expect(html).toContain("<style>");
    for (const part of [mail.text ?? "", html]) {
      expect(part).toMatch(/gas/);
      expect(part).toContain("The seat was found worn on one side and was flipped to its other side.");
      expect(part).toContain("FAILED");
      expect(part).toMatch(/frobnitz/);
      expect(part).toContain("Not yet reviewed");
      expect(part).toContain("does not say that any valve is safe to operate");
    }
    const text = mail.text ?? "";
    expect(text.indexOf("HAZARDS")).toBeLessThan(text.indexOf("Failed tests"));
    expect(text.indexOf("Failed tests")).toBeLessThan(text.indexOf("What was found and done"));
  });

  it("says plainly that sending is not set up, and what else is wrong", { timeout: 40_000 }, async () => {
    const DATA_DIR = await folder();
    const report = (...args: string[]) => run("server/commands/report.ts", args, { DATA_DIR });
    const send = await report("--site", "north", "--send");
    expect(send.code).toBe(2);
    expect(send.err).toMatch(/sending is not set up/);
    expect(send.out).toBe("");
    expect((await report()).code).toBe(2);
    expect((await report("--site", "north", "--day", "today")).err).toMatch(/YYYY-MM-DD/);
    const unknown = await report("--site", "nowhere", "--day", "2026-03-04");
    expect(unknown.code).toBe(1);
    expect(unknown.err).toMatch(/nowhere/);
    const help = await report("--help");
    for (const word of ["--site", "--day", "--send", "DATA_DIR", "MAIL_FROM"]) expect(help.out).toContain(word);
  });
});

describe("GET /report", () => {
  it("is the same report as a page without inline style, and as text", async () => {
    const { ask, app } = await bench();
    await ask("PUT", "/api/sites/north", { name: "North Pad", zone: "America/Denver" });
    const one = job({ site: "north", tag: "<i>A-1" });
    await ask("POST", "/api/phrases", {
      jobs: [one],
      phrases: [phrase(one, "bonnet bolts torqued to 28"), phrase(one, "\u202egnol <img src=x>\nInjected: line", 1)],
    });
    const page = await app.request("/report?site=north&day=2026-03-04");
    expect(page.headers.get("content-type")).toContain("text/html");
    const html = await page.text();
    expect(html.startsWith("<!doctype html>")).toBe(true);
    expect(html).not.toMatch(/<style|style=|<img|<i>/i);
    expect((await app.request("/report/report.css")).headers.get("content-type")).toContain("text/css");
    const text = await (await app.request("/report?site=north&day=2026-03-04&form=text")).text();
    expect(text).toContain("Bonnet bolting torqued to 28 ft-lbf.");
    expect(text).not.toContain("\u202e");
    expect(text).not.toMatch(/^Injected/m);
  });

  it("says so where nothing happened", async () => {
    const { ask, app } = await bench();
    await ask("PUT", "/api/sites/north", { name: "North Pad", zone: "America/Denver" });
    const text = await (await app.request("/report?site=north&day=2026-03-04&form=text")).text();
    expect(text).toContain("No job was recorded on this day.");
  });
});

import { simpleParser } from "mailparser";
import { describe, expect, it } from "vitest";
import { bench, folder, job, phrase } from "../app-under-test.ts";
import { postOffice } from "../mail/post-office.ts";
import { run, startServer } from "../running.ts";

/** Waits for something that comes by itself. */
async function until(is: () => boolean): Promise<void> {
  while (!is()) await new Promise((wake) => setTimeout(wake, 50));
}

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

  it("hands it to the outbox with --send; a running server sends it, once however often it is asked", {
    timeout: 60_000,
  }, async () => {
    const office = await postOffice();
    const DATA_DIR = await folder();
    const env = { DATA_DIR, SMTP_URL: office.url };
    const { address } = await startServer(env);
    const put = (path: string, body: object, method = "PUT") =>
      fetch(`${address}${path}`, {
        method,
        body: JSON.stringify(body),
        headers: { "content-type": "application/json" },
      });
    await put("/api/sites/north", { name: "North Pad", zone: "America/Denver" });
    const one = job({ site: "north", tag: "LCV-213" });
    await put("/api/phrases", { jobs: [one], phrases: [phrase(one, "seat worn")] }, "POST");
    const send = () => run("server/commands/report.ts", ["--site", "north", "--day", "2026-03-04", "--send"], env);
    const nobody = await send();
    expect([nobody.code, nobody.out]).toEqual([1, ""]);
    expect(nobody.err).toMatch(/Nobody is set to get this site's report/);
    await put("/api/sites/north/report", {
      recipients: ["a@example.com"],
      hour: "18:00",
      weekends: true,
      quiet: false,
    });
    const sent = await send();
    expect([sent.code, sent.err]).toEqual([0, ""]);
    expect(sent.out).toMatch(/goes in a moment to 1: a@example\.com/);
    await until(() => office.arrived.length > 0);
    expect((await send()).err).toMatch(/sent as it stands|being sent at this moment/);
    expect(office.arrived.length).toBe(1);
  });

  it("says what is wrong", { timeout: 40_000 }, async () => {
    const DATA_DIR = await folder();
    const report = (...args: string[]) => run("server/commands/report.ts", args, { DATA_DIR });
    expect((await report("--site", "north", "--again")).err).toMatch(/--again goes with --send/);
    expect((await report()).code).toBe(2);
    expect((await report("--site", "north", "--day", "today")).err).toMatch(/YYYY-MM-DD/);
    const unknown = await report("--site", "nowhere", "--day", "2026-03-04");
    expect(unknown.code).toBe(1);
    expect(unknown.err).toMatch(/nowhere/);
    const help = await report("--help");
    for (const word of ["--site", "--day", "--send", "--again", "DATA_DIR", "MAIL_FROM"])
      expect(help.out).toContain(word);
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

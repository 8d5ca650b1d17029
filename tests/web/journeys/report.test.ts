import { afterAll, expect, it } from "vitest";
import { postOffice, replying } from "../../server/mail/post-office.ts";
import { type Device, inBrowser, newDevice } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

inBrowser("the day's report at the desk", () => {
  let server: RunningServer;
  let device: Device;
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  const say = async (job: { id: string }, text: string, second: number) => {
    const saidAt = `2026-03-04T10:00:${String(second).padStart(2, "0")}-07:00`;
    const said = { id: crypto.randomUUID(), job: job.id, text, saidAt, how: "typed" };
    const body = JSON.stringify({ jobs: [job], phrases: [said] });
    const headers = { "content-type": "application/json" };
    const reply = await fetch(new URL("/api/phrases", server.address), { method: "POST", headers, body });
    expect(reply.status).toBe(200);
  };

  it("is set up, sent, refused, corrected, each said in words", { timeout: 90_000 }, async () => {
    const office = await postOffice();
    server = await runServer({ SMTP_URL: office.url, MAIL_FROM: "log@example.com" });
    await server.put("/api/sites/north", { name: "North Pad", zone: "America/Denver" });
    const job = { id: crypto.randomUUID(), site: "north", tag: "LCV-213", startedAt: "2026-03-04T10:00:00-07:00" };
    await say(job, "seat worn one side", 1);
    device = await newDevice({ width: 1280, height: 900 });
    const { page } = device;
    const standing = page.locator(".standing");
    await page.goto(`${server.address}#/desk?site=north&day=2026-03-04`);
    await page.getByRole("link", { name: "The day’s report" }).click();
    await standing.getByText("Nobody is set to get this site's report.").waitFor();

    // an address that is none is refused in words, and what was written stays
    await page.getByLabel("Mail addresses, one a line").fill("A. Person");
    await page.getByRole("button", { name: "Keep" }).click();
    await page.getByText(/is no mail address/).waitFor();
    await page.getByLabel("Mail addresses, one a line").fill("a@example.com\nb@example.com");
    await page.getByLabel(/Hour at the site/).fill("17:30");
    await page.getByLabel(/On Saturdays/).uncheck();
    await page.getByRole("button", { name: "Keep" }).click();
    await page.getByText("Kept.").waitFor();
    expect(await server.get("/api/sites/north/report")).toEqual({
      settings: { recipients: ["a@example.com", "b@example.com"], hour: "17:30", weekends: false, quiet: false },
    });

    office.at.rcpt = ({ address }) => (address === "b@example.com" ? replying(550, "no such person") : undefined);
    await page.getByText("The seat was found worn on one side.").waitFor();
    await page.getByRole("button", { name: "Send now" }).click();
    await standing.getByText(/Report sent .* to 1: a@example\.com\./).waitFor();
    await standing.getByText("Refused for b@example.com: 550 no such person.").waitFor();
    expect(office.arrived.length).toBe(1);
    office.at = {};
    await page.getByRole("button", { name: "Try again now" }).click();
    await standing.getByText(/Report sent .* to 2: a@example\.com, b@example\.com\./).waitFor();
    expect(office.arrived.map((one) => one.to)).toEqual([["a@example.com"], ["b@example.com"]]);
    expect(await page.getByRole("button", { name: /^(Send|Try)/ }).count()).toBe(0);

    await say(job, "flipped it", 2);
    await page.reload();
    await standing.getByText(/^Something was said or amended since it went\./).waitFor();
    await page.getByRole("button", { name: "Send correction 1 now" }).click();
    await standing.getByText(/Correction 1 sent .* to 2/).waitFor();
    expect(office.arrived[2]?.raw).toMatch(/^Subject: Correction 1: Valve work, North Pad, 2026-03-04/m);

    await page.getByRole("button", { name: "Make an address" }).click();
    const address = await page.getByLabel(/not shown again/).inputValue();
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/calendar\/[\w-]{43}\.ics$/);
    expect(await (await fetch(address)).text()).toContain("BEGIN:VCALENDAR");
    await page.getByRole("button", { name: "Take it back" }).click();
    await page.getByRole("button", { name: "Make an address" }).waitFor();
    expect((await fetch(address)).status).toBe(404);
    expect(device.complaints).toEqual([]);
  });
});

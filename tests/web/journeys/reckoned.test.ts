import { execFile } from "node:child_process";
import { randomUUID } from "node:crypto";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobView } from "../../../core/index.ts";
import { type Device, inBrowser, newDevice } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

const ROOT = fileURLToPath(new URL("../../..", import.meta.url));
const DAY = 86_400_000;

inBrowser("what was reckoned, as it is seen", () => {
  let server: RunningServer;
  let device: Device;
  const site = "north";
  const said = ["bonnet bolts torqued to forty", "five bubbles a minute at fifty pounds", "seat worn one side"];
  const job = randomUUID();

  const send = async (id: string, startedAt: Date, tag: string, phrases: readonly string[]) => {
    const answer = await fetch(`${server.address}api/phrases`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({
        jobs: [{ id, tag, site, startedAt: startedAt.toISOString() }],
        phrases: phrases.map((text, n) => ({
          id: randomUUID(),
          job: id,
          text,
          saidAt: new Date(startedAt.getTime() + n * 1000).toISOString(),
          how: "typed",
        })),
      }),
    });
    expect(answer.status).toBe(200);
  };

  beforeAll(async () => {
    server = await runServer();
    await server.put(`/api/sites/${site}`, { name: "North (invented)", zone: "Etc/UTC" });
    const about = { site, family: "balanced_dump", size_in: 2 };
    await server.put("/api/valves/LCV-213", about);
    await server.put("/api/valves/LCV-7", about);
    const now = Date.now();
    await send(job, new Date(now), "LCV-213", said);
    await send(randomUUID(), new Date(now - 360 * DAY), "LCV-7", ["replaced the kit", "seat's good"]);
    await send(randomUUID(), new Date(now - 90 * DAY), "LCV-7", ["upper diaphragm torn", "replaced it", "seat's good"]);
    device = await newDevice({ width: 1280, height: 900 });
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("the job page and the terminal say the same sentences, units as people write them", async () => {
    const { page } = device;
    await page.goto(`${server.address}#/job/${job}`);
    await page.locator(".share .follow").first().waitFor();
    const { day } = await server.get<JobView>(`/api/jobs/${job}`);
    const { stdout } = await promisify(execFile)(
      process.execPath,
      [
        "--import",
        "tsx",
        "server/commands/say.ts",
        ...said,
        "--tag",
        "LCV-213",
        "--family",
        "balanced_dump",
        "--size",
        "2",
        "--on",
        day,
      ],
      { cwd: ROOT },
    );
    const follows = (await page.locator(".share .follow-words").allInnerTexts()).map((text) => text.split("\n"));
    expect(follows.length).toBeGreaterThan(4);
    for (const [lead = "", ...rest] of follows) {
      // on the page a date stands in a column of its own, and sources end each line
      expect(stdout).toContain(lead.replace(/, overdue$/, ""));
      const why = rest[0];
      if (why && rest.length > 1) expect(stdout.toLowerCase()).toContain(why.toLowerCase());
    }
    const text = await page.locator(".share").textContent();
    expect(text).toContain("Bonnet bolting torque 40 ft-lbf: above the limits 25 to 30 ft-lbf, by 10 ft-lbf.");
    expect(text).toContain("FAILED, by 2 bubbles/min");
    for (const shown of [text, stdout]) expect(shown).not.toMatch(/ft_lbf|[a-z]_[a-z]/);
  });

  it("the tightening order is a picture, with rounds, limits and torque asked for again", async () => {
    const { page } = device;
    const joint = page.locator(".joint", { hasText: "Bonnet bolting" });
    await joint.locator("svg.bolts").waitFor();
    expect(await joint.locator("summary").textContent()).toMatch(/\d+ bolts, 25 to 30 ft-lbf torque again/);
    const label = await joint.locator("svg.bolts").getAttribute("aria-label");
    expect(label).toMatch(/^Order of (\d+) bolts, numbered clockwise from the top: 1, \d+/);
    const bolts = await joint.locator(".bolt").count();
    expect(label).toContain(`Order of ${bolts} bolts`);
    const rounds = await joint.locator(".joint-rounds li").allInnerTexts();
    expect(rounds).toHaveLength(5);
    expect(rounds[1]).toContain("20 to 30 % of the target, in the cross pattern, 5 to 9 ft-lbf");
    expect(await joint.locator(".source").textContent()).toContain("ASME PCC-1");
    expect(await page.locator(".joint", { hasText: "Body bolting" }).locator("svg.bolts").isVisible()).toBe(false);
  });

  it("what to carry: parts with certain and likely demand, stock set against them", async () => {
    const { page } = device;
    await page.goto(`${server.address}#/carry?site=${site}&days=30`);
    await page.locator(".fleet tbody tr").first().waitFor();
    const seat = page.locator(".fleet tr", { hasText: "Seat gasket" });
    expect(await seat.locator(".fleet-number").first().textContent()).toMatch(/^[12]$/);
    await page.getByLabel("On hand, as part:count").fill("seat_gasket:0");
    await page.getByLabel("On hand, as part:count").press("Enter");
    await page.getByRole("columnheader", { name: "Short" }).waitFor();
    expect(page.url()).toContain("stock=seat_gasket");
    await page.getByLabel("On hand, as part:count").fill("nonsense");
    await page.getByLabel("On hand, as part:count").press("Enter");
    await page.getByText("part:count, or part/family/size:count").waitFor();
  });

  it("the fleet: failures a valve and year with bounds, worst first with the evidence, the record to take away", async () => {
    const { page } = device;
    await page.goto(`${server.address}#/reliability?site=${site}`);
    await page.locator(".due").first().waitFor();
    expect(await page.locator(".due").first().textContent()).toMatch(/LCV-7|expected in a year/);
    expect(await page.locator(".due").first().textContent()).toContain("1 failure in");
    const href = await page.getByRole("link", { name: /ISO 14224/ }).getAttribute("href");
    const lines = (await (await fetch(`${server.address.replace(/\/$/, "")}${href}`)).text()).trim().split("\n");
    expect(lines.map((line) => JSON.parse(line).record)).toContain("failure");
    expect(device.complaints).toEqual([]);
  });
});

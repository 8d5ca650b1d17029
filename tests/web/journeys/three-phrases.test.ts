import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

inBrowser("a job of three phrases", () => {
  let server: RunningServer;
  let device: Device;
  const site = "north";
  const phrases = ["seat worn one side", "flipped it", "bonnet bolts torqued to twenty eight"];

  beforeAll(async () => {
    server = await runServer();
    await server.put(`/api/sites/${site}`, { name: "North (invented)", zone: "America/Denver" });
    await server.put("/api/valves/LCV-213", { site, family: "balanced_dump", size_in: 2 });
    device = await newDevice();
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("is typed at the bench, read at once and kept by the server", async () => {
    const { page } = device;
    await page.goto(server.address);
    await page.getByRole("button", { name: "LCV-213" }).click();
    await page.getByText("Cautions").waitFor();
    for (const words of phrases) await say(page, words);
    await allKept(page);
    await page.locator(".kept-kept").waitFor();
    await page.locator(".whole-card summary").first().click();
    await expect.poll(() => page.locator(".whole-card").textContent()).toMatch(/Seat flipped/);
    // one thing is next, in sight without unfolding anything
    expect(await page.getByRole("region", { name: "What is next" }).locator(".next-head").isVisible()).toBe(true);
    expect(device.complaints).toEqual([]);
  });

  it("is seen on the desk with its phrases and what follows", async () => {
    const { page } = device;
    await page.goto(`${server.address}#/desk?site=${site}`);
    await page.locator(".ticket").click();
    await page.locator(".phrase").nth(2).waitFor();
    const text = await page.locator("main").textContent();
    expect(text).toContain("Seat worn, one side");
    expect(text).toContain("Seat flipped");
    expect(text).toMatch(/28 ft-lbf/);
    await page.getByRole("link", { name: "LCV-213, its history" }).click();
    await page.locator(".timeline svg a").first().waitFor();
    expect(device.complaints).toEqual([]);
  });

  it("is alive after the server was killed and started again", async () => {
    const { jobs } = await server.get<{ jobs: JobSummary[] }>(`/api/jobs?site=${site}`);
    await server.kill();
    await server.start();
    const job = await server.get<JobView>(`/api/jobs/${jobs[0]?.id}`);
    expect(job.phrases.map((one) => one.text)).toEqual(phrases);
    const { page } = device;
    await page.goto(`${server.address}#/bench`);
    await page.reload();
    await page.locator(".understood .said").waitFor();
    expect(await page.locator(".plate svg").first().getAttribute("aria-label")).toBe("LCV-213");
  });
});

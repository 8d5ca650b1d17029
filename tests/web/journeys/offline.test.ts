import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { allKept, type Device, inBrowser, newDevice, say, workerReady } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

inBrowser("the bench without a network", () => {
  let server: RunningServer;
  let device: Device;

  beforeAll(async () => {
    server = await runServer();
    await server.put("/api/sites/north", { name: "North (invented)", zone: "America/Denver" });
    await server.put("/api/valves/LCV-213", { site: "north", family: "balanced_dump", size_in: 2 });
    device = await newDevice();
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("opens after one visit with the server gone, knows the site's valves and keeps what is said", async () => {
    const { page, context } = device;
    await page.goto(server.address);
    await workerReady(page);
    await page.getByRole("button", { name: "LCV-213" }).waitFor();
    await server.kill();
    await context.setOffline(true);
    await page.reload();
    await page.getByRole("button", { name: "LCV-213" }).click();
    for (const words of ["seat worn one side", "flipped it", "plug looks good"]) await say(page, words);
    await expect.poll(() => page.locator(".outbox").textContent()).toMatch(/^3 waiting/);
    await page.getByText("kept on this device").waitFor();
  });

  it("takes the job up again after a reload", async () => {
    const { page } = device;
    await page.reload();
    await page.locator(".understood .said").waitFor();
    expect(await page.locator(".understood .said").textContent()).toContain("plug");
    await expect.poll(() => page.locator(".outbox").textContent()).toMatch(/^3 waiting/);
  });

  it("sends what waited when the server is back, each once and in order", async () => {
    const { page, context } = device;
    await server.start();
    await context.setOffline(false);
    await allKept(page);
    // and again: nothing is sent twice, nothing is stored twice
    await page.reload();
    await allKept(page);
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    expect(jobs).toHaveLength(1);
    const job = await server.get<JobView>(`/api/jobs/${jobs[0]?.id}`);
    expect(job.phrases.map((one) => one.text)).toEqual(["seat worn one side", "flipped it", "plug looks good"]);
    expect(device.complaints).toEqual([]);
  });

  it("keeps the row where the answer was lost after the server stored it", async () => {
    const { page } = device;
    let dropped = 0;
    await page.route("**/api/phrases", async (route) => {
      if (dropped++) return route.continue();
      await route.fetch();
      await route.abort();
    });
    await say(page, "cage is clean");
    await allKept(page);
    expect(dropped).toBeGreaterThan(1);
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    const job = await server.get<JobView>(`/api/jobs/${jobs[0]?.id}`);
    expect(job.phrases.map((one) => one.text).filter((text) => text === "cage is clean")).toHaveLength(1);
  });
});

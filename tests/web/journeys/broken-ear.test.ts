import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type FlakyLink, flakyLink } from "../flaky-link.ts";
import { type RunningServer, runServer } from "../running-server.ts";

/** The ear is megabytes: what can go wrong on the way to the device does. */
inBrowser("an ear that does not come whole", () => {
  let server: RunningServer;
  let link: FlakyLink;
  let device: Device;
  const missing = () => device.page.getByText(/^The ear is not on this device yet, or failed\./);

  beforeAll(async () => {
    server = await runServer();
    link = await flakyLink(() => server.address);
    device = await newDevice();
  });
  afterAll(async () => {
    await device?.close();
    await link?.close();
    await server?.remove();
  });

  it("says so by itself where its files are answered with trouble, and takes what is typed", async () => {
    const { page } = device;
    link.does(/^\/ear\//, () => "fail");
    await page.goto(link.address);
    await page.fill("#words", "LCV-213");
    await page.press("#words", "Enter");
    await missing().waitFor();
    await page.locator(".pad-deaf").waitFor();
    await say(page, "seat worn one side");
    await allKept(page);
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    const job = await server.get<JobView>(`/api/jobs/${jobs[0]?.id}`);
    expect(job.phrases).toMatchObject([{ text: "seat worn one side", how: "typed" }]);
  });

  it("says so where a file is cut short, touched again and again", async () => {
    const { page } = device;
    link.does(/^\/ear\/(means|dictionary)/, () => "cut_answer");
    for (let turn = 0; turn < 2; turn++) {
      await page.locator(".pad").click();
      await expect.poll(() => link.seen.length).toBeGreaterThan(turn);
      await missing().waitFor();
    }
  });

  it("comes by a touch once they can be had, and hears", async () => {
    const { page } = device;
    link.does(/^never/, () => "pass");
    await page.locator(".pad").click();
    await page.locator(".pad-open").waitFor();
    await missing().waitFor({ state: "detached" });
  });

  it("tries again with a worker of its own where its program did not come", async () => {
    const { page } = device;
    // without the page's own worker, which has the program from the first visit on
    await page.evaluate(async () => {
      for (const one of await navigator.serviceWorker.getRegistrations()) await one.unregister();
      for (const name of await caches.keys()) if (name !== "ear-files") await caches.delete(name);
    });
    link.does(/^\/assets\/worker/, () => "fail");
    await page.reload();
    await missing().waitFor();
    expect(link.seen.length).toBeGreaterThan(0);
    link.does(/^never/, () => "pass");
    await page.locator(".pad").click();
    await page.locator(".pad-open").waitFor();
    expect(device.complaints).toEqual([]);
  });
});

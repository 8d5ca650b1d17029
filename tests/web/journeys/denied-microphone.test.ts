import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

inBrowser("a browser that gives the page no microphone", () => {
  let server: RunningServer;
  let device: Device;

  beforeAll(async () => {
    server = await runServer();
    device = await newDevice(undefined, { forbids: ["microphone"] });
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("is told in words when it is touched, and what is typed is kept", async () => {
    const { page } = device;
    await page.goto(server.address);
    await page.fill("#words", "LCV-213");
    await page.press("#words", "Enter");
    await page.locator(".pad").click();
    await page
      .getByText("The microphone is not allowed here. Allow it for this page in the browser, or type.")
      .waitFor();
    await page.locator(".pad-deaf").waitFor();
    await say(page, "seat worn one side");
    await allKept(page);
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    const job = await server.get<JobView>(`/api/jobs/${jobs[0]?.id}`);
    expect(job.phrases).toMatchObject([{ text: "seat worn one side", how: "typed" }]);
  });

  it("hears by touch once it is allowed", async () => {
    const { page, context } = device;
    await context.grantPermissions(["microphone"], { origin: server.address });
    await page.locator(".pad").click();
    await page.locator(".pad-open").waitFor();
  });

  it("says so when the microphone is taken away while it listens, and hears by touch once it is back", async () => {
    const { page, context } = device;
    await context.clearPermissions();
    await page.getByText("No microphone answers. Plug one in or free it, or type.").waitFor();
    await page.locator(".pad-deaf").waitFor();
    await say(page, "flipped it");
    await context.grantPermissions(["microphone"], { origin: server.address });
    await page.locator(".pad").click();
    await page.locator(".pad-open").waitFor();
    expect(device.complaints).toEqual([]);
  });
});

import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

/** What each says that was shown as kept, or as not kept, is compared with what the server has. */
async function storedOn(server: RunningServer): Promise<string[]> {
  const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
  const all = await Promise.all(jobs.map((job) => server.get<JobView>(`/api/jobs/${job.id}`)));
  return all.flatMap((job) => job.phrases.map((one) => one.text));
}

inBrowser("a browser that lets the page keep nothing", () => {
  let server: RunningServer;
  let device: Device;

  beforeAll(async () => {
    server = await runServer();
    device = await newDevice(undefined, { forbids: ["storage"] });
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("says so before anything is said, and hears all the same", async () => {
    const { page } = device;
    await page.goto(server.address);
    await page.getByText(/^This browser lets the page keep nothing .* Words are lost when the page closes/).waitFor();
    await page.fill("#words", "LCV-213");
    await page.press("#words", "Enter");
    await page.locator(".invite").waitFor();
    // on a slow machine it has come before the job is open
    await page.locator(".ear-coming").waitFor({ state: "detached" });
    await page.locator(".pad").click();
    await page.locator(".pad-open").waitFor();
    await page.locator(".pad").click();
  });

  it("shows a phrase as kept once the server has it, and not before", async () => {
    const { page } = device;
    await server.kill();
    await say(page, "seat worn one side");
    await page.getByText("Not kept.").waitFor();
    expect(await page.locator(".kept").count()).toBe(0);
    await expect.poll(() => page.locator(".outbox").textContent()).toBe("1 waiting, no network to the server");
    await server.start();
    await page.evaluate(() => dispatchEvent(new Event("online")));
    await page.locator(".understood .kept-kept").waitFor();
    await say(page, "flipped it");
    await page.locator(".understood .kept-kept").waitFor();
    expect(await storedOn(server)).toEqual(["seat worn one side", "flipped it"]);
    expect(device.complaints).toEqual([]);
  });
});

inBrowser("a store that has no room from the start", () => {
  let server: RunningServer;
  let device: Device;

  beforeAll(async () => {
    server = await runServer();
    device = await newDevice();
    await device.room(server.address, 1);
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("keeps nothing on the device, says so phrase by phrase, and loses none that the server can have", async () => {
    const { page } = device;
    await page.goto(server.address);
    await page.fill("#words", "LCV-213");
    await page.press("#words", "Enter");
    await page.locator(".plate").first().waitFor();
    await server.kill();
    await say(page, "seat worn one side");
    await page.getByText("Not kept.").waitFor();
    await page.getByText(/this device’s store is full/).waitFor();
    await expect.poll(() => page.locator(".outbox").textContent()).toMatch(/^1 waiting, no network to the server/);
    await page.getByRole("button", { name: "Keep it again" }).click();
    await page.getByText("Not kept.").waitFor();
    await say(page, "flipped it");
    await page.getByText("Not kept.").waitFor();
    await server.start();
    await page.evaluate(() => dispatchEvent(new Event("online")));
    await page.locator(".understood .kept-kept").waitFor();
    await allKept(page);
    expect(await storedOn(server)).toEqual(["seat worn one side", "flipped it"]);
    expect(device.complaints).toEqual([]);
  });
});

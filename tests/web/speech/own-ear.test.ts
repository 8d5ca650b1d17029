import { rm } from "node:fs/promises";
import { dirname } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { allKept, type Device, inBrowser, newDevice, workerReady } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";
import { spokenFile } from "./spoken-file.ts";

/** Notes when the microphone last gave something loud, and when the page first showed a phrase as understood. */
function clockSpeech(): void {
  const clock = { loud: 0, understood: 0 };
  Object.assign(globalThis, { clock });
  const devices = navigator.mediaDevices;
  const open = devices.getUserMedia.bind(devices);
  devices.getUserMedia = async (wanted) => {
    const stream = await open(wanted);
    const context = new AudioContext();
    const ear = context.createAnalyser();
    ear.fftSize = 512;
    context.createMediaStreamSource(stream).connect(ear);
    const samples = new Float32Array(ear.fftSize);
    setInterval(() => {
      ear.getFloatTimeDomainData(samples);
      if (!clock.understood && samples.some((sample) => Math.abs(sample) > 0.03)) clock.loud = performance.now();
      if (!clock.understood && document.querySelector(".understood .said")) clock.understood = performance.now();
    }, 10);
    return stream;
  };
}

inBrowser("the page's own ear", () => {
  let server: RunningServer;
  let device: Device;
  let file: string;

  beforeAll(async () => {
    [server, file] = await Promise.all([runServer(), spokenFile("the seat is worn on one side")]);
    await server.put("/api/sites/north", { name: "North (invented)", zone: "America/Denver" });
    await server.put("/api/valves/LCV-213", { site: "north", family: "balanced_dump", size_in: 2 });
    device = await newDevice(undefined, { flags: [`--use-file-for-fake-audio-capture=${file}`] });
    await device.page.addInitScript(clockSpeech);
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
    if (file) await rm(dirname(file), { recursive: true, force: true });
  });

  it("comes with the first visit, says how it gets on, and lets the page be typed in meanwhile", async () => {
    const { page } = device;
    let hold = () => {};
    const held = new Promise<void>((resolve) => {
      hold = resolve;
    });
    await device.context.route("**/ear/sendump*", async (route) => {
      await held;
      await route.continue();
    });
    await page.goto(server.address);
    await workerReady(page);
    await page.getByText(/The ear is coming: \d+ of \d+ MB/).waitFor();
    expect(await page.locator("#words").isEnabled()).toBe(true);
    hold();
    await page.locator(".ear-coming").waitFor({ state: "detached" });
    expect(device.complaints).toEqual([]);
  }, 60_000);

  it("hears a phrase with the server gone: a finding on the card, its words waiting to be sent", async () => {
    const { page, context } = device;
    await server.kill();
    await context.setOffline(true);
    await page.reload();
    await page.getByRole("button", { name: "LCV-213" }).click();
    await page.locator(".pad").click();
    await page.locator(".understood .said").waitFor({ timeout: 40_000 });
    await page.locator(".pad").click();
    expect(await page.locator(".understood .said").textContent()).toContain("worn");
    const clock = await page.evaluate(() => (globalThis as unknown as { clock: Record<string, number> }).clock);
    const ms = Math.round((clock.understood ?? 0) - (clock.loud ?? 0));
    process.stdout.write(`end of speech to understood on the screen: ${ms} ms\n`);
    expect(device.complaints).toEqual([]);
  }, 60_000);

  it("is stored as a finding once the server is back", async () => {
    const { page, context } = device;
    await server.start();
    await context.setOffline(false);
    await page.reload();
    await allKept(page);
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    const job = await server.get<JobView>(`/api/jobs/${jobs[0]?.id}`);
    expect(job.phrases[0]).toMatchObject({
      text: "the seat is worn on one side",
      how: "heard",
      confidence: expect.any(Number),
    });
    expect(job.entries).toMatchObject([{ type: "finding", part: "seat", condition: "worn", extent: "one_side" }]);
  }, 60_000);
});

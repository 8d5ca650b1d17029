import { rm } from "node:fs/promises";
import { dirname } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { allKept, type Device, inBrowser, newDevice, workerReady } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";
import { spokenFile } from "./spoken-file.ts";

/** What is said, with the call word but for the answer: that is waited for. */
const CALL = "for the log, ";
const SAID = [
  `${CALL}starting on L C V two one three`,
  `${CALL}seat worn on one side`,
  `${CALL}flipped it`,
  // of what? it is asked, and answered by the next
  `${CALL}bonnet bolts twenty eight`,
  "yes",
  `${CALL}packing is leaking`,
  `${CALL}scratch that`,
  `${CALL}stem is bent`,
  `${CALL}cleaned the cage`,
  `${CALL}no leak at sixty p s i`,
];

inBrowser("hands-free by the page's own ear", () => {
  let server: RunningServer;
  let device: Device;
  let file: string;

  beforeAll(async () => {
    [server, file] = await Promise.all([runServer(), spokenFile("my hands are full right now", ...SAID)]);
    await server.put("/api/sites/north", { name: "North (invented)", zone: "America/Denver" });
    await server.put("/api/valves/LCV-213", { site: "north", family: "balanced_dump", size_in: 2 });
    device = await newDevice(undefined, { flags: [`--use-file-for-fake-audio-capture=${file}`] });
    // a voice would speak over the next phrase of a recording that does not wait
    await device.page.addInitScript(() => Object.defineProperty(globalThis, "speechSynthesis", { value: undefined }));
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
    if (file) await rm(dirname(file), { recursive: true, force: true });
  });

  it("takes down what follows the call word with nothing touched and no server, and nothing else", async () => {
    const { page, context } = device;
    await page.goto(server.address);
    await workerReady(page);
    // all of the ear is on the device from the first visit on
    const isHere = () => page.evaluate(async () => (await caches.match("/ear/model.json")) !== undefined);
    await expect.poll(isHere, { timeout: 30_000 }).toBe(true);
    await server.kill();
    await context.setOffline(true);
    await page.reload();
    await page.goto(`${server.address}#/hearing`);
    await page.getByRole("button", { name: /Hands-free is off/ }).click();
    await page.goto(`${server.address}#/bench`);
    const said = page.locator(".understood .said");
    await expect.poll(() => said.textContent().catch(() => ""), { timeout: 120_000 }).toMatch(/sixty/);
    // what is said again by the recording that goes round is not meant any more
    await page.goto(`${server.address}#/hearing`);
    await page.getByRole("button", { name: /Hands-free is on/ }).click();
    expect(device.complaints).toEqual([]);
  }, 240_000);

  it("is stored once and in order when the server is back", async () => {
    const { page, context } = device;
    await server.start();
    await context.setOffline(false);
    await page.goto(`${server.address}#/bench`);
    await page.reload();
    await allKept(page);
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    expect(jobs).toHaveLength(1);
    const job = await server.get<JobView>(`/api/jobs/${jobs[0]?.id}`);
    const texts = job.phrases.map((one) => one.text);
    // some word may be heard otherwise; that none is lost, doubled or out of its place may not
    expect(texts).toEqual([
      expect.stringMatching(/LCV-213/),
      expect.stringMatching(/worn on one side/),
      expect.stringMatching(/flipped/),
      expect.stringMatching(/bonnet bolts/),
      "yes",
      expect.stringMatching(/packing/),
      "scratch that",
      expect.stringMatching(/bent/),
      expect.stringMatching(/cage/),
      expect.stringMatching(/sixty/),
    ]);
    expect(job.tag).toBe("LCV-213");
    const standing = job.entries.filter(({ type }) => type !== "valve" && type !== "command");
    expect(standing).toMatchObject([
      { type: "finding", part: "seat", condition: "worn", extent: "one_side" },
      { type: "work", part: "seat", work: "flipped" },
      { type: "reading", quantity: "torque", value: 28, unit: "ft_lbf", part: "bonnet_bolting" },
      { type: "finding", part: "stem", condition: "bent" },
      { type: "work", part: "cage", work: "cleaned" },
      { type: "reading", quantity: "upstream_pressure", value: 60, unit: "psi" },
      { type: "test", result: "pass" },
    ]);
  }, 60_000);
});

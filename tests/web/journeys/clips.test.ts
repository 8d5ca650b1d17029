import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { violations } from "../axe.ts";
import { allKept, type Device, inBrowser, newDevice, workerReady } from "../chromium.ts";
import { type FlakyLink, flakyLink } from "../flaky-link.ts";
import { type RunningServer, runServer } from "../running-server.ts";
import { hear, openEar as openItsEar, shutEar as shutItsEar, withVoice } from "../spoken-to.ts";

const PATIENCE = { timeout: 180_000 };
const SOME_SOUND_MS = 700;

inBrowser("the sound of what is said at the bench", () => {
  let server: RunningServer;
  let link: FlakyLink;
  let profile: string;
  let device: Device;

  const theJob = async (site = "north") => {
    const { jobs } = await server.get<{ jobs: JobSummary[] }>(`/api/jobs?site=${site}`);
    return server.get<JobView>(`/api/jobs/${jobs[0]?.id}`);
  };
  const clipsOf = (job: JobView) => job.phrases.map((one) => one.clips.length);
  const outbox = () => device.page.locator(".outbox").textContent();
  /** how many clips each phrase has that was said after the first so many */
  const clipsAfter = async (many: number) => clipsOf(await theJob()).slice(many);
  const speak = async (words: string) => {
    // the microphone beeps meanwhile
    await device.page.waitForTimeout(SOME_SOUND_MS);
    await hear(device.page, words);
  };

  const openEar = async () => {
    await openItsEar(device.page);
    // the microphone takes its time
    await device.page.waitForTimeout(SOME_SOUND_MS);
  };
  const shutEar = () => shutItsEar(device.page);

  const openOn = async (address: string) => {
    device = await newDevice(undefined, { profile });
    await withVoice(device.page);
    await device.page.goto(address);
  };

  beforeAll(async () => {
    server = await runServer();
    link = await flakyLink(() => server.address);
    profile = await mkdtemp(join(tmpdir(), "handsfull-profile-"));
    for (const site of ["north", "south"])
      await server.put(`/api/sites/${site}`, { name: `${site} (invented)`, zone: "Etc/UTC" });
    await server.put("/api/valves/LCV-213", { site: "north", family: "balanced_dump", size_in: 2 });
    await server.put("/api/valves/PV-104", { site: "south", family: "balanced_dump", size_in: 2 });
    await openOn(link.address);
    await workerReady(device.page);
  });
  afterAll(async () => {
    await device?.close();
    await link?.close();
    await server?.remove();
    await rm(profile, { recursive: true, force: true });
  });

  it("is kept with each phrase, sent after it, and heard again at the desk", PATIENCE, async () => {
    const { page } = device;
    await page.getByRole("button", { name: "LCV-213" }).click();
    await openEar();
    await speak("seat worn one side");
    await speak("flipped it");
    await expect.poll(async () => clipsOf(await theJob()), { timeout: 20_000 }).toEqual([1, 1]);
    await allKept(page);
    const [first] = (await theJob()).phrases[0]?.clips ?? [];
    expect(first?.type).toBe("audio/ogg");
    expect(first?.seconds).toBeGreaterThan(0.3);
    await shutEar();
    const id = (await theJob()).id;
    await page.goto(`${link.address}#/job/${id}`);
    await page.locator(".clip button").first().click();
    await page.locator(".clip-sounding").waitFor();
    await page.locator(".clip-sounding").waitFor({ state: "detached" });
    expect(await page.locator(".clip .bad").allTextContents()).toEqual(["", ""]);
    await page.goto(`${link.address}#/bench`);
    expect(device.complaints).toEqual([]);
  });

  it("of fifty phrases without a network waits and is counted in words, and all of it arrives", PATIENCE, async () => {
    const { page, context } = device;
    const before = clipsOf(await theJob()).length;
    await context.setOffline(true);
    await openEar();
    for (let turn = 0; turn < 50; turn++) {
      await page.waitForTimeout(300);
      await hear(page, `note number ${turn + 1}`);
    }
    await expect.poll(outbox, { timeout: 30_000 }).toMatch(/^100 waiting \(50 phrases, 50 clips\)/);
    await shutEar();
    await page.reload();
    await expect.poll(outbox).toMatch(/^100 waiting \(50 phrases, 50 clips\)/);
    await context.setOffline(false);
    await allKept(page);
    expect(await clipsAfter(before)).toEqual(Array(50).fill(1));
  });

  it("is sent until it is answered for, and kept once, whatever the link does", PATIENCE, async () => {
    const { page } = device;
    const before = clipsOf(await theJob()).length;
    const doing = ["lose_answer", "cut", "busy", "lose_answer"] as const;
    link.does(/^\/api\/clips\//, (turn) => doing[turn] ?? "pass");
    await openEar();
    await speak("plug cracked");
    await expect.poll(outbox, { timeout: 10_000 }).toMatch(/1 clip/);
    await speak("cage is clean");
    await expect.poll(() => clipsAfter(before), { timeout: 60_000 }).toEqual([1, 1]);
    await allKept(page);
    await shutEar();
    expect(link.seen.map((one) => one.doing)).toEqual([...doing, "pass", "pass"]);
    // the server asked for three seconds, and a phrase said meanwhile changes nothing of that
    const busy = link.seen.findIndex((one) => one.doing === "busy");
    expect((link.seen[busy + 1]?.at ?? 0) - (link.seen[busy]?.at ?? 0)).toBeGreaterThanOrEqual(2990);
    // the first three tries and the one that passed are of the same clip
    expect(new Set(link.seen.map((one) => one.path)).size).toBe(2);
  });

  it("survives the death of the whole browser in the middle of sending", PATIENCE, async () => {
    const { page, context } = device;
    const before = clipsOf(await theJob()).length;
    await context.setOffline(true);
    await openEar();
    for (let turn = 0; turn < 12; turn++) {
      await page.waitForTimeout(300);
      await hear(page, `note after ${turn + 1}`);
    }
    await expect.poll(outbox, { timeout: 30_000 }).toMatch(/^24 waiting \(12 phrases, 12 clips\)/);
    // five go, and of the sixth the answer is lost in the death
    link.does(/^\/api\/clips\//, (turn) => (turn < 5 ? "pass" : "lose_answer"));
    await context.setOffline(false);
    await expect.poll(() => link.seen.length, { timeout: 30_000 }).toBeGreaterThanOrEqual(6);
    await device.kill();
    link.does(/^\/api\/clips\//, () => "pass");
    await openOn(link.address);
    await allKept(device.page);
    expect(await clipsAfter(before)).toEqual(Array(12).fill(1));
    const ids = (await theJob()).phrases.flatMap((one) => [one.id, ...one.clips.map((clip) => clip.id)]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it(
    "is not even recorded where the site keeps none, and not kept where this device keeps none",
    PATIENCE,
    async () => {
      const { page } = device;
      await page.locator(".understood").waitFor();
      link.does(/^\/api\/clips\//, () => "pass");
      const toggle = page.getByRole("button", { name: /^Sound of phrases is/ });
      await page.locator(".menu summary").click();
      await toggle.click();
      await page.getByText("Sound of phrases is not kept").waitFor();
      await page.locator(".menu summary").click();
      await openEar();
      await speak("diaphragm torn");
      await shutEar();
      await allKept(page);
      await page.locator(".menu summary").click();
      await toggle.click();
      await page.getByRole("button", { name: "Close this job" }).click();
      await page.goto(`${link.address}#/desk?site=south`);
      await page.getByText("Sound of phrases at south").click();
      await page.getByLabel("The sound is").selectOption("none");
      await page.getByRole("button", { name: "Keep", exact: true }).click();
      await page.getByText("Kept.").waitFor();
      expect(await violations(page)).toEqual([]);
      await page.goto(`${link.address}#/bench`);
      // the site's choice comes with its list, whenever that is fetched
      await page.reload();
      await page.getByRole("button", { name: "PV-104" }).click();
      await openEar();
      await speak("seat worn one side");
      await page.locator(".menu summary").click();
      await page.getByText("This site keeps none.").waitFor();
      await allKept(page);
      expect(clipsOf(await theJob("south"))).toEqual([0]);
      expect(clipsOf(await theJob()).at(-1)).toBe(0);
      expect(link.seen).toEqual([]);
      expect(device.complaints).toEqual([]);
    },
  );
});

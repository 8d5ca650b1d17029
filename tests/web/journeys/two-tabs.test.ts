import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";
import { SCRIPTED_EAR } from "../scripted-ear.ts";

/** One phone, the page opened twice, as happens when a link is touched again: both tabs are the one job. */
inBrowser("two tabs of one device on one job", () => {
  let server: RunningServer;
  let device: Device;
  let other: Page;
  const lastSaid = (page: Page) => page.locator(".understood .said").textContent();
  const stored = async () => {
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    expect(jobs).toHaveLength(1);
    return (await server.get<JobView>(`/api/jobs/${jobs[0]?.id}`)).phrases.map((one) => one.text);
  };

  beforeAll(async () => {
    server = await runServer();
    await server.put("/api/sites/north", { name: "North (invented)", zone: "Etc/UTC" });
    await server.put("/api/valves/LCV-213", { site: "north", family: "balanced_dump", size_in: 2 });
    device = await newDevice();
    await device.context.addInitScript(SCRIPTED_EAR);
    await device.page.goto(server.address);
    await device.page.getByRole("button", { name: "LCV-213" }).click();
    await say(device.page, "seat worn one side");
    await allKept(device.page);
    other = await device.context.newPage();
    await other.goto(server.address);
    await other.locator(".understood .said").waitFor();
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("shows in each what was said in the other, and takes it back from there", async () => {
    const { page } = device;
    await say(other, "plug cracked");
    await expect.poll(() => lastSaid(page)).toContain("plug");
    await say(page, "scratch that");
    await expect.poll(() => other.locator(".touched").textContent()).toMatch(/Scratched/);
    for (const tab of [page, other]) {
      await allKept(tab);
      await tab.locator(".understood .kept-kept").waitFor();
    }
    expect(await stored()).toEqual(["seat worn one side", "plug cracked", "scratch that"]);
  });

  it("stops both for a hazard, until somebody has seen it in either", async () => {
    await say(other, "hold on I smell gas");
    for (const tab of [device.page, other]) await tab.getByRole("alertdialog").waitFor();
    await device.page.bringToFront();
    await device.page.locator(".stop-seen").focus();
    await device.page.keyboard.down("Enter");
    for (const tab of [device.page, other]) await tab.getByRole("alertdialog").waitFor({ state: "detached" });
    await device.page.keyboard.up("Enter");
  });

  it("sends each phrase once and in order, however both talk at once and answers are lost", async () => {
    let sent = 0;
    await device.context.route("**/api/phrases", async (route) => {
      // stored, and nobody told: the other tab may be the one to try again
      if (sent++ % 2) return route.continue();
      await route.fetch();
      await route.abort();
    });
    const before = await stored();
    const said = Array.from({ length: 12 }, (_, n) => `cage is clean, note number ${n + 1}`);
    for (const [n, words] of said.entries()) await say(n % 2 ? other : device.page, words);
    for (const tab of [device.page, other]) {
      await expect.poll(() => lastSaid(tab)).toContain("12");
      await tab.evaluate(() => dispatchEvent(new Event("online")));
    }
    for (const tab of [device.page, other]) {
      await allKept(tab);
      await tab.locator(".understood .kept-kept").waitFor();
    }
    expect(await stored()).toEqual([...before, ...said]);
    await device.context.unroute("**/api/phrases");
  });

  it("listens in one tab at a time: whoever touches last is heard, the other says so", async () => {
    const running = (tab: Page) =>
      tab.evaluate(() => (globalThis as unknown as { scripted: { running: Set<unknown> } }).scripted.running.size);
    await device.page.locator(".pad").click();
    await device.page.locator(".pad-open").waitFor();
    await other.bringToFront();
    await other.locator(".pad").click();
    await other.locator(".pad-open").waitFor();
    await device.page.getByText("Another tab of this device listens now. Touch to listen in this one.").waitFor();
    expect([await running(device.page), await running(other)]).toEqual([0, 1]);
    await device.page.bringToFront();
    await device.page.locator(".pad").click();
    await device.page.locator(".pad-open").waitFor();
    await expect.poll(() => running(other)).toBe(0);
  });

  it("closes in both, and what is opened again in one is not closed by the other", async () => {
    const { page } = device;
    await page.locator(".menu summary").click();
    await page.getByRole("button", { name: "Close this job" }).click();
    for (const tab of [page, other]) await tab.getByText(/^LCV-213 closed/).waitFor();
    for (const tab of [other, page]) {
      await tab.getByRole("button", { name: "Open it again" }).click();
      await tab.locator(".understood .said").waitFor();
    }
    await say(other, "stem is straight");
    await expect.poll(() => lastSaid(page)).toContain("stem");
    await allKept(page);
    expect((await stored()).at(-1)).toBe("stem is straight");
    expect(device.complaints).toEqual([]);
  });
});

import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { browserSeen, inBrowser } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

/** Keeps every lock that the page gets from the browser. */
function countLocks(): void {
  const locks: WakeLockSentinel[] = [];
  Object.assign(globalThis, { locks });
  const { wakeLock } = navigator;
  const request = wakeLock.request.bind(wakeLock);
  wakeLock.request = async (type) => {
    const lock = await request(type);
    locks.push(lock);
    return lock;
  };
}

/** Whether each lock so far is held, in order. */
const held = (page: Page) =>
  page.evaluate(() => (globalThis as unknown as { locks: WakeLockSentinel[] }).locks.map(({ released }) => !released));

// W3C Screen Wake Lock API: a lock is released when the page is hidden, and may be asked for by a visible page alone.
inBrowser("the screen at the valve", () => {
  let server: RunningServer;
  let browser: Awaited<ReturnType<typeof browserSeen>>;

  beforeAll(async () => {
    [server, browser] = await Promise.all([runServer(), browserSeen()]);
    await browser.page.addInitScript(countLocks);
    await browser.page.goto(server.address);
    await browser.page.locator("#words").waitFor();
  });
  afterAll(async () => {
    await browser?.close();
    await server?.remove();
  });

  it("may go dark while no job is open, and stays lit from the moment one is", async () => {
    const { page } = browser;
    expect(await held(page)).toEqual([]);
    await page.fill("#words", "LCV-213");
    await page.press("#words", "Enter");
    await expect.poll(() => held(page)).toEqual([true]);
  });

  it("may go dark while something else is looked at, and is kept lit again on coming back", async () => {
    const { page, context } = browser;
    const other = await context.newPage();
    await other.bringToFront();
    await expect.poll(() => held(page)).toEqual([false]);
    await page.bringToFront();
    await expect.poll(() => held(page)).toEqual([false, true]);
    await other.close();
  });

  it("may go dark again once the job is closed, and does not ask for it behind that", async () => {
    const { page, context } = browser;
    await page.locator(".menu summary").click();
    await page.getByRole("button", { name: "Close this job" }).click();
    await page.locator(".choosing").waitFor();
    await expect.poll(() => held(page)).toEqual([false, false]);
    const other = await context.newPage();
    await other.bringToFront();
    await expect.poll(() => page.evaluate(() => document.visibilityState)).toBe("hidden");
    await page.bringToFront();
    await expect.poll(() => page.evaluate(() => document.visibilityState)).toBe("visible");
    expect(await held(page)).toEqual([false, false]);
  });

  it("that cannot be kept lit, as on a nearly empty battery, takes nothing else away", async () => {
    const { page } = browser;
    await page.evaluate(() => {
      navigator.wakeLock.request = () => Promise.reject(new DOMException("saving power", "NotAllowedError"));
    });
    await page.fill("#words", "LCV-214");
    await page.press("#words", "Enter");
    await page.locator(".bench-head .plate").waitFor();
    await page.fill("#words", "seat worn one side");
    await page.press("#words", "Enter");
    await page.getByText("Seat worn, one side").first().waitFor();
  });
});

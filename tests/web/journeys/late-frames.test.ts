import { afterAll, beforeAll, expect, it } from "vitest";
import { type Device, inBrowser, newDevice } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

/** A frame comes this late on the slow device: long after the answers of the server. */
const LATE_MS = 250;

inBrowser("a device whose frames come late", () => {
  let server: RunningServer;
  let device: Device;

  beforeAll(async () => {
    server = await runServer();
    device = await newDevice({ width: 1280, height: 900 });
    await device.context.addInitScript((late) => {
      const frame = globalThis.requestAnimationFrame.bind(globalThis);
      globalThis.requestAnimationFrame = (work) => Number(setTimeout(() => frame(work), late));
    }, LATE_MS);
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("shows one screen at a time, however fast one goes from each to the next", async () => {
    const { page } = device;
    await page.goto(`${server.address}#/desk`);
    await page.getByRole("heading", { name: "JOBS" }).waitFor();
    for (const leave of [LATE_MS / 2, LATE_MS + 20]) {
      for (const screen of ["desk", "due", "review", "report", "carry", "people", "set-up", "desk"]) {
        await page.evaluate((to) => location.assign(to), `#/${screen}`);
        await page.waitForTimeout(leave);
      }
      // whoever was left behind has had their answers, and looks again when the page is looked at
      await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
      await page.waitForTimeout(LATE_MS * 3);
      await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
      await page.waitForTimeout(LATE_MS * 3);
      expect(await page.locator("header.desk-head").count(), `each left after ${leave} ms`).toBe(1);
    }
  });
});

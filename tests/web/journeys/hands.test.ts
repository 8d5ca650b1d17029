import { afterAll, beforeAll, expect, it } from "vitest";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

/** 20 mm at the CSS inch of 96 px. */
const GLOVE_PX = (20 / 25.4) * 96;
const SCREENS = [
  { width: 360, height: 740 },
  { width: 740, height: 360 },
  { width: 800, height: 1280 },
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
];

inBrowser("hands in gloves, or on keys alone", () => {
  let server: RunningServer;
  let device: Device;

  beforeAll(async () => {
    server = await runServer();
    device = await newDevice();
    // a device that can run no ear of its own, with a browser that names one and has no service behind it
    await device.context.addInitScript(() => Reflect.set(globalThis, "AudioWorkletNode", undefined));
    // what never comes is named by its own step, not by the test running out of time
    device.page.setDefaultTimeout(9000);
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("does a whole job by keyboard alone", async () => {
    const { page } = device;
    await page.goto(server.address);
    await page.locator("#words").waitFor();
    const reach = async (what: string) => {
      for (let step = 0; step < 60; step++) {
        if (await page.evaluate((selector) => document.activeElement?.matches(selector), what)) return;
        await page.keyboard.press("Tab");
      }
      throw new Error(`Tab never reached ${what}`);
    };
    await reach("#words");
    await page.keyboard.type("lcv two one three");
    await page.keyboard.press("Enter");
    await page.locator(".understood").waitFor();
    await reach("#words");
    await page.keyboard.type("seat worn one side");
    await page.keyboard.press("Enter");
    await page.getByText("Seat worn, one side").first().waitFor();
    await page.keyboard.type("plug cracked");
    await page.keyboard.press("Enter");
    await page.getByText("Plug cracked").first().waitFor();
    await reach(".undo");
    expect(await page.evaluate(() => getComputedStyle(document.activeElement as Element).outlineStyle)).toBe("solid");
    await page.keyboard.press("Enter");
    await page.locator(".touched").waitFor();
    await reach(".whole-card > summary");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".whole-card").textContent()).toContain("Seat");
    expect(await page.locator(".whole-card").textContent()).not.toContain("Plug cracked");
    await reach("#words");
    await page.keyboard.type("close it out");
    await page.keyboard.press("Enter");
    // most of the list was not heard: asked once, answered in a word
    await page.locator(".asked").waitFor();
    await page.keyboard.type("yes");
    await page.keyboard.press("Enter");
    await page.getByText("Open it again").waitFor();
    await reach(".menu summary");
    await page.keyboard.press("Enter");
    await reach('.menu a[href="#/desk"]');
    await page.keyboard.press("Enter");
    await page.locator(".ticket").waitFor();
  });

  it("keeps every fold and link of the card at 20 mm too", async () => {
    const { page } = device;
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto(`${server.address}#/bench`);
    await page.fill("#words", "lcv 900");
    await page.press("#words", "Enter");
    // said otherwise than it is written, the tag stands as the first phrase
    await page.getByText("VALVE LCV-900").first().waitFor();
    for (const words of ["seat worn both sides", "frobnicator squeals"]) await say(page, words);
    await page.locator(".not-read").waitFor();
    const small = await page.evaluate(
      (least) =>
        [...document.querySelectorAll(".bench summary, .bench a, .bench button, .bench select, .bench input")]
          .filter((one) => one.getClientRects().length > 0 && one.getBoundingClientRect().height < least)
          .map((one) => `${one.tagName} ${one.textContent}: ${one.getBoundingClientRect().height}`),
      GLOVE_PX - 0.5,
    );
    expect(small).toEqual([]);
    await page.fill("#words", "close it out");
    await page.press("#words", "Enter");
    await page.getByRole("button", { name: "Close it" }).click();
    await page.locator(".choosing").waitFor();
  });

  it("keeps every primary control of the bench at 20 mm and inside the screen", async () => {
    const { page } = device;
    await page.goto(`${server.address}#/bench`);
    for (const screen of SCREENS) {
      await page.setViewportSize(screen);
      await page.goto(`${server.address}#/bench`);
      if (!(await page.locator(".undo").count())) {
        await page.fill("#words", "PV-104");
        await page.press("#words", "Enter");
      }
      await say(page, "seat worn one side");
      for (const control of ["#words", ".undo", ".pad", ".menu summary", ".say"]) {
        // with words in the field "say" stands where "scratch" stood
        await page.fill("#words", control === ".say" ? "plug" : "");
        const box = await page.locator(control).boundingBox();
        const where = `${control} on ${screen.width}x${screen.height}`;
        if (!box) throw new Error(`${where} is not drawn`);
        expect(box.width, where).toBeGreaterThanOrEqual(GLOVE_PX);
        expect(box.height, where).toBeGreaterThanOrEqual(GLOVE_PX);
        expect(box.x + box.width, where).toBeLessThanOrEqual(screen.width);
        expect(box.y + box.height, where).toBeLessThanOrEqual(screen.height);
      }
      await page.fill("#words", "");
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide, `sideways on ${screen.width}x${screen.height}`).toBeLessThanOrEqual(screen.width);
      const size = await page
        .locator(".understood .line-words")
        .first()
        .evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));
      expect(size).toBeGreaterThanOrEqual(28);
      // valve, understood and next are all three in sight, and the pad has the lower half or the side
      for (const thing of [".bench-head .plate", ".understood .line-words", ".next-head"]) {
        const where = `${thing} on ${screen.width}x${screen.height}`;
        const hidden = await page
          .locator(thing)
          .first()
          .evaluate((element) => {
            const box = element.getBoundingClientRect();
            const at = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
            return !at || !(element.contains(at) || at.contains(element));
          });
        expect(hidden, where).toBe(false);
      }
      const pad = await page.locator(".controls").boundingBox();
      const share = ((pad?.width ?? 0) * (pad?.height ?? 0)) / (screen.width * screen.height);
      expect(share, `the pad's part of ${screen.width}x${screen.height}`).toBeGreaterThan(0.4);
    }
    await allKept(page);
  });

  it("says in words that it cannot hear, and typing goes on", async () => {
    const { page } = device;
    await page.keyboard.press("F2");
    await expect.poll(() => page.locator(".pad-words").textContent()).toMatch(/type/i);
    await page.locator(".pad-deaf").waitFor();
    await say(page, "cage is clean");
    await allKept(page);
    expect(device.complaints).toEqual([]);
  });
});

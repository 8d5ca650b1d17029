import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Device, inBrowser, newDevice } from "../chromium.ts";
import { HAS_BUTTONS, type MediaButtons, mediaButtons } from "../media-buttons.ts";
import { type RunningServer, runServer } from "../running-server.ts";
import { hearIn, SCRIPTED_EAR } from "../scripted-ear.ts";

describe.skipIf(!HAS_BUTTONS)("(needs D-Bus: apt-get install -y dbus libglib2.0-bin)", () => {
  inBrowser("a headset's button", () => {
    let server: RunningServer;
    let device: Device;
    let buttons: MediaButtons;
    const pad = () => device.page.locator(".pad").getAttribute("class");

    beforeAll(async () => {
      [server, buttons] = await Promise.all([runServer(), mediaButtons()]);
      device = await newDevice(undefined, { env: buttons.env });
      await device.page.addInitScript(SCRIPTED_EAR);
      device.page.setDefaultTimeout(9000);
      await device.page.goto(`${server.address}#/bench`);
      await device.page.fill("#words", "LCV-213");
      await device.page.press("#words", "Enter");
      await device.page.locator(".bench-head .plate").waitFor();
    });
    afterAll(async () => {
      await device?.close();
      await buttons?.remove();
      await server?.remove();
    });

    it("is left to the music that may be playing until it is asked for", async () => {
      expect(await buttons.status()).toBeUndefined();
    });

    it("opens the microphone and shuts it, whichever of a headset's buttons it is, again and again", async () => {
      const { page } = device;
      await page.goto(`${server.address}#/hearing`);
      await page.getByRole("button", { name: /Headset button is off/ }).click();
      await page.goto(`${server.address}#/bench`);
      await page.locator(".bench-head .plate").click();
      await expect.poll(() => buttons.status(), { timeout: 10_000 }).toBe("Playing");
      for (const [open, shut] of [
        ["PlayPause", "PlayPause"],
        ["Pause", "Play"],
        ["Next", "Previous"],
      ] as const) {
        await buttons.press(open);
        await expect.poll(pad).toContain("pad-open");
        await buttons.press(shut);
        await expect.poll(pad).toContain("pad-closed");
      }
    });

    it("opens it for a phrase, with the device in a pocket and nothing touched", async () => {
      await buttons.press("PlayPause");
      await hearIn(device.page, "seat worn one side");
      await device.page.getByText("Seat worn, one side").first().waitFor();
      await buttons.press("PlayPause");
      await expect.poll(pad).toContain("pad-closed");
    });

    it("opens nothing while a hazard stands on the screen, and is back once that was seen", async () => {
      const { page } = device;
      const playing = () => expect.poll(() => buttons.status(), { timeout: 10_000 });
      await page.fill("#words", "i smell gas");
      await page.press("#words", "Enter");
      const seen = page.locator(".stop-seen");
      await seen.waitFor();
      await playing().not.toBe("Playing");
      await seen.focus();
      await page.keyboard.down("Enter");
      await seen.waitFor({ state: "detached" });
      await page.keyboard.up("Enter");
      await playing().toBe("Playing");
      await buttons.press("PlayPause");
      await expect.poll(pad).toContain("pad-open");
      await buttons.press("PlayPause");
      await expect.poll(pad).toContain("pad-closed");
    });

    it("is let go of when it is no longer wanted", async () => {
      const { page } = device;
      await page.goto(`${server.address}#/hearing`);
      await page.getByRole("button", { name: /Headset button is on/ }).click();
      await page.goto(`${server.address}#/bench`);
      await page.locator(".bench-head .plate").waitFor();
      await expect.poll(() => buttons.status(), { timeout: 10_000 }).not.toBe("Playing");
      expect(device.complaints).toEqual([]);
    });
  });
});

import { afterAll, beforeAll, expect, it } from "vitest";
import { type Device, inBrowser, newDevice } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";
import { hearIn, SCRIPTED_EAR, spokenIn } from "../scripted-ear.ts";
import { openEar } from "../spoken-to.ts";

const KINDS = ["LCV", "PCV", "FV", "HV"];
const MANY = 200;

inBrowser("a site of two hundred valves", () => {
  let server: RunningServer;
  let device: Device;
  const plates = () => device.page.locator(".plates .plate-button");

  beforeAll(async () => {
    server = await runServer();
    await server.put("/api/sites/north", { name: "North (invented)", zone: "America/Denver" });
    const tags = Array.from({ length: MANY }, (_, n) => `${KINDS[n % KINDS.length]}-${100 + n}`);
    while (tags.length)
      await Promise.all(
        tags.splice(0, 20).map((tag) => server.put(`/api/valves/${tag}`, { site: "north", family: "balanced_dump" })),
      );
    device = await newDevice();
    await device.page.addInitScript(SCRIPTED_EAR);
    device.page.setDefaultTimeout(9000);
    await device.page.goto(server.address);
  }, 60_000);
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("shows those whose tag has what is typed, while it is typed, and all of them again without", async () => {
    const { page } = device;
    await expect.poll(() => plates().count(), { timeout: 10_000 }).toBe(MANY);
    await page.fill("#words", "pcv 10");
    await page.getByRole("heading", { name: "3 have “pcv 10”" }).waitFor();
    expect(await plates().count()).toBe(3);
    expect(await plates().first().isVisible()).toBe(true);
    await page.fill("#words", "zz");
    await expect.poll(() => plates().count()).toBe(MANY);
    await page.fill("#words", "");
    await expect.poll(() => plates().count()).toBe(MANY);
  });

  it("shows those that have the part of a tag that was said, and asks for more of it", async () => {
    const { page } = device;
    await openEar(page);
    await hearIn(page, "h v");
    await page.getByRole("heading", { name: "50 have “h v”" }).waitFor();
    expect(await plates().count()).toBe(50);
    await expect.poll(() => spokenIn(page)).toMatchObject([{ text: "50 valves have that. Say more of the tag." }]);
  });

  it("asks on the screen and aloud for the one that has it, and a spoken yes opens its job", async () => {
    const { page } = device;
    await hearIn(page, "two thirteen");
    await page.locator(".asked .ask").filter({ hasText: "PCV-213. Right?" }).waitFor();
    await page.getByRole("button", { name: "Right" }).waitFor();
    await hearIn(page, "yes");
    await page.locator(".bench-head .plate").waitFor();
    expect(await page.title()).toContain("PCV-213");
    await page.locator(".invite").waitFor();
    expect(device.complaints).toEqual([]);
  });
});

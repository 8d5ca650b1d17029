import { afterAll, beforeAll, expect, it } from "vitest";
import type { SiteFamilies } from "../../../core/index.ts";
import { violations } from "../axe.ts";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

/** From an empty log to a site with valves, something said, and finding it again: by a person, without a file. */
inBrowser("a log set up at the desk", () => {
  let server: RunningServer;
  let desk: Device;
  const show = process.env.SHOW;
  const look = async (name: string) => {
    const { page } = desk;
    for (const [size, [width, height]] of Object.entries(SIZES)) {
      await page.setViewportSize({ width, height });
      if (show) await page.screenshot({ path: `${show}/${name}-${size}.png`, fullPage: true });
      const beyond = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(beyond, `${name} ${size}`).toBeLessThanOrEqual(0);
    }
    expect(await violations(page), name).toEqual([]);
  };
  const SIZES: Record<string, [number, number]> = { phone: [360, 740], desk: [1440, 900] };

  beforeAll(async () => {
    server = await runServer();
    desk = await newDevice({ width: 1440, height: 900 });
  });
  afterAll(async () => {
    await desk?.close();
    await server?.remove();
  });

  it("adds a site, looks at a list of valves, mends it and keeps it", { timeout: 90_000 }, async () => {
    const { page } = desk;
    await page.goto(`${server.address}#/set-up`);
    await page.getByLabel("Short key, as the devices say it").fill("north");
    await page.getByLabel("Name", { exact: true }).fill("North Pad");
    await page.getByLabel(/Time zone/).fill("America/Denver");
    await page.getByRole("button", { name: "Keep the site" }).click();
    const list = page.getByLabel(/typed or pasted/);
    await list.fill("tag,family,size_in,service\nLCV-213,balanced_dump,2,severe\nLCV-214,balanced_dump,two,normal");
    await page.getByRole("button", { name: /^Look at it/ }).click();
    await page.getByText("1 new, 0 changed, 0 as they were, 1 refused.").waitFor();
    await look("set-up-refused");
    await list.fill("tag,family,size_in,service\nLCV-213,balanced_dump,2,severe\nLCV-214,balanced_dump,2,normal");
    await page.getByRole("button", { name: /^Look at it/ }).click();
    await page.getByRole("button", { name: "Keep all 2" }).click();
    await page.getByText("Kept: 2 new").waitFor();
    await page.locator("form[aria-label='On the shelf'] select[name=part]").selectOption("seat");
    await page.getByLabel("How many").fill("3");
    await page.getByRole("button", { name: "Set it" }).click();
    await page.getByText("× Seat").waitFor();
    await look("set-up");
  });

  it("sets up a family like one there is, with a torque limit of its own, and takes it back", {
    timeout: 90_000,
  }, async () => {
    const { page } = desk;
    await page.getByRole("button", { name: "Set up one like balanced_dump" }).click();
    await page.getByLabel("Code, as lists of valves name it").fill("our_dump");
    await page.getByLabel("Name", { exact: true }).last().fill("dump valve of the pad");
    await page.getByLabel("Seat looked at every, months").fill("3");
    await page.getByRole("button", { name: "One more limit" }).click();
    const limit = page.locator("tr[data-rows='Torque limits']").last();
    await limit.locator("[data-key=part]").selectOption("yoke");
    await limit.locator("[data-key=unit]").selectOption("ft_lbf");
    for (const [key, value] of Object.entries({ from: "2", to: "4", min: "60", max: "50", source: "our drawing" }))
      await limit.locator(`[data-key=${key}]`).fill(value);
    await look("set-up-family");
    await page.getByRole("button", { name: "Keep the family" }).click();
    await page.getByText(/the lower limit first/).waitFor();
    await limit.locator("[data-key=max]").fill("70");
    await page.getByRole("button", { name: "Keep the family" }).click();
    await page.getByRole("button", { name: "Change our_dump" }).waitFor();
    await page.getByText(/dump valve of the pad\. Seat every 3 months/).waitFor();
    const { families } = await server.get<SiteFamilies>("/api/sites/north/families");
    expect(families[0]?.torque.at(-1)).toMatchObject({ part: "yoke", size_in: [2, 4], min: 60, max: 70 });
    expect(families[0]?.bill.length).toBeGreaterThan(20);
    expect(families[0]?.inspection.length).toBeGreaterThan(10);
    await page.getByRole("button", { name: "Take back our_dump" }).click();
    await expect.poll(() => page.getByRole("button", { name: "Change our_dump" }).count()).toBe(0);
  });

  it("what is said there is due, left open and found", { timeout: 90_000 }, async () => {
    const { page } = desk;
    await page.goto(`${server.address}#/bench`);
    await page.reload();
    await page.fill("#words", "LCV-213");
    await page.press("#words", "Enter");
    await page.locator(".invite").waitFor();
    await say(page, "seat worn one side, flipped it");
    await allKept(page);
    await page.goto(`${server.address}#/due`);
    await page.getByRole("region", { name: "At the next inspection" }).getByText("Replace the seat").first().waitFor();
    await look("due");
    await page.goto(`${server.address}#/search`);
    await page.getByLabel("Words said").fill("flipped");
    await page.getByLabel("Found").selectOption("worn");
    await page.getByRole("button", { name: "Look", exact: true }).click();
    await page.getByText("1 phrase", { exact: true }).waitFor();
    await look("search");
  });

  it("the valve's sheet goes onto paper whole, light whatever the screen, without a control", {
    timeout: 90_000,
  }, async () => {
    const { page } = desk;
    const job = { id: crypto.randomUUID(), tag: "LCV-214", site: "north", startedAt: "2026-03-04T17:00:00Z" };
    const said = { id: crypto.randomUUID(), job: job.id, text: "seat worn one side, flipped it", how: "typed" };
    await fetch(new URL("/api/phrases", server.address), {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ jobs: [job], phrases: [{ ...said, saidAt: job.startedAt }] }),
    });
    await page.goto(`${server.address}#/valve/LCV-214?site=north`);
    await page.locator(".timeline").first().waitFor();
    await page.evaluate(() => {
      document.documentElement.dataset.theme = "dark";
    });
    await page.emulateMedia({ media: "print" });
    await page.setViewportSize({ width: 703, height: 1000 });
    const seen = await page.evaluate(() => {
      const shown = (at: string) => [...document.querySelectorAll(at)].filter((one) => one.getClientRects().length > 0);
      const picture = document.querySelector(".timeline .tl-drawing")?.getBoundingClientRect();
      return {
        paper: getComputedStyle(document.documentElement).backgroundColor,
        controls: shown("button, nav a, select, input").length,
        beyond: document.documentElement.scrollWidth - innerWidth,
        whole: Boolean(picture && picture.width > 400 && picture.right <= innerWidth),
      };
    });
    if (show) await page.screenshot({ path: `${show}/valve-print.png`, fullPage: true });
    expect(seen).toEqual({ paper: "rgb(255, 255, 255)", controls: 0, beyond: 0, whole: true });
    await page.emulateMedia({ media: "screen" });
  });

  it("complained of nothing on the way", () => {
    expect(desk.complaints).toEqual([]);
  });
});

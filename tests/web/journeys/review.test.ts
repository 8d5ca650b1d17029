import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobToSign, ReviewPage } from "../../../core/index.ts";
import { violations } from "../axe.ts";
import { type Device, inBrowser, newDevice } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";
import { reviewDay } from "./review-day.ts";

/** A shared machine may be slow: what is waited for comes, or it does not. */
const PATIENT = { timeout: 20_000 };
const id = () => crypto.randomUUID();

/** A lead's evening: a day of 12 jobs and 150 phrases looked at and signed without touching the mouse. */
inBrowser("a day reviewed and signed by keyboard", () => {
  let server: RunningServer;
  let desk: Device;
  const show = process.env.SHOW;
  const look = async (name: string) => {
    if (show) await desk.page.screenshot({ path: `${show}/${name}.png`, fullPage: true });
    expect(await violations(desk.page), name).toEqual([]);
    const beyond = await desk.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(beyond, name).toBeLessThanOrEqual(0);
  };
  const post = async (path: string, body: object) => {
    const reply = await fetch(new URL(path, server.address), {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
    });
    expect(reply.status, path).toBe(200);
  };

  beforeAll(async () => {
    server = await runServer();
    await server.put("/api/sites/north", { name: "North", zone: "America/Denver" });
    for (const [n, { tag, phrases }] of reviewDay().entries()) {
      const job = { id: id(), tag, site: "north", startedAt: new Date(Date.UTC(2026, 2, 4, 14, n * 30)).toISOString() };
      await post("/api/phrases", {
        jobs: [job],
        phrases: phrases.map(({ text, confidence }, at) => ({
          id: id(),
          job: job.id,
          text,
          saidAt: new Date(Date.UTC(2026, 2, 4, 14, n * 30, at * 20)).toISOString(),
          how: confidence === undefined ? "typed" : "heard",
          ...(confidence === undefined ? {} : { confidence }),
        })),
      });
    }
    desk = await newDevice({ width: 1440, height: 1000 });
  });
  afterAll(async () => {
    await desk?.close();
    await server?.remove();
  });

  it("what can hurt comes first, with the words and the reason", { timeout: 60_000 }, async () => {
    const { page } = desk;
    expect(reviewDay().flatMap((job) => job.phrases)).toHaveLength(150);
    await page.goto(`${server.address}#/review`);
    await page.getByRole("article", { name: /smell gas/ }).waitFor();
    await page.getByText("A hazard was called: gas").waitFor();
    await look("review-hazard");
    for (const [name, size] of Object.entries({ phone: [360, 740], tablet: [800, 1280] } as const)) {
      await page.setViewportSize({ width: size[0], height: size[1] });
      await look(`review-${name}`);
    }
    await page.evaluate(() => {
      document.documentElement.dataset.theme = "dark";
    });
    await page.setViewportSize({ width: 1440, height: 1000 });
    await look("review-dark");
    await page.evaluate(() => {
      delete document.documentElement.dataset.theme;
    });
    // the card has the focus, so that its keys work at once
    expect(await page.evaluate(() => document.activeElement?.className)).toMatch(/docket/);
  });

  it("a letter typed into a field is a letter", { timeout: 60_000 }, async () => {
    const { page } = desk;
    await page.keyboard.press("e");
    await page.getByLabel("Read this in its place").waitFor();
    await page.keyboard.type("x a s");
    await look("review-amend");
    expect(await page.getByLabel("Read this in its place").inputValue()).toBe("x a s");
    await page.keyboard.press("Escape");
    await expect.poll(() => page.getByLabel("Read this in its place").count(), PATIENT).toBe(0);
    await page.getByRole("article", { name: /smell gas/ }).waitFor();
  });

  it("a second lead is told what the first did, and keeps what he was writing", { timeout: 60_000 }, async () => {
    const { page } = desk;
    const { items } = await server.get<ReviewPage>("/api/review");
    const other = items.find((one) => /thingamajig/.test(one.said));
    await page.getByRole("button", { name: /thingamajig/ }).click();
    await page.getByRole("article", { name: /thingamajig/ }).waitFor();
    await page.keyboard.press("e");
    const field = page.getByLabel("Read this in its place");
    await field.fill("the indicator bracket is loose");
    await post(`/api/review/${other?.phrase}`, { id: id(), what: "accepted", seen: 0 });
    await page.keyboard.press("Enter");
    await page
      .getByRole("alert")
      .getByText(/^Accepted by .* meanwhile\. Nothing of yours was done/)
      .waitFor();
    expect(await field.inputValue()).toBe("the indicator bracket is loose");
    await look("review-two");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.getByRole("button", { name: /thingamajig/ }).count(), PATIENT).toBe(0);
    const now = await server.get<{ entries: unknown[]; decisions: { what: string }[] }>(`/api/review/${other?.phrase}`);
    expect(now.decisions.map((one) => one.what)).toEqual(["accepted", "amended"]);
  });

  it("teaches a word where it was not read, once what it changes is shown", { timeout: 60_000 }, async () => {
    const { page } = desk;
    await page.getByRole("button", { name: /donut/ }).click();
    await page.getByRole("article", { name: /donut/ }).waitFor();
    await page.keyboard.press("t");
    const field = page.getByLabel(/Say what it means/);
    await field.fill("donut is the cage o-ring");
    await page.getByText("1 earlier phrase would read otherwise").waitFor();
    await look("review-teach");
    await page.keyboard.press("Enter");
    await page.getByText(/“donut” is read as cage O-ring from now on/).waitFor();
    // read now, nothing speaks against it any more
    await expect.poll(() => page.getByRole("button", { name: /donut/ }).count(), PATIENT).toBe(0);
  });

  it("is looked at and signed to the end by keys alone; how many and how long is printed", {
    timeout: 240_000,
  }, async () => {
    const { page } = desk;
    let keys = 0;
    let looked = 0;
    let signed = 0;
    const press = async (key: string) => {
      keys++;
      await page.keyboard.press(key);
    };
    const start = performance.now();
    for (;;) {
      const name = (await page.locator(".docket").getAttribute("aria-label")) ?? "";
      if (name === "Nothing waits" && (await page.getByText("Everything is looked at and signed.").count())) break;
      if (name === "Nothing waits") continue;
      const moved = () => expect.poll(() => page.locator(".docket").getAttribute("aria-label"), PATIENT).not.toBe(name);
      if (/^Sign /.test(name)) {
        await page.locator(".acts .tab-first:enabled").waitFor();
        if (signed === 0) await look("review-sign");
        await press("s");
        signed++;
      } else {
        looked++;
        if (/ball game|thingamajig/.test(name)) await press("x");
        else if (/torqued to eighty/.test(name)) {
          await press("e");
          const words = "bonnet bolts torqued to twenty eight foot pounds";
          await page.getByLabel("Read this in its place").fill(words);
          keys += words.length;
          await press("Enter");
        } else await press("a");
      }
      await moved();
    }
    const seconds = (performance.now() - start) / 1000;
    process.stdout.write(
      `review of 12 jobs, 150 phrases: ${looked} phrases looked at, ${signed} jobs signed, ${keys} keys, 0 clicks, ${seconds.toFixed(1)} s of page time\n`,
    );
    await page.getByText("Everything is looked at and signed.").waitFor();
    await look("review-done");
    const { jobs } = await server.get<{ jobs: JobToSign[] }>("/api/signing?state=signed");
    expect(jobs).toHaveLength(12);
    const left = await server.get<ReviewPage>("/api/review");
    expect(left.waiting).toEqual([]);
  });

  it("complained of nothing on the way", () => {
    expect(desk.complaints).toEqual([]);
  });
});

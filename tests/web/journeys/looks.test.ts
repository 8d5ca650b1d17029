import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary } from "../../../core/index.ts";
import { violations } from "../axe.ts";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

const SIZES = [
  ["a phone", { width: 360, height: 740 }],
  ["a tablet", { width: 800, height: 1280 }],
  ["a desk", { width: 1920, height: 1080 }],
] as const;

/** Axe weighs every element of a page: on a busy machine that takes its time. */
const PATIENCE_MS = 60_000;

inBrowser("every screen, by axe against WCAG 2.2 AA", () => {
  let server: RunningServer;
  let device: Device;
  let job = "";

  beforeAll(async () => {
    server = await runServer();
    await server.put("/api/sites/north", { name: "North (invented)", zone: "America/Denver" });
    await server.put("/api/valves/LCV-213", { site: "north", family: "balanced_dump", size_in: 2, service: "severe" });
    device = await newDevice();
    const { page } = device;
    await page.goto(server.address);
    await page.getByRole("button", { name: "LCV-213" }).click();
    await page.locator(".invite").waitFor();
    for (const words of [
      "seat worn one side and the frobnicator squeals",
      "maybe a crack in the cage",
      "bonnet bolts torqued to forty",
      "three bubbles a minute at fifty pounds",
      "order two backup rings",
      "diaphragm torn",
    ])
      await say(page, words);
    await allKept(page);
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs?site=north");
    job = jobs[0]?.id ?? "";
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  const SCREENS: [string, () => string, string][] = [
    ["the bench", () => "#/bench", ".understood .said"],
    ["how it listens and answers", () => "#/hearing", ".hearing-sheet"],
    ["measuring the ear", () => "#/record-set", ".record-begin"],
    ["signing in", () => "#/sign-in", "form"],
    ["choosing a password", () => "#/set-password?code=abc", "form"],
    ["enrolling a device", () => "#/enrol?code=abc", ".sheet, form, button"],
    ["who this is", () => "#/me", ".sheet, section"],
    ["people", () => "#/people", "h2"],
    ["the words of this site", () => "#/words", "form"],
    ["the jobs", () => "#/desk?site=north", ".ticket"],
    ["a job", () => `#/job/${job}`, ".phrase"],
    ["a valve", () => "#/valve/LCV-213?site=north", ".timeline"],
    ["the report and who gets it", () => "#/report?site=north", ".standing-line"],
    ["what is due", () => "#/due", ".due"],
    ["what to carry", () => "#/carry", ".fleet"],
    ["the fleet", () => "#/reliability", ".fleet"],
    ["help", () => "#/help", ".ways"],
    ["the glossary", () => "#/glossary", ".word"],
    ["the words of the site", () => "#/words", ".teach"],
  ];

  for (const [size, viewport] of SIZES)
    for (const theme of ["light", "dark"] as const)
      it.each(SCREENS)(
        `%s on ${size}, ${theme}`,
        async (_name, address, ready) => {
          const { page } = device;
          await page.setViewportSize(viewport);
          await page.emulateMedia({ colorScheme: theme });
          await page.goto(`${server.address}${address()}`);
          await page.locator(ready).first().waitFor();
          expect(await violations(page)).toEqual([]);
          // nothing is cut off at the side
          expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
        },
        PATIENCE_MS,
      );

  for (const theme of ["light", "dark"] as const) {
    it(
      `the menu, the cautions and every fold open, ${theme}`,
      async () => {
        const { page } = device;
        await page.setViewportSize({ width: 360, height: 740 });
        await page.emulateMedia({ colorScheme: theme });
        for (const address of ["#/bench", "#/help"]) {
          await page.goto(`${server.address}${address}`);
          await page
            .locator(address === "#/bench" ? ".understood .said" : ".ways")
            .first()
            .waitFor();
          await page.evaluate(() => {
            for (const one of document.querySelectorAll("details")) one.open = true;
          });
          expect(await violations(page)).toEqual([]);
        }
      },
      PATIENCE_MS,
    );

    it(
      `the STOP screen and choosing a valve, ${theme}`,
      async () => {
        const { page } = device;
        await page.emulateMedia({ colorScheme: theme });
        await page.goto(`${server.address}#/bench`);
        await page.fill("#words", "I smell gas");
        await page.press("#words", "Enter");
        await page.getByRole("alertdialog").waitFor();
        expect(await violations(page)).toEqual([]);
        await page.locator(".stop-seen").hover();
        await page.mouse.down();
        await page.getByRole("alertdialog").waitFor({ state: "detached" });
        await page.mouse.up();
        await page.fill("#words", "close it out");
        await page.press("#words", "Enter");
        await page.locator(".answers").waitFor();
        expect(await violations(page)).toEqual([]);
        await page.getByRole("button", { name: "Close it" }).click();
        await page.locator(".choosing").waitFor();
        expect(await violations(page)).toEqual([]);
        await page.getByRole("button", { name: "Open it again" }).click();
        await page.locator(".understood .said").waitFor();
      },
      PATIENCE_MS,
    );
  }

  it("complained of nothing on the way", () => expect(device.complaints).toEqual([]));
});

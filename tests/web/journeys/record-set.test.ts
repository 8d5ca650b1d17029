import { readFile, rm } from "node:fs/promises";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { RECORD_SET } from "../../../core/speech/record-set/phrases.ts";
import { run } from "../../server/running.ts";
import { violations } from "../axe.ts";
import { type Device, inBrowser, newDevice, workerReady } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";
import { spokenFile } from "../speech/spoken-file.ts";

/** A phrase of the set, said by a synthetic voice into the browser's microphone over and over. */
inBrowser("the page that measures the ear", () => {
  let server: RunningServer;
  let device: Device;
  let file: string;

  beforeAll(async () => {
    [server, file] = await Promise.all([runServer(), spokenFile(RECORD_SET[4] ?? "")]);
    device = await newDevice(undefined, { flags: [`--use-file-for-fake-audio-capture=${file}`] });
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
    if (file) await rm(dirname(file), { recursive: true, force: true });
  });

  const show = async (name: string) => {
    if (process.env.SHOW) await device.page.screenshot({ path: `${process.env.SHOW}/record-${name}.png` });
  };
  const wellMade = async () => {
    expect(await violations(device.page)).toEqual([]);
    expect(await device.page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  };

  it("says first that nothing is sent, then shows the phrases one at a time", { timeout: 60_000 }, async () => {
    const { page } = device;
    await page.goto(`${server.address}#/record-set`);
    await page.getByText("Nothing is sent anywhere.").waitFor();
    await wellMade();
    await show("intro");
    await workerReady(page);
    await page.locator(".ear-coming").waitFor({ state: "detached" });
    await page.getByRole("button", { name: "Begin" }).click();
    await page.getByText(`1 of ${RECORD_SET.length}`).waitFor();
    for (let at = 0; at < 4; at++) await page.getByRole("button", { name: "Leave it out" }).click();
    expect(await page.locator(".record-phrase").textContent()).toBe(RECORD_SET[4]);
    for (const name of ["Back", "Leave it out", "TALK"])
      expect((await page.getByRole("button", { name }).boundingBox())?.height).toBeGreaterThanOrEqual(75);
    await wellMade();
    await show("phrase");
  });

  it("hears a phrase with the server gone and scores it", { timeout: 60_000 }, async () => {
    const { page, context } = device;
    await server.kill();
    await context.setOffline(true);
    await page.locator(".pad").click();
    await page.locator(".record-verdict").waitFor({ timeout: 40_000 });
    expect(await page.locator(".record-verdict b").textContent()).toBe("Word for word");
    await wellMade();
    await show("heard");
    await page.getByRole("button", { name: "The score" }).click();
    const score = page.getByRole("region", { name: "The score" });
    expect(await score.locator("dd").allTextContents()).toEqual(["100 % 1 of 1", "100 % 1 of 1"]);
    await wellMade();
    await show("score");
  });

  it("saves the recordings as one file, which the command line scores again", { timeout: 60_000 }, async () => {
    const { page } = device;
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: /^Save the recordings/ }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^record-set-[\d-]+\.jsonl$/);
    const saved = join(dirname(file), "saved.jsonl");
    await download.saveAs(saved);
    const lines = (await readFile(saved, "utf8")).trim().split("\n");
    expect(lines.map((line) => JSON.parse(line).is)).toEqual(["record_set", "phrase"]);
    const again = await run("server/commands/record-set.ts", ["--score", saved]);
    expect(again.out).toMatch(/As the page heard it\n {2}1 of 1 phrases word for word/);
    expect(again.out).toMatch(/As this machine hears the same sound\n {2}1 of 1 phrases word for word/);
    expect(device.complaints).toEqual([]);
  });
});

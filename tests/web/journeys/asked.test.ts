import { afterAll, beforeAll, expect, it } from "vitest";
import { violations } from "../axe.ts";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

/** A shared machine may be slow: what is waited for comes, or it does not. */
const PATIENT = { timeout: 20_000 };

/** From a phrase that nobody can read to the record, by way of the one who said it. */
inBrowser("a question from the desk to the bench and back", () => {
  let server: RunningServer;
  let desk: Device;
  let phone: Device;
  const show = process.env.SHOW;
  const look = async (device: Device, name: string) => {
    if (show) await device.page.screenshot({ path: `${show}/${name}.png` });
    expect(await violations(device.page), name).toEqual([]);
    const beyond = await device.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(beyond, name).toBeLessThanOrEqual(0);
  };

  beforeAll(async () => {
    server = await runServer();
    desk = await newDevice({ width: 1280, height: 900 });
    phone = await newDevice();
  });
  afterAll(async () => {
    await desk?.close();
    await phone?.close();
    await server?.remove();
  });

  it("is asked by two keys", { timeout: 90_000 }, async () => {
    await phone.page.goto(`${server.address}#/bench`);
    await phone.page.fill("#words", "LCV-213");
    await phone.page.press("#words", "Enter");
    await phone.page.locator(".invite").waitFor();
    await say(phone.page, "the wibble on the bracket is wonky");
    await allKept(phone.page);
    const { page } = desk;
    await page.goto(`${server.address}#/review`);
    await page.getByRole("article", { name: /wibble/ }).waitFor();
    await page.keyboard.press("q");
    await expect.poll(() => page.getByLabel("Ask who said it").inputValue(), PATIENT).toMatch(/^What did you mean by/);
    await page.keyboard.press("Enter");
    await page.getByText("Asked. It comes back with the answer.").waitFor();
    await page.getByText("1 with a technician").waitFor();
    await page.getByText(/^LCV-213 .*, 1 asked$/).waitFor();
  });

  it("stands above the bench and takes nothing from what is being typed there", { timeout: 90_000 }, async () => {
    const { page } = phone;
    await page.fill("#words", "seat is");
    await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
    await page.locator(".asked-band").waitFor();
    expect(await page.inputValue("#words")).toBe("seat is");
    await look(phone, "asked-band");
    const box = await page.locator(".asked-band").boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(75);
  });

  it("is answered in one's own words, which come to the desk and are read in its place", {
    timeout: 90_000,
  }, async () => {
    await phone.page.locator(".asked-band").click();
    await phone.page.getByText(/You said: “the wibble/).waitFor();
    await look(phone, "asked-phone");
    await phone.page.getByLabel("Your answer").fill("the travel indicator is loose");
    await phone.page.getByRole("button", { name: "Send the answer" }).click();
    await phone.page.getByText("The answer is at the desk.").waitFor();
    await phone.page.getByText("Nobody asks anything.").waitFor();
    const { page } = desk;
    await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
    await page.getByText(/answers at .*the travel indicator is loose/).waitFor();
    await look(desk, "asked-desk");
    await page.keyboard.press("e");
    await expect
      .poll(() => page.getByLabel("Read this in its place").inputValue(), PATIENT)
      .toBe("the travel indicator is loose");
    await page.keyboard.press("Enter");
    await page.getByText("Amended.").waitFor();
    const { jobs } = await server.get<{ jobs: { id: string }[] }>("/api/jobs");
    const view = await server.get<{ entries: object[]; phrases: { text: string }[] }>(`/api/jobs/${jobs[0]?.id}`);
    expect(view.entries).toMatchObject([{ type: "finding", part: "travel_indicator", condition: "loose" }]);
    expect(view.phrases[0]?.text).toBe("the wibble on the bracket is wonky");
  });

  it("complained of nothing on the way", () => {
    expect([...desk.complaints, ...phone.complaints]).toEqual([]);
  });
});

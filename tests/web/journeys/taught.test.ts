import { afterAll, beforeAll, expect, it } from "vitest";
import { type Device, inBrowser, newDevice, say, workerReady } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

inBrowser("words and questions at the bench", () => {
  let server: RunningServer;
  let device: Device;
  const lines = () => device.page.locator(".understood .line-words").allTextContents();
  const ask = () => device.page.locator(".understood .ask");

  beforeAll(async () => {
    server = await runServer();
    device = await newDevice();
    const { page } = device;
    await page.goto(server.address);
    await workerReady(page);
    await page.fill("#words", "LCV-213");
    await page.press("#words", "Enter");
    await page.locator(".invite").waitFor();
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("a word that nobody knows is shown as not read", async () => {
    const { page } = device;
    await say(page, "doohickey is bent");
    await page.locator(".understood .not-read").waitFor();
    expect((await lines()).join()).not.toMatch(/positioner/i);
  });

  it("is taught without a network and read at once, in what was said before too", async () => {
    const { page, context } = device;
    await server.kill();
    await context.setOffline(true);
    await page.getByRole("link", { name: "Teach the word" }).click();
    await page.getByLabel("The word, as it is said").fill("Doohickey");
    await page.getByLabel("The same as").selectOption("positioner");
    await page.getByRole("button", { name: "Teach it" }).click();
    await page.getByText("“doohickey” is read as positioner from now on.").waitFor();
    await page.getByRole("link", { name: "Bench" }).click();
    await expect.poll(lines).toEqual(["Positioner bent"]);
    await say(page, "replaced the doohickey");
    await expect.poll(lines).toEqual(["Positioner replaced"]);
  });

  it("is there after a reload, still without a network", async () => {
    const { page } = device;
    await page.reload();
    await page.locator(".understood .said").waitFor();
    expect(await lines()).toEqual(["Positioner replaced"]);
  });

  it("is refused where it would change what everybody says", async () => {
    const { page } = device;
    await page.goto(`${server.address}#/words`);
    await page.getByLabel("The word, as it is said").fill("seat");
    await page.getByRole("button", { name: "Teach it" }).click();
    await page.getByText("“seat” is read already: seat.").waitFor();
    await page.getByLabel(/read as the bench would read it/).fill("doohickey is cracked");
    await expect.poll(() => page.locator(".try .line-words").allTextContents()).toEqual(["Positioner cracked"]);
    await page.goto(`${server.address}#/bench`);
  });

  it("a question of the reader is shown, and the next phrase answers it", async () => {
    const { page } = device;
    await say(page, "bonnet bolts twenty eight");
    await expect.poll(() => ask().textContent()).toMatch(/^28 what on the bonnet bolting/);
    await say(page, "foot pounds");
    await expect.poll(lines).toEqual(["Bonnet bolting torque 28 ft-lbf"]);
    expect(await ask().count()).toBe(0);
  });

  it("a question about which part lands in the entry that was asked of", async () => {
    const { page } = device;
    await say(page, "diaphragm's torn");
    await expect.poll(() => ask().textContent()).toMatch(/^Which diaphragm/);
    await say(page, "upper");
    await expect.poll(lines).toEqual(["Upper diaphragm torn"]);
    expect(await page.locator(".understood .touched").textContent()).toBe("Answered:");
    expect(await ask().count()).toBe(0);
    expect(device.complaints).toEqual([]);
  });

  it("a general part that the talk settles is shown with what it is taken to be", async () => {
    const { page } = device;
    await say(page, "diaphragm is hard too");
    await expect
      .poll(() => page.locator(".understood .line-words").first().textContent())
      .toMatch(/taken to be the upper diaphragm/);
  });

  it("is sent once there is a server, which reads with it what was said before", async () => {
    await server.start();
    await device.context.setOffline(false);
    const words = async () => (await server.get<{ words: unknown[] }>("/api/words")).words;
    await expect.poll(words, { timeout: 15_000 }).toMatchObject([{ say: "doohickey", as: { part: "positioner" } }]);
    const entries = async () => {
      const { jobs } = await server.get<{ jobs: { id: string }[] }>("/api/jobs");
      const read = jobs.map(({ id }) => server.get<{ entries: unknown[] }>(`/api/jobs/${id}`));
      return (await Promise.all(read)).flatMap((job) => job.entries);
    };
    await expect
      .poll(entries, { timeout: 15_000 })
      .toContainEqual(expect.objectContaining({ type: "finding", part: "positioner", condition: "bent" }));
  });

  it("comes to another device of the site", async () => {
    const other = await newDevice();
    try {
      await other.page.goto(`${server.address}#/words`);
      await other.page.getByText("doohickey is positioner").waitFor();
      expect(other.complaints).toEqual([]);
    } finally {
      await other.close();
    }
  });
});

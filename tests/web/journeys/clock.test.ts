import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

/** The page's clock reads so many milliseconds more than it did; outlives a reload, as a clock that was set does. */
function clockThatIsSet(): void {
  const RealDate = Date;
  const shift = () => Number(sessionStorage.getItem("clock") ?? 0);
  const SetDate = class extends RealDate {
    constructor(...given: [] | [number]) {
      if (given.length) super(...given);
      else super(RealDate.now() + shift());
    }
    static override now() {
      return RealDate.now() + shift();
    }
  };
  globalThis.Date = SetDate as DateConstructor;
}

inBrowser("a device whose clock is set while the job goes on", () => {
  let server: RunningServer;
  let device: Device;
  const setClock = (shiftMs: number) =>
    device.page.evaluate((ms) => sessionStorage.setItem("clock", String(ms)), shiftMs);
  const open = async (tag: string) => {
    await device.page.fill("#words", tag);
    await device.page.press("#words", "Enter");
    await device.page.locator(".invite, .told").first().waitFor();
  };
  const stored = async (tag: string) => {
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    const own = jobs.filter((job) => job.tag === tag);
    expect(own).toHaveLength(1);
    return server.get<JobView>(`/api/jobs/${own[0]?.id}`);
  };
  const outbox = () => device.page.locator(".outbox").textContent();

  beforeAll(async () => {
    server = await runServer();
    device = await newDevice();
    await device.context.addInitScript(clockThatIsSet);
    const cdp = await device.context.newCDPSession(device.page);
    await cdp.send("Emulation.setTimezoneOverride", { timezoneId: "America/Denver" });
    await device.page.goto(server.address);
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("keeps the order said, whether it jumps ahead or back, and over a reload; and says that it is off", async () => {
    const { page } = device;
    await open("LCV-213");
    const said = ["seat worn one side", "flipped it", "plug cracked", "correction plug scored", "cage is clean"];
    for (const [n, shift] of [0, 3 * DAY, -400 * DAY, 2 * HOUR].entries()) {
      await setClock(shift);
      await say(page, said[n] ?? "");
      await allKept(page);
      if (shift === 3 * DAY) await expect.poll(outbox).toMatch(/This device’s clock is 3 days ahead of the server’s/);
      if (shift < 0) await expect.poll(outbox).toMatch(/This device’s clock is 400 days behind the server’s/);
    }
    await page.reload();
    await page.locator(".understood .said").waitFor();
    await setClock(0);
    await say(page, said[4] ?? "");
    await allKept(page);
    await expect.poll(outbox).not.toMatch(/clock/);
    const job = await stored("LCV-213");
    expect(job.phrases.map((one) => one.text)).toEqual(said);
    // what a phrase changes is what was said before it: the flip is the seat's, the correction the plug's
    expect(job.entries).toMatchObject([
      { type: "finding", part: "seat", condition: "worn" },
      { type: "work", part: "seat" },
      { type: "finding", part: "plug", condition: "scored" },
      { type: "finding", part: "cage" },
    ]);
  });

  // Energy Policy Act of 2005, section 110: the clock is set at two in the morning, on the second Sunday of March and the
  // first of November.
  it.each([
    ["comes twice", "LCV-214", "2026-11-01T01:59:50-06:00", ["01:59", "01:00", "01:01", "01:02"]],
    ["is left out", "LCV-215", "2027-03-14T01:59:50-07:00", ["01:59", "03:00", "03:01", "03:02"]],
  ])("keeps it over the hour that %s, without a network meanwhile", async (_hour, tag, wall, times) => {
    const { page, context } = device;
    await page.locator(".menu summary").click();
    await page.getByRole("button", { name: "Close this job" }).click();
    await page.locator(".choosing").waitFor();
    await context.setOffline(true);
    const before = Date.parse(wall);
    const said = ["seat worn one side", "flipped it", "scratch that", "plug looks good"];
    await setClock(before - Date.now());
    await open(tag);
    for (const [n, words] of said.entries()) {
      await setClock(before + n * 60_000 - Date.now());
      await say(page, words);
    }
    await context.setOffline(false);
    await page.evaluate(() => dispatchEvent(new Event("online")));
    await allKept(page);
    const { phrases } = await stored(tag);
    expect(phrases.map((one) => one.text)).toEqual(said);
    expect(phrases.map((one) => one.saidAt.slice(0, 16))).toEqual(times.map((time) => `${wall.slice(0, 10)}T${time}`));
    expect(device.complaints).toEqual([]);
  });
});

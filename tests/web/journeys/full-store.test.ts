import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import type { CardKeepsake } from "../../../web/state/keepsake.ts";
import { allKept, type Device, inBrowser, newDevice, say, workerReady } from "../chromium.ts";
import { inPage } from "../in-page.ts";
import { type RunningServer, runServer } from "../running-server.ts";
import type * as Store from "../storage/store-in-page.ts";

interface Tried {
  tried: typeof Store;
}

const PATIENCE = { timeout: 120_000 };
const ROOM_BYTES = 12_000_000;

inBrowser("a device whose store runs full", () => {
  let server: RunningServer;
  let device: Device;

  /** Fills the page's own store with sound to the brim, in pieces smaller and smaller; gives the ids of the largest. */
  const fillWith = (delivery: CardKeepsake["delivery"]) =>
    device.page.evaluate(async (delivery) => {
      const { tried } = globalThis as unknown as Tried;
      const shelf = tried.keepsakesOn(await tried.openDatabase());
      const large: string[] = [];
      let count = 0;
      for (const size of [1_000_000, 100_000, 5000, 300]) {
        for (let full = false; !full; ) {
          const bytes = new Uint8Array(size);
          for (let at = 0; at < size; at += 50_000) crypto.getRandomValues(bytes.subarray(at, at + 50_000));
          const id = crypto.randomUUID().replace(/^......../, String(10_000_000 + count++));
          const row = { id, kind: "clip", job: "an earlier one", at: "", type: "audio/ogg", size, delivery } as const;
          try {
            await shelf.keep(row, bytes.buffer);
            await shelf.mark(id, delivery);
            if (size === 1_000_000) large.push(id);
          } catch (problem) {
            if (!(problem instanceof Error) || problem.name !== "QuotaExceededError") throw problem;
            full = true;
          }
        }
      }
      return large;
    }, delivery);
  const held = (ids: string[]) =>
    device.page.evaluate(async (ids) => {
      const { tried } = globalThis as unknown as Tried;
      const shelf = tried.keepsakesOn(await tried.openDatabase());
      return Promise.all(ids.map(async (id) => (await shelf.bytes(id)) !== undefined));
    }, ids);
  const takePhoto = async () => {
    const { page } = device;
    await page.fill("#words", "take a picture");
    await page.press("#words", "Enter");
    await page.getByText("Say “now”, or touch the bar.").waitFor();
    await page.locator(".shutter").click();
  };
  const waiting = () => device.page.locator(".outbox").textContent();

  beforeAll(async () => {
    server = await runServer();
    await server.put("/api/sites/north", { name: "North (invented)", zone: "Etc/UTC" });
    await server.put("/api/valves/LCV-213", { site: "north", family: "balanced_dump", size_in: 2 });
    device = await newDevice();
    // no ear of its own: its files would come into the same store while it is being filled
    await device.context.addInitScript(() => Reflect.set(globalThis, "AudioWorkletNode", undefined));
    await device.room(server.address, ROOM_BYTES);
    await device.page.goto(server.address);
    await workerReady(device.page);
    await device.page.getByRole("button", { name: "LCV-213" }).click();
    await inPage(device.page, "tests/web/storage/store-in-page.ts");
    await say(device.page, "seat worn one side");
    await allKept(device.page);
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("lets go of the oldest sound that was sent, and keeps what is taken now", PATIENCE, async () => {
    const sent = await fillWith("kept");
    expect(sent.length).toBeGreaterThan(6);
    expect(await held(sent)).toEqual(sent.map(() => true));
    await takePhoto();
    await device.page.locator(".strip-photo .kept-kept").waitFor();
    const left = await held(sent);
    expect(left[0]).toBe(false);
    expect(left.at(-1)).toBe(true);
    // nothing older is left where something newer is gone
    expect(left).toEqual([...left].sort());
    await allKept(device.page);
  });

  it("never lets go of what was not sent, says that it is full, and still keeps words", PATIENCE, async () => {
    const { page, context } = device;
    await context.setOffline(true);
    await page.evaluate(async () => {
      const { tried } = globalThis as unknown as Tried;
      await tried.keepsakesOn(await tried.openDatabase()).letGo(1_000_000_000);
    });
    const unsent = await fillWith("waiting");
    expect(unsent.length).toBeGreaterThan(6);
    await takePhoto();
    await page.getByText(/^Not kept: this device’s store is full\. Take it where there is a network/).waitFor();
    await page.getByRole("button", { name: "Shut", exact: true }).click();
    for (const words of ["plug cracked", "cage is clean"]) {
      await say(page, words);
      await page.getByText("kept on this device").waitFor();
    }
    expect(await held(unsent)).toEqual(unsent.map(() => true));
    await expect.poll(waiting).toMatch(/This device is full: only words are kept until it has sent what waits\.$/);
    await context.setOffline(false);
    await page.locator(".understood .kept-kept").waitFor();
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    const job = await server.get<JobView>(`/api/jobs/${jobs[0]?.id}`);
    expect(job.phrases.map((one) => one.text).filter((text) => text !== "take a picture")).toEqual([
      "seat worn one side",
      "plug cracked",
      "cage is clean",
    ]);
    expect(device.complaints).toEqual([]);
  });
});

import { existsSync } from "node:fs";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { jpegWithPlace } from "../../server/keepsakes/with-place.ts";
import { violations } from "../axe.ts";
import { allKept, type Device, inBrowser, newDevice, say, workerReady } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";
import { hear, openEar, shutEar, withVoice } from "../spoken-to.ts";

/** 26 mm and 20 mm at the CSS inch of 96 px. */
const SHUTTER_PX = (26 / 25.4) * 96;
const GLOVE_PX = (20 / 25.4) * 96;
const PATIENCE = { timeout: 90_000 };

inBrowser("a photograph at the bench", () => {
  let server: RunningServer;
  let device: Device;
  let bare: Device;
  const show = process.env.SHOW;

  const theJob = async () => {
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    return server.get<JobView>(`/api/jobs/${jobs[0]?.id}`);
  };
  /** every file of the folder of kept files */
  const onDisk = async () => {
    const folder = join(server.data, "kept");
    if (!existsSync(folder)) return [];
    const files = (await readdir(folder, { recursive: true, withFileTypes: true })).filter((one) => one.isFile());
    return Promise.all(files.map((one) => readFile(join(one.parentPath, one.name))));
  };
  /** or else the trouble it tells of is in the failure */
  const opened = (page: Device["page"]) =>
    expect
      .poll(() => page.locator(".camera-words").textContent(), { timeout: 30_000 })
      .toBe("Say “now”, or touch the bar.");
  const kept = (page: Device["page"], many: number) =>
    expect.poll(() => page.locator(".strip-photo .kept-kept").count(), { timeout: 20_000 }).toBe(many);

  beforeAll(async () => {
    server = await runServer();
    await server.put("/api/sites/north", { name: "North (invented)", zone: "America/Denver" });
    await server.put("/api/valves/LCV-213", { site: "north", family: "balanced_dump", size_in: 2 });
    device = await newDevice();
    await withVoice(device.page);
    await device.page.goto(server.address);
    await workerReady(device.page);
    await device.page.getByRole("button", { name: "LCV-213" }).click();
    for (const words of ["seat worn one side", "bonnet bolts torqued to twenty eight"]) await say(device.page, words);
  });
  afterAll(async () => {
    await device?.close();
    await bare?.close();
    await server?.remove();
  });

  it("opens at typed words, for the last finding, with a bar that a glove cannot miss", PATIENCE, async () => {
    const { page } = device;
    await page.fill("#words", "take a picture");
    await page.press("#words", "Enter");
    const camera = page.getByRole("dialog", { name: "Photo: Seat worn, one side" });
    await camera.waitFor();
    await opened(page);
    for (const [name, viewport] of [
      ["phone", { width: 360, height: 740 }],
      ["lying", { width: 740, height: 360 }],
      ["tablet", { width: 800, height: 1280 }],
      ["desk", { width: 1920, height: 1080 }],
    ] as const) {
      await page.setViewportSize(viewport);
      const box = await page.locator(".shutter").boundingBox();
      if (!box) throw new Error(`no bar on ${name}`);
      expect(Math.min(box.width, box.height), name).toBeGreaterThanOrEqual(SHUTTER_PX - 0.5);
      expect(box.y + box.height, name).toBeLessThanOrEqual(viewport.height);
      for (const one of await camera.locator("button, label").all()) {
        const small = await one.boundingBox();
        expect(small?.height, `${name}: ${await one.textContent()}`).toBeGreaterThanOrEqual(GLOVE_PX - 0.5);
      }
      if (show) await page.screenshot({ path: `${show}/camera-${name}.png` });
    }
    await page.setViewportSize({ width: 360, height: 740 });
    expect(await violations(page)).toEqual([]);
    // the bar has the focus: a key lets it go as well
    await page.keyboard.press("Enter");
    await camera.waitFor({ state: "detached" });
    await kept(page, 1);
    await allKept(page);
    if (show) await page.screenshot({ path: `${show}/strip-phone.png` });
    const job = await theJob();
    expect(job.phrases[0]?.photos).toMatchObject([{ type: "image/jpeg" }]);
    const [file] = await onDisk();
    expect(file?.toString("latin1")).not.toMatch(/Exif|GPS/);
    expect(device.complaints).toEqual([]);
  });

  it("is let go by voice, and by counting down", PATIENCE, async () => {
    const { page } = device;
    await openEar(page);
    await hear(page, "take a picture");
    await opened(page);
    await hear(page, "now");
    await page.locator(".camera").waitFor({ state: "detached" });
    await kept(page, 2);
    await hear(page, "take a picture");
    await opened(page);
    await hear(page, "in three");
    await page.locator(".camera-count").waitFor();
    if (show) await page.screenshot({ path: `${show}/camera-count.png` });
    await page.locator(".camera").waitFor({ state: "detached" });
    await kept(page, 3);
    await hear(page, "take a picture");
    await page.locator(".camera").waitFor();
    await hear(page, "never mind");
    await page.locator(".camera").waitFor({ state: "detached" });
    // what the camera was told is no phrase of the job
    await shutEar(page);
    await allKept(page);
    const said = (await theJob()).phrases.map((one) => one.text);
    expect(said.filter((text) => text !== "take a picture")).toEqual([
      "seat worn one side",
      "bonnet bolts torqued to twenty eight",
    ]);
    expect((await theJob()).phrases[0]?.photos).toHaveLength(3);
  });

  it("gives way to a hazard", PATIENCE, async () => {
    const { page } = device;
    await openEar(page);
    await hear(page, "take a picture");
    await page.locator(".camera").waitFor();
    await hear(page, "I smell gas");
    await page.getByRole("alertdialog").waitFor();
    const front = await page.evaluate(() => document.elementFromPoint(180, 650)?.closest(".stop, .camera")?.className);
    expect(front).toBe("stop");
    await page.locator(".stop-seen").hover();
    await page.mouse.down();
    await page.getByRole("alertdialog").waitFor({ state: "detached" });
    await page.mouse.up();
    await page.getByRole("button", { name: "Shut", exact: true }).click();
    await page.locator(".camera").waitFor({ state: "detached" });
    await shutEar(page);
    await allKept(page);
  });

  it("asks again for a camera that is just being let go of", PATIENCE, async () => {
    const { page } = device;
    await page.evaluate(() => {
      const { mediaDevices } = navigator;
      const ask = mediaDevices.getUserMedia.bind(mediaDevices);
      mediaDevices.getUserMedia = (wanted) => {
        mediaDevices.getUserMedia = ask;
        return wanted?.video ? Promise.reject(new DOMException("it is held", "NotReadableError")) : ask(wanted);
      };
    });
    await page.fill("#words", "take a picture");
    await page.press("#words", "Enter");
    await opened(page);
    await page.getByRole("button", { name: "Shut", exact: true }).click();
    await page.locator(".camera").waitFor({ state: "detached" });
  });

  it("taken without a network is there after a reload and sent when there is one, once", PATIENCE, async () => {
    const { page, context } = device;
    await server.kill();
    await context.setOffline(true);
    await page.fill("#words", "take a picture");
    await page.press("#words", "Enter");
    await opened(page);
    await page.locator(".shutter").click();
    await page.locator(".strip-photo .kept-waiting").waitFor();
    await expect.poll(() => page.locator(".outbox").textContent()).toMatch(/^2 waiting \(1 phrase, 1 photo\)/);
    await page.reload();
    await page.locator(".strip-photo .kept-waiting").waitFor();
    await expect
      .poll(() =>
        page
          .locator(".strip-photo img")
          .first()
          .evaluate((one) => (one as HTMLImageElement).naturalWidth),
      )
      .toBeGreaterThan(100);
    await server.start();
    await context.setOffline(false);
    await allKept(page);
    await kept(page, 4);
    expect((await theJob()).phrases[0]?.photos).toHaveLength(4);
  });

  it("of a device whose camera the page cannot open is sized down, upright, and tells no place", PATIENCE, async () => {
    bare = await newDevice(undefined, { media: false });
    const { page } = bare;
    await page.goto(server.address);
    await page.fill("#words", "PV-104");
    await page.press("#words", "Enter");
    await page.locator(".invite").waitFor();
    await say(page, "plug cracked");
    // 3200 by 2400, made by the browser; then what phones write into theirs
    const drawn = await page.evaluate(() => {
      const canvas = document.createElement("canvas");
      canvas.width = 3200;
      canvas.height = 2400;
      const paper = canvas.getContext("2d");
      for (let at = 0; at < 4000; at++) {
        if (paper) paper.fillStyle = `hsl(${(at * 137) % 360} 80% 50%)`;
        paper?.fillRect((at * 7919) % 3200, (at * 104_729) % 2400, 60, 40);
      }
      return canvas.toDataURL("image/jpeg", 0.95).split(",")[1] ?? "";
    });
    const told = Buffer.from(jpegWithPlace(new Uint8Array(Buffer.from(drawn, "base64"))));
    expect(told.toString("latin1")).toMatch(/Exif.*59\.123/s);
    await page.fill("#words", "take a picture");
    await page.press("#words", "Enter");
    await page.getByText("No camera answers here").waitFor();
    expect(await violations(page)).toEqual([]);
    if (show) await page.screenshot({ path: `${show}/camera-none.png` });
    // before it leaves the device, on its way: what is sent is what lies in its store
    const sent = page.waitForRequest(/\/api\/photos\//);
    const file = { name: "valve.jpg", mimeType: "image/jpeg", buffer: told };
    await page.locator(".camera input[type=file]").setInputFiles(file);
    const body = (await sent).postDataBuffer();
    expect(body?.length).toBeGreaterThan(10_000);
    expect(body?.length).toBeLessThan(told.length / 2);
    expect(body?.toString("latin1")).not.toMatch(/Exif|GPS|59\.123|8BIM|xmpmeta/);
    await kept(page, 1);
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    const id = jobs.find((one) => one.tag === "PV-104")?.id;
    const job = await server.get<JobView>(`/api/jobs/${id}`);
    expect(job.phrases[0]?.photos).toMatchObject([{ width: 1600, height: 1200 }]);
    for (const one of await onDisk()) expect(one.toString("latin1")).not.toMatch(/Exif|GPS|59\.123/);
    const wrong = { name: "valve.jpg", mimeType: "image/jpeg", buffer: Buffer.from("no picture at all") };
    await page.fill("#words", "take a picture");
    await page.press("#words", "Enter");
    await page.locator(".camera input[type=file]").setInputFiles(wrong);
    await page.getByText("Not kept: this file is no picture that the browser can read.").waitFor();
    expect(bare.complaints).toEqual([]);
  });
});

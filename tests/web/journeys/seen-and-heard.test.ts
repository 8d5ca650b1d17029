import { readFile } from "node:fs/promises";
import { afterAll, beforeAll, expect, it } from "vitest";
import { jpegWithPlace, wav } from "../../server/keepsakes/with-place.ts";
import { run } from "../../server/running.ts";
import { violations } from "../axe.ts";
import { type Device, inBrowser, newDevice } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

const JOB = "0193e5f0-0000-7000-8000-000000000001";
const SAID = "0193e5f0-0000-7000-8000-000000000002";
const CLIP = "0193e5f0-0000-7000-8000-000000000003";
const PHOTO = "0193e5f0-0000-7000-8000-000000000004";
const OF_JOB = "0193e5f0-0000-7000-8000-000000000005";

/** Once somebody is enrolled, an element of the page cannot fetch these by itself: it has no token to show. */
inBrowser("sound and photographs at the desk of an enrolled device", () => {
  let server: RunningServer;
  let device: Device;

  beforeAll(async () => {
    server = await runServer();
    const env = { DATA_DIR: server.data, PORT: new URL(server.address).port };
    const { out } = await run("server/commands/enrol.ts", ["--name", "A. Person", "--role", "lead"], env);
    const token = out.trim();
    const at = new Date().toISOString();
    const send = async (method: string, path: string, body: BodyInit, type: string) => {
      const headers = { authorization: `Bearer ${token}`, "content-type": type };
      const reply = await fetch(new URL(path, server.address), { method, headers, body });
      expect(reply.status, await reply.clone().text()).toBe(200);
    };
    const words = {
      jobs: [{ id: JOB, tag: "LCV-213", startedAt: at }],
      phrases: [{ id: SAID, job: JOB, text: "seat worn one side", saidAt: at, how: "heard" }],
    };
    await send("POST", "/api/phrases", JSON.stringify(words), "application/json");
    const query = (more: Record<string, string>) => new URLSearchParams({ at, ...more });
    await send("PUT", `/api/clips/${CLIP}?${query({ phrase: SAID, seconds: "1" })}`, wav() as BodyInit, "audio/wav");
    const picture = new URL("../../server/keepsakes/pictures/plate.jpg", import.meta.url);
    const jpeg = jpegWithPlace(new Uint8Array(await readFile(picture))) as BodyInit;
    await send("PUT", `/api/photos/${PHOTO}?${query({ job: JOB, phrase: SAID })}`, jpeg, "image/jpeg");
    await send("PUT", `/api/photos/${OF_JOB}?${query({ job: JOB })}`, jpeg, "image/jpeg");
    device = await newDevice({ width: 1280, height: 900 });
    await device.page.goto(server.address);
    await device.page.locator("#words").waitFor();
    await device.page.evaluate(
      (held) =>
        new Promise<void>((done, failed) => {
          const opening = indexedDB.open("handsfull");
          opening.onerror = () => failed(opening.error);
          opening.onsuccess = () => {
            const tx = opening.result.transaction("kept", "readwrite");
            tx.objectStore("kept").put(held, "token");
            tx.oncomplete = () => {
              opening.result.close();
              done();
            };
          };
        }),
      token,
    );
    await device.page.reload();
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("shows the photograph beside its phrase, and large when touched", { timeout: 60_000 }, async () => {
    const { page } = device;
    await page.goto(`${server.address}#/job/${JOB}`);
    const small = page.locator(".phrase .photo-small img");
    await small.waitFor();
    await expect.poll(() => small.evaluate((one) => (one as HTMLImageElement).naturalWidth)).toBe(48);
    expect(await page.locator(".photo").count()).toBe(2);
    expect(await violations(page)).toEqual([]);
    if (process.env.SHOW) await page.screenshot({ path: `${process.env.SHOW}/job-keepsakes.png` });
    await page.getByRole("button", { name: /of “seat worn one side”\. Show it large/ }).click();
    await page.getByRole("dialog").waitFor();
    expect(await violations(page)).toEqual([]);
    await page.getByRole("button", { name: "Shut" }).click();
    await page.getByRole("dialog").waitFor({ state: "hidden" });
  });

  it("plays the sound to its end", { timeout: 60_000 }, async () => {
    const { page } = device;
    const button = page.locator(".clip button");
    await button.click();
    await page.locator(".clip-sounding").waitFor();
    await page.locator(".clip-still").waitFor();
    expect(await button.textContent()).toMatch(/^Hear it, 1 s/);
    expect(await page.locator(".clip .bad").textContent()).toBe("");
  });

  it("holds no address of bytes once the screen is left", async () => {
    const { page } = device;
    const held = await page.locator(".phrase .photo-small img").getAttribute("src");
    await page.evaluate(() => {
      location.hash = "#/help";
    });
    await page.locator(".ways").first().waitFor();
    const gone = await page.evaluate(
      (url) =>
        new Promise((done) => {
          const image = new Image();
          image.onload = () => done("still there");
          image.onerror = () => done("gone");
          image.src = url ?? "";
        }),
      held,
    );
    expect(gone).toBe("gone");
    expect(device.complaints).toEqual([]);
  });
});

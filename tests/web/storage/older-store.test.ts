import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobView } from "../../../core/index.ts";
import { allKept, type Device, inBrowser, newDevice } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

const JOB = "0193e5f0-0000-7000-8000-000000000001";
const SAID = "0193e5f0-0000-7000-8000-000000000002";

inBrowser("a device that kept words before there was sound beside them", () => {
  let server: RunningServer;
  let device: Device;

  beforeAll(async () => {
    server = await runServer();
    device = await newDevice();
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("loses none of them to the newer page", { timeout: 60_000 }, async () => {
    const { page } = device;
    // of the same address as the page, and without its code
    await page.goto(`${server.address}healthz`);
    await page.evaluate(
      ([job, said]) =>
        new Promise<void>((done, failed) => {
          // the store as its first version made it
          const opening = indexedDB.open("handsfull", 1);
          opening.onerror = () => failed(opening.error);
          opening.onupgradeneeded = () => {
            const db = opening.result;
            db.createObjectStore("jobs", { keyPath: "id" }).createIndex("delivery", "delivery");
            const phrases = db.createObjectStore("phrases", { keyPath: "id" });
            phrases.createIndex("job", "job");
            phrases.createIndex("delivery", "delivery");
            for (const name of ["valves", "listed", "kept"]) db.createObjectStore(name);
          };
          opening.onsuccess = () => {
            const db = opening.result;
            const tx = db.transaction(["jobs", "phrases", "kept"], "readwrite");
            const at = "2026-03-04T09:00:00.000Z";
            tx.objectStore("jobs").put({ id: job, tag: "LCV-213", startedAt: at, delivery: "waiting" });
            const phrase = { id: said, job, text: "seat worn one side", saidAt: at, how: "typed", delivery: "waiting" };
            tx.objectStore("phrases").put(phrase);
            tx.objectStore("kept").put(job, "openJob");
            tx.oncomplete = () => {
              db.close();
              done();
            };
          };
        }),
      [JOB, SAID] as const,
    );
    await page.goto(server.address);
    await page.locator(".understood .said").waitFor();
    await allKept(page);
    expect((await server.get<JobView>(`/api/jobs/${JOB}`)).phrases.map((one) => one.text)).toEqual([
      "seat worn one side",
    ]);
    expect(await page.evaluate(async () => (await indexedDB.databases()).map((one) => one.version))).toEqual([2]);
  });
});

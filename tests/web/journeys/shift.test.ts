import type { Route } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { type Device, inBrowser, newDevice, workerReady } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

const PHRASES = 500;
const JOBS = 5;

/** A luck of our own, so that a run that fails can be run again as it was. */
function luckOf(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31;
    return state / 2 ** 31;
  };
}

const PARTS = ["seat", "plug", "cage", "stem", "bonnet gasket", "lower diaphragm", "lock nut", "breather"];
const FOUND = ["worn one side", "scored", "looks good", "cracked", "plugged with mud", "corroded", "torn"];

/**
 * A shift with no network and everything going wrong that can: the page is killed and opened again, the server is
 * killed while it is being sent to, and answers are lost after it had stored. Nothing may be lost, double or out of order.
 */
inBrowser("a shift of 500 phrases", () => {
  const luck = luckOf(20_260_304);
  let server: RunningServer;
  let device: Device;
  /** what was said, job by job, in order */
  const said: string[][] = [];

  beforeAll(async () => {
    server = await runServer();
    device = await newDevice();
    await device.page.goto(server.address);
    await workerReady(device.page);
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  /** The page dies as when the device takes its memory back: no unload, no last word; then it is opened again. */
  async function killPage(): Promise<void> {
    const dying = device.page;
    const cdp = await device.context.newCDPSession(dying);
    const died = new Promise((resolve) => dying.once("crash", resolve));
    // never answered: the one that would answer is dead
    void cdp.send("Page.crash").catch((problem: unknown) => problem);
    await died;
    device.page = await device.context.newPage();
    await dying.close().catch((problem: unknown) => problem);
    await device.page.goto(server.address);
    await device.page.locator("#words").waitFor();
  }

  /** Says them as fast as the field takes them, and waits until the device holds them. */
  async function sayAll(texts: readonly string[]): Promise<void> {
    await device.page.evaluate(async (words) => {
      const field = document.querySelector("#words") as HTMLInputElement;
      for (const one of words) {
        field.value = one;
        field.form?.requestSubmit();
        // each is a phrase of its own: the next one is not said before this one is drawn
        await new Promise((resolve) => setTimeout(resolve, 0));
      }
    }, texts);
    await device.page.waitForFunction(
      () => !document.querySelector(".kept-keeping") && document.querySelector(".kept-waiting, .kept-kept"),
    );
  }

  it("is said without a network, with the page killed again and again", { timeout: 600_000 }, async () => {
    await server.kill();
    await device.context.setOffline(true);
    await device.page.reload();
    let n = 0;
    let spoken = 0;
    for (let job = 0; job < JOBS; job++) {
      await device.page.fill("#words", `LCV-${100 + job}`);
      await device.page.press("#words", "Enter");
      await device.page.locator(".invite, .told").first().waitFor();
      const own: string[] = [];
      said.push(own);
      while (own.length < PHRASES / JOBS) {
        const some = Array.from({ length: Math.min(PHRASES / JOBS - own.length, 5 + Math.floor(luck() * 30)) }, () => {
          const part = PARTS[Math.floor(luck() * PARTS.length)];
          // each phrase is told from every other by its own number
          return `${part} ${FOUND[Math.floor(luck() * FOUND.length)]}, note number ${++n}`;
        });
        await sayAll(some);
        own.push(...some);
        if (++spoken % 3 === 0) await killPage();
      }
      await device.page.locator(".menu summary").click();
      await device.page.getByRole("button", { name: "Close this job" }).click();
      await device.page.locator(".choosing").waitFor();
    }
    expect(said.flat()).toHaveLength(PHRASES);
  });

  it("arrives whole, once and in order, with the server killed and its answers lost on the way", {
    timeout: 600_000,
  }, async () => {
    const { context } = device;
    let requests = 0;
    let lost = 0;
    const meet = async (route: Route) => {
      const turn = requests++ % 6;
      if (turn === 0 || turn === 3) {
        // stored, and nobody told: the answer is lost on the way back
        await route.fetch().catch((problem: unknown) => problem);
        lost++;
        await route.abort();
      } else if (turn === 1) {
        // the server dies with the request in its hands
        const asking = route.fetch().catch((problem: unknown) => problem);
        await server.kill();
        await asking;
        await server.start();
        await route.abort();
      } else await route.continue();
    };
    // one after the other: the next would meet a server that is just being started
    let before: Promise<unknown> = Promise.resolve();
    await context.route("**/api/phrases", (route) => {
      before = before.then(() => meet(route));
      return before;
    });
    await server.start();
    await context.setOffline(false);
    await expect
      .poll(
        async () => {
          // a technician who looks at it again: that starts the next try without waiting for it
          await device.page.evaluate(() => dispatchEvent(new Event("online")));
          return device.page.evaluate(
            () =>
              new Promise<number>((resolve, reject) => {
                const opening = indexedDB.open("handsfull");
                opening.onerror = () => reject(opening.error);
                opening.onsuccess = () => {
                  const db = opening.result;
                  const counting = db.transaction("phrases").objectStore("phrases").index("delivery").count("waiting");
                  counting.onsuccess = () => resolve(counting.result);
                  db.close();
                };
              }),
          );
        },
        { timeout: 500_000, interval: 400 },
      )
      .toBe(0);
    expect(lost).toBeGreaterThan(0);
    expect(requests).toBeGreaterThan(3);
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    expect(jobs.map((job) => job.tag).sort()).toEqual(said.map((_, n) => `LCV-${100 + n}`));
    for (const [n, own] of said.entries()) {
      const id = jobs.find((job) => job.tag === `LCV-${100 + n}`)?.id;
      const { phrases } = await server.get<JobView>(`/api/jobs/${id}`);
      expect(phrases.map((one) => one.text)).toEqual(own);
    }
    expect(device.complaints).toEqual([]);
  });
});

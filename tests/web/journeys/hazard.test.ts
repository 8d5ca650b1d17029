import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary, JobView } from "../../../core/index.ts";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

inBrowser("a hazard said at the bench", () => {
  let server: RunningServer;
  let device: Device;

  beforeAll(async () => {
    server = await runServer();
    device = await newDevice();
    const { page } = device;
    await page.goto(server.address);
    await page.fill("#words", "LCV-213");
    await page.press("#words", "Enter");
    await page.locator(".invite").waitFor();
    await say(page, "seat worn one side");
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  const stop = () => device.page.getByRole("alertdialog");

  it("stands in front of everything and is sent like any phrase", async () => {
    const { page } = device;
    await page.fill("#words", "I smell gas");
    await page.press("#words", "Enter");
    await stop().waitFor();
    const box = await stop().boundingBox();
    expect(box).toEqual({ x: 0, y: 0, width: 360, height: 740 });
    expect(await stop().textContent()).toContain("Only site procedure clears this");
    expect(await page.evaluate(() => document.querySelector("main")?.inert)).toBe(true);
    await allKept(page);
  });

  it("is not dismissed by a touch, by Escape or by a reload", async () => {
    const { page } = device;
    await page.locator(".stop-seen").click();
    await page.keyboard.press("Escape");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.className)).toContain("stop-seen");
    await page.reload();
    await stop().waitFor();
  });

  it("is acknowledged by a long press, and the hazard stays in sight", async () => {
    const { page } = device;
    const bar = await page.locator(".stop-seen").boundingBox();
    if (!bar) throw new Error("the bar is not drawn");
    await page.mouse.move(bar.x + bar.width / 2, bar.y + bar.height / 2);
    await page.mouse.down();
    await stop().waitFor({ state: "detached" });
    await page.mouse.up();
    expect(await page.locator(".hazard-band").textContent()).toMatch(
      /HAZARD SAID: gas.*Only site procedure clears this/,
    );
    await page.reload();
    await page.locator(".hazard-band").waitFor();
    expect(await stop().count()).toBe(0);
  });

  it("keeps its band when the words are scratched: the alert given stands", async () => {
    const { page } = device;
    await page.getByRole("button", { name: /Scratch/ }).click();
    await allKept(page);
    expect(await page.locator(".hazard-band").textContent()).toContain("gas");
  });

  it("is acknowledged from the keyboard by holding Enter, not by typing on without looking", async () => {
    const { page } = device;
    await page.fill("#words", "bleed valve's open but it's still got pressure on it");
    await page.press("#words", "Enter");
    await stop().waitFor();
    await page.keyboard.type("seat worn one side");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Space");
    expect(await stop().count()).toBe(1);
    await page.keyboard.down("Enter");
    await stop().waitFor({ state: "detached" });
    await page.keyboard.up("Enter");
  });

  it("stops a bench that has no job open, and starts a record of it", async () => {
    const { page } = device;
    await page.locator(".menu summary").click();
    await page.getByRole("button", { name: "Close this job" }).click();
    await page.getByText("Open it again").waitFor();
    await page.fill("#words", "fire over here");
    await page.press("#words", "Enter");
    await stop().waitFor();
    await expect
      .poll(async () => (await server.get<{ jobs: JobSummary[] }>("/api/jobs")).jobs.flatMap((job) => job.hazards))
      .toContain("fire");
    const { jobs } = await server.get<{ jobs: JobSummary[] }>("/api/jobs");
    const job = await server.get<JobView>(`/api/jobs/${jobs.find((one) => one.hazards.includes("fire"))?.id}`);
    expect(job.tag).toBeUndefined();
  });
});

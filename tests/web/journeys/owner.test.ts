import { afterAll, beforeAll, expect, it } from "vitest";
import type { ValveView } from "../../../core/index.ts";
import { run } from "../../server/running.ts";
import { violations } from "../axe.ts";
import { type Device, inBrowser, newDevice } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

const PASSWORD = "three valves in a row";
const id = () => crypto.randomUUID();

/** What was left open is given to somebody at the desk: with the keyboard, and by touch on a phone. */
inBrowser("who does what was left open", () => {
  let server: RunningServer;
  let desk: Device;
  const show = process.env.SHOW;
  const look = async (name: string) => {
    if (show) await desk.page.screenshot({ path: `${show}/${name}.png`, fullPage: true });
    expect(await violations(desk.page), name).toEqual([]);
    const beyond = await desk.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(beyond, name).toBeLessThanOrEqual(0);
  };
  const enrol = async (name: string, role: string) => {
    const env = { DATA_DIR: server.data, PORT: new URL(server.address).port };
    const { code, err } = await run("server/commands/enrol.ts", ["--name", name, "--role", role], env);
    expect(code, err).toBe(0);
    return /http:\S+/.exec(err)?.[0] ?? "";
  };
  const line = (what: string | RegExp) => desk.page.locator(".owed", { hasText: what });

  beforeAll(async () => {
    server = await runServer();
    await server.put("/api/sites/north", { name: "North", zone: "America/Denver" });
    const said = { "LCV-213": "diaphragm is torn", "LCV-214": "hold on I smell gas", "LCV-215": "flipped the seat" };
    for (const [tag, text] of Object.entries(said)) {
      const job = { id: id(), tag, site: "north", startedAt: "2026-03-04T09:00:00-07:00" };
      const phrase = { id: id(), job: job.id, text, saidAt: "2026-03-04T09:01:00-07:00", how: "typed" };
      const reply = await fetch(new URL("/api/phrases", server.address), {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({ jobs: [job], phrases: [phrase] }),
      });
      expect(reply.status).toBe(200);
    }
    await enrol("B. Tech", "technician");
    await enrol("C. Tech", "technician");
    const link = await enrol("A. Lead", "lead");
    desk = await newDevice({ width: 1280, height: 900 });
    await desk.page.goto(link);
    await desk.page.getByLabel(/at least 12 characters/).fill(PASSWORD);
    await desk.page.getByRole("button", { name: "Keep it and sign in" }).click();
    await desk.page.getByRole("link", { name: "A. Lead" }).waitFor();
  }, 60_000);
  afterAll(async () => {
    await desk?.close();
    await server?.remove();
  });

  it("what cannot wait comes before every date, a stop before all", { timeout: 60_000 }, async () => {
    const { page } = desk;
    await page.goto(`${server.address}#/due`);
    await page.getByRole("heading", { name: /^To do now/ }).waitFor();
    expect(await page.locator(".owed, .due").first().textContent()).toMatch(/STOP/);
    const heads = await page.locator("main h2").allTextContents();
    expect(heads[0]).toMatch(/^To do now/);
    expect(heads.at(-1)).toMatch(/^At the next inspection/);
    await look("owner-none");
  });

  it("is given with the keyboard alone, and stays given", { timeout: 60_000 }, async () => {
    const { page } = desk;
    await line(/Replace the diaphragm/)
      .getByRole("button", { name: "No owner yet" })
      .focus();
    await page.keyboard.press("Enter");
    await page.getByRole("list", { name: "Who does it" }).waitFor();
    await look("owner-list");
    for (const name of ["A. Lead", "B. Tech"]) {
      await page.keyboard.press("Tab");
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(name);
    }
    await page.keyboard.press("Enter");
    await line(/Replace the diaphragm/)
      .getByRole("button", { name: "Owner: B. Tech" })
      .waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Owner: B. Tech");
    await page.reload();
    await line(/Replace the diaphragm/)
      .getByText(/given by A\. Lead/)
      .waitFor();
    await page.getByRole("combobox", { name: "Whose" }).selectOption({ label: "B. Tech" });
    await expect.poll(() => page.locator(".owed").count()).toBe(1);
    await look("owner-of-one");
  });

  it("is given, changed and taken away by touch on a phone, at the valve", { timeout: 60_000 }, async () => {
    const { page } = desk;
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto(`${server.address}#/valve/LCV-214?site=north`);
    await page.getByRole("button", { name: "No owner yet" }).click();
    await page.getByRole("button", { name: "C. Tech" }).click();
    await page.getByRole("button", { name: "Owner: C. Tech" }).click();
    await look("owner-phone");
    for (const name of [/^Owner/, "B. Tech", "Nobody"]) {
      const box = await page.getByRole("button", { name }).boundingBox();
      expect(box?.height, String(name)).toBeGreaterThanOrEqual(48);
    }
    await page.getByRole("button", { name: "Nobody" }).click();
    await page.getByRole("button", { name: "No owner yet" }).waitFor();
    const view = await page.evaluate(async () => (await fetch("/api/valves/LCV-214?site=north")).json());
    expect((view as ValveView).owned[0]).toMatchObject({ given: 2 });
    expect((view as ValveView).owned[0]?.owner).toBeUndefined();
  });

  it("where another lead was first, it says who gave it to whom", { timeout: 60_000 }, async () => {
    const { page } = desk;
    await page.goto(`${server.address}#/valve/LCV-215?site=north`);
    await page.getByRole("button", { name: "No owner yet" }).first().click();
    await page.evaluate(async () => {
      const { owned } = (await (await fetch("/api/valves/LCV-215?site=north")).json()) as ValveView;
      const { people } = await (await fetch("/api/follow-ups/people?site=north")).json();
      const sent = { id: crypto.randomUUID(), site: "north", tag: "LCV-215", key: owned[0]?.key, seen: 0 };
      await fetch("/api/follow-ups/owner", {
        method: "PUT",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({ ...sent, owner: people[0].id }),
      });
    });
    await page.getByRole("button", { name: "C. Tech" }).click();
    await page.getByText(/Given to A\. Lead by A\. Lead at .* meanwhile\. Nothing of yours was done/).waitFor();
    expect(desk.complaints).toEqual([]);
  });
});

import { afterAll, beforeAll, expect, it } from "vitest";
import type { JobSummary } from "../../../core/index.ts";
import { run } from "../../server/running.ts";
import { violations } from "../axe.ts";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

const PASSWORD = "three valves in a row";

/** A technician kept to one site, moved to another while there is no network, and let back in. */
inBrowser("a phone of somebody kept to his own sites", () => {
  let server: RunningServer;
  let desk: Device;
  let phone: Device;
  let token = "";
  const show = process.env.SHOW;
  const look = async (device: Device, name: string) => {
    if (show) await device.page.screenshot({ path: `${show}/${name}.png`, fullPage: true });
    expect(await violations(device.page), name).toEqual([]);
    const beyond = await device.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(beyond, name).toBeLessThanOrEqual(0);
  };
  const card = () => desk.page.locator(".person", { has: desk.page.getByRole("heading", { name: /^B\. Tech/ }) });
  const keepTo = async (...sites: string[]) => {
    await desk.page.goto(`${server.address}#/people`);
    await card().waitFor();
    if ((await card().locator("details[open]").count()) === 0) await card().locator("summary").click();
    for (const site of ["Northfield", "Southmoor"])
      await card().getByRole("checkbox", { name: site }).setChecked(sites.includes(site));
    await card().getByRole("button", { name: "Keep this" }).click();
    await card()
      .getByRole("heading", { name: new RegExp(`kept to ${sites.join(" and ")}$`) })
      .waitFor();
  };
  const atBoss = async <T>(path: string) => {
    const answer = await fetch(`${server.address}api/${path}`, { headers: { authorization: `Bearer ${token}` } });
    return (await answer.json()) as T;
  };
  /** what lies in the device's own store, of whatever kind */
  const onDevice = () =>
    phone.page.evaluate(
      () =>
        new Promise<string>((done) => {
          const opening = indexedDB.open("handsfull");
          opening.onsuccess = () => {
            const names = ["valves", "listed", "jobs", "phrases", "kept"];
            const tx = opening.result.transaction(names);
            const asked = names.map((name) => tx.objectStore(name).getAll());
            tx.oncomplete = () => {
              opening.result.close();
              done(JSON.stringify(asked.map(({ result }) => result)));
            };
          };
        }),
    );
  const contact = () => phone.page.evaluate(() => dispatchEvent(new Event("online")));

  beforeAll(async () => {
    server = await runServer();
    for (const [site, name, tag] of [
      ["north", "Northfield", "NOR-11"],
      ["south", "Southmoor", "SOU-77"],
    ]) {
      await server.put(`/api/sites/${site}`, { name, zone: "America/Denver" });
      await server.put(`/api/valves/${tag}`, { site, family: "balanced_dump", size_in: 2 });
    }
    desk = await newDevice({ width: 1280, height: 900 });
    phone = await newDevice();
    const env = { DATA_DIR: server.data, PORT: new URL(server.address).port };
    const { err, out } = await run("server/commands/enrol.ts", ["--name", "A. Person", "--role", "lead"], env);
    token = out.trim();
    await desk.page.goto(/http:\S+/.exec(err)?.[0] ?? "");
    await desk.page.getByLabel(/at least 12 characters/).fill(PASSWORD);
    await desk.page.getByRole("button", { name: "Keep it and sign in" }).click();
    await desk.page.getByRole("link", { name: "A. Person" }).waitFor();
  });
  afterAll(async () => {
    await desk?.close();
    await phone?.close();
    await server?.remove();
  });

  it("is made at the desk: who is enrolled sees every site, or only those chosen", { timeout: 90_000 }, async () => {
    const { page } = desk;
    await page.goto(`${server.address}#/people`);
    const form = page.locator("form.teach", { has: page.getByLabel("Name", { exact: true }) });
    await form.getByLabel("Name", { exact: true }).fill("B. Tech");
    expect(await form.getByRole("radio", { name: "Every site" }).isChecked()).toBe(true);
    // a site chosen says that it is not every site; every site, that it is none in particular
    await form.getByRole("checkbox", { name: "Southmoor" }).check();
    expect(await form.getByRole("radio", { name: /^Only/ }).isChecked()).toBe(true);
    await form.getByRole("radio", { name: "Every site" }).check();
    expect(await form.getByRole("checkbox", { name: "Southmoor" }).isChecked()).toBe(false);
    await form.getByRole("radio", { name: /^Only/ }).check();
    await form.getByRole("button", { name: "Enrol", exact: true }).click();
    await form.getByText("Choose at least one site.").waitFor();
    await form.getByRole("checkbox", { name: "Northfield" }).check();
    await form.getByRole("button", { name: "Enrol", exact: true }).click();
    await page.getByRole("heading", { name: "B. Tech technician, kept to Northfield" }).waitFor();
    await card().locator("summary").click();
    expect(await card().getByRole("checkbox", { name: "Northfield" }).isChecked()).toBe(true);
    expect(await card().getByRole("checkbox", { name: "Southmoor" }).isChecked()).toBe(false);
    for (const [width, height] of [
      [360, 740],
      [800, 1280],
      [1920, 1080],
    ] as const) {
      await page.setViewportSize({ width, height });
      for (const colorScheme of ["light", "dark"] as const) {
        await page.emulateMedia({ colorScheme });
        await look(desk, `people-sites-${width}-${colorScheme}`);
      }
    }
    await page.setViewportSize({ width: 1280, height: 900 });
    await page.emulateMedia({ colorScheme: null });
  });

  it("knows the valves of that site, stands at it, and knows of no other", { timeout: 60_000 }, async () => {
    await card().getByRole("button", { name: "Enrol a device" }).click();
    const link = (await desk.page.locator(".code-link").getAttribute("href")) ?? "";
    await phone.page.goto(link);
    await phone.page.getByRole("button", { name: "Enrol this device" }).click();
    await phone.page.getByText("technician, kept to Northfield").waitFor();
    await look(phone, "me-of-one-site");
    await phone.page.goto(`${server.address}#/bench`);
    await phone.page.getByRole("heading", { name: "Valves at Northfield" }).waitFor();
    await phone.page.getByRole("button", { name: "NOR-11" }).waitFor();
    expect(await phone.page.getByRole("button", { name: "SOU-77" }).count()).toBe(0);
    await expect.poll(onDevice).toContain("NOR-11");
    expect(await onDevice()).not.toMatch(/SOU-77|Southmoor/);
  });

  it("moved to another site without a network, loses no word: it is refused in words, and sent once it may be", {
    timeout: 90_000,
  }, async () => {
    const { page, context } = phone;
    await page.getByRole("button", { name: "NOR-11" }).click();
    await say(page, "seat worn one side");
    await allKept(page);
    await context.setOffline(true);
    await say(page, "flipped it");
    await keepTo("Southmoor");
    await context.setOffline(false);
    await page.getByText("The server refused this phrase.").waitFor();
    await page
      .getByText(/You are kept to other sites than north: ask a lead to add it to yours, then send it again\./)
      .waitFor();
    await expect.poll(() => page.locator(".outbox").textContent()).toBe("1 refused by the server");
    await page.getByText("It stays on this device.").scrollIntoViewIfNeeded();
    await look(phone, "refused-elsewhere");
    await contact();
    await page.reload();
    await page.getByText("The server refused this phrase.").waitFor();
    await keepTo("Northfield", "Southmoor");
    await contact();
    await page.locator(".menu summary").click();
    await page.getByRole("button", { name: "Send the 1 refused again" }).click();
    await allKept(page);
    const { jobs } = await atBoss<{ jobs: JobSummary[] }>("jobs?site=north");
    expect(jobs).toMatchObject([{ tag: "NOR-11", phrases: 2, unread: 0 }]);
  });

  it("lets go of the site it left at the next contact, once all of it was sent and the job is closed", {
    timeout: 60_000,
  }, async () => {
    const { page } = phone;
    await page.getByRole("button", { name: "Close this job" }).click();
    await page.getByRole("button", { name: "SOU-77" }).waitFor();
    await keepTo("Southmoor");
    await contact();
    await page.getByRole("heading", { name: "Valves at Southmoor" }).waitFor();
    await expect.poll(onDevice).not.toMatch(/NOR-11|Northfield|flipped it/);
    expect(await onDevice()).toContain("SOU-77");
  });

  it("complained of nothing on the way", () => {
    expect([...desk.complaints, ...phone.complaints]).toEqual([]);
  });
});

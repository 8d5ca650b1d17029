import { afterAll, beforeAll, expect, it } from "vitest";
import { run } from "../../server/running.ts";
import { violations } from "../axe.ts";
import { allKept, type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

const PASSWORD = "three valves in a row";

/** From nobody enrolled to a phone that is revoked and comes back, with nothing lost on the way. */
inBrowser("people at the desk, a phone at the valve", () => {
  let server: RunningServer;
  let desk: Device;
  let phone: Device;
  const show = process.env.SHOW;
  const look = async (device: Device, name: string) => {
    if (show) await device.page.screenshot({ path: `${show}/${name}.png`, fullPage: true });
    expect(await violations(device.page), name).toEqual([]);
    const beyond = await device.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(beyond, name).toBeLessThanOrEqual(0);
  };
  const codeFor = async (name: string) => {
    const { page } = desk;
    await page.goto(`${server.address}#/people`);
    const card = page.locator(".person", { has: page.getByRole("heading", { name }) });
    await card.getByRole("button", { name: "Enrol a device" }).click();
    return (await page.locator(".code-link").getAttribute("href")) ?? "";
  };

  beforeAll(async () => {
    server = await runServer();
    desk = await newDevice({ width: 1280, height: 900 });
    phone = await newDevice();
  });
  afterAll(async () => {
    await desk?.close();
    await phone?.close();
    await server?.remove();
  });

  it("the desk says that nobody is enrolled, and how the first lead is", { timeout: 60_000 }, async () => {
    await desk.page.goto(`${server.address}#/people`);
    await desk.page.getByText("Nobody is enrolled yet:").waitFor();
    await desk.page.getByText("The first lead is enrolled at the server’s own machine").waitFor();
    await look(desk, "nobody");
  });

  it("the first lead chooses a password by the link that the command prints", { timeout: 60_000 }, async () => {
    const { port } = new URL(server.address);
    const env = { DATA_DIR: server.data, PORT: port };
    const { err } = await run("server/commands/enrol.ts", ["--name", "A. Person", "--role", "lead"], env);
    const link = /http:\S+/.exec(err)?.[0] ?? "";
    // the page that was open is closed to whoever is there
    await desk.page.goto(`${server.address}#/desk`);
    await desk.page.reload();
    await desk.page.locator(".door-band").getByRole("link", { name: "Sign in" }).waitFor();
    await desk.page.goto(link);
    await desk.page.getByLabel(/at least 12 characters/).fill(PASSWORD);
    await look(desk, "set-password");
    await desk.page.getByRole("button", { name: "Keep it and sign in" }).click();
    await desk.page.getByRole("link", { name: "A. Person" }).waitFor();
    expect(desk.page.url()).toMatch(/#\/desk$/);
    // what was asked before the sign-in may still be on its way back
    await expect.poll(() => desk.page.locator(".door-band").count()).toBe(0);
  });

  it("enrols a technician and shows a code, which makes the phone theirs by one touch", {
    timeout: 90_000,
  }, async () => {
    const { page } = desk;
    await page.goto(`${server.address}#/people`);
    await page.getByLabel("Name").fill("B. Tech");
    await page.getByRole("button", { name: "Enrol", exact: true }).click();
    await page.getByRole("heading", { name: "B. Tech technician" }).waitFor();
    const link = await codeFor("B. Tech");
    await page.getByRole("img", { name: "QR code of the link for B. Tech" }).waitFor();
    await look(desk, "people");
    await phone.page.goto(link);
    await phone.page.getByRole("button", { name: "Enrol this device" }).waitFor();
    await look(phone, "enrol-phone");
    await phone.page.getByRole("button", { name: "Enrol this device" }).click();
    await phone.page.getByText("This device is enrolled for B. Tech.").waitFor();
    expect(phone.page.url()).toMatch(/#\/me$/);
    await look(phone, "me-phone");
  });

  it("what is said on the phone stands at the desk in that name", { timeout: 60_000 }, async () => {
    const { page } = phone;
    await page.goto(`${server.address}#/bench`);
    await page.fill("#words", "LCV-213");
    await page.press("#words", "Enter");
    await page.locator(".invite").waitFor();
    await say(page, "seat worn one side, flipped it");
    await allKept(page);
    await desk.page.goto(`${server.address}#/desk`);
    await desk.page.locator(".ticket").click();
    await desk.page.getByText(/typed, by B\. Tech/).waitFor();
  });

  it("a revoked phone is told so in words, and keeps what is said on it", { timeout: 90_000 }, async () => {
    const { page } = desk;
    await page.goto(`${server.address}#/people`);
    await page.getByRole("button", { name: /^Revoke .* of B\. Tech$/ }).click();
    await page.getByRole("button", { name: "Yes, revoke it" }).click();
    await page.locator(".device-over").waitFor();
    await say(phone.page, "bonnet bolts torqued to twenty eight foot pounds");
    await phone.page.getByText(/enrolment was revoked\. What was said on it stays on it\. Ask a lead/).waitFor();
    expect(await phone.page.locator(".outbox").textContent()).toMatch(/^1 waiting/);
    await look(phone, "revoked-phone");
    await phone.page.reload();
    await phone.page.locator(".kept-waiting").waitFor();
    expect(await phone.page.locator(".outbox").textContent()).toMatch(/^1 waiting/);
  });

  it("enrolled again it sends what it kept", { timeout: 60_000 }, async () => {
    const link = await codeFor("B. Tech");
    await phone.page.goto(link);
    await phone.page.getByRole("button", { name: "Enrol this device" }).click();
    await phone.page.getByText("This device is enrolled for B. Tech.").waitFor();
    await phone.page.goto(`${server.address}#/bench`);
    await allKept(phone.page);
    await desk.page.goto(`${server.address}#/desk`);
    await desk.page.locator(".ticket").click();
    await expect.poll(() => desk.page.locator(".phrase").count()).toBe(2);
  });

  it("a report's link leads by way of signing in to the report", { timeout: 60_000 }, async () => {
    const { page } = desk;
    await page.goto(`${server.address}#/me`);
    await page.getByRole("button", { name: "Sign out" }).click();
    await page.locator(".door-band").waitFor();
    await page.goto(`${server.address}report?site=north`);
    await page.getByLabel("Your name, as it was enrolled").fill("a. person");
    await page.getByLabel("Password").fill("not the right one");
    await page.getByRole("button", { name: "Sign in" }).click();
    await page.getByText(/do not fit/).waitFor();
    await look(desk, "sign-in");
    await page.getByLabel("Your name, as it was enrolled").fill("a. person");
    await page.getByLabel("Password").fill(PASSWORD);
    await page.getByRole("button", { name: "Sign in" }).click();
    await page.waitForURL(/\/report\?site=north/);
  });

  it("complained of nothing on the way", () => {
    expect([...desk.complaints, ...phone.complaints]).toEqual([]);
  });
});

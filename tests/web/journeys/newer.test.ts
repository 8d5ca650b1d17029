import { readFile } from "node:fs/promises";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, it } from "vitest";
import { type Device, inBrowser, newDevice, workerReady } from "../chromium.ts";
import { runServer } from "../running-server.ts";

const WEB = fileURLToPath(new URL("../../../dist/web", import.meta.url));
const TYPES: Record<string, string> = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css" };

inBrowser("a newer build", () => {
  let host: Server;
  let device: Device;
  let address = "";
  /** written over the worker's version, as a build with other screens would have it */
  let version = "";
  const asked: string[] = [];

  beforeAll(async () => {
    // builds what is served here
    const server = await runServer();
    await server.remove();
    host = createServer((request, response) => {
      const path = new URL(request.url ?? "/", "http://here").pathname;
      asked.push(path);
      const file = path === "/" ? "index.html" : path.slice(1);
      readFile(join(WEB, file)).then(
        (bytes) => {
          const type = TYPES[extname(file)] ?? "application/octet-stream";
          const body =
            file === "sw.js" && version ? String(bytes).replace(/VERSION="\w+"/, `VERSION="${version}"`) : bytes;
          response.writeHead(200, { "content-type": type, "cache-control": "no-cache" }).end(body);
        },
        () => response.writeHead(404).end(),
      );
    });
    await new Promise<void>((resolve) => host.listen(0, "127.0.0.1", resolve));
    address = `http://127.0.0.1:${(host.address() as AddressInfo).port}/`;
    device = await newDevice();
  });
  afterAll(async () => {
    await device?.close();
    host?.closeAllConnections();
    await new Promise((resolve) => host?.close(resolve));
  });

  /** the stores of the page's own files; the ear keeps what it needs in one beside them, which no newer build empties */
  const stores = () =>
    device.page.evaluate(async () => (await caches.keys()).filter((name) => name.startsWith("handsfull-")));

  it("is kept whole at the first visit, screens not yet opened too", async () => {
    const { page } = device;
    await page.goto(address);
    await workerReady(page);
    const [store] = await stores();
    const kept = await page.evaluate(
      async (name) => (await (await caches.open(name)).keys()).map((one) => new URL(one.url).pathname),
      store ?? "",
    );
    for (const room of ["reader", "desk-room", "word-room"])
      expect(kept.some((path) => path.startsWith(`/assets/${room}-`))).toBe(true);
    expect(kept).toContain("/");
    expect(kept.filter((path) => /\.(br|gz)$/.test(path))).toEqual([]);
  });

  it("is fetched but for what the device has, and waits until it is taken", async () => {
    const { page } = device;
    const before = await stores();
    asked.length = 0;
    version = "0123456789abcdef";
    await page.reload();
    // the browser looks for a newer worker some time after the page has loaded
    await expect.poll(stores, { timeout: 60_000 }).toEqual([...before, "handsfull-0123456789abcdef"]);
    const waits = () => page.evaluate(async () => Boolean((await navigator.serviceWorker.getRegistration())?.waiting));
    await expect.poll(waits, { timeout: 60_000 }).toBe(true);
    expect(asked).toContain("/");
    expect(asked.filter((path) => path.startsWith("/assets/"))).toEqual([]);
  });

  it("is taken when the person says so, and opens with the host gone", async () => {
    const { page, context } = device;
    await page.locator(".menu summary").click();
    await page.getByRole("button", { name: "A newer version is here: load it" }).click();
    await expect.poll(stores, { timeout: 60_000 }).toEqual(["handsfull-0123456789abcdef"]);
    await context.setOffline(true);
    host.closeAllConnections();
    await page.reload();
    await page.locator(".choosing").waitFor();
    await page.goto(`${address}#/glossary`);
    await page.locator(".word").first().waitFor();
    expect(device.complaints).toEqual([]);
  });
});

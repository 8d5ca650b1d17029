import { spawn } from "node:child_process";
import { readFile } from "node:fs/promises";
import { createServer } from "node:net";
import { expect, it } from "vitest";
import { folder, id, job, phrase } from "./app-under-test.ts";
import { ended, gone, startServer } from "./running.ts";

const PLATE = new URL("./keepsakes/pictures/plate.jpg", import.meta.url);
const TELLTALE = ["--import", "./tests/server/telltale.mjs"];

it("the telltale tells", async () => {
  const other = createServer().listen(0, "127.0.0.1");
  await new Promise((ready) => other.once("listening", ready));
  const { port } = other.address() as { port: number };
  const asks = `require("node:net").connect(${port}, "127.0.0.1").on("connect", () => process.exit())`;
  const ran = await ended(spawn(process.execPath, [...TELLTALE, "-e", asks]));
  const fetches = `fetch("http://127.0.0.1:${port}/").catch(() => 0); setTimeout(() => process.exit(), 300)`;
  const fetched = await ended(spawn(process.execPath, [...TELLTALE, "-e", fetches]));
  other.close();
  expect(ran.err).toMatch(/TELLTALE connects to/);
  expect(fetched.err).toMatch(/TELLTALE connects to/);
});

it("the server connects to nobody, whatever is asked of it, while no mail server is set", async () => {
  const DATA_DIR = await folder();
  const script = [...TELLTALE, "--import", "tsx", "server/main.ts"];
  const { address, child } = await startServer({ DATA_DIR, DATABASE_URL: "", SMTP_URL: "" }, script);
  let told = "";
  child.stderr?.on("data", (bytes) => {
    told += bytes;
  });
  const ask = async (method: string, path: string, body?: unknown) => {
    const answer = await fetch(`${address}${path}`, {
      method,
      ...(body ? { body: JSON.stringify(body), headers: { "content-type": "application/json" } } : {}),
    });
    expect(answer.status, `${method} ${path}`).toBe(200);
    await answer.arrayBuffer();
  };
  const one = job({ tag: "LCV-213", site: "north" });
  await ask("PUT", "/api/sites/north", { name: "North", zone: "Etc/UTC" });
  await ask("PUT", "/api/valves/LCV-213", { site: "north", family: "balanced_dump", size_in: 2, service: "severe" });
  const words = "seat worn, see http://elsewhere.example/x.png <img src=//elsewhere.example/y.png>";
  await ask("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, words)] });
  const photo = `${address}/api/photos/${id()}?job=${one.id}&at=2026-03-04T17:01:00Z`;
  const headers = { "content-type": "image/jpeg" };
  expect((await fetch(photo, { method: "PUT", body: await readFile(PLATE), headers })).status).toBe(200);
  const recipients = ["boss@elsewhere.example"];
  await ask("PUT", "/api/sites/north/report", { recipients, hour: "00:01", weekends: true, quiet: true });
  for (const form of ["page", "text", "pdf", "mail"])
    await ask("GET", `/report?site=north&day=2026-03-04&form=${form}`);
  for (const path of ["/api/due?site=north", "/api/carry?site=north", "/api/reliability", "/api/review", "/metrics"])
    await ask("GET", path);
  child.kill("SIGTERM");
  expect(await gone(child)).toBe(0);
  expect(told.split("\n").filter((line) => /TELLTALE (connects|looks)/.test(line))).toEqual([]);
});

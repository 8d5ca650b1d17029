import { describe, expect, it } from "vitest";
import { folder } from "../app-under-test.ts";
import { client } from "../enrolled.ts";
import { run, startServer } from "../running.ts";

/** The commands and the server as three processes on one database. */
describe("npm run enrol and npm run people", () => {
  it("make the first lead while the server runs: open before, closed to all others after", {
    timeout: 150_000,
  }, async () => {
    const DATA_DIR = await folder();
    const { address } = await startServer({ DATA_DIR });
    const get = async (path: string, token?: string) =>
      (await fetch(`${address}${path}`, token ? { headers: { authorization: `Bearer ${token}` } } : {})).status;
    expect(await get("/api/jobs")).toBe(200);

    const enrol = (...args: string[]) => run("server/commands/enrol.ts", args, { DATA_DIR });
    const lead = await enrol("--name", "A. Person", "--role", "lead", "--role", "office");
    expect(lead.out).toMatch(/^hfd_[\w-]{43}\n$/);
    expect(lead.err).toMatch(/http:\/\/127\.0\.0\.1:8460\/#\/set-password\?code=hfc_[\w-]{43}\n/);
    const token = lead.out.trim();
    expect(await get("/api/jobs")).toBe(401);
    expect(await get("/api/people", token)).toBe(200);

    const [, code = ""] = /code=(\S+)/.exec(lead.err) ?? [];
    const chosen = await fetch(`${address}/api/first-password`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ code, password: "three valves in a row" }),
    });
    expect(chosen.status).toBe(200);

    const tech = await enrol("--name", "B. Tech", "--role", "technician", "--device", "phone 3");
    expect(tech.err).toBe("");
    expect(await get("/api/jobs", tech.out.trim())).toBe(200);
    expect(await get("/api/people", tech.out.trim())).toBe(403);

    const site = await fetch(`${address}/api/sites/north`, {
      method: "PUT",
      headers: { "content-type": "application/json", authorization: `Bearer ${token}` },
      body: JSON.stringify({ name: "North", zone: "Etc/UTC" }),
    });
    expect(site.status).toBe(200);
    const mistyped = await enrol("--name", "C. Tech", "--role", "technician", "--site", "north", "--site", "nroth");
    expect(mistyped).toMatchObject({ code: 1, out: "", err: /nroth is set up/ });
    const kept = await enrol("--name", "C. Tech", "--role", "technician", "--site", "north");
    expect(await get("/api/sites/north/stock", kept.out.trim())).toBe(200);
    expect(await get("/api/sites/south/stock", kept.out.trim())).toBe(404);

    const people = (...args: string[]) => run("server/commands/people.ts", args, { DATA_DIR });
    const listed = (await people()).out;
    expect(listed).toMatch(/^A\. Person \(lead, office\) {2}\S+\n {2}a device, enrolled {2}\S+\nB\. Tech/);
    expect(listed).toMatch(/^C\. Tech \(technician; kept to north\) {2}\S+$/m);
    const [, device = ""] = /phone 3, enrolled {2}(\S+)/.exec(listed) ?? [];
    expect(await people("--revoke", device)).toMatchObject({ code: 0 });
    expect(await get("/api/jobs", tech.out.trim())).toBe(401);
    const [, only = ""] = /A\. Person .* (\S+)\n/.exec(listed) ?? [];
    expect(await people("--revoke", only)).toMatchObject({ code: 1, err: /only lead/ });
    expect(await people("--password", "a. person")).toMatchObject({ code: 0, out: /set-password\?code=/ });
  });

  it("say in words what they lack", { timeout: 60_000 }, async () => {
    const DATA_DIR = await folder();
    const enrol = (...args: string[]) => run("server/commands/enrol.ts", args, { DATA_DIR });
    expect(await enrol("--role", "lead")).toMatchObject({ code: 2, out: "", err: /--name is needed/ });
    expect(await enrol("--name", "X", "--role", "boss")).toMatchObject({ code: 2, err: /technician, lead, office/ });
    expect(await enrol("--name", "X")).toMatchObject({ code: 1, out: "", err: /--role/ });
    expect(await enrol("--name", "X", "--role", "lead", "--until", "2020-01-01T00:00:00Z")).toMatchObject({ code: 2 });
    const revoke = await run("server/commands/people.ts", ["--revoke", "none"], { DATA_DIR });
    expect(revoke).toMatchObject({ code: 1, err: /no person and no device/ });
  });

  it("a server opened to the network says at its start that it waits for a lead", { timeout: 60_000 }, async () => {
    const DATA_DIR = await folder();
    const { address, said } = await startServer({ DATA_DIR, HOST: "0.0.0.0" });
    const { port } = new URL(address);
    expect((await fetch(`http://127.0.0.1:${port}/api/jobs`)).status).toBe(401);
    expect((await fetch(`http://127.0.0.1:${port}/readyz`)).status).toBe(200);
    // the address stands in a line before it, and what a pipe carries comes in pieces
    await expect.poll(said, { timeout: 20_000 }).toMatch(/npm run -s enrol/);
    const app = { request: (path: string, init?: RequestInit) => fetch(`http://127.0.0.1:${port}${path}`, init) };
    const { out } = await run("server/commands/enrol.ts", ["--name", "A", "--role", "lead"], { DATA_DIR });
    expect(
      (await client(app, { token: out.trim(), origin: `http://127.0.0.1:${port}` }).call("GET", "/api/me")).status,
    ).toBe(200);
  });
});

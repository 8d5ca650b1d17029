import { readdir, readFile, stat, writeFile } from "node:fs/promises";
import { createServer, request } from "node:http";
import { get } from "node:https";
import { type AddressInfo, connect } from "node:net";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folder, job, phrase } from "./app-under-test.ts";
import { gone, run, startServer } from "./running.ts";

const post = (address: string, body: unknown) =>
  fetch(`${address}/api/phrases`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });

describe("the server as it is started", () => {
  it("on SIGTERM answers what it has, empties the log into the file and leaves with 0", async () => {
    const DATA_DIR = await folder();
    const { address, child } = await startServer({ DATA_DIR });
    const jobs = Array.from({ length: 40 }, () => job());
    const answers = jobs.map((one) =>
      post(address, { jobs: [one], phrases: [phrase(one, "seat worn")] }).then(
        async (answer) => ((await answer.json()) as { results: { status: string }[] }).results[0]?.status,
        // not taken any more: nothing was promised
        () => undefined,
      ),
    );
    await Promise.race(answers);
    child.kill("SIGTERM");
    expect(await gone(child)).toBe(0);
    const told = await Promise.all(answers);
    expect(told).toContain("stored");
    const files = await readdir(DATA_DIR);
    if (files.includes("handsfull.db-wal")) expect((await stat(join(DATA_DIR, "handsfull.db-wal"))).size).toBe(0);
    const again = await startServer({ DATA_DIR });
    for (const [n, one] of jobs.entries()) {
      if (told[n] !== undefined) expect((await fetch(`${again.address}/api/jobs/${one.id}`)).status).toBe(200);
    }
  });

  it("answers 413 to 5 MB over a real connection, with and without a length, and goes on", async () => {
    const { address } = await startServer({ DATA_DIR: await folder() });
    const body = JSON.stringify({ phrases: ["x".repeat(5_000_000)] });
    const headers = { "content-type": "application/json" };
    const whole = await fetch(`${address}/api/phrases`, { method: "POST", headers, body });
    expect(whole.status).toBe(413);
    expect(((await whole.json()) as { detail: string }).detail).toMatch(/1 MB/);
    const status = await new Promise<number | undefined>((resolve, reject) => {
      const chunked = request(`${address}/api/phrases`, { method: "POST", headers }, (answer) => {
        answer.resume();
        resolve(answer.statusCode);
      });
      chunked.on("error", reject);
      for (let at = 0; at < body.length; at += 65_536) chunked.write(body.slice(at, at + 65_536));
      chunked.end();
    });
    expect(status).toBe(413);
    expect((await fetch(`${address}/readyz`)).status).toBe(200);
  });

  it("speaks https where it is given a certificate", async () => {
    const [TLS_CERT, TLS_KEY] = ["tests/server/tls/cert.pem", "tests/server/tls/key.pem"];
    const { address } = await startServer({ DATA_DIR: await folder(), TLS_CERT, TLS_KEY });
    expect(address).toMatch(/^https:/);
    const ca = await readFile(TLS_CERT);
    const status = await new Promise((resolve, reject) => {
      get(`${address}/readyz`, { ca }, (answer) => resolve(answer.resume().statusCode)).on("error", reject);
    });
    expect(status).toBe(200);
  });

  it("bears clients that leave in the middle", async () => {
    const { address } = await startServer({ DATA_DIR: await folder() });
    const { hostname, port } = new URL(address);
    for (const length of ["", "Content-Length: 500\r\n", "Transfer-Encoding: chunked\r\n"]) {
      const socket = connect(Number(port), hostname);
      const lead = "POST /api/phrases HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n";
      await new Promise((sent) => socket.write(`${lead}${length}\r\n{"phrases": [`, sent));
      await new Promise((wake) => setTimeout(wake, 50));
      socket.destroy();
    }
    const socket = connect(Number(port), hostname);
    socket.end("\u0000nonsense\r\n\r\n");
    expect(await new Promise((resolve) => socket.once("data", (bytes) => resolve(String(bytes).slice(0, 12))))).toBe(
      "HTTP/1.1 400",
    );
    expect((await fetch(`${address}/readyz`)).status).toBe(200);
  });

  it("says in words why it does not start", { timeout: 60_000 }, async () => {
    const dir = await folder();
    await writeFile(join(dir, "handsfull.db"), "no database");
    const foreign = await run("server/main.ts", [], { DATA_DIR: dir, PORT: "0" });
    expect(foreign.code).toBe(1);
    expect(foreign.err).toMatch(/is not a database.*Nothing was changed/);
    const port = await run("server/main.ts", [], { PORT: "no" });
    expect(port.code).toBe(1);
    expect(port.err).toMatch(/PORT/);
    const half = await run("server/main.ts", [], { TLS_CERT: "x.pem" });
    expect(half.err).toMatch(/TLS_CERT and TLS_KEY go together/);
    const other = createServer().listen(0, "127.0.0.1");
    await new Promise((ready) => other.once("listening", ready));
    const taken = await run("server/main.ts", [], {
      DATA_DIR: await folder(),
      PORT: String((other.address() as AddressInfo).port),
    });
    other.close();
    expect(taken.code).toBe(1);
    expect(taken.err).toMatch(/is taken: set PORT/);
  });
});

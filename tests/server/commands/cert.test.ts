import { createPrivateKey, X509Certificate } from "node:crypto";
import { mkdtemp, readFile, rm, stat } from "node:fs/promises";
import { get } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { connect, createServer } from "node:tls";
import { expect, it, onTestFinished } from "vitest";
import { makeServer } from "../../../server/certificates/certificate.ts";
import { run, startServer } from "../running.ts";

const PATIENCE = { timeout: 60_000 };

async function made(...names: string[]) {
  const folder = await mkdtemp(join(tmpdir(), "handsfull-cert-"));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  const again = () =>
    run(
      "server/commands/cert.ts",
      names.flatMap((name) => ["--name", name]),
      { DATA_DIR: folder },
    );
  const first = await again();
  expect(first.err).toBe("");
  const at = (file: string) => join(folder, "tls", file);
  const read = (file: string) => readFile(at(file), "utf8");
  return { folder, again, at, read, out: first.out };
}

it(
  "makes a certificate that a device trusts by the authority alone, for the server's names and addresses",
  PATIENCE,
  async () => {
    const { folder, at, read, out } = await made("valves.example.net");
    const { address } = await startServer({ DATA_DIR: folder, TLS_CERT: at("server.crt"), TLS_KEY: at("server.key") });
    const port = Number(new URL(address).port);
    const ca = await read("authority.crt");
    for (const servername of ["localhost", "valves.example.net", undefined]) {
      const status = await new Promise((resolve, reject) => {
        const asking = get({ host: "127.0.0.1", port, path: "/healthz", ca, servername }, (reply) => {
          reply.resume();
          resolve(reply.statusCode);
        });
        asking.on("error", reject);
      });
      expect(status).toBe(200);
    }
    expect(out).toContain(new X509Certificate(ca).fingerprint256);
    // phones take no server's certificate that lives longer than 825 days
    const server = new X509Certificate(await read("server.crt"));
    expect((Date.parse(server.validTo) - Date.parse(server.validFrom)) / 86_400_000).toBeLessThanOrEqual(825);
    for (const file of ["server.key", "authority.key"]) expect((await stat(at(file))).mode & 0o077).toBe(0);
  },
);

it("keeps the authority when it runs again, so that no phone has to be told anew", PATIENCE, async () => {
  const { again, read } = await made();
  const before = [await read("authority.crt"), await read("server.crt")];
  expect((await again()).out).toMatch(/^Kept the authority/);
  expect(await read("authority.crt")).toBe(before[0]);
  expect(await read("server.crt")).not.toBe(before[1]);
  expect(new X509Certificate(await read("server.crt")).verify(new X509Certificate(before[0] ?? "").publicKey)).toBe(
    true,
  );
});

it("cannot vouch for a name outside private networks that it was not made for", PATIENCE, async () => {
  const { read } = await made();
  const ca = await read("authority.crt");
  const vouching = new X509Certificate(ca);
  const key = createPrivateKey(await read("authority.key"));
  const authority = { certificate: ca, key, name: vouching.subject.slice(3) };
  const shake = async (name: string) => {
    const { certificate, key } = makeServer(authority, vouching.publicKey, [name], new Date());
    const server = createServer({ cert: certificate, key }, (socket) => socket.end());
    server.on("tlsClientError", (error) => error);
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    const { port } = server.address() as { port: number };
    const said = await new Promise<string>((resolve) => {
      const socket = connect({ host: "127.0.0.1", port, servername: name, ca }, () => resolve("trusted"));
      socket.on("error", (error) => resolve(error.message));
    });
    await new Promise((resolve) => server.close(resolve));
    return said;
  };
  expect(await shake("bench.lan")).toBe("trusted");
  expect(await shake("bank.example.com")).toMatch(/permitted subtree/);
});

it("says in words what is wrong with a name, and when the authority's key is away", PATIENCE, async () => {
  const odd = await run("server/commands/cert.ts", ["--name", "not a name"]);
  expect(odd).toMatchObject({ code: 2, err: expect.stringContaining("neither a host name nor an address") });
  const { again, at, folder } = await made();
  const foreign = await run("server/commands/cert.ts", ["--name", "bank.example.com"], { DATA_DIR: folder });
  expect(foreign).toMatchObject({ code: 2, err: expect.stringContaining("was not made for bank.example.com") });
  await rm(at("authority.key"));
  expect(await again()).toMatchObject({ code: 2, err: expect.stringContaining("bring it back to renew") });
});

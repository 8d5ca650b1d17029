import { type ChildProcess, execFile, spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));

/** The real server as its own process on its own data, to be killed and started again on the same port. */
export interface RunningServer {
  address: string;
  /** the folder of its data */
  data: string;
  /** SIGKILL: no chance to finish anything */
  kill(): Promise<void>;
  start(): Promise<void>;
  remove(): Promise<void>;
  get<T>(path: string): Promise<T>;
  put(path: string, body: unknown): Promise<void>;
}

/** Whether nobody listens there. */
function isFree(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const trying = createServer();
    trying.once("error", () => resolve(false));
    trying.listen(port, "127.0.0.1", () => trying.close(() => resolve(true)));
  });
}

export async function runServer(more: Record<string, string> = {}): Promise<RunningServer> {
  await promisify(execFile)(process.execPath, ["server/commands/build.mjs"], { cwd: ROOT });
  const data = await mkdtemp(join(tmpdir(), "handsfull-data-"));
  let child: ChildProcess | undefined;
  // one that the system gives to nobody who asks for just any, so that it is still free when we come back to it
  let port = 10_000 + Math.floor(Math.random() * 20_000);
  const server: RunningServer = {
    address: "",
    data,
    async start() {
      while (!child && !(await isFree(port))) port++;
      const env = { ...process.env, PORT: String(port), DATA_DIR: data, LOG_LEVEL: "warn", HOST: "127.0.0.1", ...more };
      const started = spawn(process.execPath, ["dist/server/main.js"], { cwd: ROOT, env });
      child = started;
      server.address = await new Promise<string>((resolve, reject) => {
        let said = "";
        const hear = (chunk: Buffer) => {
          said += chunk;
          const address = /http:\/\/[\d.]+:\d+\//.exec(said)?.[0];
          if (address) resolve(address);
        };
        started.stdout.on("data", hear);
        started.stderr.on("data", hear);
        started.once("exit", (code) => reject(new Error(`the server ended with ${code}: ${said}`)));
      });
    },
    async kill() {
      const killed = child;
      if (!killed || killed.exitCode !== null || killed.signalCode !== null) return;
      const gone = new Promise((resolve) => killed.once("exit", resolve));
      killed.kill("SIGKILL");
      await gone;
    },
    async remove() {
      await server.kill();
      await rm(data, { recursive: true, force: true });
    },
    async get<T>(path: string) {
      const reply = await fetch(new URL(path, server.address));
      if (!reply.ok) throw new Error(`GET ${path}: ${reply.status} ${await reply.text()}`);
      return (await reply.json()) as T;
    },
    async put(path, body) {
      const reply = await fetch(new URL(path, server.address), {
        method: "PUT",
        headers: { "content-type": "application/json" },
        body: JSON.stringify(body),
      });
      if (!reply.ok) throw new Error(`PUT ${path}: ${reply.status} ${await reply.text()}`);
    },
  };
  await server.start();
  return server;
}

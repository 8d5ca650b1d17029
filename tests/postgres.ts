import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { chownSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readlinkSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir, userInfo } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import pg from "pg";

/** A real PostgreSQL for tests: a cluster of its own in a folder of its own, on this machine only. */

const FOLDER = "/usr/lib/postgresql";

/** Where its programs lie: `POSTGRES_BIN=`, or the newest that Debian has installed; undefined where there is none. */
export const POSTGRES_BIN = process.env.POSTGRES_BIN ?? newest();

function newest(): string | undefined {
  if (!existsSync(FOLDER)) return undefined;
  const [latest] = readdirSync(FOLDER).sort((one, other) => Number(other) - Number(one));
  const bin = join(FOLDER, latest ?? "", "bin");
  return existsSync(join(bin, "initdb")) ? bin : undefined;
}

export const NO_POSTGRES = "no PostgreSQL was found: apt-get install -y postgresql";

/** Where PostgreSQL must be there, its absence is a failure. */
export function requirePostgres(what: string): void {
  if (POSTGRES_BIN) return;
  if (process.env.REQUIRE_PG === "1") throw new Error(`REQUIRE_PG=1 and ${NO_POSTGRES}`);
  process.stderr.write(`skipped ${what}, ${NO_POSTGRES}\n`);
}

/** A connection of one's own, closed in the end. */
export async function connected<T>(url: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url });
  // told by the query that it breaks
  client.on("error", () => {});
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

export interface Cluster {
  folder: string;
  port: number;
  /** the address of one of its databases */
  url(database: string): string;
  /** one statement in one of its databases */
  ask(statement: string, database?: string): Promise<Record<string, unknown>[]>;
  start(): Promise<void>;
  /** SIGKILL to all of its processes: no chance to finish anything */
  kill(): Promise<void>;
  /** stops it and removes its folder */
  remove(): Promise<void>;
}

/** A new cluster, not started; or, with `of`, a standby of a running one, which it follows under that name. */
export async function makeCluster(settings: Record<string, string>, of?: { primary: Cluster; name: string }) {
  const folder = mkdtempSync(join(tmpdir(), "handsfull-postgres-"));
  own(folder);
  const data = join(folder, "data");
  const port = await freePort();
  if (of) {
    const from = `host=127.0.0.1 port=${of.primary.port} user=postgres application_name=${of.name}`;
    program("pg_basebackup", ["-D", data, "-R", "-X", "stream", "-c", "fast", "-d", from]);
  } else program("initdb", ["-D", data, "-U", "postgres", "-A", "trust", "-E", "UTF8", "--locale=C.UTF-8", "-N"]);
  return clusterIn(folder, data, port, settings);
}

function clusterIn(folder: string, data: string, port: number, settings: Record<string, string>): Cluster {
  const options = Object.entries({ ...settings, port: String(port), listen_addresses: "127.0.0.1" });
  let running: ChildProcess | undefined;
  const url = (database: string) => `postgres://postgres@127.0.0.1:${port}/${database}`;
  const ask: Cluster["ask"] = async (statement, database = "postgres") => {
    return connected(url(database), async (client) => (await client.query<Record<string, unknown>>(statement)).rows);
  };
  return {
    folder,
    port,
    url,
    ask,
    async start() {
      const set = options.flatMap(([name, value]) => ["-c", `${name}=${value}`]);
      const child = spawn(join(POSTGRES_BIN ?? "", "postgres"), ["-D", data, "-k", folder, ...set], {
        ...identity(),
        stdio: ["ignore", "ignore", "pipe"],
      });
      running = child;
      let said = "";
      child.stderr?.on("data", (bytes) => {
        said = (said + bytes).slice(-4_000);
      });
      for (;;) {
        if (child.exitCode !== null) throw new Error(`PostgreSQL left with ${child.exitCode}: ${said}`);
        const answered = await ask("SELECT 1").then(
          () => true,
          // it is not up yet
          () => false,
        );
        if (answered) return;
        await wait(20);
      }
    },
    async kill() {
      // all at once, as when the machine is gone: none of them sees another end
      for (const pid of processesIn(data)) kill(pid);
      while (processesIn(data).length > 0) await wait(5);
    },
    async remove() {
      await end("SIGINT", running);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function end(signal: NodeJS.Signals, child: ChildProcess | undefined): Promise<void> {
  if (!child || child.exitCode !== null || child.signalCode !== null) return;
  const over = new Promise((done) => child.once("exit", done));
  child.kill(signal);
  await over;
}

/** All of a cluster's processes: they work in its folder. */
function processesIn(data: string): number[] {
  const there = readdirSync("/proc").filter((pid) => {
    try {
      return /^\d+$/.test(pid) && readlinkSync(`/proc/${pid}/cwd`) === data;
    } catch {
      // it ended while it was looked at, or is another user's
      return false;
    }
  });
  return there.map(Number);
}

function kill(pid: number): void {
  try {
    process.kill(pid, "SIGKILL");
  } catch (cause) {
    // it ended by itself, as its first process was gone
    if ((cause as NodeJS.ErrnoException).code !== "ESRCH") throw cause;
  }
}

function program(name: string, args: string[]): void {
  execFileSync(join(POSTGRES_BIN ?? "", name), args, { ...identity(), stdio: ["ignore", "ignore", "pipe"] });
}

/** PostgreSQL refuses to run as root: then it runs as the user that its package made. */
function identity(): { uid?: number; gid?: number; cwd: string } {
  if (userInfo().uid !== 0) return { cwd: tmpdir() };
  const number = (flag: string) => Number(execFileSync("id", [flag, "postgres"], { encoding: "utf8" }));
  return { uid: number("-u"), gid: number("-g"), cwd: tmpdir() };
}

function own(folder: string): void {
  mkdirSync(folder, { recursive: true });
  const { uid, gid } = identity();
  if (uid !== undefined && gid !== undefined) chownSync(folder, uid, gid);
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address() as { port: number };
      server.close(() => resolve(port));
    });
  });
}

import { type ChildProcess, spawn } from "node:child_process";
import { onTestFinished } from "vitest";
import { type Started, spawnServer } from "./server-process.ts";

export { gone } from "./server-process.ts";

export interface Ran {
  code: number | null;
  out: string;
  err: string;
}

/** Runs a command of the package to its end. */
export function run(script: string, args: string[], env: Record<string, string> = {}, input?: string): Promise<Ran> {
  const child = spawn(process.execPath, ["--import", "tsx", script, ...args], {
    env: { ...process.env, NO_COLOR: "", ...env },
  });
  return ended(child, input);
}

export function ended(child: ChildProcess, input?: string): Promise<Ran> {
  const ran: Ran = { code: null, out: "", err: "" };
  child.stdout?.on("data", (bytes) => {
    ran.out += bytes;
  });
  child.stderr?.on("data", (bytes) => {
    ran.err += bytes;
  });
  // a command that refuses its arguments never reads what is sent to it
  child.stdin?.on("error", () => {});
  child.stdin?.end(input);
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (code) => resolve({ ...ran, code }));
  });
}

/** The server as it is built, which starts in a third of the time: for tests that start it again and again. */
export async function startBuilt(env: Record<string, string>): ReturnType<typeof startServer> {
  await ended(spawn(process.execPath, ["server/commands/build.mjs"]));
  return startServer(env, ["dist/server/main.js"]);
}

/** The real server in a process of its own, on a free port. Killed after the test where it still runs. */
export async function startServer(
  env: Record<string, string>,
  script = ["--import", "tsx", "server/main.ts"],
  command = process.execPath,
): Promise<Started> {
  const started = await spawnServer(env, script, command);
  onTestFinished(() => {
    started.child.kill("SIGKILL");
  });
  return started;
}

import { type ChildProcess, spawn } from "node:child_process";

export interface Started {
  /** all it has printed so far */
  said: () => string;
  /** without a slash at its end */
  address: string;
  child: ChildProcess;
}

/** The real server in a process of its own, on a free port, once it answers. Whoever starts it stops it. */
export async function spawnServer(
  env: Record<string, string>,
  script: string[],
  command = process.execPath,
): Promise<Started> {
  const child = spawn(command, script, {
    env: { ...process.env, PORT: "0", HOST: "127.0.0.1", LOG_LEVEL: "error", ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let said = "";
  const address = await new Promise<string>((resolve, reject) => {
    child.stdout?.on("data", (bytes) => {
      said += bytes;
      const found = /https?:\/\/\S+/.exec(said);
      if (found) resolve(found[0]);
    });
    child.stderr?.on("data", (bytes) => {
      said += bytes;
    });
    child.on("exit", (code) => reject(new Error(`the server left with ${code}: ${said}`)));
  });
  return { address: address.replace(/\/$/, ""), child, said: () => said };
}

/** The server as it is built, which starts in a third of the time. */
export const spawnBuilt = (env: Record<string, string>): Promise<Started> => spawnServer(env, ["dist/server/main.js"]);

/** Resolves with the exit code once the process is over; null where a signal ended it. */
export const gone = (child: ChildProcess): Promise<number | null> =>
  child.exitCode !== null || child.signalCode !== null
    ? Promise.resolve(child.exitCode)
    : new Promise((resolve) => child.once("exit", (code) => resolve(code)));

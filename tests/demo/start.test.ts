import { type ChildProcess, spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Site } from "../../core/index.ts";
import { run } from "../server/running.ts";

describe("npm run demo", () => {
  let folder: string;
  let child: ChildProcess | undefined;

  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), "handsfull-demo-"));
  });
  afterEach(async () => {
    await stop();
    await rm(folder, { recursive: true, force: true });
  });

  /** Starts it and waits until it has said what to look at. */
  function start(...args: string[]): Promise<string> {
    const env = {
      ...process.env,
      PORT: "0",
      HOST: "127.0.0.1",
      DATA_DIR: folder,
      DATABASE_URL: `file:${folder}/real.db`,
    };
    const started = spawn(process.execPath, ["--import", "tsx", "demo/start.ts", ...args], { env });
    child = started;
    let said = "";
    return new Promise((resolve, reject) => {
      const hear = (bytes: Buffer) => {
        said += bytes;
        if (said.includes("tells the story again.")) resolve(said);
      };
      started.stdout.on("data", hear);
      started.stderr.on("data", hear);
      started.on("exit", (code) => reject(new Error(`it left with ${code}: ${said}`)));
    });
  }

  async function stop(): Promise<void> {
    const stopped = child;
    child = undefined;
    if (!stopped || stopped.exitCode !== null) return;
    const gone = new Promise((resolve) => stopped.once("exit", resolve));
    stopped.kill("SIGTERM");
    await gone;
  }

  const sites = async (said: string) => {
    const address = /http:\/\/\S+\/(?=\n)/.exec(said)?.[0] ?? "";
    return ((await (await fetch(new URL("api/sites", address))).json()) as { sites: Site[] }).sites;
  };

  it("tells its story once, keeps it, tells it again when asked, and touches no other database", {
    timeout: 60_000,
  }, async () => {
    const first = await start();
    expect(first).toMatch(/invented field/);
    expect(first).toMatch(/3 sites, 24 valves, \d+ jobs/);
    expect(await sites(first)).toHaveLength(3);
    await stop();

    const second = await start();
    expect(second).not.toMatch(/Told the story/);
    expect(await sites(second)).toHaveLength(3);
    await stop();

    expect(await start("--fresh")).toMatch(/Told the story/);
    expect(existsSync(join(folder, "real.db"))).toBe(false);
    expect(await readFile(join(folder, "demo/invented.json"), "utf8")).toMatch(/invented/);
  });

  it("refuses what it does not know in one line", async () => {
    const wrong = await run("demo/start.ts", ["--frsh"], { DATA_DIR: folder });
    expect(wrong).toMatchObject({ code: 2, out: "", err: "demo: --frsh is not known here; see --help\n" });
  });
});

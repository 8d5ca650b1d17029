import { join } from "node:path";
import { type Device, newJob, peopled, say } from "../faults/devices.ts";
import { gone, spawnBuilt, spawnServer } from "../server/server-process.ts";
import { phrases } from "./corpus-phrases.ts";
import { bareInserts, median } from "./storing.ts";
import { figure } from "./timing.ts";

const DEVICES = 50;
const FOR_MS = 10_000;
const ROUNDS = 6;
const BARE_MS = 2_500;
/** a phrase a second each: far more than hands in a valve allow */
const PACE_MS = 1_000;

/**
 * Fifty enrolled devices on the real server: first each a phrase a second, then each the next as soon as the last is
 * answered. Before and after, the bare loop of single inserts on the same disk. Devices and server share the machine.
 */
export async function load(): Promise<string[]> {
  const { dir, devices, remove } = await peopled(DEVICES);
  const { address, child } = await spawnBuilt({ DATA_DIR: dir, DATABASE_URL: "" });
  try {
    await run(devices, address, 2_000, 0);
    const bare = [await bareInserts(join(dir, "bare-0.db"), BARE_MS)];
    const paced = await run(devices, address, FOR_MS, PACE_MS);
    const rounds: Awaited<ReturnType<typeof run>>[] = [];
    const megabytes = [await memory(address)];
    for (let round = 0; round < ROUNDS; round++) {
      rounds.push(await run(devices, address, FOR_MS / 2, 0));
      megabytes.push(await memory(address));
    }
    bare.push(await bareInserts(join(dir, "bare-1.db"), BARE_MS));
    const inserts = bare.reduce((sum, one) => sum + one, 0) / bare.length;
    const [p50 = Number.NaN, p99 = Number.NaN, rate = Number.NaN] = (["p50", "p99", "perSecond"] as const).map((of) =>
      median(rounds.map((one) => one[of])),
    );
    return [
      `${DEVICES} devices, a phrase a second each, ${FOR_MS / 1000} s    p50 ${figure(paced.p50)} ms, p99 ${figure(paced.p99)} ms (target p99 under 50: ${paced.p99 < 50 ? "met" : "not met"})`,
      `the same as fast as they are answered         p50 ${figure(p50)} ms, p99 ${figure(p99)} ms; ${figure(rate)} phrases/s`,
      `bare node and libSQL, one insert at a time    ${figure(inserts)} rows/s; the log stores ${figure(rate / inserts)} of that (target 0.25: ${rate / inserts >= 0.25 ? "met" : "not met"})`,
      `memory of the server, every ${FOR_MS / 2000} s            ${megabytes.map(Math.round).join(", ")} MB`,
    ];
  } finally {
    child.kill("SIGTERM");
    await gone(child);
    await remove();
  }
}

const MINUTES = 5;

/**
 * What the server holds while fifty devices say all they can for five minutes: its live objects after each minute's last
 * whole collection of rubbish, which is when they can be told, and all that its process takes, rubbish with it.
 */
export async function loadMemory(): Promise<string[]> {
  const { dir, devices, remove } = await peopled(DEVICES);
  const { address, child, said } = await spawnServer({ DATA_DIR: dir, DATABASE_URL: "" }, [
    "--trace-gc",
    "dist/server/main.js",
  ]);
  try {
    const lines: string[] = [];
    for (let minute = 1; minute <= MINUTES; minute++) {
      const { perSecond } = await run(devices, address, 60_000, 0);
      const [, live = ""] = [...said().matchAll(/Mark-Compact.*? -> ([\d.]+) /g)].at(-1) ?? [];
      const process = figure(await memory(address));
      lines.push(`minute ${minute}: live objects ${live} MB, process ${process} MB; ${figure(perSecond)} phrases/s`);
    }
    return lines;
  } finally {
    child.kill("SIGTERM");
    await gone(child);
    await remove();
  }
}

async function run(devices: Device[], address: string, forMs: number, paceMs: number) {
  for (const device of devices) device.tookMs = [];
  const began = performance.now();
  const until = began + forMs;
  await Promise.all(
    devices.map(async (device, n) => {
      // devices do not speak in chorus
      if (paceMs > 0) await pause((paceMs * n) / devices.length);
      for (let said = 0; performance.now() < until; said++) {
        if (said % 12 === 0) device.job = newJob(n);
        const start = performance.now();
        const text = phrases[(said + n * 40) % phrases.length] ?? "";
        await say(device, text, new Date().toISOString(), async () => address);
        if (paceMs > 0) await pause(paceMs - (performance.now() - start));
      }
    }),
  );
  const took = devices.flatMap((one) => one.tookMs).sort((a, b) => a - b);
  const at = (share: number) => took[Math.min(took.length - 1, Math.floor(took.length * share))] ?? Number.NaN;
  return { p50: at(0.5), p99: at(0.99), perSecond: (1000 * took.length) / (performance.now() - began) };
}

async function memory(address: string): Promise<number> {
  const text = await (await fetch(`${address}/metrics`)).text();
  return Number(/^handsfull_memory_bytes (\d+)/m.exec(text)?.[1]) / 1_000_000;
}

const pause = (ms: number) => new Promise((wake) => setTimeout(wake, Math.max(0, ms)));

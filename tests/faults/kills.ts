import { join } from "node:path";
import { createClient } from "@libsql/client";
import { chance } from "../fuzz/chance.ts";
import { gone, type Started, spawnBuilt } from "../server/server-process.ts";
import { peopled, say } from "./devices.ts";

export interface Toll {
  kills: number;
  acknowledged: number;
  lost: number;
  doubled: number;
  /** devices whose phrases do not stand in the order said */
  outOfOrder: number;
  integrity: string;
}

/**
 * Kills the server (SIGKILL) again and again while devices send, at moments chosen by chance, then looks at what the
 * database holds against what the devices were told. The server must be built.
 */
export async function killUnderLoad(about: { devices: number; kills: number; seed: number }): Promise<Toll> {
  const by = chance(about.seed);
  const { dir, devices, remove } = await peopled(about.devices);
  let server: Promise<Started> = spawnBuilt({ DATA_DIR: dir, DATABASE_URL: "" });
  let over = false;
  try {
    const load = devices.map(async (device) => {
      for (let n = 0; !over; n++) await say(device, `seat worn ${n}`, moment(n), async () => (await server).address);
    });
    const broken = Promise.all(load);
    const toldOf = () => devices.reduce((sum, one) => sum + one.told.length, 0);
    for (let kill = 0; kill < about.kills; kill++) {
      const enough = toldOf() + 1 + by.below(400);
      // a failure of a device ends the wait, and is thrown below
      while (toldOf() < enough) await Promise.race([broken, new Promise((wake) => setTimeout(wake, 2))]);
      const { child } = await server;
      child.kill("SIGKILL");
      server = gone(child).then(() => spawnBuilt({ DATA_DIR: dir, DATABASE_URL: "" }));
      await server;
    }
    over = true;
    await broken;
    const { child } = await server;
    child.kill("SIGTERM");
    await gone(child);
    return { kills: about.kills, ...(await toll(join(dir, "handsfull.db"), devices)) };
  } finally {
    over = true;
    await server.then(
      ({ child }) => child.kill("SIGKILL"),
      // it never came up: what failed is thrown above
      () => false,
    );
    await remove();
  }
}

async function toll(path: string, devices: { job: { id: string }; told: string[] }[]): Promise<Omit<Toll, "kills">> {
  const client = createClient({ url: `file:${path}` });
  const found: Omit<Toll, "kills"> = { acknowledged: 0, lost: 0, doubled: 0, outOfOrder: 0, integrity: "" };
  try {
    for (const { job, told } of devices) {
      const rows = await client.execute({
        sql: "SELECT id, text FROM phrases WHERE job = ? ORDER BY said_at, id",
        args: [job.id],
      });
      const ids = rows.rows.map((row) => String(row.id));
      const kept = new Set(ids);
      found.acknowledged += told.length;
      found.lost += told.filter((id) => !kept.has(id)).length;
      // each was said once, in words of its own: whatever stands twice was stored twice
      found.doubled += rows.rows.length - new Set(rows.rows.map((row) => row.text)).size;
      if (told.join() !== ids.filter((id) => told.includes(id)).join()) found.outOfOrder++;
    }
    const [verdict] = (await client.execute("PRAGMA integrity_check(1)")).rows;
    return { ...found, integrity: String(Object.values(verdict ?? {})[0]) };
  } finally {
    client.close();
  }
}

const moment = (second: number) => new Date(Date.UTC(2026, 2, 4, 17, 0, second)).toISOString();

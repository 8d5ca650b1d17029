import { join } from "node:path";
import { chance } from "../fuzz/chance.ts";
import { ask } from "../server/at-database.ts";
import { gone, type Started, spawnBuilt } from "../server/server-process.ts";
import { peopled, say } from "./devices.ts";
import { type Toll, tollOf } from "./toll.ts";

/**
 * Kills the server (SIGKILL) again and again while devices send, at moments chosen by chance, then looks at what the
 * database holds against what the devices were told. The server must be built.
 */
export async function killUnderLoad(about: {
  devices: number;
  kills: number;
  seed: number;
}): Promise<Toll & { kills: number; integrity: string }> {
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
    const url = `file:${join(dir, "handsfull.db")}`;
    const [verdict] = await ask(url, "PRAGMA integrity_check(1)");
    return { kills: about.kills, ...(await tollOf(url, devices)), integrity: String(Object.values(verdict ?? {})[0]) };
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

export const moment = (second: number) => new Date(Date.UTC(2026, 2, 4, 17, 0, second)).toISOString();

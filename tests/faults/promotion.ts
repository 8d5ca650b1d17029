import { setTimeout as wait } from "node:timers/promises";
import { type Cluster, makeCluster } from "../postgres.ts";
import { gone, spawnBuilt } from "../server/server-process.ts";
import { peopled, say } from "./devices.ts";
import { moment } from "./kills.ts";
import { type Toll, tollOf } from "./toll.ts";

const DATABASE = "log";

/** A server that takes writes, and one that has each of them on its disk before it is answered. */
async function pair(made: Cluster[]): Promise<{ primary: Cluster; standby: Cluster }> {
  const primary = await makeCluster({});
  made.push(primary);
  await primary.start();
  await primary.ask(`CREATE DATABASE ${DATABASE}`);
  const standby = await makeCluster({}, { primary, name: "second" });
  made.push(standby);
  await standby.start();
  await primary.ask("ALTER SYSTEM SET synchronous_standby_names = 'second'");
  await primary.ask("SELECT pg_reload_conf()");
  const inStep = () => primary.ask("SELECT 1 FROM pg_stat_replication WHERE sync_state = 'sync'");
  while ((await inStep()).length === 0) await wait(20);
  return { primary, standby };
}

/**
 * Kills the primary (SIGKILL to all of it) while devices send to one log server, promotes the standby, and looks at
 * what that holds against what the devices were told. The log server knows both by one URL, and is not started again.
 */
export async function promoteUnderLoad(about: { devices: number; before: number; after: number }): Promise<
  Toll & {
    /** from the promotion to the first phrase that was answered */
    silentMs: number;
    /** phrases answered after it */
    after: number;
  }
> {
  const made: Cluster[] = [];
  const undo: (() => Promise<unknown>)[] = [];
  let over = false;
  try {
    const { primary, standby } = await pair(made);
    const { dir, devices, remove } = await peopled(about.devices, primary.url(DATABASE));
    undo.push(remove);
    const url = primary.url(DATABASE).replace(`:${primary.port}`, `:${primary.port},127.0.0.1:${standby.port}`);
    const { address, child } = await spawnBuilt({ DATA_DIR: dir, DATABASE_URL: url, LOG_LEVEL: "silent" });
    undo.push(() => {
      child.kill("SIGTERM");
      return gone(child);
    });
    const load = devices.map(async (device, n) => {
      for (let said = 0; !over; said++)
        await say(device, `seat worn ${said} by ${n}`, moment(said), async () => address);
    });
    const broken = Promise.all(load);
    const told = () => devices.reduce((sum, one) => sum + one.told.length, 0);
    const until = async (enough: number) => {
      // a failure of a device ends the wait, and is thrown below
      while (told() < enough && !over) await Promise.race([broken, wait(2)]);
    };
    await until(about.before);
    await primary.kill();
    const atKill = told();
    const began = performance.now();
    await standby.ask("SELECT pg_promote()");
    await until(atKill + 1);
    const silentMs = performance.now() - began;
    await until(atKill + about.after);
    over = true;
    await broken;
    return { ...(await tollOf(standby.url(DATABASE), devices)), silentMs, after: told() - atKill };
  } finally {
    over = true;
    for (const step of undo.reverse()) await step();
    for (const cluster of made.reverse()) await cluster.remove();
  }
}

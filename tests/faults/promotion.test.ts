import { spawn } from "node:child_process";
import { setTimeout as wait } from "node:timers/promises";
import { describe, expect, it, onTestFinished } from "vitest";
import { StoreAway } from "../../server/db/failures.ts";
import { openStore } from "../../server/db/open.ts";
import { sites } from "../../server/db/tables.ts";
import { makeCluster, POSTGRES_BIN, requirePostgres } from "../postgres.ts";
import { ended } from "../server/running.ts";
import { promoteUnderLoad } from "./promotion.ts";

requirePostgres("a standby that takes over");

describe.skipIf(!POSTGRES_BIN)("PostgreSQL with a standby (apt-get install -y postgresql)", () => {
  it("loses, doubles and reorders nothing acknowledged where the primary is killed and the standby promoted", async () => {
    await ended(spawn(process.execPath, ["server/commands/build.mjs"]));
    const { acknowledged, silentMs, after, ...toll } = await promoteUnderLoad({ devices: 20, before: 200, after: 100 });
    expect(toll).toEqual({ lost: 0, doubled: 0, outOfOrder: 0 });
    expect(after).toBeGreaterThanOrEqual(100);
    expect(acknowledged).toBeGreaterThanOrEqual(300);
    expect(silentMs).toBeGreaterThan(0);
  });

  it("does not call kept what only the primary has: its wait for the standby was cancelled", async () => {
    const cluster = await makeCluster({});
    onTestFinished(() => cluster.remove());
    await cluster.start();
    const store = await openStore(cluster.url("postgres"));
    onTestFinished(() => store.close());
    const waitFor = async (standby: string) => {
      await cluster.ask(`ALTER SYSTEM SET synchronous_standby_names = '${standby}'`);
      await cluster.ask("SELECT pg_reload_conf()");
    };
    await waitFor("nobody");
    const keep = (site: string) =>
      store.write(async (tx) => void (await tx.insert(sites).values({ site, name: site, zone: "", createdAt: "" })));
    const written = keep("north");
    const outcome = written.then(
      () => "kept",
      (cause: unknown) => cause,
    );
    const cancel =
      "SELECT pg_cancel_backend(pid) AS done FROM pg_stat_activity WHERE wait_event = 'SyncRep' AND application_name = 'handsfull'";
    while ((await cluster.ask(cancel)).length === 0) await wait(10);
    expect(await outcome).toBeInstanceOf(StoreAway);
    await waitFor("");
    await keep("south");
  });
});

import { readFileSync } from "node:fs";
import { createServer as createSecure } from "node:https";
import type { AddressInfo } from "node:net";
import { createAdaptorServer } from "@hono/node-server";
import { isAnyoneEnrolled } from "./accounts/caller.ts";
import { isLoopback } from "./accounts/this-machine.ts";
import { makeApp } from "./app.ts";
import { type Clock, systemClock } from "./clock.ts";
import { openStore } from "./db/open.ts";
import type { Settings } from "./env.ts";
import { keepExpiring } from "./keepsakes/expire.ts";
import { keptFiles, keptFolder } from "./keepsakes/files.ts";
import { MOST_CONNECTIONS, TIMES } from "./limits.ts";
import { makeLog } from "./log.ts";
import { makeMetrics } from "./metrics.ts";
import { RecentJobs } from "./reading/keep-reading.ts";
import { distrustOlderStates } from "./reading/valve-states.ts";
import { makePostRoom } from "./reports/post-room.ts";
import { keepListing } from "./when-said/list-older.ts";

export interface Served {
  address: string;
  /** it is open to the network and nobody is enrolled: it answers nobody until a lead is */
  waitsForLead: boolean;
  /** takes no new request, finishes those it has, moves the log into the file */
  stop(): Promise<void>;
}

const LONGEST_STOP_MS = 10_000;

/** Opens the store, listens, and answers with the address. */
export async function serve(settings: Settings, clock: Clock = systemClock): Promise<Served> {
  const log = makeLog(settings.logLevel);
  const store = await openStore(settings.databaseUrl);
  await distrustOlderStates(store);
  const kept = keptFiles(keptFolder(settings.dataDir));
  const from = settings.mailFrom;
  const post = { server: settings.smtp, folder: settings.mailFolder };
  const postRoom = makePostRoom({ store, log, clock, from, server: post.server !== undefined, post });
  const mail = { clock, from, post, wake: postRoom.wake };
  const { tls } = settings;
  const door = { loopback: isLoopback(settings.host), tls: tls !== undefined };
  const app = makeApp({ store, kept, log, metrics: makeMetrics(), recent: new RecentJobs(), mail, door });
  const server = createAdaptorServer({
    fetch: app.fetch,
    ...(tls
      ? {
          createServer: createSecure,
          serverOptions: { ...TIMES, cert: readFileSync(tls.cert), key: readFileSync(tls.key) },
        }
      : { serverOptions: TIMES }),
  }) as ReturnType<typeof createSecure>;
  server.maxConnections = MOST_CONNECTIONS;
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(settings.port, settings.host, () => {
      server.off("error", reject);
      resolve();
    });
  });
  const expiring = keepExpiring(store, kept, log);
  const listing = keepListing(store, log);
  // not before the port is ours: a second server that cannot start must not take the first one's mail for left behind
  postRoom.open();
  const { port } = server.address() as AddressInfo;
  const host = settings.host.includes(":") ? `[${settings.host}]` : settings.host;
  return {
    address: `${tls ? "https" : "http"}://${host}:${port}/`,
    waitsForLead: !door.loopback && !(await isAnyoneEnrolled(store)),
    async stop() {
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      server.closeIdleConnections();
      const cut = setTimeout(() => server.closeAllConnections(), LONGEST_STOP_MS);
      await closed;
      clearTimeout(cut);
      await expiring.stop();
      await listing.stop();
      await postRoom.stop();
      await store.close();
    },
  };
}

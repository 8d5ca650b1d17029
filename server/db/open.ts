import { mkdirSync, statSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { type Client, createClient } from "@libsql/client";
import { drizzle } from "drizzle-orm/libsql";
import { checkFile, claimFile, connectFile, lookAtFile, pathOf, refuse, wordsOf } from "./database-file.ts";
import { isLock, StoreRefused, whenFree } from "./failures.ts";
import { isPostgres, nameOf } from "./pg-url.ts";
import { bringForward, refuseNewer } from "./shape.ts";
import { type Db, makeWriter, type Tx, type Writer } from "./writer.ts";

/** The database as the rest of the server sees it: read with `db`, write only with `write`. */
export interface Store extends Writer {
  db: Db;
  /** asks the database something small; throws where it does not answer */
  ping(): Promise<void>;
  /** bytes that it takes on the disk, with its log; undefined where it is a server's */
  bytes(): number | undefined;
  /** finishes what waits, moves the log into the file, closes */
  close(): Promise<void>;
  /** looks at the database as it stands at one moment, whoever writes meanwhile */
  atOneMoment<T>(look: (db: Db | Tx) => Promise<T>): Promise<T>;
}

/**
 * Opens the database at `url` (`file:`, a libSQL server, or `postgres://`), making and migrating it where needed.
 * One that is damaged or of another program is refused and left as it is.
 */
export async function openStore(url: string): Promise<Store> {
  if (!isPostgres(url)) return whenFree(url, () => openOnce(url));
  // its driver is loaded by those who use it
  const { openPostgres } = await import("./pg-store.ts");
  return whenFree(nameOf(url), () => openPostgres(url));
}

async function openOnce(url: string): Promise<Store> {
  const path = pathOf(url);
  if (path) {
    lookAtFile(path);
    mkdirSync(dirname(path), { recursive: true });
  }
  const client = path ? connectFile(path) : createClient({ url });
  try {
    if (path) {
      await checkFile(client, path);
      await refuseNewer(client, path);
      await claimFile(client);
    }
    await bringForward(client, path);
    return storeOf(client, path);
  } catch (cause) {
    client.close();
    if (cause instanceof StoreRefused || isLock(cause) || !path) throw cause;
    throw refuse(path, `could not be opened (${wordsOf(cause)})`, cause);
  }
}

function storeOf(client: Client, path: string | undefined): Store {
  const db = drizzle(client) as Db;
  const writer = makeWriter({
    transaction: (work) => db.transaction(work),
    // one lock error poisons a file's connection: without a new one every later commit fails; a server's would end all
    renew: async () => {
      if (path) client.reconnect();
    },
  });
  return {
    db,
    ...writer,
    async ping() {
      await client.execute("SELECT count(*) FROM jobs WHERE id = ''");
    },
    bytes: () => (path ? sizeOf(path) + sizeOf(`${path}-wal`) : undefined),
    async atOneMoment(look) {
      if (!path) return withinTransaction(client, look);
      const folder = await mkdtemp(join(tmpdir(), "handsfull-moment-"));
      try {
        const copy = join(folder, "copy.db");
        await client.execute({ sql: "VACUUM INTO ?", args: [copy] });
        const still = await openStore(`file:${copy}`);
        try {
          return await look(still.db);
        } finally {
          await still.close();
        }
      } finally {
        await rm(folder, { recursive: true, force: true });
      }
    },
    async close() {
      await writer.settled();
      // close() alone leaves every row in the -wal file: whoever copies the .db would copy nothing
      if (path) await client.execute("PRAGMA wal_checkpoint(TRUNCATE)");
      client.close();
    },
  };
}

/** A server's disk is not ours to copy to: there a transaction that only reads sees one moment, and keeps nobody waiting. */
async function withinTransaction<T>(client: Client, look: (db: Db) => Promise<T>): Promise<T> {
  const reading = await client.transaction("deferred");
  try {
    return await look(drizzle(reading as unknown as Client) as Db);
  } finally {
    reading.close();
  }
}

const sizeOf = (path: string) => statSync(path, { throwIfNoEntry: false })?.size ?? 0;

import { mkdirSync, statSync } from "node:fs";
import { dirname } from "node:path";
import { type Client, createClient } from "@libsql/client";
import { drizzle } from "drizzle-orm/libsql";
import { checkFile, claimFile, connectFile, lookAtFile, pathOf, refuse, wordsOf } from "./database-file.ts";
import { isLock, StoreRefused, whenFree } from "./failures.ts";
import { bringForward, refuseNewer } from "./shape.ts";
import { type Db, makeWriter, type Writer } from "./writer.ts";

/** The database as the rest of the server sees it: read with `db`, write only with `write`. */
export interface Store extends Writer {
  db: Db;
  /** asks the database something small; throws where it does not answer */
  ping(): Promise<void>;
  /** bytes that it takes on the disk, with its log; undefined where it is a server's */
  bytes(): number | undefined;
  /** finishes what waits, moves the log into the file, closes */
  close(): Promise<void>;
}

/**
 * Opens the database at `url` (`file:`, or a libSQL server), making and migrating it where needed.
 * A file that is damaged or of another program is refused and left as it is.
 */
export const openStore = (url: string): Promise<Store> => whenFree(url, () => openOnce(url));

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
  const writer = makeWriter(client, db);
  return {
    db,
    ...writer,
    async ping() {
      await client.execute("SELECT count(*) FROM jobs WHERE id = ''");
    },
    bytes: () => (path ? sizeOf(path) + sizeOf(`${path}-wal`) : undefined),
    async close() {
      await writer.settled();
      // close() alone leaves every row in the -wal file: whoever copies the .db would copy nothing
      if (path) await client.execute("PRAGMA wal_checkpoint(TRUNCATE)");
      client.close();
    },
  };
}

const sizeOf = (path: string) => statSync(path, { throwIfNoEntry: false })?.size ?? 0;

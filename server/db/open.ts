import { closeSync, existsSync, mkdirSync, openSync, readFileSync, readSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Client, createClient } from "@libsql/client";
import { drizzle } from "drizzle-orm/libsql";
import { migrate } from "drizzle-orm/libsql/migrator";
import { MIGRATIONS } from "../places.ts";
import { type Db, makeWriter, type Writer } from "./writer.ts";

/** The database as the rest of the server sees it: read with `db`, write only with `write`. */
export interface Store extends Writer {
  db: Db;
  /** asks the database something small; throws where it does not answer */
  ping(): Promise<void>;
  /** finishes what waits, moves the log into the file, closes */
  close(): Promise<void>;
}

/** The database cannot be used, for a reason a person can mend. The message says which file and what to do. */
export class StoreRefused extends Error {}

/** "HFLG" in the file's header: says that a database is this log's own. */
const OURS = 0x48464c47;
const CHECKED_UP_TO_BYTES = 256 * 1024 * 1024;

/**
 * Opens the database at `url` (`file:`, or a libSQL server), making and migrating it where needed.
 * A file that is damaged or of another program is refused and left as it is.
 */
export async function openStore(url: string): Promise<Store> {
  const path = pathOf(url);
  if (path) lookAtFile(path);
  const client = connect(url, path);
  try {
    if (path) await checkFile(client, path);
    const db = drizzle(client) as Db;
    await migrate(db, { migrationsFolder: MIGRATIONS });
    return storeOf(client, db, path);
  } catch (cause) {
    client.close();
    if (cause instanceof StoreRefused || !path) throw cause;
    throw refuse(path, `could not be opened (${wordsOf(cause)})`, cause);
  }
}

function storeOf(client: Client, db: Db, path: string | undefined): Store {
  const writer = makeWriter(client, db);
  return {
    db,
    ...writer,
    async ping() {
      await client.execute("SELECT count(*) FROM jobs WHERE id = ''");
    },
    async close() {
      await writer.settled();
      // close() alone leaves every row in the -wal file: whoever copies the .db would copy nothing
      if (path) await client.execute("PRAGMA wal_checkpoint(TRUNCATE)");
      client.close();
    },
  };
}

function connect(url: string, path: string | undefined): Client {
  if (!path) return createClient({ url });
  mkdirSync(dirname(path), { recursive: true });
  // the driver waits without yielding: short here, and the writer tries again
  return createClient({ url, timeout: 100 });
}

function pathOf(url: string): string | undefined {
  if (!url.startsWith("file:")) return undefined;
  if (url.startsWith("file:///")) return fileURLToPath(url);
  return url.slice("file:".length).replace(/\?.*$/, "");
}

function lookAtFile(path: string): void {
  if (!existsSync(path)) {
    if (existsSync(`${path}-wal`))
      throw refuse(path, `is missing, though ${path}-wal is there: its data would be lost`);
    return;
  }
  const about = statSync(path);
  if (!about.isFile()) throw refuse(path, "is not a file");
  if (about.size === 0) return;
  const head = Buffer.alloc(16);
  const file = openSync(path, "r");
  try {
    readSync(file, head, 0, 16, 0);
  } finally {
    closeSync(file);
  }
  if (head.toString("latin1") !== "SQLite format 3\0") throw refuse(path, "is not a database");
}

async function checkFile(client: Client, path: string): Promise<void> {
  const only = async (sql: string) => Object.values((await client.execute(sql)).rows[0] ?? {})[0];
  try {
    const tables = Number(await only("SELECT count(*) FROM sqlite_master"));
    const mark = Number(await only("PRAGMA application_id"));
    if (tables > 0 && mark !== OURS) throw refuse(path, "is the database of another program");
    if (tables > 0 && statSync(path).size <= CHECKED_UP_TO_BYTES) {
      const verdict = String(await only("PRAGMA quick_check(1)"));
      if (verdict !== "ok") throw refuse(path, `is damaged (${verdict})`);
    }
    if (tables > 0) await refuseNewer(only, path);
    await client.execute("PRAGMA journal_mode = WAL");
    if (mark !== OURS) await client.execute(`PRAGMA application_id = ${OURS}`);
  } catch (cause) {
    if (cause instanceof StoreRefused) throw cause;
    throw refuse(path, `is damaged or cannot be read (${wordsOf(cause)})`, cause);
  }
}

/** A database that a later version migrated would be read wrongly by this one. */
async function refuseNewer(only: (sql: string) => Promise<unknown>, path: string): Promise<void> {
  const known = Number(await only("SELECT count(*) FROM sqlite_master WHERE name = '__drizzle_migrations'"));
  if (!known) return;
  const last = Number(await only("SELECT max(created_at) FROM __drizzle_migrations"));
  const journal = JSON.parse(readFileSync(join(MIGRATIONS, "meta/_journal.json"), "utf8"));
  const newest = Math.max(...journal.entries.map((entry: { when: number }) => entry.when));
  if (last > newest) throw refuse(path, "was made by a newer version of this log");
}

function refuse(path: string, what: string, cause?: unknown): StoreRefused {
  const advice = "Nothing was changed. Set DATA_DIR or DATABASE_URL to another place, or put a good backup there.";
  return new StoreRefused(`The database ${path} ${what}. ${advice}`, { cause });
}

const wordsOf = (cause: unknown) => (cause instanceof Error ? cause.message : String(cause));

import { existsSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type Client, createClient } from "@libsql/client";
import { codeOf, isLock, StoreRefused } from "./failures.ts";

/** A database that is a file: whether it is this log's own and whole, found before anything is written to it. */

/** "HFLG" in the file's header: says that a database is this log's own. */
const OURS = 0x48464c47;
const CHECKED_UP_TO_BYTES = 256 * 1024 * 1024;

/** The path of a `file:` URL; undefined for the address of a server. */
export function pathOf(url: string): string | undefined {
  if (!url.startsWith("file:")) return undefined;
  if (url.startsWith("file:///")) return fileURLToPath(url);
  return url.slice("file:".length).replace(/\?.*$/, "");
}

/**
 * What can be told without opening it. The engine alone opens it: the system drops every lock that a process has on a file
 * when the process closes any handle of it, and the driver keeps a closed connection for a while. Whoever comes and goes
 * after that thinks itself the last and takes the log away from under the server.
 */
export function lookAtFile(path: string): void {
  if (!existsSync(path)) {
    if (existsSync(`${path}-wal`))
      throw refuse(path, `is missing, though ${path}-wal is there: its data would be lost`);
    return;
  }
  if (!statSync(path).isFile()) throw refuse(path, "is not a file");
}

/** A client of the file. The driver waits for a lock without yielding: short here, and the caller tries again. */
export function connectFile(path: string): Client {
  // the driver reads its address as a URL: a percent sign in a folder's name is meant as one
  const url = `file:${path.split("/").map(encodeURIComponent).join("/")}`;
  return createClient({ url, timeout: 100 });
}

/** Refuses a database that is damaged or of another program. Changes nothing. */
export async function checkFile(client: Client, path: string): Promise<void> {
  try {
    const tables = Number(await only(client, "SELECT count(*) FROM sqlite_master"));
    if (tables === 0) return;
    if (Number(await only(client, "PRAGMA application_id")) !== OURS)
      throw refuse(path, "is the database of another program");
    if (statSync(path).size > CHECKED_UP_TO_BYTES) return;
    const verdict = String(await only(client, "PRAGMA quick_check(1)"));
    if (verdict !== "ok") throw refuse(path, `is damaged (${verdict})`);
  } catch (cause) {
    if (cause instanceof StoreRefused || isLock(cause)) throw cause;
    if (codeOf(cause) === "SQLITE_NOTADB") throw refuse(path, "is not a database", cause);
    throw refuse(path, `is damaged or cannot be read (${wordsOf(cause)})`, cause);
  }
}

/** Marks a database as ours, and has it keep a log beside it, so that reading and writing go on side by side. */
export async function claimFile(client: Client): Promise<void> {
  await client.execute("PRAGMA journal_mode = WAL");
  if (Number(await only(client, "PRAGMA application_id")) !== OURS)
    await client.execute(`PRAGMA application_id = ${OURS}`);
}

/** The first column of the first row. */
export async function only(client: Client, sql: string): Promise<unknown> {
  return Object.values((await client.execute(sql)).rows[0] ?? {})[0];
}

export function refuse(path: string, what: string, cause?: unknown): StoreRefused {
  const advice = "Nothing was changed. Set DATA_DIR or DATABASE_URL to another place, or put a good backup there.";
  return new StoreRefused(`The database ${path} ${what}. ${advice}`, { cause });
}

export const wordsOf = (cause: unknown) => (cause instanceof Error ? cause.message : String(cause));

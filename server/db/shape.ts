import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { Client } from "@libsql/client";
import { drizzle } from "drizzle-orm/libsql";
import { migrate } from "drizzle-orm/libsql/migrator";
import { MIGRATIONS } from "../places.ts";
import { connectFile, only, refuse, wordsOf } from "./database-file.ts";
import { isLock } from "./failures.ts";

/** The shape of a database: which migrations it has had, and those that it still needs. */
interface Migration {
  tag: string;
  when: number;
}

export function migrations(folder = MIGRATIONS): Migration[] {
  const journal = JSON.parse(readFileSync(join(folder, "meta/_journal.json"), "utf8")) as { entries: Migration[] };
  return journal.entries;
}

/** When its last migration was written; 0 where it has had none. */
export async function lastShape(client: Client): Promise<number> {
  const known = await only(client, "SELECT count(*) FROM sqlite_master WHERE name = '__drizzle_migrations'");
  return known ? Number(await only(client, "SELECT max(created_at) FROM __drizzle_migrations")) : 0;
}

/** The name of a database's shape; undefined where it is of a newer version, and would be read wrongly by this one. */
export async function shapeName(client: Client): Promise<string | undefined> {
  const last = await lastShape(client);
  return last === 0 ? "none" : migrations().find((one) => one.when === last)?.tag;
}

/** A database that a later version migrated would be read wrongly by this one. */
export async function refuseNewer(client: Client, path: string): Promise<void> {
  if ((await lastShape(client)) > newest()) throw refuse(path, "was made by a newer version of this log");
}

const newest = (folder = MIGRATIONS) => Math.max(...migrations(folder).map((one) => one.when));

/**
 * Brings the database to this version's shape. A file that has something in it is copied first and the copy brought
 * forward: only what went well there is done to the file.
 */
export async function bringForward(client: Client, path: string | undefined, folder = MIGRATIONS): Promise<void> {
  const last = await lastShape(client);
  // asking the migrator would take the lock of whoever writes, for nothing
  if (last >= newest(folder)) return;
  if (path && last > 0) await rehearse(client, path, folder);
  try {
    await migrate(drizzle(client), { migrationsFolder: folder });
  } catch (cause) {
    // it is done all or nothing: where another process was first, there is nothing left to do
    if (isLock(cause) || (await lastShape(client)) < newest(folder)) throw cause;
  }
}

async function rehearse(client: Client, path: string, folder: string): Promise<void> {
  const copy = `${path}.rehearsal-${process.pid}`;
  const clear = () => {
    for (const end of ["", "-wal", "-shm", "-journal"]) rmSync(copy + end, { force: true });
  };
  clear();
  let trial: Client | undefined;
  try {
    await client.execute({ sql: "VACUUM INTO ?", args: [copy] });
    trial = connectFile(copy);
    const orphans = async (of: Client) => (await of.execute("PRAGMA foreign_key_check")).rows.length;
    const before = await orphans(trial);
    await migrate(drizzle(trial), { migrationsFolder: folder });
    if ((await orphans(trial)) > before) throw new Error("rows would point at rows that are no longer there");
    const verdict = String(await only(trial, "PRAGMA integrity_check(1)"));
    if (verdict !== "ok") throw new Error(verdict);
  } catch (cause) {
    if (isLock(cause)) throw cause;
    throw refuse(path, `could not be brought to this version's shape, tried on a copy (${wordsOf(cause)})`, cause);
  } finally {
    trial?.close();
    clear();
  }
}

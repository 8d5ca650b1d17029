import { drizzle } from "drizzle-orm/node-postgres";
import { migrate } from "drizzle-orm/node-postgres/migrator";
import type pg from "pg";
import { PG_MIGRATIONS } from "../places.ts";
import { codeOf, StoreRefused } from "./failures.ts";
import { migrations } from "./shape.ts";

/** Holds a PostgreSQL database's migrations, and by being there says that the database is this log's own. */
const OURS = { migrationsSchema: "handsfull", migrationsTable: "migrations" };
/** "HFLG": whoever starts first brings the database forward, the others wait for it */
const ONE_AT_A_TIME = 0x48464c47;

/**
 * Brings the database to this version's shape, all of it or nothing. One of another program or of a newer version is
 * refused and left as it is.
 */
export async function bringPgForward(client: pg.ClientBase, name: string, folder = PG_MIGRATIONS): Promise<void> {
  const newest = Math.max(...migrations(folder).map((one) => one.when));
  // the lock belongs to the connection: it ends with it, whatever happens
  await client.query("SELECT pg_advisory_lock($1)", [ONE_AT_A_TIME]);
  try {
    const last = await lastShape(client, name);
    if (last > newest) throw refuse(name, "was made by a newer version of this log");
    if (last === newest) return;
    await migrate(drizzle(client as pg.Client), { migrationsFolder: folder, ...OURS });
  } catch (cause) {
    if (codeOf(cause) === "42501")
      throw refuse(name, "does not let this user make tables: make it the database's owner", cause);
    throw cause;
  } finally {
    await client.query("SELECT pg_advisory_unlock($1)", [ONE_AT_A_TIME]);
  }
}

/** When its last migration was written; 0 where it has had none. */
async function lastShape(client: pg.ClientBase, name: string): Promise<number> {
  const ours = `${OURS.migrationsSchema}.${OURS.migrationsTable}`;
  const { rows: known } = await client.query("SELECT to_regclass($1) IS NOT NULL AS known", [ours]);
  const last = known[0]?.known
    ? (await client.query(`SELECT max(created_at) AS last FROM ${ours}`)).rows[0]?.last
    : undefined;
  if (last !== undefined && last !== null) return Number(last);
  const { rows } = await client.query("SELECT 1 FROM pg_tables WHERE schemaname = 'public' LIMIT 1");
  if (rows.length > 0) throw refuse(name, "is the database of another program");
  return 0;
}

function refuse(name: string, what: string, cause?: unknown): StoreRefused {
  const advice = "Nothing was changed. Set DATABASE_URL to another database, or put a good backup there.";
  return new StoreRefused(`The database ${name} ${what}. ${advice}`, { cause });
}

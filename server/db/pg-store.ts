import { sql } from "drizzle-orm";
import { drizzle } from "drizzle-orm/node-postgres";
import type { PgTransactionConfig } from "drizzle-orm/pg-core";
import type pg from "pg";
import { StoreAway } from "./failures.ts";
import type { Store } from "./open.ts";
import { reach, type Servers } from "./pg-servers.ts";
import { bringPgForward } from "./pg-shape.ts";
import { type Db, makeWriter, type Tx } from "./writer.ts";

/** "HFLW": of all servers and commands at one database, one writes at a time, as with a file */
const ONE_WRITER = 0x48464c57;

/** Opens the PostgreSQL database at `url`, making its tables where there are none. */
export async function openPostgres(url: string): Promise<Store> {
  const patient = reach(url, true);
  try {
    await patient.on((client) => bringPgForward(client, patient.name));
  } finally {
    await patient.end();
  }
  return storeOf(reach(url));
}

function storeOf(servers: Servers): Store {
  const query: pg.Pool["query"] = (...asked: unknown[]) =>
    servers.on((client) => (client.query as (...asked: unknown[]) => Promise<unknown>)(...asked)) as never;
  const db = drizzle({ client: { query } as pg.Pool }) as unknown as Db;

  /** All that `work` does becomes true together, and is on the disk when this resolves. */
  const transaction = <T>(begin: PgTransactionConfig, first: number | undefined, work: (tx: Tx) => Promise<T>) =>
    servers.on(async (client) => {
      let doubt: string | undefined;
      const warned = (notice: { code?: string | undefined; message?: string | undefined }) => {
        if (notice.code?.startsWith("01")) doubt = notice.message;
      };
      client.on("notice", warned);
      try {
        const made = await drizzle({ client: plain(client) }).transaction(async (tx) => {
          if (first !== undefined) await tx.execute(sql`SELECT pg_advisory_xact_lock(${first})`);
          return work(tx as unknown as Tx);
        }, begin);
        // a COMMIT that somebody cancelled while it waited for the standby succeeds, and only warns that this one has it alone
        if (doubt !== undefined) throw new StoreAway(`the database server ${servers.name} warns: ${doubt}`);
        return made;
      } finally {
        client.off("notice", warned);
      }
    });

  const writer = makeWriter({
    transaction: (work) => transaction({ isolationLevel: "read committed" }, ONE_WRITER, work),
    // a connection that failed is not used again: there is nothing to mend
    renew: async () => {},
  });
  return {
    db,
    ...writer,
    async ping() {
      await db.select({ one: sql`1` }).from(sql`jobs`).limit(1);
    },
    bytes: () => undefined,
    atOneMoment: (look) =>
      transaction({ isolationLevel: "repeatable read", accessMode: "read only" }, undefined, (tx) => look(tx)),
    async close() {
      await writer.settled();
      await servers.end();
    },
  };
}

/** COMMIT of a transaction in which something failed rolls back, and calls that no failure: here it is one. */
function plain(client: pg.PoolClient): pg.PoolClient {
  const query = async (asked: { text: string }, values: unknown[]) => {
    const done = await client.query(asked, values);
    if (done.command === "ROLLBACK" && asked.text === "commit") throw new Error("a failed statement was passed over");
    return done;
  };
  return { query } as unknown as pg.PoolClient;
}

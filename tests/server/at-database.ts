import { readFile } from "node:fs/promises";
import { createClient } from "@libsql/client";
import pg from "pg";
import { pathOf } from "../../server/db/database-file.ts";
import { isPostgres } from "../../server/db/pg-url.ts";
import { connected } from "../postgres.ts";

/** What a test does to a database behind the server's back: by a connection of its own, whichever engine it is. */

/** One statement; its rows. */
export async function ask(url: string, statement: string): Promise<Record<string, unknown>[]> {
  if (isPostgres(url)) return connected(url, async (client) => (await client.query(statement)).rows);
  const client = createClient({ url });
  try {
    return (await client.execute(statement)).rows as unknown as Record<string, unknown>[];
  } finally {
    client.close();
  }
}

/** Takes what a writer needs, as another process may; hands back what lets go of it. */
export async function hold(url: string): Promise<() => Promise<void>> {
  if (!isPostgres(url)) {
    const client = createClient({ url });
    const held = await client.transaction("write");
    return async () => {
      await held.commit();
      client.close();
    };
  }
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  await client.query("BEGIN; LOCK TABLE jobs");
  return () => client.end();
}

/** All that it keeps, as text to be searched: the bytes of its files, or every row of every table. */
export async function everythingIn(url: string): Promise<string> {
  if (isPostgres(url)) return connected(url, allRows);
  const path = pathOf(url) ?? "";
  const bytes = await Promise.all([path, `${path}-wal`].map((one) => readFile(one, "latin1").catch(() => "")));
  return bytes.join("");
}

async function allRows(client: pg.Client): Promise<string> {
  const tables = await client.query<{ name: string }>(
    "SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public'",
  );
  const kept: string[] = [];
  for (const { name } of tables.rows) {
    const { rows } = await client.query<{ row: string }>(`SELECT t::text AS row FROM "${name}" t`);
    kept.push(...rows.map((one) => one.row));
  }
  return kept.join("\n");
}

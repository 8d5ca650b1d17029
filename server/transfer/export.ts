import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { getTableColumns, isNull, sql } from "drizzle-orm";
import type { AnySQLiteColumn } from "drizzle-orm/sqlite-core";
import type { Store } from "../db/open.ts";
import { keepsakes } from "../db/tables.ts";
import type { Db, Tx } from "../db/writer.ts";
import type { KeptFiles } from "../keepsakes/files.ts";
import { now } from "../moments.ts";
import { MIGRATIONS, ROOT } from "../places.ts";
import type { Value } from "./lines.ts";
import { type Going, tablesThatGo } from "./what-goes.ts";

const AT_ONCE = 500;

export interface Count {
  rows: number;
  files: number;
}

/** Hands over everything as lines of JSON: as it stood at one moment, whoever writes meanwhile. */
export const exportAll = (store: Store, kept: KeptFiles, line: (text: string) => Promise<void>): Promise<Count> =>
  store.atOneMoment((db) => writeLines(db, kept, line));

async function writeLines(db: Db | Tx, kept: KeptFiles, line: (text: string) => Promise<void>): Promise<Count> {
  const { version } = JSON.parse(await readFile(join(ROOT, "package.json"), "utf8")) as { version: string };
  const head = { handsfull: version, export: 1, schema: (await schemas()).at(-1), at: now().utc };
  await line(JSON.stringify(head));
  const count: Count = { rows: 0, files: 0 };
  for (const going of tablesThatGo()) count.rows += await writeTable(db, going, line);
  const wanted = db.selectDistinct({ sha256: keepsakes.sha256 }).from(keepsakes).where(isNull(keepsakes.removedAt));
  for (const { sha256 } of await wanted) {
    const bytes = await kept.read(sha256);
    if (!bytes) continue;
    await line(JSON.stringify({ file: sha256, base64: bytes.toString("base64") }));
    count.files++;
  }
  await line(JSON.stringify({ end: count }));
  return count;
}

async function writeTable(
  db: Db | Tx,
  { name, table, columns, key }: Going,
  line: (text: string) => Promise<void>,
): Promise<number> {
  const of: Record<string, AnySQLiteColumn> = getTableColumns(table);
  const keys = key.flatMap((one) => of[one] ?? []);
  const listed = (parts: unknown[]) =>
    sql.join(
      parts.map((part) => sql`${part}`),
      sql`, `,
    );
  let last: Record<string, unknown> | undefined;
  let rows = 0;
  for (;;) {
    const after = last && listed(key.map((one) => last?.[one]));
    const some: Record<string, unknown>[] = await db
      .select()
      .from(table)
      .where(after && sql`(${listed(keys)}) > (${after})`)
      .orderBy(...keys)
      .limit(AT_ONCE);
    for (const held of some) {
      const row = Object.fromEntries(columns.map((column) => [column.name, carried(held[column.key])]));
      await line(JSON.stringify({ table: name, row }));
    }
    rows += some.length;
    last = some.at(-1);
    if (!last) return rows;
  }
}

function carried(held: unknown): Value {
  if (held instanceof Uint8Array) return { base64: Buffer.from(held).toString("base64") };
  if (held === null || typeof held === "string" || typeof held === "number") return held;
  throw new Error(`a column holds a ${typeof held}, which no line can carry`);
}

/** The names of the migrations, in order: the last names the shape of the database. */
export async function schemas(): Promise<string[]> {
  const journal = JSON.parse(await readFile(join(MIGRATIONS, "meta/_journal.json"), "utf8")) as {
    entries: { tag: string }[];
  };
  return journal.entries.map((one) => one.tag);
}

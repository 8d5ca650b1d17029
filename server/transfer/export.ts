import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isNull, sql } from "drizzle-orm";
import { openStore, type Store } from "../db/open.ts";
import { keepsakes } from "../db/tables.ts";
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
export async function exportAll(store: Store, kept: KeptFiles, line: (text: string) => Promise<void>): Promise<Count> {
  const folder = await mkdtemp(join(tmpdir(), "handsfull-export-"));
  try {
    const copy = join(folder, "copy.db");
    await store.db.run(sql`VACUUM INTO ${copy}`);
    const still = await openStore(`file:${copy}`);
    try {
      return await writeLines(still, kept, line);
    } finally {
      await still.close();
    }
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function writeLines(store: Store, kept: KeptFiles, line: (text: string) => Promise<void>): Promise<Count> {
  const { version } = JSON.parse(await readFile(join(ROOT, "package.json"), "utf8")) as { version: string };
  const head = { handsfull: version, export: 1, schema: (await schemas()).at(-1), at: now().utc };
  await line(JSON.stringify(head));
  const count: Count = { rows: 0, files: 0 };
  for (const going of tablesThatGo()) count.rows += await writeTable(store, going, line);
  const wanted = store.db
    .selectDistinct({ sha256: keepsakes.sha256 })
    .from(keepsakes)
    .where(isNull(keepsakes.removedAt));
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
  store: Store,
  { name, table, columns }: Going,
  line: (text: string) => Promise<void>,
): Promise<number> {
  let after = -1;
  let rows = 0;
  for (;;) {
    const some = await store.db
      .select({ at: sql<number>`rowid`, row: table })
      .from(table)
      .where(sql`rowid > ${after}`)
      .orderBy(sql`rowid`)
      .limit(AT_ONCE);
    if (some.length === 0) return rows;
    for (const one of some) {
      after = one.at;
      const held = one.row as unknown as Record<string, unknown>;
      const row = Object.fromEntries(columns.map((column) => [column.name, carried(held[column.key])]));
      await line(JSON.stringify({ table: name, row }));
      rows++;
    }
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

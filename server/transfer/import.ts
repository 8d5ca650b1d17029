import { createReadStream } from "node:fs";
import { createInterface } from "node:readline";
import type { Who } from "../access.ts";
import { record } from "../audit/record.ts";
import type { Store } from "../db/open.ts";
import { jobs, phrases, valveTags } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { hashOf, type KeptFiles } from "../keepsakes/files.ts";
import { listAnew } from "../when-said/list-older.ts";
import { type Count, schemas } from "./export.ts";
import { headSchema, type Line, lineSchema, type Value } from "./lines.ts";
import { type Going, tablesThatGo } from "./what-goes.ts";

/** Why a file is not taken, in words, with the line. Nothing of it was kept. */
export class ImportRefused extends Error {}

const AT_ONCE = 100;

/**
 * Reads an export into an empty database: all of it or nothing. What is derived is reckoned again when asked for, so the
 * answers are the same.
 */
export async function importAll(store: Store, kept: KeptFiles, path: string, who: Who): Promise<Count> {
  await refuseFilled(store);
  // read to its end before anything is kept: a file that was cut off has no end
  const told = await look(path);
  await keepFiles(kept, path);
  await store.write(async (tx) => {
    const rows = await keepRows(tx, path);
    if (rows !== told.rows) throw new ImportRefused(`the file says ${told.rows} rows and holds ${rows}`);
    // what follows from the rows was left out, and is reckoned again
    await tx.update(valveTags).set({ stale: 1 });
    await tx.update(jobs).set({ unweighed: 1 });
    for (const { site } of await tx.selectDistinct({ site: phrases.site }).from(phrases)) await listAnew(tx, site);
    await record(tx, who, "database_imported", { rows: told.rows, files: told.files });
  });
  return told;
}

async function refuseFilled(store: Store): Promise<void> {
  for (const { name, table } of tablesThatGo()) {
    const [any] = await store.db.select().from(table).limit(1);
    if (any)
      throw new ImportRefused(
        `the database is not empty (${name} has rows): set DATA_DIR or DATABASE_URL to a new place. Nothing was changed.`,
      );
  }
}

async function look(path: string): Promise<Count> {
  let end: Count | undefined;
  const count: Count = { rows: 0, files: 0 };
  for await (const { line, n } of linesOf(path)) {
    if (end) throw new ImportRefused(`line ${n}: something stands behind the end`);
    if ("end" in line) end = line.end;
    else if ("table" in line) count.rows++;
    else if (hashOf(Buffer.from(line.base64, "base64")) !== line.file)
      throw new ImportRefused(`line ${n}: the bytes are not those of ${line.file}`);
    else count.files++;
  }
  if (!end) throw new ImportRefused("the file has no end: it was cut off. Export it again.");
  if (end.rows !== count.rows || end.files !== count.files)
    throw new ImportRefused(
      `the file says ${end.rows} rows and ${end.files} files, and holds ${count.rows} and ${count.files}`,
    );
  return end;
}

async function keepFiles(kept: KeptFiles, path: string): Promise<void> {
  for await (const { line } of linesOf(path))
    if ("file" in line) await kept.keep(Buffer.from(line.base64, "base64"), async () => undefined);
}

async function keepRows(tx: Tx, path: string): Promise<number> {
  const going = new Map(tablesThatGo().map((one) => [one.name, one]));
  let batch: { of: Going; rows: Record<string, unknown>[]; from: number } | undefined;
  let count = 0;
  const flush = async () => {
    if (!batch) return;
    try {
      await tx.insert(batch.of.table).values(batch.rows as never);
    } catch (cause) {
      throw new ImportRefused(`line ${batch.from} or soon after: ${batch.of.name} does not take it`, { cause });
    }
    batch = undefined;
  };
  for await (const { line, n } of linesOf(path)) {
    if (!("table" in line)) continue;
    const of = going.get(line.table);
    if (!of) throw new ImportRefused(`line ${n}: there is no table ${line.table.slice(0, 60)} here`);
    if (batch && (batch.of !== of || batch.rows.length >= AT_ONCE)) await flush();
    batch ??= { of, rows: [], from: n };
    batch.rows.push(rowOf(of, line.row, n));
    count++;
  }
  await flush();
  return count;
}

function rowOf({ name, columns }: Going, row: Record<string, Value>, n: number): Record<string, unknown> {
  const keys = new Map(columns.map((column) => [column.name, column.key]));
  return Object.fromEntries(
    Object.entries(row).map(([column, held]) => {
      const key = keys.get(column);
      if (!key) throw new ImportRefused(`line ${n}: ${name} has no column ${column.slice(0, 60)} here`);
      return [key, typeof held === "object" && held !== null ? Buffer.from(held.base64, "base64") : held];
    }),
  );
}

async function* linesOf(path: string): AsyncGenerator<{ line: Line; n: number }> {
  const input = createInterface({ input: createReadStream(path, "utf8"), crlfDelay: Number.POSITIVE_INFINITY });
  let n = 0;
  for await (const text of input) {
    n++;
    if (n === 1) await readHead(text);
    else if (text !== "") {
      const read = lineSchema.safeParse(parsed(text, n));
      if (!read.success) throw new ImportRefused(`line ${n}: this is no line of an export`);
      yield { line: read.data, n };
    }
  }
  if (n === 0) throw new ImportRefused("the file is empty");
}

async function readHead(text: string): Promise<void> {
  const head = headSchema.safeParse(parsed(text, 1));
  if (!head.success) throw new ImportRefused("line 1: this is no export of this log");
  if (!(await schemas()).includes(head.data.schema))
    throw new ImportRefused(
      `it was made by a newer version (${head.data.handsfull}, ${head.data.schema}): update this one`,
    );
}

function parsed(text: string, n: number): unknown {
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw new ImportRefused(`line ${n}: this is not JSON`, { cause });
  }
}

import { createHash } from "node:crypto";
import { and, eq, getTableColumns, inArray, type SQL, sql } from "drizzle-orm";
import type { AnySQLiteColumn, SQLiteTable } from "drizzle-orm/sqlite-core";
import type { Store } from "../db/open.ts";
import { calendarFeeds, reportSettings } from "../db/report-tables.ts";
import { answers, decisions } from "../db/review-tables.ts";
import { movedSites, siteKeeping } from "../db/tables.ts";
import type { Db, Tx } from "../db/writer.ts";
import { type Going, tablesThatGo } from "./what-goes.ts";

/** The rows of one site, read in order and put into another store: what an export holds, but of that site alone. */

const AT_ONCE = 200;
type Row = Record<string, unknown>;

/** What is done with by the clock is only ever one log's, and is handed over last. */
const AT_THE_END: unknown[] = [movedSites, reportSettings, calendarFeeds];
/** What is reckoned anew whenever somebody looks may differ between two that hold the same. */
const RECKONED: Record<string, string[]> = { jobs: ["revision", "stale", "unweighed"], valve_tags: ["stale"] };

/** The tables that hold a site's rows, those that others point at first; before sound, how long it is kept there. */
export const tablesOfSites = (): Going[] =>
  tablesThatGo()
    .filter(({ table }) => !AT_THE_END.includes(table) && (table === answers || "site" in getTableColumns(table)))
    .sort((one, other) => Number(other.table === siteKeeping) - Number(one.table === siteKeeping));

export async function* rowsOf(db: Db | Tx, going: Going, site: string): AsyncGenerator<Row[]> {
  const of: Record<string, AnySQLiteColumn> = getTableColumns(going.table);
  const keys = going.key.flatMap((one) => of[one] ?? []);
  let last: Row | undefined;
  for (;;) {
    const after = last && sql`(${listed(keys)}) > (${listed(going.key.map((one) => last?.[one]))})`;
    const some: Row[] = await db
      .select()
      .from(going.table)
      .where(and(isOf(going.table, site, db), after))
      .orderBy(...keys)
      .limit(AT_ONCE);
    if (some.length > 0) yield some;
    last = some.at(-1);
    if (some.length < AT_ONCE) return;
  }
}

/** An answer's site is that of its question. */
function isOf(table: SQLiteTable, site: string, db: Db | Tx): SQL | undefined {
  if (table === answers)
    return inArray(answers.question, db.select({ id: decisions.id }).from(decisions).where(eq(decisions.site, site)));
  return eq((getTableColumns(table) as unknown as { site: AnySQLiteColumn }).site, site);
}

/** Puts rows where there are none, and in the place of those that have changed since. */
export async function putRows(to: Store, { table, key, columns }: Going, rows: Row[]): Promise<void> {
  const of: Record<string, AnySQLiteColumn> = getTableColumns(table);
  const rest = columns.filter((column) => !key.includes(column.key));
  const set = Object.fromEntries(rest.map((column) => [column.key, sql.raw(`excluded."${column.name}"`)]));
  const target = key.flatMap((one) => of[one] ?? []);
  await to.write(async (tx) => {
    const insert = tx.insert(table).values(rows as never);
    await (rest.length > 0 ? insert.onConflictDoUpdate({ target, set: set as never }) : insert.onConflictDoNothing());
  });
}

/** What all of a site's rows are, in one line, and how many: two stores that say the same hold the same. */
export async function told(db: Db | Tx, site: string): Promise<{ rows: number; hash: string }> {
  const hash = createHash("sha256");
  let count = 0;
  for (const going of tablesOfSites()) {
    for await (const some of rowsOf(db, going, site)) {
      count += some.length;
      for (const row of some) hash.update(`${going.name} ${lineOf(going, row)}\n`);
    }
  }
  return { rows: count, hash: hash.digest("hex") };
}

function lineOf({ name, columns }: Going, row: Row): string {
  const said = columns.filter(({ key }) => !RECKONED[name]?.includes(key)).map(({ key }) => row[key]);
  return JSON.stringify(said.map((held) => (Buffer.isBuffer(held) ? held.toString("base64") : held)));
}

/** The ids of whoever is named in a site's record. */
export async function namedIn(db: Db | Tx, site: string): Promise<string[]> {
  const ids = new Set<string>();
  for (const { table } of tablesOfSites()) {
    const { person, owner } = getTableColumns(table) as unknown as Record<string, AnySQLiteColumn | undefined>;
    for (const named of [person, owner]) {
      if (!named) continue;
      const rows = await db
        .selectDistinct({ id: named })
        .from(table)
        .where(isOf(table, site, db));
      for (const { id } of rows) if (typeof id === "string") ids.add(id);
    }
  }
  return [...ids];
}

const listed = (parts: unknown[]) =>
  sql.join(
    parts.map((part) => sql`${part}`),
    sql`, `,
  );

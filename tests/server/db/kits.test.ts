import { is } from "drizzle-orm";
import { getTableConfig as ofPg, PgTable } from "drizzle-orm/pg-core";
import { getTableConfig as ofLite, SQLiteTable } from "drizzle-orm/sqlite-core";
import { expect, it } from "vitest";
import * as people from "../../../server/db/people-tables.ts";
import * as pg from "../../../server/db/pg-tables.ts";
import * as report from "../../../server/db/report-tables.ts";
import * as review from "../../../server/db/review-tables.ts";
import * as record from "../../../server/db/tables.ts";

/** Queries are written with one kit's tables and sent to either engine: whatever they name must be in both. */

interface Shape {
  name: string;
  columns: { name: string; notNull: boolean; default: unknown; primary: boolean }[];
  primaryKeys: { columns: { name: string }[] }[];
  foreignKeys: { reference(): { columns: { name: string }[] } }[];
  indexes: { config: { name?: string | undefined; unique?: boolean | undefined } }[];
}

const told = ({ name, columns, primaryKeys, foreignKeys, indexes }: Shape) => ({
  name,
  columns: columns.map(({ name, notNull, primary, default: other }) => ({ name, notNull, primary, default: other })),
  primaryKeys: primaryKeys.map((key) => key.columns.map((column) => column.name)),
  foreignKeys: foreignKeys.map((key) => key.reference().columns.map((column) => column.name)),
  indexes: indexes.map(({ config }) => `${config.name} ${config.unique ?? false}`),
});

const byName = (one: { name: string }, other: { name: string }) => one.name.localeCompare(other.name);

it("both kits make the same tables, and no table is forgotten in either", () => {
  const lite = Object.values({ ...record, ...people, ...review, ...report })
    .filter((one) => is(one, SQLiteTable))
    .map((one) => told(ofLite(one)));
  const inPg = (Object.values(pg) as unknown[])
    .filter((one) => is(one, PgTable))
    .map((one) => told(ofPg(one as PgTable) as unknown as Shape));
  expect(lite.length).toBeGreaterThan(20);
  expect(inPg.sort(byName)).toEqual(lite.sort(byName));
});

it("every text of PostgreSQL is kept in the order of bytes, whatever the database's own order", () => {
  const texts = (Object.values(pg) as unknown[])
    .filter((one) => is(one, PgTable))
    .flatMap((one) => ofPg(one as PgTable).columns)
    .map((column) => column.getSQLType())
    .filter((type) => type.startsWith("text"));
  expect(texts.length).toBeGreaterThan(100);
  expect([...new Set(texts)]).toEqual(['text COLLATE "C"']);
});

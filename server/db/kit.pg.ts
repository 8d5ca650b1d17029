import { bigint, customType, doublePrecision, index, pgTable, primaryKey, uniqueIndex } from "drizzle-orm/pg-core";
import type { Kit } from "./kit.lite.ts";

/**
 * What the same tables are made of in PostgreSQL: for its migrations. Queries are written with the tables of `lite`:
 * a query names tables and columns, and both kits name them alike (tests/server/db/kits.test.ts).
 */
export const pg = {
  table: pgTable,
  // the order of bytes, as in libSQL: a page goes on where the last one ended, and moments are compared as text
  text: customType<{ data: string }>({ dataType: () => 'text COLLATE "C"' }),
  // libSQL's reach to 64 bits
  integer: (name: string) => bigint(name, { mode: "number" }),
  real: doublePrecision,
  bytes: customType<{ data: Buffer }>({ dataType: () => "bytea" }),
  index,
  uniqueIndex,
  primaryKey,
} as unknown as Kit;

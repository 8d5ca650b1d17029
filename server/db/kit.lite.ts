import { blob, index, integer, primaryKey, real, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";

/** What tables are made of in libSQL. The types of every table are this kit's, whichever engine holds it. */
export const lite = {
  table: sqliteTable,
  text,
  integer,
  real,
  bytes: (name: string) => blob(name, { mode: "buffer" }),
  index,
  uniqueIndex,
  primaryKey,
};
export type Kit = typeof lite;

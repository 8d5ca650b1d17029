import { getTableColumns, is } from "drizzle-orm";
import { getTableConfig, SQLiteTable } from "drizzle-orm/sqlite-core";
import * as people from "../db/people-tables.ts";
import * as report from "../db/report-tables.ts";
import * as review from "../db/review-tables.ts";
import * as tables from "../db/tables.ts";

/** What an export leaves out, and why. Every other table goes, whoever adds it. */
const STAYS: Record<string, string> = {
  sessions: "a sign-in is of the machine it was made at",
  one_time_codes: "a code is over within the hour",
  sign_in_tries: "tries are counted where they are made",
  valve_states: "reckoned again when asked for",
  due: "reckoned again when asked for",
  owed: "reckoned again when asked for",
  review_items: "weighed again when somebody looks",
  word_days: "listed again out of the phrases",
  words_said: "listed again out of the phrases",
  days_to_list: "what is listed already is not the same there",
};

export interface Going {
  name: string;
  table: SQLiteTable;
  /** what each column is called in the file, by its name in the code */
  columns: { key: string; name: string }[];
  /** the columns that tell its rows apart, in order, by their names in the code */
  key: string[];
}

/** The tables of an export, those that others point at first. */
export function tablesThatGo(): Going[] {
  const all = Object.values({ ...tables, ...people, ...review, ...report }).filter((one) => is(one, SQLiteTable));
  const waiting = all.filter((one) => !(getTableConfig(one).name in STAYS));
  const going: Going[] = [];
  const placed = new Set<string>();
  while (waiting.length > 0) {
    const at = waiting.findIndex((one) =>
      getTableConfig(one).foreignKeys.every((key) => placed.has(getTableConfig(key.reference().foreignTable).name)),
    );
    const [table] = waiting.splice(at, 1);
    if (at < 0 || !table) throw new Error("two tables point at each other, or at one that stays");
    const { name, columns: all, primaryKeys } = getTableConfig(table);
    placed.add(name);
    const columns = Object.entries(getTableColumns(table)).map(([key, column]) => ({ key, name: column.name }));
    const apart = (primaryKeys[0]?.columns ?? all.filter((column) => column.primary)).map((column) => column.name);
    const key = apart.flatMap((column) => columns.filter((one) => one.name === column).map((one) => one.key));
    going.push({ name, table, columns, key });
  }
  // once it says that a site moved, no more of that site's rows are taken
  return going.sort(
    (one, other) => Number(one.table === tables.movedSites) - Number(other.table === tables.movedSites),
  );
}

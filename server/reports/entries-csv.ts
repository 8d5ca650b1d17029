import { entrySentence } from "../wording/sentences.ts";
import { csvOf } from "./csv.ts";
import type { EntryRow } from "./entry-rows.ts";

/** Keys of an entry that have a column each; what an entry does not have is left empty. */
const KEYS = [
  "type",
  "part",
  "condition",
  "absent",
  "unsure",
  "severity",
  "extent",
  "place",
  "work",
  "status",
  "count",
  "quantity",
  "bound",
  "value",
  "upper",
  "unit",
  "test",
  "result",
  "hazard",
  "size_in",
  "acts",
  "service",
  "text",
  "command",
] as const;

/** Entries as a table for spreadsheets. */
export function entriesCsv(rows: readonly EntryRow[]): string {
  const header = ["site", "day", "said_at", "valve", "job", "sentence", ...KEYS, "said", "phrase"];
  const lines = rows.map((row) => {
    const entry = row.entry as unknown as Record<string, unknown>;
    return [
      row.site,
      row.day,
      row.saidAt,
      row.tag,
      row.job,
      entrySentence(row.entry),
      ...KEYS.map((key) => cell(entry[key])),
      row.said,
      row.phrase ?? "",
    ];
  });
  return csvOf([header, ...lines]);
}

/** Numbers stay numbers to a spreadsheet: "-5" of a measurement is none of its formulas. */
function cell(value: unknown): string | number {
  if (typeof value === "number") return value;
  return value === undefined || value === null ? "" : String(value);
}

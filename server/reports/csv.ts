/**
 * Rows as CSV (RFC 4180), in UTF-8 with a byte order mark, which spreadsheets want. A field that one would run as a formula
 * gets an apostrophe before it: what people say may begin with = or +. A number stays one: "-5" is no formula.
 */
export const csvOf = (rows: readonly (readonly (string | number)[])[]): string =>
  `\ufeff${rows.map((row) => `${row.map(field).join(",")}\r\n`).join("")}`;

/** What begins a formula, also in the wide letters that a spreadsheet takes for the same. */
const FORMULA = /^[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/;

function field(value: string | number): string {
  if (typeof value === "number") return String(value);
  const text = FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

import { CsvError, parse } from "csv-parse/sync";
import type { Valve, ValveListRead } from "../../../core/index.ts";
import { valveSetUpSchema } from "../../../core/shapes/served.ts";
import { VALVE_COLUMNS } from "../../../core/shapes/valve-list.ts";
import { Refusal } from "../../errors.ts";

export type RowRead = ValveListRead["rows"][number] & { valve?: Valve & { tag: string } };

const NUMBERS = new Set<string>(["size_in", "port_in", "rated_dp_psi", "cv", "xT", "interval_months"]);
const MOST_ROWS = 5000;
const SEPARATORS = [",", ";", "\t"];

/** The site of a list, and the codes of the families that its valves can be of. */
export interface Where {
  site: string;
  families: readonly string[];
}

/** Reads the text of a spreadsheet, row by row; a row that cannot be read says why, and spoils no other. */
export function readList(csv: string, where: Where, known: ReadonlyMap<string, Valve>): RowRead[] {
  const [head = [], ...rows] = table(csv);
  const columns = head.map((name) => name.trim().toLowerCase().replaceAll(" ", "_").replace(/^xt$/, "xT"));
  const strange = columns.filter((name) => name !== "" && !(VALVE_COLUMNS as readonly string[]).includes(name));
  if (!columns.includes("tag") || strange.length > 0) {
    const what =
      strange.length > 0 ? `The columns ${strange.map(short).join(", ")} are not known.` : "There is no column tag.";
    throw new Refusal(400, `${what} The first row names the columns: ${VALVE_COLUMNS.join(", ")}; only tag is needed.`);
  }
  if (rows.length > MOST_ROWS) throw new Refusal(413, `At most ${MOST_ROWS} valves at once: send the list in pieces.`);
  const seen = new Map<string, number>();
  return rows.map((cells, at) => {
    const read = readRow(columns, cells, where, at + 2);
    if (!read.tag || read.becomes === "refused") return read;
    const before = seen.get(read.tag);
    if (before !== undefined) return refused(read.row, read.tag, [`${read.tag} stands in row ${before} already`]);
    seen.set(read.tag, read.row);
    return compared(read, known.get(read.tag));
  });
}

function table(csv: string): string[][] {
  const first = /^[^\r\n]*/.exec(csv.replace(/^\ufeff/, ""))?.[0] ?? "";
  // the one that the head has most of: spreadsheets of some countries write semicolons
  const delimiter = [...SEPARATORS].sort((a, b) => first.split(b).length - first.split(a).length)[0] ?? ",";
  try {
    return parse(csv, { bom: true, delimiter, relax_column_count: true, skip_empty_lines: true }) as string[][];
  } catch (cause) {
    if (!(cause instanceof CsvError)) throw cause;
    throw new Refusal(400, `The list cannot be read: ${cause.message}. Save it from the spreadsheet as CSV again.`, {
      cause,
    });
  }
}

function readRow(columns: readonly string[], cells: readonly string[], at: Where, row: number): RowRead {
  const { site, families } = at;
  const problems: string[] = [];
  const said: Record<string, unknown> = { site };
  if (cells.length > columns.length) problems.push(`it has ${cells.length} cells, and the head ${columns.length}`);
  columns.forEach((name, at) => {
    const cell = (cells[at] ?? "").trim();
    if (name === "" || cell === "") return;
    said[name] = NUMBERS.has(name)
      ? numberOf(cell)
      : name === "leak_class"
        ? cell.toUpperCase()
        : name === "tag"
          ? cell
          : cell.toLowerCase();
  });
  const read = valveSetUpSchema.safeParse(said);
  if (!read.success)
    problems.push(...read.error.issues.map((issue) => `${issue.path.join(".") || "row"}: ${worded(issue.message)}`));
  const family = said.family;
  if (typeof family === "string" && !families.includes(family))
    problems.push(`family: ${short(family)} is not known; there are ${families.join(", ")}`);
  const tag = read.success ? read.data.tag : undefined;
  if (problems.length > 0 || !read.success) return refused(row, tag, problems);
  const { site: _, ...valve } = read.data;
  return { row, tag: valve.tag, becomes: "new", problems: [], changes: [], valve };
}

/** A decimal comma is a decimal point; anything else that is no number is left for the shape to refuse. */
const numberOf = (cell: string): unknown => {
  const number = Number(cell.replace(/^(\d+),(\d+)$/, "$1.$2"));
  return Number.isFinite(number) ? number : cell;
};

function compared(read: RowRead, before: Valve | undefined): RowRead {
  if (!before || !read.valve) return read;
  const after = read.valve as Record<string, unknown>;
  const was = before as Record<string, unknown>;
  const changes = VALVE_COLUMNS.filter((name) => was[name] !== after[name]).map(
    (name) => `${name}: ${was[name] ?? "unsaid"} becomes ${after[name] ?? "unsaid"}`,
  );
  return { ...read, becomes: changes.length > 0 ? "changed" : "same", changes };
}

const refused = (row: number, tag: string | undefined, problems: string[]): RowRead => ({
  row,
  ...(tag ? { tag } : {}),
  becomes: "refused",
  problems,
  changes: [],
});

const short = (text: string) => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
const worded = (message: string) => message.replace(/^Invalid input: /, "");

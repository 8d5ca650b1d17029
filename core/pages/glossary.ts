import { sayingsOf } from "./sayings.ts";
import { type NamedRow, TABLES, type WordKind } from "./tables.ts";

/** One word of the log, as a page shows it. */
export interface WordLine {
  kind: WordKind;
  code: string;
  /** what the log calls it */
  name: string;
  /** a few other ways it is said, not all */
  says: string[];
  /** what it is, in a line; empty where the name says it all */
  help: string;
  /** failure mechanism of ISO 14224:2016 table B.2, where the row has one */
  iso?: string;
}

/** Every word the log knows, by name. Units that only stand in for another ("pounds") are left out. */
export function glossary(): WordLine[] {
  const lines = (Object.keys(TABLES) as WordKind[]).flatMap(wordsOf);
  return lines.sort((a, b) => compare(a.name.toLowerCase(), b.name.toLowerCase()) || compare(a.kind, b.kind));
}

/** The words of one table, in the order of its rows. */
export function wordsOf(kind: WordKind): WordLine[] {
  return TABLES[kind].filter((row) => !(kind === "unit" && STAND_INS.has(row.code))).map((row) => lineOf(kind, row));
}

/** Spoken alone these may be one unit or another: what stands around them settles which. */
const STAND_INS = new Set(["pound", "degree", "thou"]);

function lineOf(kind: WordKind, row: NamedRow): WordLine {
  const { code, name, iso } = row;
  const help = row.help && row.help !== name ? row.help : "";
  return { kind, code, name, says: sayingsOf(kind, row), help, ...(iso ? { iso } : {}) };
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

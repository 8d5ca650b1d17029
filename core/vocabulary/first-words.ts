import type { Pattern } from "./notation.ts";

/** Rows whose pattern begins with one word, told apart by the word behind it. */
export interface Opened<Row> {
  /** all of them, in the order of their table */
  all: Row[];
  /** those that may go on with this word, or with the one it is the plural of; most rows are ruled out by it at a glance */
  bySecond: Map<string, Row[]>;
  /** those that may go on with any word */
  free: Row[];
}

/** Whether a row may go on with a word, as heard or, of a plural, as one. */
const mayGoOn =
  (second: string) =>
  ({ pattern: { seconds } }: { pattern: Pattern }): boolean =>
    !seconds || seconds.has(second) || (second.endsWith("s") && seconds.has(second.slice(0, -1)));

/** Rows by the words their patterns may begin with. */
export function byFirstWord<Row extends { pattern: Pattern }>(rows: readonly Row[]): Map<string, Opened<Row>> {
  const byFirst = new Map<string, Opened<Row>>();
  for (const row of rows)
    for (const first of row.pattern.firsts) {
      const opened: Opened<Row> = byFirst.get(first) ?? { all: [], bySecond: new Map(), free: [] };
      opened.all.push(row);
      byFirst.set(first, opened);
    }
  for (const opened of byFirst.values()) {
    opened.free = opened.all.filter(({ pattern }) => !pattern.seconds);
    for (const one of opened.all.flatMap(({ pattern }) => [...(pattern.seconds ?? [])]))
      for (const second of [one, `${one}s`])
        if (!opened.bySecond.has(second)) opened.bySecond.set(second, opened.all.filter(mayGoOn(second)));
  }
  return byFirst;
}

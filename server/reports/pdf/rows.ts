import type { Block, Run } from "./blocks.ts";
import type { BreakLines, Line } from "./lines.ts";
import { BOX, COUNTS, DOT, KINDS, type Kind, LEADING, PAPER, ROOM, TOGETHER_AT_MOST } from "./looks.ts";
import type { Passage } from "./read-order.ts";

/** What stands side by side on a page, with all that is needed to draw it there. */
export interface Row {
  /** lines of words and where each begins, from the paper's left edge */
  lines: { line: Line; x: number }[];
  passage: Passage;
  before: number;
  height: number;
  after: number;
  /** no page ends between it and the row below, if that can be helped */
  stays: boolean;
  dot?: boolean;
  /** a line across the page under it */
  rule?: { width: number; grey: number };
  /** the frame it stands in; frames are told apart by their number */
  box?: number;
}

/** Lays blocks out as rows, one below the other, not knowing yet of pages. */
export function rowsOf(blocks: readonly Block[], breakLines: BreakLines): Row[] {
  let boxes = 0;
  const lay = (block: Block, inset: number): Row[] => {
    if ("together" in block) return together(block.together.map((one) => lay(one, inset)));
    if ("boxed" in block)
      return boxed(
        block.boxed.flatMap((one) => lay(one, BOX.side)),
        ++boxes,
      );
    if ("counts" in block) return counts(block.head, block.counts, breakLines);
    return paragraph(block.as, block.runs, inset, breakLines);
  };
  return blocks.flatMap((block) => lay(block, 0));
}

export const heightOf = (rows: readonly Row[]) =>
  rows.reduce((all, one) => all + one.before + one.height + one.after, 0);

function paragraph(as: Kind, runs: readonly Run[], inset: number, breakLines: BreakLines): Row[] {
  const { tag, before, after, heads, dot } = KINDS[as];
  const passage = { tag };
  const left = inset + (dot ? DOT.indent : 0);
  const lines = breakLines(runs, ROOM.width - inset - left);
  return lines.map((line, at) => {
    const last = at === lines.length - 1;
    // neither the first line nor the last of several stands alone on a page
    const pair = at === 0 || at === lines.length - 2;
    return {
      lines: [{ line, x: PAPER.left + left }],
      passage,
      before: at === 0 ? before : 0,
      height: line.height * LEADING,
      after: last ? after : 0,
      stays: heads === true || (pair && !last),
      ...(dot && at === 0 ? { dot } : {}),
    };
  });
}

function together(parts: readonly Row[][]): Row[] {
  const rows = parts.flat();
  if (heightOf(rows) > TOGETHER_AT_MOST) return rows;
  return rows.map((row, at) => (at < rows.length - 1 ? { ...row, stays: true } : row));
}

function boxed(rows: readonly Row[], box: number): Row[] {
  return rows.map((row, at) => ({
    ...row,
    box,
    before: row.before + (at === 0 ? BOX.gap + BOX.top : 0),
    after: row.after + (at === rows.length - 1 ? BOX.bottom + BOX.gap : 0),
  }));
}

function counts(head: string, all: readonly { what: string; count: number }[], breakLines: BreakLines): Row[] {
  const set = (text: string) => breakLines([{ text, pen: "plain" }], ROOM.width - COUNTS.room);
  const rows = all.flatMap(({ what, count }, at) => {
    const passage = { tag: "LBody" } as const;
    return set(`${what} `).map((line, nth, lines): Row => {
      const number = nth === 0 ? set(String(count)) : [];
      const last = nth === lines.length - 1;
      return {
        lines: [
          { line, x: PAPER.left },
          ...number.map((one) => ({ line: one, x: PAPER.left + ROOM.width - one.width })),
        ],
        passage,
        before: nth === 0 ? COUNTS.pad : 0,
        height: line.height * LEADING,
        after: last ? COUNTS.pad : 0,
        stays: !last || at < all.length - 1,
        ...(last && at < all.length - 1 ? { rule: { width: COUNTS.hair, grey: COUNTS.grey } } : {}),
      };
    });
  });
  const title = paragraph("head", [{ text: head, pen: "head" }], 0, breakLines);
  return [...title.map((row) => ({ ...row, rule: { width: COUNTS.underHead, grey: 0 } })), ...rows];
}

import type { BreakLines, Line, Typefaces } from "./lines.ts";
import { ALARM, BOX, COUNTS, DOT, FOOTER_TOP, PAPER, type PenLook, ROOM } from "./looks.ts";
import type { Placed } from "./pages.ts";
import type { Marks, Passage } from "./read-order.ts";
import type { Row } from "./rows.ts";

export type Footer = Row["lines"];

/**
 * A page as PDF's own marks, in few words: a text for each passage, then the footer, and the dots, rules and frames.
 * Measured from the upper left corner, as pdfkit turns each page, so letters are turned back.
 */
export function drawPage(placed: readonly Placed[], footer: Footer, faces: Typefaces): Marks[] {
  const text = new Text(faces);
  for (const { row, y } of placed)
    for (const { line, x } of row.lines)
      text.line(line, x, PAPER.top + y + (row.height - line.height) / 2, row.passage);
  for (const { line, x } of footer) text.line(line, x, FOOTER_TOP);
  const looks = [dots(placed), ...rules(placed), ...frames(placed)].filter(Boolean);
  return looks.length > 0 ? [...text.end(), { marks: looks.join("\n") }] : text.end();
}

/** The title and the page's number, of which page of how many. */
export function footerOf(title: string, page: number, pages: number, breakLines: BreakLines): Footer {
  const set = (text: string, room: number) => breakLines([{ text, pen: "soft" }], room).slice(0, 1);
  return [
    ...set(title, ROOM.width - 100).map((line) => ({ line, x: PAPER.left })),
    ...set(`page ${page} of ${pages}`, 90).map((line) => ({ line, x: PAPER.left + ROOM.width - line.width })),
  ];
}

class Text {
  private readonly done: Marks[] = [];
  private said: string[] = [];
  private passage: Passage | undefined;
  private pen: PenLook | undefined;

  constructor(private readonly faces: Typefaces) {}

  line({ stretches, baseline }: Line, x: number, y: number, passage?: Passage): void {
    if (stretches.length === 0) return;
    if (passage !== this.passage) this.next(passage);
    this.said.push(`1 0 0 -1 ${n(x)} ${n(y + baseline)} Tm`);
    for (const { pen, glyphs } of stretches) {
      if (pen !== this.pen) this.said.push(`/${this.faces[pen.weight].id} ${pen.size} Tf ${pen.ink} rg`);
      this.pen = pen;
      this.said.push(`[(${glyphs})] TJ`);
    }
  }

  end(): Marks[] {
    this.next(undefined);
    return this.done;
  }

  private next(passage: Passage | undefined): void {
    if (this.said.length > 0) this.done.push({ passage: this.passage, marks: `BT\n${this.said.join("\n")}\nET` });
    this.said = [];
    this.passage = passage;
  }
}

/** A dot is a line without length, with round ends. */
function dots(placed: readonly Placed[]): string {
  const at = placed.flatMap(({ row, y }) => {
    const [first] = row.lines;
    if (!row.dot || !first) return [];
    const left = n(first.x - DOT.indent + DOT.width);
    const middle = n(PAPER.top + y + (row.height - first.line.height) / 2 + first.line.baseline - 3.6);
    return `${left} ${middle} m ${left} ${middle} l`;
  });
  return at.length > 0 ? `1 J ${DOT.width} w 0 0 0 RG ${at.join(" ")} S 0 J` : "";
}

const rules = (placed: readonly Placed[]) =>
  placed.flatMap(({ row: { rule, height }, y }) => {
    if (!rule) return [];
    const at = n(PAPER.top + y + height + COUNTS.pad);
    return `${rule.width} w ${rule.grey} G ${PAPER.left} ${at} m ${n(PAPER.left + ROOM.width)} ${at} l S`;
  });

/** A frame goes around those of its rows that are on this page. */
function frames(placed: readonly Placed[]): string[] {
  const found = new Map<number, { top: number; bottom: number }>();
  for (const { row, y } of placed) {
    if (row.box === undefined) continue;
    const top = found.get(row.box)?.top ?? PAPER.top + y - BOX.top;
    found.set(row.box, { top, bottom: PAPER.top + y + row.height + BOX.bottom });
  }
  return [...found.values()].map(
    ({ top, bottom }) =>
      `${BOX.edge} w ${ALARM} RG ${PAPER.left + BOX.edge / 2} ${n(top)} ${n(ROOM.width - BOX.edge)} ${n(bottom - top)} re S`,
  );
}

/** A hundredth of a point is finer than any printer. */
const n = (value: number) => Math.round(value * 100) / 100;

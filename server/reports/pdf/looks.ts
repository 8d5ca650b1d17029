/** How a report looks on paper: measures in points (1/72 inch), colours as PDF has them (red, green, blue of 1). */

/** A4, and what is kept free around the words. */
export const PAPER = { width: 595.28, height: 841.89, left: 48, right: 48, top: 44, bottom: 52 } as const;
export const ROOM = {
  width: PAPER.width - PAPER.left - PAPER.right,
  height: PAPER.height - PAPER.top - PAPER.bottom,
} as const;

/** From the paper's top edge to the footer's words. */
export const FOOTER_TOP = PAPER.height - 38;

const BLACK = "0 0 0";
const GREY = "0.298 0.322 0.345";
export const ALARM = "0.639 0.071 0.106";

export type Weight = "regular" | "medium";
export interface PenLook {
  weight: Weight;
  size: number;
  ink: string;
}
const pens = {
  plain: { weight: "regular", size: 10.5, ink: BLACK },
  strong: { weight: "medium", size: 10.5, ink: BLACK },
  alarm: { weight: "medium", size: 10.5, ink: ALARM },
  soft: { weight: "regular", size: 9, ink: GREY },
  title: { weight: "medium", size: 19, ink: BLACK },
  head: { weight: "medium", size: 13, ink: BLACK },
  alarmHead: { weight: "medium", size: 13, ink: ALARM },
} satisfies Record<string, PenLook>;
export type Pen = keyof typeof pens;
export const PENS: Record<Pen, PenLook> = pens;

/** From line to line, in heights of the font's own line. */
export const LEADING = 1.2;

export interface KindLook {
  before: number;
  after: number;
  /** means nothing without what follows it */
  heads?: boolean;
  /** begins with a dot, and stands in behind it */
  dot?: boolean;
}
const kinds = {
  title: { before: 0, after: 6, heads: true },
  head: { before: 14, after: 4, heads: true },
  boxHead: { before: 0, after: 0, heads: true },
  valve: { before: 6, after: 1, heads: true },
  plain: { before: 0, after: 0 },
  item: { before: 1, after: 2, dot: true },
  boxItem: { before: 0, after: 0, dot: true },
  notice: { before: 6, after: 4 },
  soft: { before: 0, after: 0 },
  foot: { before: 4, after: 0 },
} satisfies Record<string, KindLook>;
export type Kind = keyof typeof kinds;
export const KINDS: Record<Kind, KindLook> = kinds;

export const DOT = { width: 2.8, indent: 12 } as const;
export const BOX = { gap: 6, side: 12, top: 5, bottom: 7, edge: 2 } as const;
export const COUNTS = { room: 60, pad: 3, underHead: 1.5, hair: 0.5, grey: 0.55 } as const;

/** More than this of a page is not left empty to keep a block together. */
export const TOGETHER_AT_MOST = ROOM.height / 3;

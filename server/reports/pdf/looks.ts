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

/** What a paragraph is to those who have it read out to them, by PDF's own names. */
export type Tag = "H1" | "H2" | "H3" | "P" | "LBody";

export interface KindLook {
  tag: Tag;
  before: number;
  after: number;
  /** means nothing without what follows it */
  heads?: boolean;
  /** begins with a dot, and stands in behind it */
  dot?: boolean;
}
const kinds = {
  title: { tag: "H1", before: 0, after: 6, heads: true },
  head: { tag: "H2", before: 14, after: 4, heads: true },
  boxHead: { tag: "H2", before: 0, after: 0, heads: true },
  valve: { tag: "H3", before: 6, after: 1, heads: true },
  plain: { tag: "P", before: 0, after: 0 },
  item: { tag: "LBody", before: 1, after: 2, dot: true },
  boxItem: { tag: "LBody", before: 0, after: 0, dot: true },
  notice: { tag: "P", before: 6, after: 4 },
  soft: { tag: "P", before: 0, after: 0 },
  foot: { tag: "P", before: 4, after: 0 },
} satisfies Record<string, KindLook>;
export type Kind = keyof typeof kinds;
export const KINDS: Record<Kind, KindLook> = kinds;

export const DOT = { width: 3, indent: 12 } as const;
export const BOX = { gap: 6, side: 12, top: 5, bottom: 7, edge: 2 } as const;
export const COUNTS = { room: 60, pad: 3, underHead: 1.5, hair: 0.5, grey: 0.55 } as const;

/** More than this of a page is not left empty to keep a block together. */
export const TOGETHER_AT_MOST = ROOM.height / 3;

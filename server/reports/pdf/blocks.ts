import type { Kind, Pen } from "./looks.ts";

/** Words written with one pen. */
export interface Run {
  text: string;
  pen: Pen;
}

/** What a document is made of, in the order it is read. Plain data: it goes to another thread. */
export type Block =
  | { as: Kind; runs: Run[] }
  /** stays on one page, unless it would leave too much of one empty */
  | { together: Block[] }
  /** with a frame around it */
  | { boxed: Block[] }
  /** a table of things and their numbers under its head, never torn */
  | { head: string; counts: { what: string; count: number }[] };

export interface PdfOrder {
  title: string;
  blocks: Block[];
}

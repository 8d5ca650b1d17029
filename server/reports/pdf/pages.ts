import { ROOM } from "./looks.ts";
import { heightOf, type Row } from "./rows.ts";

/** A row and how far its upper edge, without the space above it, is below the top of the page's room. */
export interface Placed {
  row: Row;
  y: number;
}

/**
 * Shares rows out to pages. Rows that stay together go to the next page together where they do not fit on this one;
 * what fits on no page begins where it is and is torn where the page ends.
 */
export function pagesOf(rows: readonly Row[]): Placed[][] {
  const pages = new Pages();
  for (const block of blocksOf(rows)) {
    if (pages.fits(block) || heightOf(block) > ROOM.height) pages.put(block);
    else pages.putOnNext(block);
  }
  return pages.all;
}

class Pages {
  readonly all: Placed[][] = [[]];
  private y = 0;

  /** What follows a block is no part of whether it fits. */
  fits(rows: readonly Row[]): boolean {
    return this.y + heightOf(rows) - (rows.at(-1)?.after ?? 0) <= ROOM.height;
  }

  put(rows: readonly Row[]): void {
    for (const row of rows) {
      const onTop = this.all.at(-1)?.length === 0;
      // space above the first row of a page would only lower it
      const y = this.y + (onTop && this.all.length > 1 ? 0 : row.before);
      if (y + row.height > ROOM.height && !onTop) {
        this.putOnNext([row]);
        continue;
      }
      this.all.at(-1)?.push({ row, y });
      this.y = y + row.height + row.after;
    }
  }

  putOnNext(rows: readonly Row[]): void {
    if (this.all.at(-1)?.length !== 0) this.all.push([]);
    this.y = 0;
    this.put(rows);
  }
}

/** Rows that stay together. */
function blocksOf(rows: readonly Row[]): Row[][] {
  const blocks: Row[][] = [];
  let block: Row[] = [];
  for (const row of rows) {
    block.push(row);
    if (row.stays) continue;
    blocks.push(block);
    block = [];
  }
  return block.length > 0 ? [...blocks, block] : blocks;
}

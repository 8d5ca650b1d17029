import { ROOM } from "./looks.ts";
import { type Hold, heightOf, type Row } from "./rows.ts";

/** A row and how far its upper edge, without the space above it, is below the top of the page's room. */
export interface Placed {
  row: Row;
  y: number;
}

/**
 * Shares rows out to pages. What holds together goes to the next page together where it does not fit on this one; what
 * fits on no page is torn where it holds less, and at last between any two rows.
 */
export function pagesOf(rows: readonly Row[]): Placed[][] {
  const pages = new Pages();
  for (const block of torn(rows, ["free"])) {
    if (pages.fits(block)) pages.put(block);
    else if (heightOf(block) <= ROOM.height) pages.putOnNext(block);
    else for (const part of torn(block, ["free", "rather"])) pages.fits(part) ? pages.put(part) : pages.putOnNext(part);
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

/** Parts between which a page may end. */
function torn(rows: readonly Row[], where: readonly Hold[]): Row[][] {
  const parts: Row[][] = [];
  let part: Row[] = [];
  for (const row of rows) {
    part.push(row);
    if (!where.includes(row.hold)) continue;
    parts.push(part);
    part = [];
  }
  return part.length > 0 ? [...parts, part] : parts;
}

import { StoreBusy } from "../../db/failures.ts";
import { movedSites as table } from "../../db/tables.ts";
import type { Tx } from "../../db/writer.ts";

/** Sites whose record is in another log, and its address; "" while they are being moved. */
export type MovedSites = ReadonlyMap<string, string>;

/** Looked up in the transaction that keeps what was said: between two there may be a move. */
export async function movedSites(tx: Pick<Tx, "select">): Promise<MovedSites> {
  return new Map((await tx.select().from(table)).map(({ site, to }) => [site, to]));
}

/** Why what was said there is refused. While the move is under way it can be neither taken nor refused. */
export function elsewhere(to: string): string {
  if (to === "") throw new StoreBusy("the site is being moved to another log");
  return `the record of its site is kept at ${to} now: open that address, and say it there`;
}

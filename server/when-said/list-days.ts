import type { Entry } from "../../core/index.ts";
import { wordDays, wordsSaid } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { wordsIn } from "./words-in.ts";

/** Where and when something was said: a site, and the moment as stored. */
interface Then {
  site: string;
  saidAt: string;
}

/** An entry and its phrase's place and time. */
export interface Noted extends Then {
  entry: Entry;
}

const ROWS_AT_ONCE = 250;

/**
 * Lists the words of what is being stored, or is read in the place of what was said then. A row a word, site and day, and
 * not one a phrase: people say the same few hundred words all day, so this takes a small part of the room that the phrases
 * do, and which phrases of a day have them is quickly looked through.
 */
export const listWords = (tx: Tx, said: readonly (Then & { text: string })[]): Promise<void> =>
  list(
    tx,
    said.flatMap(({ text, ...then }) => wordsIn(text).map((word) => ({ ...then, word }))),
  );

/** Lists parts and conditions of the entries that are being stored. They stay listed when the phrase reads otherwise later. */
export const listNoted = (tx: Tx, noted: readonly Noted[]): Promise<void> =>
  list(
    tx,
    noted.flatMap(({ entry, ...then }) => {
      const { part, condition } = entry as { part?: string | null; condition?: string | null };
      return part || condition ? { ...then, word: `${part ?? ""} ${condition ?? ""}` } : [];
    }),
  );

async function list(tx: Tx, said: readonly (Then & { word: string })[]): Promise<void> {
  const rows = new Map<string, typeof wordDays.$inferInsert>();
  for (const { site, saidAt, word } of said) {
    const day = dayOf(saidAt);
    rows.set(JSON.stringify([site, word, day]), { site, word, day });
  }
  const all = [...rows.values()];
  for (let at = 0; at < all.length; at += ROWS_AT_ONCE) {
    const fresh = await tx
      .insert(wordDays)
      .values(all.slice(at, at + ROWS_AT_ONCE))
      .onConflictDoNothing()
      .returning({ site: wordDays.site, word: wordDays.word });
    if (fresh.length > 0) await tx.insert(wordsSaid).values(fresh).onConflictDoNothing();
  }
}

/** The day of a moment as stored, in UTC: only to be looked up again. */
export const dayOf = (utc: string): string => utc.slice(0, 10);

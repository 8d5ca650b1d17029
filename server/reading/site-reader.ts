import { createHash } from "node:crypto";
import { and, asc, eq, inArray } from "drizzle-orm";
import { startListening, type TaughtWord } from "../../core/index.ts";
import { siteWords } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { type JobReading, nothingHeard } from "./read-job.ts";
import { READER } from "./version.ts";

/** The reader as it reads at one site: by the shipped words and those taught there. */
export interface SiteReader {
  /** names the reader and the words: where either changes, what was read before can be told apart */
  name: string;
  /** a job of the site in which nothing has been said */
  nothing: JobReading;
}

const SHIPPED: SiteReader = { name: READER, nothing: nothingHeard };

/** A lexicon takes milliseconds to build: kept by what it holds, the least lately used let go first. */
const made = new Map<string, SiteReader>();
const MOST = 50;

export async function siteReader(db: Pick<Tx, "select">, site: string): Promise<SiteReader> {
  return readerOfWords(await wordsRead(db, site));
}

/** The words read at a site: what is said, and what it means as JSON. */
export async function wordsRead(db: Pick<Tx, "select">, site: string): Promise<Map<string, string>> {
  const rows = await db
    .select({ say: siteWords.say, as: siteWords.as })
    .from(siteWords)
    .where(and(inArray(siteWords.site, ["", site]), eq(siteWords.withdrawn, 0)))
    .orderBy(asc(siteWords.say));
  // a word of every site may stand at this site too, and then means the same
  return new Map(rows.map((row) => [row.say, row.as]));
}

/** The reader that reads these words beside the shipped ones. */
export function readerOfWords(words: ReadonlyMap<string, string>): SiteReader {
  if (words.size === 0) return SHIPPED;
  const key = JSON.stringify([...words]);
  const reader = made.get(key) ?? readerOf(words, key);
  made.delete(key);
  made.set(key, reader);
  for (const oldest of made.keys()) {
    if (made.size <= MOST) break;
    made.delete(oldest);
  }
  return reader;
}

function readerOf(words: ReadonlyMap<string, string>, key: string): SiteReader {
  const taught = [...words].map(([say, as]): TaughtWord => ({ say, as: JSON.parse(as) as TaughtWord["as"] }));
  const hash = createHash("sha256").update(key).digest("hex").slice(0, 8);
  return { name: `${READER}.words-${hash}`, nothing: { ...nothingHeard, heard: startListening(taught) } };
}

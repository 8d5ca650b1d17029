import { and, desc, inArray, like, sql } from "drizzle-orm";
import { type TaughtWord, teach, type WordTried } from "../../core/index.ts";
import { EVERY_SITE, ofSites, type SitesSeen } from "../accounts/sites-seen.ts";
import type { Store } from "../db/open.ts";
import { jobs, phrases } from "../db/tables.ts";
import type { Tx } from "../db/writer.ts";
import { localDay } from "../moments.ts";
import { AFTER_ALL } from "../when-said/places.ts";
import { stretches } from "../when-said/stretches.ts";
import { type JobRow, phrasesToRead } from "./keep-reading.ts";
import { meaning } from "./meaning.ts";
import { eachPhrase, mainTag, readOn } from "./read-job.ts";
import { readerOfWords, wordsRead } from "./site-reader.ts";
import { type Reads, zoneOf } from "./what-is-known.ts";

/** Jobs looked at: those in which the word was said, the latest first, and the latest of all, where it may be heard wrong. */
const MOST_SAYING_IT = 300;
const LATEST = 60;
const MOST_SHOWN = 20;

export interface WordTry {
  site: string;
  say: string;
  as: TaughtWord["as"] | undefined;
  withdraw: boolean;
}

/** Which earlier phrases would read otherwise with a word, or without it. Nothing is kept. */
export async function tryWord(store: Store, wish: WordTry): Promise<WordTried> {
  const tried: WordTried = { phrases: [], count: 0, jobs: 0 };
  for (const job of await jobsSaying(store.db, wish.site ? [wish.site] : EVERY_SITE, wish.say)) {
    // hundreds of jobs take a while: others are answered in between
    await new Promise((turn) => setImmediate(turn));
    const changes = await changesIn(store.db, job, wish);
    tried.jobs++;
    tried.count += changes.length;
    tried.phrases.push(...changes.slice(0, MOST_SHOWN - tried.phrases.length));
  }
  return tried;
}

/** Jobs of these sites in which a word was said, and their latest. */
export async function jobsSaying(db: Reads, sites: SitesSeen, say: string): Promise<JobRow[]> {
  const at = ofSites(sites, jobs.site);
  // as written, the word may have signs between its parts; its longest part is looked for
  const part = say
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .sort((a, b) => b.length - a.length)[0];
  const latest = await db.select().from(jobs).where(at).orderBy(desc(jobs.startedAt)).limit(LATEST);
  if (!part) return latest;
  const saying = await idsSaying(db, sites, part);
  const named = await db.select().from(jobs).where(inArray(jobs.id, saying)).orderBy(desc(jobs.startedAt));
  return [...named, ...latest.filter((job) => !saying.includes(job.id))];
}

/** The latest in which these letters were said, as far as there are so many. */
async function idsSaying(db: Reads, sites: SitesSeen, part: string): Promise<string[]> {
  const ids = new Set<string>();
  const has = and(ofSites(sites, phrases.site), like(sql`lower(${phrases.text})`, `%${part}%`));
  for await (const { holds } of stretches(db, { words: [part] }, sites, { from: "", before: AFTER_ALL })) {
    const rows = await db.selectDistinct({ job: phrases.job }).from(phrases).where(and(has, holds));
    for (const { job } of rows) if (ids.size < MOST_SAYING_IT) ids.add(job);
    if (ids.size >= MOST_SAYING_IT) break;
  }
  return [...ids];
}

async function changesIn(db: Tx | Store["db"], job: JobRow, wish: WordTry): Promise<WordTried["phrases"]> {
  const words = await wordsRead(db, job.site);
  const trial = new Map(words);
  const written = wish.as && teach(wish.say, wish.as);
  if (wish.withdraw) trial.delete(wish.say);
  else if (written?.ok) trial.set(written.value.say, JSON.stringify(written.value.as));
  const said = await phrasesToRead(db, job);
  const tag = job.tag ?? undefined;
  const before = readOn(readerOfWords(words).nothing, said, tag);
  const after = readOn(readerOfWords(trial).nothing, said, tag);
  const zone = await zoneOf(db, job.site);
  const was = eachPhrase(before);
  return eachPhrase(after).flatMap(({ id, reading }, at) => {
    const old = was[at]?.reading;
    const mean = (entries: readonly object[]) => entries.map((entry) => meaning("", entry)).join("\n");
    const same = old && mean(old.entries) === mean(reading.entries) && old.unread.length === reading.unread.length;
    if (!old || same) return [];
    const main = mainTag(after.standing, job.tag);
    return [
      {
        phrase: id,
        job: job.id,
        ...(main ? { tag: main } : {}),
        day: localDay({ utc: job.startedAt, offset: job.startedOffset }, zone),
        text: reading.text,
        signed: job.signed === 1,
        before: old.entries,
        after: reading.entries,
      },
    ];
  });
}

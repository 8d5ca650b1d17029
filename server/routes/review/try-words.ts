import { eq } from "drizzle-orm";
import type { Tried } from "../../../core/index.ts";
import { type SitesSeen, seesSite } from "../../accounts/sites-seen.ts";
import type { Store } from "../../db/open.ts";
import { jobs, phrases } from "../../db/tables.ts";
import { phrasesToRead } from "../../reading/keep-reading.ts";
import { eachPhrase, readOn } from "../../reading/read-job.ts";
import { siteReader } from "../../reading/site-reader.ts";

/** What words in place of a phrase's own would become, read in their job by the words of its site. Nothing is kept. */
export async function tryWords(
  store: Store,
  phrase: string,
  text: string,
  seen: SitesSeen,
): Promise<Tried | undefined> {
  const [found] = await store.db
    .select({ job: jobs })
    .from(phrases)
    .innerJoin(jobs, eq(jobs.id, phrases.job))
    .where(eq(phrases.id, phrase));
  if (!found || !seesSite(seen, found.job.site)) return undefined;
  const said = (await phrasesToRead(store.db, found.job)).map((one) => (one.id === phrase ? { ...one, text } : one));
  const upTo = said.findIndex((one) => one.id === phrase);
  const { nothing } = await siteReader(store.db, found.job.site);
  const reading = eachPhrase(readOn(nothing, said.slice(0, upTo + 1), found.job.tag ?? undefined), upTo)[0]?.reading;
  if (!reading) return undefined;
  return {
    text: reading.text,
    entries: reading.entries,
    marks: reading.marks,
    unread: reading.unread.map((one) => ({ text: one.text, at: one.at })),
    ask: reading.ask.map((one) => one.question),
  };
}

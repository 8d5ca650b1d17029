import { and, asc, eq, inArray } from "drizzle-orm";
import { type SiteWord, type TaughtWord, teach, type WordResult } from "../../../core/index.ts";
import { siteWordSchema } from "../../../core/shapes/taught-word.ts";
import type { Who } from "../../access.ts";
import { EVERY_SITE } from "../../accounts/sites-seen.ts";
import { record } from "../../audit/record.ts";
import type { Store } from "../../db/open.ts";
import { siteWords } from "../../db/tables.ts";
import type { Tx } from "../../db/writer.ts";
import { keepReading } from "../../reading/keep-reading.ts";
import { jobsSaying } from "../../reading/try-word.ts";

/** The words taught at a site ("": for every site), oldest first. */
export async function wordsOf(db: Pick<Tx, "select">, site: string): Promise<SiteWord[]> {
  const rows = await db
    .select()
    .from(siteWords)
    .where(eq(siteWords.site, site))
    .orderBy(asc(siteWords.at), asc(siteWords.id));
  return rows.map(({ id, say, as, at, withdrawn }) => ({
    id,
    say,
    as: JSON.parse(as) as TaughtWord["as"],
    at,
    ...(withdrawn ? { withdrawn: true } : {}),
  }));
}

/** Keeps words that a device sent, each judged by itself, and reads the latest jobs again where any changed. */
export async function keepWords(
  store: Store,
  site: string,
  sent: readonly unknown[],
  who: Who,
): Promise<{ results: WordResult[]; words: SiteWord[] }> {
  return store.write(async (tx) => {
    const results: WordResult[] = [];
    let changed = false;
    const changedWords = new Set<string>();
    for (const raw of sent) {
      const kept = await keepWord(tx, site, raw);
      changed ||= kept.changed;
      if (kept.changed && kept.say) changedWords.add(kept.say);
      results.push(kept.result);
    }
    if (changed) {
      const kept = results.filter((one) => one.status === "stored").map((one) => one.id);
      await record(tx, who, "words_taught", { site, words: kept });
      await readAnew(tx, site, [...changedWords]);
    }
    return { results, words: await wordsOf(tx, site) };
  });
}

/** Reads again the jobs in which a word was said, and the latest, where it may have been heard wrong; signed ones stay. */
async function readAnew(tx: Tx, site: string, words: readonly string[]): Promise<void> {
  const done = new Set<string>();
  for (const word of words) {
    for (const job of await jobsSaying(tx, site ? [site] : EVERY_SITE, word)) {
      if (job.signed || done.has(job.id)) continue;
      done.add(job.id);
      await keepReading(tx, job);
    }
  }
}

interface Kept {
  result: WordResult;
  changed: boolean;
  /** the word as it is read */
  say?: string;
}

async function keepWord(tx: Tx, site: string, raw: unknown): Promise<Kept> {
  const read = siteWordSchema.safeParse(raw);
  if (!read.success) {
    const problem = read.error.issues.slice(0, 4).map((issue) => `${issue.path.join(".") || "word"}: ${issue.message}`);
    return refused(idOf(raw), `mend the word and send it again: ${problem.join("; ")}`);
  }
  const word = read.data;
  const [before] = await tx.select().from(siteWords).where(eq(siteWords.id, word.id));
  if (before) {
    const written = teach(word.say, word.as);
    const said = before.say === word.say || (written.ok && before.say === written.value.say);
    if (!said || before.site !== site || before.as !== JSON.stringify(word.as))
      return refused(word.id, "This id is already used by another word, which stays: use a new id.");
    const withdraws = Boolean(word.withdrawn) && before.withdrawn === 0;
    if (withdraws) await tx.update(siteWords).set({ withdrawn: 1 }).where(eq(siteWords.id, word.id));
    return { result: { id: word.id, status: withdraws ? "stored" : "known" }, changed: withdraws, say: before.say };
  }
  // taught and withdrawn before it ever came here: nothing to read, nothing to keep
  if (word.withdrawn) return { result: { id: word.id, status: "known" }, changed: false };
  const beside = await standingBeside(tx, site);
  const same = ({ say, as }: TaughtWord) => say === word.say && JSON.stringify(as) === JSON.stringify(word.as);
  if (beside.some((one) => one.site === site && same(one)))
    return { result: { id: word.id, status: "known" }, changed: false };
  const answer = teach(
    word.say,
    word.as,
    beside.filter((one) => one.site === site || !same(one)),
  );
  if (!answer.ok) return refused(word.id, answer.problem);
  const { say, as } = answer.value;
  await tx.insert(siteWords).values({ id: word.id, site, say, as: JSON.stringify(as), at: word.at, withdrawn: 0 });
  return { result: { id: word.id, status: "stored" }, changed: true, say };
}

/** The words that a new one is read beside: of the site and of every site; for one of every site, all there are. */
async function standingBeside(tx: Tx, site: string): Promise<(TaughtWord & { site: string })[]> {
  const standing = eq(siteWords.withdrawn, 0);
  const rows = await tx
    .select({ site: siteWords.site, say: siteWords.say, as: siteWords.as })
    .from(siteWords)
    .where(site ? and(inArray(siteWords.site, ["", site]), standing) : standing);
  return rows.map((row) => ({ ...row, as: JSON.parse(row.as) as TaughtWord["as"] }));
}

const refused = (id: string, problem: string) => ({
  result: { id, status: "refused" as const, problem },
  changed: false,
});

/** The id as it was sent, so that the sender finds its own; "" where it sent none. */
function idOf(raw: unknown): string {
  return typeof raw === "object" && raw !== null && "id" in raw && typeof raw.id === "string"
    ? raw.id.slice(0, 200)
    : "";
}

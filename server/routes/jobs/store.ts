import { and, asc, between, desc, eq, inArray } from "drizzle-orm";
import type { Entry, JobSummary, JobView, PhraseView } from "../../../core/index.ts";
import { namesOf } from "../../accounts/people.ts";
import { ofSites, type SitesSeen, seesSite } from "../../accounts/sites-seen.ts";
import type { Store } from "../../db/open.ts";
import { corrections, jobs, phrases, readings } from "../../db/tables.ts";
import { aroundDay, localDay, writeMoment } from "../../moments.ts";
import type { JobRow } from "../../reading/keep-reading.ts";
import { pastOf, pastOfJobs } from "../../reading/past.ts";
import { mainTag } from "../../reading/read-job.ts";
import { byJob, standingOfJobs } from "../../reading/standing-of-jobs.ts";
import { reckonJob, type ShareReckoned } from "../../reading/what-follows.ts";
import { zoneOf } from "../../reading/what-is-known.ts";
import { clipViews, keepsakesOfJob, photoViews } from "../keepsakes/store.ts";

/** A job with its phrases in the order said, what stands, and what follows; undefined where there is none to see. */
export async function jobView(store: Store, id: string, seen: SitesSeen): Promise<JobView | undefined> {
  const [job] = await store.db.select().from(jobs).where(eq(jobs.id, id));
  if (!job || !seesSite(seen, job.site)) return undefined;
  const beside = await keepsakesOfJob(store, job);
  const [said, standing, zone] = await Promise.all([
    phraseViews(store, job, beside),
    standingOf(store, job),
    zoneOf(store.db, job.site),
  ]);
  const day = dayOf(job, zone);
  const main = mainTag(standing, job.tag);
  const shares = await reckonJob(pastOf(store.db, job.site, zone), job, main, standing, day);
  const own = shares[0] as ShareReckoned;
  return {
    id: job.id,
    ...named(job.site, main),
    day,
    startedAt: startOf(job),
    receivedAt: writeMoment({ utc: job.receivedAt, offset: 0 }),
    valve: own.valve,
    phrases: said,
    photos: photoViews(beside.filter((one) => one.phrase === null)),
    entries: standing.map((one) => one.entry),
    unread: said.flatMap((one, phrase) => one.unread.map((words) => ({ phrase, ...words }))),
    ask: said.flatMap((one, phrase) => one.ask.map((question) => ({ phrase, question }))),
    consequences: own.consequences,
    valves: shares.map(({ tag, ...share }) => ({ ...(tag ? { tag } : {}), ...share })),
  };
}

/** Without a day there is no end to them: the newest so many. */
const MOST_WITHOUT_DAY = 200;

/** The jobs of these sites that started on a day of theirs, or the newest of all days. Oldest first. */
export async function jobsOf(store: Store, seen: SitesSeen, day: string | undefined): Promise<JobSummary[]> {
  const when = day ? between(jobs.startedAt, ...aroundDay(day)) : undefined;
  const newestFirst = store.db
    .select()
    .from(jobs)
    .where(and(ofSites(seen, jobs.site), when))
    .orderBy(desc(jobs.startedAt), desc(jobs.id));
  const rows = (await (day ? newestFirst : newestFirst.limit(MOST_WITHOUT_DAY))).reverse();
  const summaries = new Map<string, JobSummary>();
  for (const [site, own] of bySite(rows)) {
    const zone = await zoneOf(store.db, site);
    const wanted = own.filter((job) => day === undefined || dayOf(job, zone) === day);
    for (let at = 0; at < wanted.length; at += AT_ONCE)
      for (const one of await summariesOf(store, site, zone, wanted.slice(at, at + AT_ONCE)))
        summaries.set(one.id, one);
  }
  return rows.flatMap((job) => summaries.get(job.id) ?? []);
}

/** Jobs looked up at once. */
const AT_ONCE = 50;

function bySite(rows: readonly JobRow[]): Map<string, JobRow[]> {
  const sites = new Map<string, JobRow[]>();
  for (const row of rows) sites.set(row.site, [...(sites.get(row.site) ?? []), row]);
  return sites;
}

async function summariesOf(
  { db }: Store,
  site: string,
  zone: string | undefined,
  some: readonly JobRow[],
): Promise<JobSummary[]> {
  const ids = some.map((job) => job.id);
  const standing = await standingOfJobs(db, site, ids);
  const past = await pastOfJobs(db, site, zone, some, standing);
  const heard = byJob(
    await db
      .select({ job: readings.job, unread: readings.unread, alerts: readings.alerts })
      .from(readings)
      .where(and(eq(readings.site, site), inArray(readings.job, ids))),
  );
  const summaries: JobSummary[] = [];
  for (const job of some) {
    const own = standing.get(job.id) ?? [];
    const day = dayOf(job, zone);
    const shares = await reckonJob(past, job, mainTag(own, job.tag), own, day);
    summaries.push(summaryOf(job, day, own, heard.get(job.id) ?? [], shares));
  }
  return summaries;
}

function summaryOf(
  job: JobRow,
  day: string,
  standing: readonly { tag: string; entry: Entry }[],
  heard: readonly { unread: string; alerts: string }[],
  shares: readonly ShareReckoned[],
): JobSummary {
  const main = mainTag(standing, job.tag);
  const alerts = heard.flatMap((one) => JSON.parse(one.alerts) as Entry[]);
  const all = standing.map((one) => one.entry);
  const hazards = [...alerts, ...all].flatMap((entry) => (entry.type === "hazard" ? [entry.hazard] : []));
  const failed = shares.flatMap((share) =>
    share.consequences.followUps.filter((one) => one.rule === "test_failed").map((one) => one.test ?? "seat_leak"),
  );
  return {
    id: job.id,
    ...named(job.site, main),
    tags: [...new Set([main, ...standing.map((one) => one.tag)])].filter((tag) => tag !== ""),
    day,
    startedAt: startOf(job),
    phrases: heard.length,
    entries: all.length,
    unread: heard.filter((one) => one.unread !== "[]").length,
    hazards: [...new Set(hazards)],
    failedTests: [...new Set(failed)],
    now: shares.reduce(
      (sum, share) => sum + share.consequences.followUps.filter((one) => one.when === "now").length,
      0,
    ),
    finished: all.some((entry) => entry.type === "command" && entry.command === "finish"),
  };
}

type Beside = Awaited<ReturnType<typeof keepsakesOfJob>>;

async function phraseViews(store: Store, job: JobRow, beside: Beside): Promise<PhraseView[]> {
  const rows = await store.db
    .select({ phrase: phrases, reading: readings })
    .from(phrases)
    .innerJoin(readings, eq(readings.phrase, phrases.id))
    .where(and(eq(phrases.site, job.site), eq(phrases.job, job.id)))
    .orderBy(asc(phrases.saidAt), asc(phrases.id));
  const [later, names] = await Promise.all([correctionsOf(store, job), namesOf(store.db)]);
  const by = (person: string | null) => (person === null ? undefined : names.get(person));
  return rows.map(({ phrase, reading }) => ({
    id: phrase.id,
    job: phrase.job,
    text: phrase.text,
    saidAt: writeMoment({ utc: phrase.saidAt, offset: phrase.saidOffset }),
    how: phrase.how,
    ...(phrase.confidence === null ? {} : { confidence: phrase.confidence }),
    receivedAt: writeMoment({ utc: phrase.receivedAt, offset: 0 }),
    reader: reading.reader,
    entries: JSON.parse(reading.entries),
    unread: JSON.parse(reading.unread),
    ask: JSON.parse(reading.ask),
    marks: JSON.parse(reading.marks),
    alerts: JSON.parse(reading.alerts),
    touched: JSON.parse(reading.touched),
    ...(by(phrase.person) === undefined ? {} : { by: by(phrase.person) }),
    corrections: later.get(phrase.id) ?? [],
    clips: clipViews(beside.filter((one) => one.phrase === phrase.id)),
    photos: photoViews(beside.filter((one) => one.phrase === phrase.id)),
  }));
}

async function correctionsOf(store: Store, job: JobRow): Promise<Map<string, PhraseView["corrections"]>> {
  const rows = await store.db
    .select()
    .from(corrections)
    .where(and(eq(corrections.site, job.site), eq(corrections.job, job.id)))
    .orderBy(asc(corrections.madeAt), asc(corrections.id));
  const byPhrase = new Map<string, PhraseView["corrections"]>();
  for (const row of rows) {
    const all = byPhrase.get(row.phrase) ?? [];
    all.push({
      id: row.id,
      phrase: row.phrase,
      ...(row.text === null ? {} : { text: row.text }),
      ...(row.why === null ? {} : { why: row.why }),
      madeAt: writeMoment({ utc: row.madeAt, offset: row.madeOffset }),
    });
    byPhrase.set(row.phrase, all);
  }
  return byPhrase;
}

const standingOf = async ({ db }: Store, { id, site }: JobRow) => (await standingOfJobs(db, site, [id])).get(id) ?? [];

const startOf = (job: JobRow) => writeMoment({ utc: job.startedAt, offset: job.startedOffset });
const dayOf = (job: JobRow, zone: string | undefined) =>
  localDay({ utc: job.startedAt, offset: job.startedOffset }, zone);
const named = (site: string, tag: string) => ({ ...(site ? { site } : {}), ...(tag ? { tag } : {}) });

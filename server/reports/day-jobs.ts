import { and, asc, eq, inArray } from "drizzle-orm";
import { type Entry, followUpKey } from "../../core/index.ts";
import { namesOf } from "../accounts/people.ts";
import type { Store } from "../db/open.ts";
import { signatures } from "../db/review-tables.ts";
import { jobs, phrases, readings } from "../db/tables.ts";
import { clockTime, type Moment, writeMoment } from "../moments.ts";
import { type Owners, ownersOfSites } from "../owners/owners-of.ts";
import type { JobRow } from "../reading/keep-reading.ts";
import { pastOfJobs } from "../reading/past.ts";
import { mainTag } from "../reading/read-job.ts";
import { byJob, standingOfJobs } from "../reading/standing-of-jobs.ts";
import { reckonJob, type ShareReckoned } from "../reading/what-follows.ts";
import type { Reads } from "../reading/what-is-known.ts";
import type { DayJob } from "./day-report.ts";

/** A site's day, the names of those who may have said something on it, by person, and whose its follow-ups are. */
interface Telling {
  site: string;
  day: string;
  zone: string | undefined;
  names: ReadonlyMap<string, string>;
  owners: Owners;
}

/** Jobs read at once: fewer would ask the database more often, more would keep others waiting. */
const AT_ONCE = 25;

/** These jobs of a site's day as the report tells them, in the order given. */
export async function dayJobs(
  store: Store,
  of: Omit<Telling, "names" | "owners">,
  wanted: readonly { id: string }[],
): Promise<DayJob[]> {
  const telling = { ...of, names: await namesOf(store.db), owners: await ownersOfSites(store.db, [of.site]) };
  const told: DayJob[] = [];
  for (let at = 0; at < wanted.length; at += AT_ONCE) {
    // a day of hundreds of jobs takes a while: others are answered in between
    await new Promise((turn) => setImmediate(turn));
    const ids = wanted.slice(at, at + AT_ONCE).map((one) => one.id);
    told.push(...(await someJobs(store.db, telling, ids)));
  }
  return told;
}

async function someJobs(db: Reads, telling: Telling, ids: readonly string[]): Promise<DayJob[]> {
  const { site, zone, day, names } = telling;
  const rows = new Map(
    (
      await db
        .select()
        .from(jobs)
        .where(inArray(jobs.id, [...ids]))
    ).map((row) => [row.id, row]),
  );
  const said = await phrasesOf(db, site, ids);
  const standing = await standingOfJobs(db, site, ids);
  const signers = await signersOf(db, ids);
  const past = await pastOfJobs(db, site, zone, [...rows.values()], standing);
  const told: DayJob[] = [];
  for (const id of ids) {
    const job = rows.get(id);
    if (!job) continue;
    const own = standing.get(id) ?? [];
    const spoken = said.get(id) ?? [];
    told.push({
      ...signature(job, signers, names),
      time: clock({ utc: job.startedAt, offset: job.startedOffset }, zone),
      by: [...new Set(spoken.flatMap((one) => names.get(one.person ?? "") ?? []))],
      shares: await withOwners(await reckonJob(past, job, mainTag(own, job.tag), own, day), telling),
      phrases: spoken.map((one) => ({
        time: clock({ utc: one.saidAt, offset: one.saidOffset }, zone),
        text: one.text,
        unread: (JSON.parse(one.unread) as { text: string }[]).map((words) => words.text),
        alerts: JSON.parse(one.alerts) as Entry[],
      })),
    });
  }
  return told;
}

/** Whose the follow-ups of these shares are, where somebody has them. */
async function withOwners(shares: readonly ShareReckoned[], { site, day, owners }: Telling): Promise<DayJob["shares"]> {
  const told: DayJob["shares"] = [];
  for (const share of shares) {
    const { tag, consequences } = share;
    const named = new Map<string, string>();
    for (const key of consequences.followUps.map(followUpKey)) {
      const { owner } = await owners.of({ site, tag, key }, day);
      if (owner && !owner.left) named.set(key, owner.name);
    }
    told.push({ ...share, ...(named.size > 0 ? { owners: named } : {}) });
  }
  return told;
}

/** Who signed a job, where it stands signed. */
function signature(
  job: JobRow,
  signers: ReadonlyMap<string, string | null>,
  names: Telling["names"],
): Pick<DayJob, "signed"> {
  if (!job.signed || !signers.has(job.id)) return {};
  const by = names.get(signers.get(job.id) ?? "");
  return { signed: by === undefined ? {} : { by } };
}

/** HH:MM at the site; without a zone, as the device's own clock said. */
function clock(at: Moment, zone: string | undefined): string {
  return zone ? clockTime(at.utc, zone).slice(0, 5) : writeMoment(at).slice(11, 16);
}

/** What was said in each job, in the order said, with what was not read of it. */
async function phrasesOf(db: Reads, site: string, ids: readonly string[]) {
  const rows = await db
    .select({
      job: phrases.job,
      text: phrases.text,
      saidAt: phrases.saidAt,
      saidOffset: phrases.saidOffset,
      person: phrases.person,
      unread: readings.unread,
      alerts: readings.alerts,
    })
    .from(phrases)
    .innerJoin(readings, eq(readings.phrase, phrases.id))
    .where(and(eq(phrases.site, site), inArray(phrases.job, [...ids])))
    .orderBy(asc(phrases.job), asc(phrases.saidAt), asc(phrases.id));
  return byJob(rows);
}

/** Whose is the last word on each job: signed, or opened again. */
async function signersOf(db: Reads, ids: readonly string[]): Promise<Map<string, string | null>> {
  const rows = await db
    .select({ job: signatures.job, person: signatures.person })
    .from(signatures)
    .where(inArray(signatures.job, [...ids]))
    .orderBy(asc(signatures.job), asc(signatures.n));
  return new Map(rows.map((row) => [row.job, row.person]));
}

import { eq, inArray } from "drizzle-orm";
import type { Who } from "../../access.ts";
import { addsTo, onlySite, seesSite } from "../../accounts/sites-seen.ts";
import { jobs } from "../../db/tables.ts";
import type { Tx } from "../../db/writer.ts";
import { now } from "../../moments.ts";
import type { JobRow } from "../../reading/keep-reading.ts";
import { elsewhere, type MovedSites } from "./moved.ts";
import type { JobRead, Read } from "./sent.ts";

export interface JobResult {
  id: string;
  status: "stored" | "known" | "refused";
  problem?: string;
}
/**
 * `at` is the site it is kept at, "" for none; `site` in it stays as sent. `elsewhere`: refused as it is of a site that is
 * not his.
 */
export type SentJob = Read<JobRead & { at: string }> & { who: Who; elsewhere?: true };

/**
 * A job at the site it belongs to. Whoever is kept to sites has a job of any other refused, in words that say what to do,
 * and its phrases with it: a phrase at once changes what is owed and due at a valve, and that is for those who are of its
 * site. Nothing is lost by it: the device shows them as refused, keeps them, and sends them again when asked, once a lead
 * has added the site. It is refused alike whether there is such a site or not.
 *
 * A job that names no site is of the one site its sender is kept to, since nobody else could tell whose it is. Who is
 * kept to several has it taken all the same: words come first. It stays without a site, and those who see every site
 * see to it.
 */
export function atHisSite(read: Read<JobRead>, who: Who): SentJob {
  if (!read.ok) return { ...read, who };
  const job = read.value;
  if (job.site === undefined || seesSite(who.sees, job.site))
    return { ok: true, value: { ...job, at: job.site ?? onlySite(who.sees) ?? "" }, who };
  const problem = `You are kept to other sites than ${job.site}: ask a lead to add it to yours, then send it again.`;
  return { ok: false, id: job.id, problem, who, elsewhere: true };
}

/** A job of a site that is kept in another log is refused here, in words that say where it is taken. */
export function notMoved(one: SentJob, moved: MovedSites): SentJob {
  const to = one.ok ? moved.get(one.value.at) : undefined;
  if (!one.ok || to === undefined) return one;
  return { ok: false, id: one.value.id, problem: elsewhere(to), who: one.who, elsewhere: true };
}

/** Whether a job takes what somebody says. */
export const takesFrom = (job: JobRow, { sees }: Who): boolean => seesSite(addsTo(sees), job.site);

/** What became of each job sent, and those that are here now, by id. */
export async function keepJobs(
  tx: Tx,
  sent: readonly SentJob[],
): Promise<{ results: JobResult[]; here: Map<string, JobRow> }> {
  const here = await jobsById(
    tx,
    sent.flatMap((one) => (one.ok ? [one.value.id] : [])),
  );
  const results: JobResult[] = [];
  const fresh: JobRow[] = [];
  for (const one of sent) {
    if (!one.ok) {
      results.push({ id: one.id, status: "refused", problem: one.problem });
      continue;
    }
    const job = one.value;
    const before = here.get(job.id);
    if (before) {
      if (!takesFrom(before, one.who)) results.push({ id: job.id, status: "refused", problem: TAKEN });
      else if (sameJob(before, job)) results.push({ id: job.id, status: "known" });
      else results.push({ id: job.id, status: "refused", problem: OTHER_JOB });
      continue;
    }
    const row = {
      id: job.id,
      site: job.at,
      tag: job.tag ?? null,
      startedAt: job.moment.utc,
      startedOffset: job.moment.offset,
      receivedAt: now().utc,
      revision: 0,
      stale: 0,
      unweighed: 0,
      signed: 0,
    };
    fresh.push(row);
    here.set(job.id, row);
    results.push({ id: job.id, status: "stored" });
  }
  if (fresh.length > 0) await tx.insert(jobs).values(fresh);
  return { results, here };
}

const OTHER_JOB =
  "this id was used for another job (tag, site or start differ) and stays as first sent; its phrases are taken. Name another valve by saying so, or start a job with a new id";

/** Why a phrase is refused whose job was, or is not known. */
export function withoutJob(job: string, sent: readonly SentJob[], who: Who): string {
  for (const one of sent) {
    if (one.ok || one.id !== job || one.who !== who) continue;
    return one.elsewhere ? one.problem : `its job was refused (${one.problem}): mend the job, then send both again`;
  }
  return `no job ${job} is known here: send it in "jobs" with or before its phrases`;
}

/** All that is told of an id that was used at a site which the sender does not see. */
export const TAKEN = "this id was used before: send yours with a new id";

const sameJob = (row: JobRow, job: JobRead) =>
  row.tag === (job.tag ?? null) &&
  // one that names no site may be kept at its sender's: see atHisSite
  (job.site === undefined || row.site === job.site) &&
  row.startedAt === job.moment.utc;

export async function jobsById(tx: Tx, ids: readonly string[]): Promise<Map<string, JobRow>> {
  if (ids.length === 0) return new Map();
  const [only] = ids;
  const where = ids.length === 1 && only ? eq(jobs.id, only) : inArray(jobs.id, [...new Set(ids)]);
  return new Map((await tx.select().from(jobs).where(where)).map((row) => [row.id, row]));
}

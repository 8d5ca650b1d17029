import { and, eq, inArray, isNull } from "drizzle-orm";
import type { Who } from "../access.ts";
import { record } from "../audit/record.ts";
import type { Store } from "../db/open.ts";
import { people } from "../db/people-tables.ts";
import { calendarFeeds, reportSettings, reportVersions } from "../db/report-tables.ts";
import { jobs, keepsakes, movedSites, sites, valveTags } from "../db/tables.ts";
import type { Db, Tx } from "../db/writer.ts";
import type { KeptFiles } from "../keepsakes/files.ts";
import { now } from "../moments.ts";
import { listAnew } from "../when-said/list-older.ts";
import { namedIn, putRows, rowsOf, tablesOfSites, told } from "./site-rows.ts";

/** Why a site is not moved, in words. It stays where it is, and goes on there. */
export class MoveRefused extends Error {}

export interface Move {
  site: string;
  from: { store: Store; kept: KeptFiles };
  to: { store: Store; kept: KeptFiles };
  /** where people open the other log */
  address: string;
  who: Who;
}

/**
 * Moves a site's record to another store while both are served. Most of it is copied while it goes on here; then nothing
 * more is added to it here, what came meanwhile is copied, both are compared row by row, and only then does the other
 * hold it. Its rows stay here as they were, and take nothing more. Whatever goes wrong, the site goes on here; what was
 * copied by then is taken up when it is moved again.
 */
export async function moveSite(move: Move): Promise<{ rows: number; files: number }> {
  const { site, from, to } = move;
  // names this attempt: the hold of one that was killed is taken up, and of two at once only the later goes through
  const mine = now().utc;
  await from.store.write((tx) => tx.update(movedSites).set({ at: mine }).where(isHeld(site)));
  try {
    await refuseWrong(move);
    // what would stop the move at its end is better told before; nor may a store be copied onto itself
    await hold(move, mine);
    await letBe(move, mine);
    await from.store.atOneMoment((db) => copyRows(db, move));
    await copyFiles(move);
    await hold(move, mine);
    await copyRows(from.store.db, move);
    const files = await copyFiles(move);
    const [here, there] = [await told(from.store.db, site), await told(to.store.db, site)];
    if (here.hash !== there.hash)
      throw new MoveRefused(`the other log holds other rows of ${site} (${there.rows}, and ${here.rows} here)`);
    await handOver(move, mine, here.rows);
    return { rows: here.rows, files };
  } catch (cause) {
    await letBe(move, mine);
    throw cause;
  }
}

/** Nothing is added to its record here, and it is not yet the other's. */
const isHeld = (site: string) => and(eq(movedSites.site, site), eq(movedSites.to, ""));

/** It goes on here. */
const letBe = ({ site, from }: Move, mine: string) =>
  from.store.write((tx) => tx.delete(movedSites).where(and(isHeld(site), eq(movedSites.at, mine))));

async function refuseWrong({ site, from, to }: Move): Promise<void> {
  const [gone] = await from.store.db.select().from(movedSites).where(eq(movedSites.site, site));
  if (gone?.to) throw new MoveRefused(`${site} was moved to ${gone.to} at ${gone.at}`);
  const [own] = await from.store.db.select().from(sites).where(eq(sites.site, site));
  if (!own) throw new MoveRefused(`no site ${site} is set up here: what is of no site stays where it is`);
  const [other] = await to.store.db.select().from(sites).where(eq(sites.site, site));
  if (other && other.createdAt !== own.createdAt)
    throw new MoveRefused(`the other log has a site ${site} of its own: two records cannot be made one`);
  const [back] = await to.store.db.select().from(movedSites).where(eq(movedSites.site, site));
  if (back)
    throw new MoveRefused(`${site} was in the other log before, and was moved away from there: it takes nothing`);
  const names = await to.store.db
    .select({ id: people.id, name: people.nameKey })
    .from(people)
    .where(isNull(people.leftAt));
  const known = new Map(names.map((one) => [one.name, one.id]));
  for (const one of await peopleOf(from.store.db, site))
    if (one.leftAt === null && (known.get(one.nameKey) ?? one.id) !== one.id)
      throw new MoveRefused(`the other log knows somebody else as ${one.name}: have one of the two named otherwise`);
}

async function copyRows(db: Db | Tx, { site, to }: Move): Promise<void> {
  // without their passwords, and kept to this site: what they may beyond it is for a lead there to say
  const named = (await peopleOf(db, site)).map((one) => ({ ...one, password: null, sites: JSON.stringify([site]) }));
  if (named.length > 0) await to.store.write((tx) => tx.insert(people).values(named).onConflictDoNothing());
  for (const going of tablesOfSites())
    for await (const rows of rowsOf(db, going, site)) await putRows(to.store, going, rows);
}

async function peopleOf(db: Db | Tx, site: string) {
  const ids = await namedIn(db, site);
  return ids.length === 0 ? [] : db.select().from(people).where(inArray(people.id, ids));
}

async function copyFiles({ site, from, to }: Move): Promise<number> {
  const rows = await from.store.db
    .selectDistinct({ sha256: keepsakes.sha256 })
    .from(keepsakes)
    .where(and(eq(keepsakes.site, site), isNull(keepsakes.removedAt)));
  let count = 0;
  for (const { sha256 } of rows) {
    const bytes = await from.kept.read(sha256);
    if (!bytes) continue;
    await to.kept.keep(bytes, async () => undefined);
    count++;
  }
  return count;
}

const ON_ITS_WAY = ["waiting", "sending", "handing"] as const;

/** From here on nothing is added to the site's record here: triggers see to it, whoever asks. */
async function hold({ site, from, to }: Move, mine: string): Promise<void> {
  await from.store.write(async (tx) => {
    const [mail] = await tx
      .select({ day: reportVersions.day })
      .from(reportVersions)
      .where(and(eq(reportVersions.site, site), inArray(reportVersions.state, ON_ITS_WAY)));
    if (mail)
      throw new MoveRefused(`the report of ${mail.day} is on its way: wait until it went, or nobody can have it`);
    const held = { site, to: "", at: mine };
    await tx
      .insert(movedSites)
      .values(held)
      .onConflictDoUpdate({ target: movedSites.site, set: { at: mine } });
  });
  const [same] = await to.store.db.select().from(movedSites).where(eq(movedSites.site, site));
  if (same) throw new MoveRefused("both addresses lead to one database");
}

async function handOver(move: Move, mine: string, rows: number): Promise<void> {
  const { site, from, to, address } = move;
  await takeOver(move, rows);
  try {
    await letGo(move, mine, rows);
  } catch (cause) {
    // the answer may have been lost, and not the deed
    const [gone] = await from.store.db.select().from(movedSites).where(eq(movedSites.site, site));
    if (gone?.to === address) return;
    await to.store.write(async (tx) => {
      await tx.delete(reportSettings).where(eq(reportSettings.site, site));
      await tx.delete(calendarFeeds).where(eq(calendarFeeds.site, site));
    });
    throw cause;
  }
}

async function takeOver({ site, from, to, who, address }: Move, rows: number): Promise<void> {
  const reports = await from.store.db.select().from(reportSettings).where(eq(reportSettings.site, site));
  const calendars = await from.store.db.select().from(calendarFeeds).where(eq(calendarFeeds.site, site));
  await to.store.write(async (tx) => {
    // what follows from the rows was left behind, and is reckoned again
    await tx.update(valveTags).set({ stale: 1 }).where(eq(valveTags.site, site));
    await tx.update(jobs).set({ unweighed: 1 }).where(eq(jobs.site, site));
    await listAnew(tx, site);
    if (reports.length > 0) await tx.insert(reportSettings).values(reports);
    if (calendars.length > 0) await tx.insert(calendarFeeds).values(calendars);
    await record(tx, who, "site_taken_over", { site, rows, address });
  });
}

/** Its reports and its calendar are the other's to give from here on. */
async function letGo({ site, from, who, address }: Move, mine: string, rows: number): Promise<void> {
  await from.store.write(async (tx) => {
    const gone = await tx
      .update(movedSites)
      .set({ to: address, at: now().utc })
      .where(and(isHeld(site), eq(movedSites.at, mine)))
      .returning({ site: movedSites.site });
    if (gone.length === 0) throw new MoveRefused(`another move of ${site} was begun meanwhile`);
    await tx.delete(reportSettings).where(eq(reportSettings.site, site));
    await tx.delete(calendarFeeds).where(eq(calendarFeeds.site, site));
    await record(tx, who, "site_moved", { site, rows, address });
  });
}

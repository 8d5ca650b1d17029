import { and, asc, eq, isNull } from "drizzle-orm";
import type { ClipSent, ClipView, KeepsakeResult, PhotoSent, PhotoView } from "../../../core/index.ts";
import type { Who } from "../../access.ts";
import { addsTo, ofSites, type SitesSeen, seesSite } from "../../accounts/sites-seen.ts";
import type { Store } from "../../db/open.ts";
import { jobs, keepsakes, phrases } from "../../db/tables.ts";
import { Refusal } from "../../errors.ts";
import type { Picture, Sound } from "../../keepsakes/content.ts";
import { hashOf, type KeptFiles } from "../../keepsakes/files.ts";
import { keepingOf, tooOldBefore } from "../../keepsakes/keeping.ts";
import { type Moment, now, readMoment, writeMoment } from "../../moments.ts";
import type { Reads } from "../../reading/what-is-known.ts";

type Row = typeof keepsakes.$inferSelect;
type Given = { store: Store; kept: KeptFiles };

/** Keeps the sound of a phrase, unless its site keeps none or no longer any that old. What it answers is on disk. */
export function keepClip(given: Given, id: string, sent: ClipSent, sound: Sound, who: Who): Promise<KeepsakeResult> {
  const taken = momentOf(sent.at);
  const phraseOf = async (db: Reads) => {
    const [said] = await db
      .select({ job: phrases.job, site: phrases.site })
      .from(phrases)
      .where(eq(phrases.id, sent.phrase));
    if (!said || !seesSite(addsTo(who.sees), said.site))
      throw new Refusal(404, `No phrase ${sent.phrase} is stored here: send the phrase first, then its sound.`);
    return said;
  };
  return keep(given, id, sound.bytes, phraseOf, async (db, said) => {
    const keeping = await keepingOf(db, said.site);
    if (keeping.clips === "none") return { as: "unwanted", why: "this site keeps no sound" };
    const before = tooOldBefore(keeping, new Date());
    if (before && taken.utc < before)
      return { as: "unwanted", why: `this site keeps sound for ${keeping.days} days, and this is older` };
    return {
      as: "new",
      row: {
        ...said,
        kind: "clip",
        phrase: sent.phrase,
        seconds: sent.seconds,
        type: sound.type,
        ...of(id, taken, who),
        sha256: hashOf(sound.bytes),
        bytes: sound.bytes.length,
      },
    };
  });
}

/** Keeps a photograph with its phrase or, where none is named, with its job. */
export function keepPhoto(
  given: Given,
  id: string,
  sent: PhotoSent,
  picture: Picture,
  who: Who,
): Promise<KeepsakeResult> {
  const taken = momentOf(sent.at);
  const jobOf = async (db: Reads) => {
    const [job] = await db.select({ id: jobs.id, site: jobs.site }).from(jobs).where(eq(jobs.id, sent.job));
    if (!job || !seesSite(addsTo(who.sees), job.site))
      throw new Refusal(404, `No job ${sent.job} is stored here: send the job first, then its photographs.`);
    return job;
  };
  return keep(given, id, picture.bytes, jobOf, async (db, job) => {
    if (sent.phrase) {
      const [said] = await db.select({ job: phrases.job }).from(phrases).where(eq(phrases.id, sent.phrase));
      if (!said)
        throw new Refusal(404, `No phrase ${sent.phrase} is stored here: send the phrase first, then its photograph.`);
      if (said.job !== job.id)
        throw new Refusal(409, "The phrase is of another job: send the photograph with that one.");
    }
    const { type, width, height, bytes } = picture;
    return {
      as: "new",
      row: {
        site: job.site,
        kind: "photo",
        job: job.id,
        phrase: sent.phrase ?? null,
        type,
        width,
        height,
        ...of(id, taken, who),
        sha256: hashOf(bytes),
        bytes: bytes.length,
      },
    };
  });
}

type Judged =
  | { as: "new"; row: typeof keepsakes.$inferInsert }
  | { as: "known" }
  /** its site keeps no such thing */
  | { as: "unwanted"; why: string };

/**
 * Judged before anything is written, since sound that is not to be kept must not reach the disk at all; then the file,
 * then the row, judged again inside its transaction. `find` comes first and gives what it belongs to, or refuses: who
 * does not see that is told nothing of the id.
 */
async function keep<Found>(
  given: Given,
  id: string,
  bytes: Uint8Array,
  find: (db: Reads) => Promise<Found>,
  decide: (db: Reads, found: Found) => Promise<Judged>,
): Promise<KeepsakeResult> {
  const judge = async (db: Reads): Promise<Judged> => {
    const found = await find(db);
    const [before] = await db.select({ sha256: keepsakes.sha256 }).from(keepsakes).where(eq(keepsakes.id, id));
    if (!before) return decide(db, found);
    if (before.sha256 === hashOf(bytes)) return { as: "known" };
    throw new Refusal(409, OTHER);
  };
  const first = await judge(given.store.db);
  if (first.as !== "new") return resultOf(id, first);
  return given.kept.keep(bytes, () =>
    given.store.write(async (tx) => {
      const judged = await judge(tx);
      if (judged.as === "new") await tx.insert(keepsakes).values(judged.row);
      return resultOf(id, judged);
    }),
  );
}

const OTHER = "This id is already used by another clip or photograph, which stays: send yours with a new id.";

function resultOf(id: string, judged: Judged): KeepsakeResult {
  if (judged.as === "unwanted") return { id, status: "not_kept", why: judged.why };
  return { id, status: judged.as === "new" ? "stored" : "known" };
}

function momentOf(at: string): Moment {
  const moment = readMoment(at);
  if (!moment) throw new Refusal(400, "at is no time that can be kept: send ISO 8601 with offset.");
  return moment;
}

const of = (id: string, taken: Moment, who: Who) => ({
  id,
  takenAt: taken.utc,
  takenOffset: taken.offset,
  device: who.device ?? null,
  person: who.person ?? null,
  receivedAt: now().utc,
});

/** A clip or photograph by its id; undefined where there is none of that kind to see. */
export async function keepsakeOf(
  store: Store,
  kind: Row["kind"],
  id: string,
  seen: SitesSeen,
): Promise<Row | undefined> {
  const [row] = await store.db
    .select()
    .from(keepsakes)
    .where(and(eq(keepsakes.id, id), eq(keepsakes.kind, kind), ofSites(seen, keepsakes.site)));
  return row;
}

/** All that is still kept of a job, in the order taken. */
export async function keepsakesOfJob(store: Store, job: { id: string; site: string }): Promise<Row[]> {
  return store.db
    .select()
    .from(keepsakes)
    .where(and(eq(keepsakes.site, job.site), eq(keepsakes.job, job.id), isNull(keepsakes.removedAt)))
    .orderBy(asc(keepsakes.takenAt), asc(keepsakes.id));
}

const takenAt = (row: Row) => writeMoment({ utc: row.takenAt, offset: row.takenOffset });

export const clipViews = (rows: readonly Row[]): ClipView[] =>
  rows.flatMap((row) =>
    row.kind === "clip" ? [{ id: row.id, at: takenAt(row), seconds: row.seconds ?? 0, type: row.type }] : [],
  );

export const photoViews = (rows: readonly Row[]): PhotoView[] =>
  rows.flatMap((row) =>
    row.kind === "photo"
      ? [{ id: row.id, at: takenAt(row), type: row.type, width: row.width ?? 0, height: row.height ?? 0 }]
      : [],
  );

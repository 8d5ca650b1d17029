import { eq } from "drizzle-orm";
import type { Correction } from "../../../core/index.ts";
import type { Who } from "../../access.ts";
import { record } from "../../audit/record.ts";
import type { Store } from "../../db/open.ts";
import { corrections, jobs, phrases } from "../../db/tables.ts";
import { now, readMoment } from "../../moments.ts";
import { keepReading, type RecentJobs } from "../../reading/keep-reading.ts";

export type Corrected =
  | { ok: true; status: "stored" | "known" }
  | { ok: false; status: 400 | 404 | 409; problem: string };

/** Keeps a correction as a record of its own and reads the job again with it in place; the phrase stays as heard. */
export async function correct(
  given: { store: Store; recent: RecentJobs },
  sent: Correction,
  who: Who,
): Promise<Corrected> {
  const madeAt = readMoment(sent.madeAt);
  if (!madeAt)
    return { ok: false, status: 400, problem: "madeAt is no time that can be kept: send ISO 8601 with offset." };
  return given.store.write(async (tx): Promise<Corrected> => {
    const [before] = await tx.select().from(corrections).where(eq(corrections.id, sent.id));
    if (before) {
      const same =
        before.phrase === sent.phrase && before.text === (sent.text ?? null) && before.why === (sent.why ?? null);
      if (same) return { ok: true, status: "known" };
      return {
        ok: false,
        status: 409,
        problem: "This id is already used by another correction, which stays: use a new id.",
      };
    }
    const [found] = await tx
      .select({ job: jobs })
      .from(phrases)
      .innerJoin(jobs, eq(jobs.id, phrases.job))
      .where(eq(phrases.id, sent.phrase));
    if (!found) return { ok: false, status: 404, problem: `No phrase ${sent.phrase} is stored here: send it first.` };
    await tx.insert(corrections).values({
      id: sent.id,
      site: found.job.site,
      job: found.job.id,
      phrase: sent.phrase,
      text: sent.text ?? null,
      why: sent.why ?? null,
      person: who.person ?? null,
      madeAt: madeAt.utc,
      madeOffset: madeAt.offset,
      receivedAt: now().utc,
    });
    await keepReading(tx, found.job);
    await record(tx, who, "phrase_corrected", { correction: sent.id, phrase: sent.phrase, job: found.job.id });
    return { ok: true, status: "stored" };
  });
}

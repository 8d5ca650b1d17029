import { eq } from "drizzle-orm";
import type { Correction } from "../../../core/index.ts";
import type { Who } from "../../access.ts";
import { record } from "../../audit/record.ts";
import type { Store } from "../../db/open.ts";
import { corrections } from "../../db/tables.ts";
import { readMoment } from "../../moments.ts";
import { amend } from "../../review/amend.ts";
import { frozenWords, phraseAndJob } from "../../review/decide.ts";

export type Corrected =
  | { ok: true; status: "stored" | "known" }
  | { ok: false; status: 400 | 404 | 409; problem: string };

/**
 * Keeps a correction as a record of its own and reads the job again with it in place; the phrase stays as heard. A
 * signed job takes none. It is no decision: the phrase stays in the lead's queue, as it reads now.
 */
export async function correct(store: Store, sent: Correction, who: Who): Promise<Corrected> {
  const madeAt = readMoment(sent.madeAt);
  if (!madeAt)
    return { ok: false, status: 400, problem: "madeAt is no time that can be kept: send ISO 8601 with offset." };
  return store.write(async (tx): Promise<Corrected> => {
    const found = await phraseAndJob(tx, sent.phrase, who.sees);
    if (!found) return { ok: false, status: 404, problem: `No phrase ${sent.phrase} is stored here: send it first.` };
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
    const frozen = await frozenWords(tx, found.job);
    if (frozen) return { ok: false, status: 409, problem: frozen };
    const { id, phrase, text = null, why = null } = sent;
    await amend(tx, found.job, { id, phrase, text, why, madeAt }, who);
    await record(tx, who, "phrase_corrected", { correction: id, phrase, job: found.job.id });
    return { ok: true, status: "stored" };
  });
}

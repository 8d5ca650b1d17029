import type { z } from "zod";
import type { Job, Phrase } from "../../../core/index.ts";
import { keepable, siteKeySchema, tagKeySchema } from "../../../core/shapes/served.ts";
import { jobSchema, phraseSchema } from "../../../core/shapes/wire.ts";
import { type Moment, readMoment } from "../../moments.ts";

/** What a device sent, each read by itself: the thing, or its id and what is wrong with it. */
export type Read<T> = { ok: true; value: T } | { ok: false; id: string; problem: string };
export type PhraseRead = Phrase & { moment: Moment };
export type JobRead = Job & { moment: Moment };

export function readJob(raw: unknown): Read<JobRead> {
  const read = jobSchema.safeParse(raw);
  if (!read.success) return { ok: false, id: idOf(raw), problem: problemOf("job", read.error) };
  const job = read.data;
  const moment = readMoment(job.startedAt);
  if (!moment)
    return { ok: false, id: job.id, problem: "startedAt is no time that can be kept: send ISO 8601 with offset" };
  const tag = job.tag === undefined ? undefined : tagKeySchema.safeParse(job.tag);
  const site = job.site === undefined ? undefined : siteKeySchema.safeParse(job.site);
  if (tag && !tag.success) return { ok: false, id: job.id, problem: problemOf("tag", tag.error) };
  if (site && !site.success) return { ok: false, id: job.id, problem: problemOf("site", site.error) };
  return { ok: true, value: { ...job, tag: tag?.data, site: site?.data, moment } };
}

export function readPhrase(raw: unknown): Read<PhraseRead> {
  const read = phraseSchema.safeParse(raw);
  if (!read.success) return { ok: false, id: idOf(raw), problem: problemOf("phrase", read.error) };
  const phrase = read.data;
  const moment = readMoment(phrase.saidAt);
  if (!moment)
    return { ok: false, id: phrase.id, problem: "saidAt is no time that can be kept: send ISO 8601 with offset" };
  if (!keepable(phrase.text)) {
    return {
      ok: false,
      id: phrase.id,
      problem: "text holds a NUL or half a surrogate pair, which cannot be kept as sent: send it without",
    };
  }
  return { ok: true, value: { ...phrase, moment } };
}

/** The id as it was sent, so that the sender finds its own; "" where it sent none. */
function idOf(raw: unknown): string {
  if (typeof raw !== "object" || raw === null || !("id" in raw)) return "";
  return typeof raw.id === "string" ? raw.id.slice(0, 200) : String(raw.id).slice(0, 200);
}

function problemOf(what: string, error: z.ZodError): string {
  const words = error.issues
    .slice(0, 4)
    .map((issue) => `${issue.path.map(String).join(".") || what}: ${issue.message}`);
  return `mend the ${what} and send it again: ${words.join("; ")}`;
}

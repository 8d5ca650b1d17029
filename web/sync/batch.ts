import type { CardPhrase } from "../state/state.ts";
import type { KeptJob } from "../storage/database.ts";

/** What goes in one request, and what its reply says about each row. Pure: the sending is in flush.ts. */

/** The service takes 200 phrases and 1 MB; half of each leaves room for what wraps them. */
export const MOST_PHRASES = 100;
const MOST_CHARACTERS = 250_000;

export interface Batch {
  jobs: KeptJob[];
  phrases: CardPhrase[];
}

/** The first rows that fit one request; at least one phrase, however long, or it would wait for ever. */
export function fitting(rows: Batch, most = MOST_PHRASES): Batch {
  const phrases: CardPhrase[] = [];
  let characters = 0;
  for (const phrase of rows.phrases.slice(0, most)) {
    characters += phrase.text.length;
    if (phrases.length && characters > MOST_CHARACTERS) break;
    phrases.push(phrase);
  }
  const wanted = new Set(phrases.map((phrase) => phrase.job));
  // jobs without words go along with the first request that has room
  const idle = rows.jobs.filter((job) => !rows.phrases.some((phrase) => phrase.job === job.id)).slice(0, most);
  return { jobs: [...rows.jobs.filter((job) => wanted.has(job.id)), ...idle], phrases };
}

/** The body of POST /api/phrases: only what the service promises to read. */
export function bodyOf(batch: Batch): string {
  return JSON.stringify({
    jobs: batch.jobs.map(({ id, tag, site, startedAt }) => ({ id, tag, site, startedAt })),
    phrases: batch.phrases.map(({ id, job, text, saidAt, how, confidence }) => ({
      id,
      job,
      text,
      saidAt,
      how,
      confidence,
    })),
  });
}

export type Verdict =
  /** the server answered for each row */
  | { is: "answered"; delivered: string[]; refused: { id: string; problem: string }[] }
  /** nothing is decided: keep every row and come back later, for the reason told */
  | { is: "later"; why: string }
  /** the whole request was turned down: try its rows one by one */
  | { is: "split" }
  /** a request of one row was turned down: that row is refused, for the reason told */
  | { is: "turned_down"; problem: string };

/** Reads a reply. `status` 0 is no reply at all. */
export function judge(status: number, body: unknown, batch: Batch): Verdict {
  if (status === 0) return { is: "later", why: "no network to the server" };
  if (status === 401) return { is: "later", why: detailOf(body) ?? "the server does not know this device" };
  if (status === 408 || status === 429) return { is: "later", why: "the server is busy" };
  // out of room is its own matter, and will be mended there
  if (status === 507) return { is: "later", why: detailOf(body) ?? "the server has no room left" };
  if (status >= 500) return { is: "later", why: `the server has trouble (${status})` };
  if (status >= 400) {
    const problem = detailOf(body) ?? `the server turned it down (${status})`;
    return batch.phrases.length + batch.jobs.length > 1 && (batch.phrases.length > 1 || batch.jobs.length > 1)
      ? { is: "split" }
      : { is: "turned_down", problem };
  }
  const results = resultsOf(body);
  // a 200 that is not ours comes from something between us and the server, such as a network's sign-in page
  if (status !== 200 || !results) return { is: "later", why: "something other than the server answered" };
  const sent = new Set([...batch.phrases, ...batch.jobs].map((row) => row.id));
  const delivered: string[] = [];
  const refused: { id: string; problem: string }[] = [];
  for (const result of results) {
    if (!sent.has(result.id)) continue;
    if (result.status === "stored" || result.status === "known") delivered.push(result.id);
    else refused.push({ id: result.id, problem: result.problem ?? "the server gave no reason" });
  }
  const answered = new Set([...delivered, ...refused.map((one) => one.id)]);
  if (batch.phrases.length && !batch.phrases.some((phrase) => answered.has(phrase.id)))
    return { is: "later", why: "the server left the words unanswered" };
  return { is: "answered", delivered, refused };
}

function detailOf(body: unknown): string | undefined {
  if (typeof body !== "object" || body === null) return undefined;
  const { detail, title } = body as { detail?: unknown; title?: unknown };
  return typeof detail === "string" ? detail : typeof title === "string" ? title : undefined;
}

interface Result {
  id: string;
  status: string;
  problem?: string;
}

/** The results of phrases, and of jobs where the server answers for those too. */
function resultsOf(body: unknown): Result[] | undefined {
  if (typeof body !== "object" || body === null) return undefined;
  const { results, jobs = [] } = body as { results?: unknown; jobs?: unknown };
  if (!Array.isArray(results) || !Array.isArray(jobs)) return undefined;
  const all: unknown[] = [...results, ...jobs];
  return all.every(isResult) ? all : undefined;
}

function isResult(one: unknown): one is Result {
  if (typeof one !== "object" || one === null) return false;
  const { id, status } = one as Partial<Record<keyof Result, unknown>>;
  return typeof id === "string" && typeof status === "string";
}

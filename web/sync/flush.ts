import type { Happening } from "../state/next.ts";
import type { Shelf } from "../storage/shelf.ts";
import { type Batch, bodyOf, fitting, judge, MOST_PHRASES } from "./batch.ts";
import type { Reply } from "./reply.ts";
import { type RoundHands, rounds, type Trouble } from "./rounds.ts";

/** Everything the sender of words touches, handed in so that it can be tried without a page. */
export interface Sending extends RoundHands {
  shelf: Shelf;
  post(body: string): Promise<Reply>;
  tell(now: Happening): void;
  /** the server has words it did not have: what belongs to them may go */
  delivered?(): void;
  now(): string;
}

/**
 * Makes the sender of words. Each row is sent until the server answers for it: the server takes a repeated id once.
 */
export function sender(at: Sending): () => Promise<void> {
  /** after a request was turned down whole, the next go one row at a time until one passes */
  let single = false;

  async function recount(trouble?: string): Promise<void> {
    at.tell({ is: "outbox", outbox: { ...(await at.shelf.counts()), trouble } });
  }

  async function settle(batch: Batch, delivered: string[], refused: { id: string; problem: string }[]): Promise<void> {
    const no = new Set(refused.map((one) => one.id));
    // the reply answers for phrases; a job is held as soon as a request that carried it was taken
    const jobs = batch.jobs.filter((job) => !no.has(job.id)).map((job) => job.id);
    const sent = batch.phrases.filter((phrase) => delivered.includes(phrase.id));
    const phrases = await at.shelf.markDelivered(jobs, sent);
    at.tell({ is: "delivered", ids: phrases });
    for (const one of refused) {
      const kind = batch.jobs.some((job) => job.id === one.id) ? "jobs" : "phrases";
      await at.shelf.markRefused(kind, one.id, one.problem);
      at.tell({ is: "refused", id: one.id, problem: one.problem });
    }
    if (sent.length) await at.shelf.setLastKeptAt(at.now());
  }

  /** Sends until nothing waits or the server cannot be had; then says why. */
  async function sendAll(): Promise<Trouble | undefined> {
    for (;;) {
      const rows = await at.shelf.waiting(single ? 1 : MOST_PHRASES);
      if (single && !rows.phrases.length) rows.jobs = rows.jobs.slice(0, 1);
      else if (single) rows.jobs = rows.jobs.filter((job) => job.id === rows.phrases[0]?.job);
      const batch = fitting(rows);
      if (!batch.phrases.length && !batch.jobs.length) return undefined;
      const reply = await at.post(bodyOf(batch));
      if (reply.aheadMs !== undefined) at.tell({ is: "outbox", outbox: { aheadMs: reply.aheadMs } });
      const verdict = judge(reply.status, reply.body, batch);
      if (verdict.is === "later") return { why: verdict.why, waitMs: reply.waitMs };
      if (verdict.is === "split") {
        single = true;
        continue;
      }
      if (verdict.is === "turned_down") {
        const row = batch.phrases[0] ?? batch.jobs[0];
        if (row) await settle({ jobs: [], phrases: batch.phrases }, [], [{ id: row.id, problem: verdict.problem }]);
        if (row && !batch.phrases.length) await at.shelf.markRefused("jobs", row.id, verdict.problem);
      } else {
        await settle(batch, verdict.delivered, verdict.refused);
        single = false;
      }
      await recount();
    }
  }

  return rounds(at, sendAll, async (trouble) => {
    // first why, then the count: where even the count fails, why is known
    at.tell({ is: "outbox", outbox: { trouble: trouble?.why } });
    await recount(trouble?.why);
    if (!trouble) at.delivered?.();
  });
}

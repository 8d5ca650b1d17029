import type { Happening } from "../state/next.ts";
import type { Shelf } from "../storage/shelf.ts";
import { type Batch, backoffMs, bodyOf, fitting, judge, MOST_PHRASES } from "./batch.ts";

/** Everything the sender touches, handed in so that it can be tried without a page. */
export interface Sending {
  shelf: Shelf;
  post(body: string): Promise<{ status: number; body: unknown }>;
  tell(now: Happening): void;
  /** runs the work when no other tab is sending */
  alone(work: () => Promise<void>): Promise<void>;
  later(work: () => void, ms: number): void;
  now(): string;
  chance(): number;
}

/**
 * Makes the sender. Call what it returns whenever there may be something to send; calls while it runs fold into one.
 * Each row is sent until the server answers for it: the server takes a repeated id once.
 */
export function sender(at: Sending): () => Promise<void> {
  let running = false;
  let asked = false;
  let failures = 0;
  /** after a request was turned down whole, the next go one row at a time until one passes */
  let single = false;

  async function recount(trouble?: string): Promise<void> {
    at.tell({ is: "outbox", outbox: { ...(await at.shelf.counts()), trouble } });
  }

  async function settle(batch: Batch, delivered: string[], refused: { id: string; problem: string }[]): Promise<void> {
    const no = new Set(refused.map((one) => one.id));
    // the reply answers for phrases; a job is held as soon as a request that carried it was taken
    const jobs = batch.jobs.filter((job) => !no.has(job.id)).map((job) => job.id);
    const phrases = batch.phrases.filter((phrase) => delivered.includes(phrase.id)).map((phrase) => phrase.id);
    await at.shelf.markDelivered(jobs, phrases);
    at.tell({ is: "delivered", ids: phrases });
    for (const one of refused) {
      const kind = batch.jobs.some((job) => job.id === one.id) ? "jobs" : "phrases";
      await at.shelf.markRefused(kind, one.id, one.problem);
      at.tell({ is: "refused", id: one.id, problem: one.problem });
    }
    if (phrases.length) await at.shelf.setLastKeptAt(at.now());
  }

  /** Sends until nothing waits or the server cannot be had; then says why. */
  async function sendAll(): Promise<string | undefined> {
    for (;;) {
      const rows = await at.shelf.waiting(single ? 1 : MOST_PHRASES);
      if (single && !rows.phrases.length) rows.jobs = rows.jobs.slice(0, 1);
      else if (single) rows.jobs = rows.jobs.filter((job) => job.id === rows.phrases[0]?.job);
      const batch = fitting(rows);
      if (!batch.phrases.length && !batch.jobs.length) return undefined;
      const reply = await at.post(bodyOf(batch));
      const verdict = judge(reply.status, reply.body, batch);
      if (verdict.is === "later") return verdict.why;
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

  return async function flush(): Promise<void> {
    asked = true;
    if (running) return;
    running = true;
    try {
      while (asked) {
        asked = false;
        let trouble: string | undefined;
        await at.alone(async () => {
          trouble = await sendAll();
        });
        await recount(trouble);
        failures = trouble ? failures + 1 : 0;
        if (trouble) at.later(() => void flush(), backoffMs(failures - 1, at.chance()));
      }
    } catch (problem) {
      // the device's own store failed: the words are on the screen, say so and try again
      at.tell({ is: "outbox", outbox: { trouble: `this device's store cannot be read (${words(problem)})` } });
      at.later(() => void flush(), backoffMs(++failures, at.chance()));
    } finally {
      running = false;
    }
  };
}

function words(problem: unknown): string {
  return problem instanceof Error ? problem.message : String(problem);
}

import { AsyncLocalStorage } from "node:async_hooks";
import type { LibSQLDatabase } from "drizzle-orm/libsql";
import { endsTransaction, explain, isLock, StoreBusy } from "./failures.ts";

export type Db = LibSQLDatabase<Record<string, never>>;
export type Tx = Parameters<Parameters<Db["transaction"]>[0]>[0];

/**
 * The one way to write. `fn` awaits database calls only, and may run twice: a batch that met a lock is done again.
 * The promise resolves after COMMIT, so what it answers is on disk. A `write` inside a `write` joins it.
 */
export interface Writer {
  write<T>(fn: (tx: Tx) => Promise<T>): Promise<T>;
  /** resolves when nothing waits */
  settled(): Promise<void>;
  /** jobs waiting; commits made; jobs in them */
  figures(): { waiting: number; commits: number; jobs: number };
}

/** What the writer needs of an engine. */
export interface Engine {
  /** all that `work` does, or nothing; resolves after COMMIT */
  transaction<T>(work: (tx: Tx) => Promise<T>): Promise<T>;
  /** makes it usable again after a transaction that the engine ended by itself */
  renew(): Promise<void>;
}

interface Job {
  fn: (tx: Tx) => Promise<unknown>;
  resolve: (value: unknown) => void;
  reject: (cause: unknown) => void;
}
type Outcome = { ok: true; value: unknown } | { ok: false; cause: unknown };

const PER_COMMIT = 64;
const MOST_WAITING = 2_000;
const LONGEST_LOCK_MS = 15_000;

export function makeWriter(engine: Engine): Writer {
  const queue: Job[] = [];
  const joined = new AsyncLocalStorage<Tx>();
  let draining: Promise<void> | undefined;
  let commits = 0;
  let done = 0;

  async function drain(): Promise<void> {
    // a turn of the loop first, or jobs that arrive together are never grouped
    await turn();
    while (queue.length > 0) {
      await commit(queue.splice(0, PER_COMMIT));
      await turn();
    }
    // in the same breath as finding the queue empty: a job queued a moment later must start it again
    draining = undefined;
  }

  /**
   * First all in one transaction without savepoints, which cost two statements a job; where one of them fails,
   * all again, each in a savepoint of its own, so that it fails alone.
   */
  async function commit(batch: Job[]): Promise<void> {
    const start = performance.now();
    let apart = false;
    for (let attempt = 0; ; attempt++) {
      let outcomes: Outcome[] = [];
      try {
        await engine.transaction(async (tx) => {
          outcomes = [];
          for (const job of batch) outcomes.push(apart ? await runApart(tx, job) : await runTogether(tx, job));
        });
      } catch (cause) {
        if (!apart && !endsTransaction(cause)) {
          apart = true;
          continue;
        }
        await engine.renew();
        if (isLock(cause) && performance.now() - start < LONGEST_LOCK_MS) {
          await new Promise((wake) => setTimeout(wake, Math.min(20 * 2 ** attempt, 500)));
          continue;
        }
        const told = explain(cause);
        for (const job of batch) job.reject(told);
        return;
      }
      commits++;
      done += batch.length;
      batch.forEach((job, at) => {
        const outcome = outcomes[at] as Outcome;
        if (outcome.ok) job.resolve(outcome.value);
        else job.reject(outcome.cause);
      });
      return;
    }
  }

  async function runTogether(tx: Tx, job: Job): Promise<Outcome> {
    return { ok: true, value: await joined.run(tx, () => job.fn(tx)) };
  }

  async function runApart(tx: Tx, job: Job): Promise<Outcome> {
    try {
      return { ok: true, value: await tx.transaction((inner) => joined.run(inner, () => job.fn(inner))) };
    } catch (cause) {
      if (endsTransaction(cause)) throw cause;
      return { ok: false, cause };
    }
  }

  return {
    write<T>(fn: (tx: Tx) => Promise<T>): Promise<T> {
      const open = joined.getStore();
      if (open) return fn(open);
      if (queue.length >= MOST_WAITING) return Promise.reject(new StoreBusy("too many writes are waiting"));
      return new Promise<T>((resolve, reject) => {
        queue.push({ fn, resolve: resolve as (value: unknown) => void, reject });
        draining ??= drain();
      });
    },
    async settled() {
      while (draining) await draining;
    },
    figures: () => ({ waiting: queue.length, commits, jobs: done }),
  };
}

const turn = () => new Promise<void>((resolve) => setImmediate(resolve));

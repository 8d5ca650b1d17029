import { count } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { StoreBusy } from "../../../server/db/failures.ts";
import { jobs } from "../../../server/db/tables.ts";
import type { Tx } from "../../../server/db/writer.ts";
import { bench } from "../app-under-test.ts";
import { hold } from "../at-database.ts";

const row = (id: string) => ({
  id,
  site: "",
  tag: null,
  startedAt: "2026-03-04T17:00:00.000000000Z",
  startedOffset: 0,
  receivedAt: "2026-03-04T17:00:00.000000000Z",
  revision: 0,
  stale: 0,
});
const insert = (id: string) => async (tx: Tx) => {
  await tx.insert(jobs).values(row(id));
  return id;
};

describe("the one writer", () => {
  it("groups what arrives together into few commits", async () => {
    const { store } = await bench();
    const before = store.figures();
    await Promise.all(Array.from({ length: 200 }, (_, n) => store.write(insert(`j${n}`))));
    const { commits, jobs: done } = store.figures();
    expect(done - before.jobs).toBe(200);
    expect(commits - before.commits).toBeLessThanOrEqual(4);
  });

  it("lets one job fail without its neighbours", async () => {
    const { store } = await bench();
    const outcomes = await Promise.allSettled([
      store.write(insert("a")),
      store.write(async (tx) => {
        await insert("b")(tx);
        await insert("a")(tx);
      }),
      store.write(insert("c")),
    ]);
    expect(outcomes.map((one) => one.status)).toEqual(["fulfilled", "rejected", "fulfilled"]);
    const kept = await store.db.select({ id: jobs.id }).from(jobs);
    expect(kept.map((one) => one.id).sort()).toEqual(["a", "c"]);
  });

  it("joins a write inside a write, which falls with it", async () => {
    const { store } = await bench();
    const failed = store.write(async () => {
      await store.write(insert("inner"));
      throw new Error("after all not");
    });
    await expect(failed).rejects.toThrow("after all not");
    expect((await store.db.select({ n: count() }).from(jobs))[0]?.n).toBe(0);
  });

  it("waits out another process's lock, and goes on well afterwards", async () => {
    const { store, url } = await bench();
    const letGo = await hold(url);
    const written = Promise.all(Array.from({ length: 20 }, (_, n) => store.write(insert(`j${n}`))));
    await new Promise((wake) => setTimeout(wake, 600));
    await letGo();
    expect(await written).toHaveLength(20);
    // a poisoned connection would fail here
    await store.write(insert("after"));
    expect((await store.db.select({ n: count() }).from(jobs))[0]?.n).toBe(21);
  });

  it("refuses more than it can hold rather than growing without end", async () => {
    const { store } = await bench();
    const outcomes = await Promise.allSettled(Array.from({ length: 2_100 }, (_, n) => store.write(insert(`j${n}`))));
    const refused = outcomes.filter((one) => one.status === "rejected");
    expect(refused).toHaveLength(100);
    expect(refused.every((one) => one.status === "rejected" && one.reason instanceof StoreBusy)).toBe(true);
    expect((await store.db.select({ n: count() }).from(jobs))[0]?.n).toBe(2_000);
  });
});

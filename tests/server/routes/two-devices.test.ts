import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Entry, JobView } from "../../../core/index.ts";
import { listen, startListening } from "../../../core/index.ts";
import { bench, job } from "../app-under-test.ts";

/**
 * Two devices on one job, as where a second phone takes over from an empty one. The rule: within a job the order is
 * that of `saidAt`, and of two said at the same moment that of their ids; whoever sends first counts for nothing. A
 * device's clock is believed: it keeps its own phrases in their order, and no server can know which of two is wrong.
 */
const at = (ms: number) => new Date(Date.UTC(2026, 2, 4, 17) + ms).toISOString();
const phrase = (of: { id: string }, id: string, text: string, ms: number) => ({
  id,
  job: of.id,
  text,
  saidAt: at(ms),
  how: "typed" as const,
});
const uuid = (n: number) => `01900000-0000-7000-8000-${String(n).padStart(12, "0")}`;
const bare = (entries: readonly Entry[]) =>
  entries.map(({ words: _w, at: _a, rule: _r, confidence: _c, phrase: _p, ...told }) => told);

describe("two devices on one job", () => {
  it("stand in the order they were said, though the second device sent first", async () => {
    const { ask } = await bench();
    const one = job({ tag: "LCV-213" });
    await ask("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, uuid(2), "flipped it", 2000)] });
    await ask("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, uuid(1), "seat worn one side", 1000)] });
    const view: JobView = await ask("GET", `/api/jobs/${one.id}`);
    expect(view.phrases.map((said) => said.text)).toEqual(["seat worn one side", "flipped it"]);
    expect(bare(view.entries)).toMatchObject([{ part: "seat" }, { work: "flipped", part: "seat" }]);
  });

  it("said at the same moment, by their ids, however the offsets are written", async () => {
    const { ask } = await bench();
    const one = job();
    const east = { ...phrase(one, uuid(1), "seat worn", 0), saidAt: "2026-03-04T19:00:00.000+02:00" };
    const here = { ...phrase(one, uuid(2), "plug scored", 0), saidAt: "2026-03-04T10:00:00.000-07:00" };
    await ask("POST", "/api/phrases", { jobs: [one], phrases: [here, east] });
    expect((await ask("GET", `/api/jobs/${one.id}`)).phrases.map((said: { id: string }) => said.id)).toEqual([
      uuid(1),
      uuid(2),
    ]);
  });

  it("a second device opens the job by the same id, and neither start is lost nor the phrases refused", async () => {
    const { ask } = await bench();
    const one = job({ tag: "LCV-213" });
    const other = { ...one, startedAt: "2026-03-04T10:05:00-07:00" };
    await ask("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, uuid(1), "seat worn", 0)] });
    const second = await ask("POST", "/api/phrases", {
      jobs: [other],
      phrases: [phrase(one, uuid(2), "flipped it", 1)],
    });
    expect(second.jobs[0].status).toBe("refused");
    expect(second.results[0].status).toBe("stored");
    const view: JobView = await ask("GET", `/api/jobs/${one.id}`);
    expect(view.startedAt).toBe("2026-03-04T10:00:00.000-07:00");
    expect(view.phrases).toHaveLength(2);
  });

  it("whatever way their sendings cross, the job reads as if one had said it all", async () => {
    const said = [
      "seat worn one side",
      "flipped it",
      "scratch that",
      "plug scored",
      "correction, cage",
      "no leak at sixty psi",
    ];
    let heard = startListening();
    for (const text of said) heard = listen(heard, text);
    const whole = bare(heard.entries);
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.boolean(), { minLength: said.length, maxLength: said.length }),
        fc.infiniteStream(fc.nat(1000)),
        async (ofFirst, luck) => {
          const { ask } = await bench();
          const one = job();
          const phrases = said.map((text, n) => phrase(one, uuid(n), text, n * 10));
          const queues = [phrases.filter((_, n) => ofFirst[n]), phrases.filter((_, n) => !ofFirst[n])];
          while (queues.some((queue) => queue.length)) {
            const queue = queues[(luck.next().value ?? 0) % 2] ?? [];
            const some = queue.splice(0, ((luck.next().value ?? 0) % 3) + 1);
            // a sending whose answer was lost comes again
            for (let times = (luck.next().value ?? 0) % 2; times >= 0; times--)
              if (some.length) await ask("POST", "/api/phrases", { jobs: [one], phrases: some });
          }
          const view: JobView = await ask("GET", `/api/jobs/${one.id}`);
          expect(view.phrases.map((one) => one.text)).toEqual(said);
          expect(bare(view.entries)).toEqual(whole);
        },
      ),
      { numRuns: 12 },
    );
  }, 60_000);
});

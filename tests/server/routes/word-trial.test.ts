import { describe, expect, it } from "vitest";
import type { WordTried } from "../../../core/index.ts";
import { bench, id, job, phrase } from "../app-under-test.ts";

const DONUT = { say: "donut", as: { part: "cage_o_ring" } };
const AT = "2026-03-05T10:00:00Z";

async function said() {
  const at = await bench();
  const jobs = [
    job({ tag: "LCV-213", site: "north" }),
    job({ tag: "LCV-214", site: "north" }),
    job({ tag: "LCV-9", site: "south" }),
  ] as const;
  const phrases = [
    phrase(jobs[0], "the donut is cut"),
    phrase(jobs[0], "replaced it", 1),
    phrase(jobs[1], "seat worn one side"),
    phrase(jobs[2], "the donut is cut"),
  ];
  await at.ask("POST", "/api/phrases", { jobs, phrases });
  const trial = async (wish: object): Promise<WordTried> => at.ask("POST", "/api/words/trial", wish);
  const entries = async (one: { id: string }) => (await at.ask("GET", `/api/jobs/${one.id}`)).entries;
  return { ...at, jobs, phrases, trial, entries };
}

describe("a word tried before it is taught", () => {
  it("shows each earlier phrase that would read otherwise, those it is carried on to too, and keeps nothing", async () => {
    const { trial, phrases, jobs, entries } = await said();
    const { phrases: told, count, jobs: looked } = await trial({ site: "north", ...DONUT });
    expect(told.map((one) => one.phrase)).toEqual([phrases[0]?.id, phrases[1]?.id]);
    expect(told[0]).toMatchObject({ tag: "LCV-213", text: "the donut is cut", signed: false });
    expect(told[0]?.after).toMatchObject([{ type: "finding", part: "cage_o_ring", condition: "cut" }]);
    expect(told[1]?.after).toMatchObject([{ type: "work", part: "cage_o_ring" }]);
    expect({ count, looked }).toEqual({ count: 2, looked: 2 });
    expect(await entries(jobs[0])).not.toMatchObject([{ part: "cage_o_ring" }, { part: "cage_o_ring" }]);
    // of every site where none is named
    expect((await trial(DONUT)).count).toBe(3);
  });

  it("taught, it reads them so however old they are; withdrawn, as before", async () => {
    const { ask, store: _, trial, jobs, entries } = await said();
    // enough later jobs that the first is not among the latest any more
    for (let some = 0; some < 2; some++) {
      const later = Array.from({ length: 50 }, (_, n) =>
        job({ tag: "LCV-300", site: "north", startedAt: `2026-03-05T${10 + some}:${String(n).padStart(2, "0")}:00Z` }),
      );
      await ask("POST", "/api/phrases", { jobs: later, phrases: later.map((one) => phrase(one, "seat ok")) });
    }
    const before = await entries(jobs[0]);
    const taught = { id: id(), at: AT, ...DONUT };
    await ask("PUT", "/api/sites/north/words", { words: [taught] });
    expect(await entries(jobs[0])).toMatchObject([{ part: "cage_o_ring" }, { part: "cage_o_ring" }]);
    const undone = await trial({ site: "north", say: "donut", withdraw: true });
    expect(undone.phrases.map((one) => one.text)).toEqual(["the donut is cut", "replaced it"]);
    await ask("PUT", "/api/sites/north/words", { words: [{ ...taught, withdrawn: true }] });
    expect(await entries(jobs[0])).toEqual(before);
  });

  it("of a signed job says so, and the job stays as it was signed", async () => {
    const { ask, trial, jobs, phrases, entries } = await said();
    const { items } = await ask("GET", `/api/review?job=${jobs[0].id}`);
    for (const one of items) await ask("POST", `/api/review/${one.phrase}`, { id: id(), what: "accepted", seen: 0 });
    await ask("POST", `/api/jobs/${jobs[0].id}/signature`, { id: id(), phrases: 2 });
    const told = await trial({ site: "north", ...DONUT });
    expect(told.phrases[0]).toMatchObject({ phrase: phrases[0]?.id, signed: true });
    const before = await entries(jobs[0]);
    await ask("PUT", "/api/sites/north/words", { words: [{ id: id(), at: AT, ...DONUT }] });
    expect(await entries(jobs[0])).toEqual(before);
    expect((await ask("GET", "/api/signing?state=signed")).jobs).toHaveLength(1);
  });
});

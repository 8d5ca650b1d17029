import { describe, expect, it } from "vitest";
import { EVERY_SITE } from "../../../server/accounts/sites-seen.ts";
import { dayData } from "../../../server/reports/day-data.ts";
import { jobsOfDays } from "../../../server/reports/jobs-of-days.ts";
import { jobView } from "../../../server/routes/jobs/store.ts";
import { bench, id, job, phrase } from "../app-under-test.ts";

const VALVES = 13;
const JOBS = 60;

/** Sixty jobs of one day on thirteen valves: each valve several times, some at the very same moment. */
async function fullDay() {
  const { ask, store } = await bench();
  await ask("PUT", "/api/sites/north", { name: "North", zone: "America/Denver" });
  for (const size_in of [1, 2])
    await ask("PUT", "/api/valves/LCV-1", { site: "north", family: "balanced_dump", size_in, service: "severe" });
  const before = job({ site: "north", tag: "LCV-1", startedAt: "2025-11-03T09:00:00-07:00" });
  const all = Array.from({ length: JOBS }, (_, n) => ({
    ...job({ site: "north", tag: `LCV-${n % VALVES}`, startedAt: `2026-03-04T10:${n < 30 ? "00" : "30"}:00-07:00` }),
    id: id(),
  }));
  const said = all.flatMap((one, n) => [
    phrase(one, n % 3 === 0 ? "flipped the seat" : "seat worn one side, new packing", n),
    phrase(one, n % 7 === 0 ? "I smell gas" : `bonnet bolts torqued to ${20 + (n % 20)}`, n + 60),
    phrase(one, n % 5 === 0 ? "on LCV-7 the diaphragm is torn" : "the frobnitz squeals", n + 120),
  ]);
  await ask("POST", "/api/phrases", { jobs: [before, ...all], phrases: [phrase(before, "flipped the seat"), ...said] });
  return { store };
}

describe("a day of more jobs than are read at once", () => {
  it("tells of each job what the job itself tells, and lets nothing of a later one count in an earlier", async () => {
    const { store } = await fullDay();
    const data = await dayData(store, "north", "2026-03-04");
    expect(data?.jobs).toHaveLength(JOBS);
    const ids = (await jobsOfDays(store, "north", "2026-03-04", "2026-03-04")).get("2026-03-04") ?? [];
    for (const [at, { id: one }] of ids.entries()) {
      const alone = await jobView(store, one, EVERY_SITE);
      const told = data?.jobs[at];
      expect(told?.shares.map(({ tag, ...share }) => ({ ...(tag ? { tag } : {}), ...share }))).toEqual(alone?.valves);
      expect(told?.phrases.map((own) => own.text)).toEqual(alone?.phrases.map((own) => own.text));
      expect(told?.phrases.map((own) => own.unread)).toEqual(
        alone?.phrases.map((own) => own.unread.map((w) => w.text)),
      );
    }
    // the valve that was set up twice is as it was set up last, and its flip of November counts
    const known = data?.jobs.find((one) => one.shares[0]?.tag === "LCV-1")?.shares[0];
    expect(known?.valve).toMatchObject({ size_in: 2, service: "severe" });
  });
});

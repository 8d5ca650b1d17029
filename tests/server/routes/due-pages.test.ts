import { describe, expect, it } from "vitest";
import type { DueList } from "../../../core/index.ts";
import { bench, job, phrase } from "../app-under-test.ts";

describe("the due board, page by page", () => {
  it("holds each line once, in the order of the whole: severe service first, then by date", async () => {
    const { ask } = await bench();
    for (const n of Array.from({ length: 9 }, (_, at) => at)) {
      const site = n % 2 ? "north" : "south";
      const service = n % 3 ? "normal" : "severe";
      await ask("PUT", `/api/valves/LCV-${n}`, { site, service });
      const one = job({ tag: `LCV-${n}`, site, startedAt: `2026-0${1 + (n % 4)}-04T10:00:00Z` });
      await ask("POST", "/api/phrases", { jobs: [one], phrases: [phrase(one, "seat ok")] });
    }
    const all = (await ask("GET", "/api/due?days=3650")) as DueList;
    expect(all.next).toBeUndefined();
    expect(all.count).toBe(all.due.length);
    expect(all.due.length).toBe(18);
    expect(all.overdue).toBe(all.due.filter((one) => one.overdue > 0).length);
    const ranks = all.due.map((one) => (one.service === "severe" ? 0 : 1));
    expect([...ranks].sort()).toEqual(ranks);
    const paged: DueList["due"] = [];
    let after: string | undefined;
    do {
      const query = `days=3650&limit=4${after ? `&after=${encodeURIComponent(after)}` : ""}`;
      const page = (await ask("GET", `/api/due?${query}`)) as DueList;
      expect(page.count).toBe(18);
      paged.push(...page.due);
      after = page.next;
    } while (after);
    expect(paged).toEqual(all.due);
    // a place that no page named begins anew, and breaks nothing
    expect(((await ask("GET", "/api/due?days=3650&limit=4&after=nonsense")) as DueList).due).toEqual(
      all.due.slice(0, 4),
    );
  });
});

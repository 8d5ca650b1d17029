import { expect, it } from "vitest";
import { hear } from "../../../core/index.ts";
import { lastVisitWords } from "../../../web/state/last-visit.ts";

const known = (...visits: [on: string, ...said: string[]][]) => ({
  tag: "LCV-213",
  valve: { tag: "LCV-213" },
  history: visits.map(([on, ...say]) => ({ on, entries: hear({ id: "x", say }).entries })),
  fleet: [],
});

it.each([
  [
    known(["2025-01-05", "replaced the seals"], ["2025-09-02", "seat worn one side, flipped it"]),
    "2026-03-04",
    "Last seen 2 September 2025; seat was flipped; seals 13 months old.",
  ],
  [
    known(["2026-02-20", "new kit in", "seat looks good"]),
    "2026-03-04",
    "Last seen 20 February; seat was found good; seals 12 days old.",
  ],
  [
    known(["2026-01-10", "seat worn one side"], ["2026-03-04", "no leak at sixty psi"]),
    "2026-03-04",
    "Last seen earlier today; seat was found worn, one side 10 January.",
  ],
  [known(["2026-03-01", "leaking by at sixty psi"]), "2026-03-04", "Last seen 1 March; seat leak test failed then."],
])("says when it was seen and what was done: %#", (valve, today, words) => {
  expect(lastVisitWords(valve, today)).toBe(words);
});

it("says nothing of a valve that was never visited, or that the device knows nothing about", () => {
  expect(lastVisitWords(known(), "2026-03-04")).toBeUndefined();
  expect(lastVisitWords(undefined, "2026-03-04")).toBeUndefined();
});

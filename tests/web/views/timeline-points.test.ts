import { describe, expect, it } from "vitest";
import { dayNumber, monthTicks, timelinePoints } from "../../../web/views/valve/timeline-points.ts";

describe("a valve's timeline", () => {
  it("draws the weightiest thing of a day in each lane", () => {
    const points = timelinePoints([
      {
        job: "a",
        on: "2026-01-05",
        entries: [
          { type: "finding", condition: "worn", part: "seat", extent: "one_side" },
          { type: "work", work: "flipped", status: "done", part: "seat" },
          { type: "work", work: "replaced", status: "done", part: "upper_diaphragm" },
          { type: "work", work: "replaced", status: "needed", part: "stem" },
        ],
      },
      { job: "b", on: "2026-02-05", entries: [{ type: "finding", condition: "ok", part: "seat" }] },
    ]);
    expect(points).toEqual([
      { on: "2026-01-05", job: "a", lane: "seat", kind: "flipped", count: 2 },
      { on: "2026-01-05", job: "a", lane: "seals", kind: "replaced", count: 1 },
      { on: "2026-02-05", job: "b", lane: "seat", kind: "inspected", count: 1 },
    ]);
  });

  it("marks first days of months, and thins them over years", () => {
    const ticks = monthTicks(dayNumber("2025-11-20"), dayNumber("2026-02-03"), 12);
    expect(ticks.map((one) => one.label)).toEqual(["Dec 25", "Jan 26", "Feb 26"]);
    expect(monthTicks(dayNumber("2020-01-01"), dayNumber("2026-01-01"), 12).length).toBeLessThanOrEqual(13);
  });
});

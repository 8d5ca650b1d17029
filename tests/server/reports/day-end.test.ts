import { describe, expect, it } from "vitest";
import { goesOn, lastEnded, lastRun } from "../../../server/reports/day-end.ts";

const always = (hour: string) => ({ hour, weekends: true });
const weekdays = (hour: string) => ({ hour, weekends: false });

describe("a site's day ends at its own hour", () => {
  it.each<[string, string, string, string]>([
    // Denver is seven hours behind in winter
    ["2026-03-05T00:59:59Z", "America/Denver", "18:00", "2026-03-03"],
    ["2026-03-05T01:00:00Z", "America/Denver", "18:00", "2026-03-04"],
    ["2026-03-04T10:59:59Z", "Asia/Tokyo", "20:00", "2026-03-03"],
    ["2026-03-04T11:00:00Z", "Asia/Tokyo", "20:00", "2026-03-04"],
    // before noon: the morning after
    ["2026-03-05T12:59:59Z", "America/Denver", "06:00", "2026-03-03"],
    ["2026-03-05T13:00:00Z", "America/Denver", "06:00", "2026-03-04"],
    ["2026-03-05T07:00:00Z", "America/Denver", "00:00", "2026-03-04"],
    // the half hours of Kathmandu and the other side of the date line
    ["2026-03-04T12:15:00Z", "Asia/Kathmandu", "18:00", "2026-03-04"],
    ["2026-03-04T12:14:59Z", "Asia/Kathmandu", "18:00", "2026-03-03"],
    ["2026-03-04T04:00:00Z", "Pacific/Kiritimati", "18:00", "2026-03-04"],
  ])("at %s in %s, with %s, the last day that ended is %s", (at, zone, hour, day) => {
    expect(lastEnded(new Date(at), zone, hour)).toBe(day);
  });

  it.each<[string, string, string]>([
    // 8 March 2026 in Denver: the clock goes from 01:59:59 to 03:00
    ["2026-03-08T08:59:59Z", "02:30", "2026-03-06"],
    ["2026-03-08T09:00:00Z", "02:30", "2026-03-07"],
    // the same hour of the wall, an hour earlier in UTC than the day before
    ["2026-03-08T00:59:59Z", "18:00", "2026-03-06"],
    ["2026-03-08T01:00:00Z", "18:00", "2026-03-07"],
    ["2026-03-08T23:59:59Z", "18:00", "2026-03-07"],
    ["2026-03-09T00:00:00Z", "18:00", "2026-03-08"],
    // 1 November 2026: 01:00 to 01:59 comes twice, and the first counts
    ["2026-11-01T07:29:59Z", "01:30", "2026-10-30"],
    ["2026-11-01T07:30:00Z", "01:30", "2026-10-31"],
    ["2026-11-01T08:30:00Z", "01:30", "2026-10-31"],
  ])("by the wall's clock where it is put on or back: %s, %s, %s", (at, hour, day) => {
    expect(lastEnded(new Date(at), "America/Denver", hour)).toBe(day);
  });

  it("leaves no day out over the half hours around each change, and comes back on one only where the clock is put back", () => {
    for (const zone of ["America/Denver", "Europe/London", "Australia/Lord_Howe", "America/Santiago"]) {
      for (const [hour, month] of [
        ["00:00", 2],
        ["01:30", 9],
        ["02:30", 2],
        ["18:00", 9],
        ["23:59", 2],
      ] as const) {
        let before = "";
        const seen: string[] = [];
        for (let at = Date.UTC(2026, month, 1); at < Date.UTC(2026, month + 2, 10); at += 1_800_000) {
          const day = lastEnded(new Date(at), zone, hour);
          // in the hour that comes twice; the schedule has seen to that day already
          if (day < before && hour !== "01:30") seen.push(`${zone} ${hour}: back from ${before} to ${day}`);
          if (before && day > before && Date.parse(day) - Date.parse(before) > 86_400_000)
            seen.push(`left out after ${before}`);
          if (day > before) before = day;
        }
        expect(seen).toEqual([]);
      }
    }
  });

  it("holds a weekend's reports until Monday where none go on weekends", () => {
    // 7 and 8 March 2026 are a Saturday and a Sunday
    const at = (day: number) => new Date(Date.UTC(2026, 2, day, 20));
    const days = [6, 7, 8, 9].map((day) => lastRun(at(day), "Etc/UTC", weekdays("18:00")));
    expect(days).toEqual(["2026-03-06", "2026-03-06", "2026-03-06", "2026-03-09"]);
    expect(lastRun(at(7), "Etc/UTC", always("18:00"))).toBe("2026-03-07");
    expect(goesOn("2026-03-07", weekdays("18:00"))).toBe("2026-03-09");
    expect(goesOn("2026-03-06", weekdays("06:00"))).toBe("2026-03-09");
    expect(goesOn("2026-03-06", always("06:00"))).toBe("2026-03-07");
  });
});

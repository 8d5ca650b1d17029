import { describe, expect, it } from "vitest";
import { clockThere, dayThere, dayWords, instantHere } from "../../../web/state/time-words.ts";

describe("times", () => {
  it("keep the instant and give an offset", () => {
    const at = new Date("2026-03-04T16:41:07.123Z");
    const written = instantHere(at);
    expect(written).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.123[+-]\d\d:\d\d$/);
    expect(new Date(written).getTime()).toBe(at.getTime());
  });
  it("are told as they were where they were said", () => {
    expect(clockThere("2026-03-04T09:41:07.123-07:00")).toBe("09:41");
    expect(dayWords("2026-03-04")).toBe("4 Mar 2026");
  });
  it("fall on the day of the site", () => {
    expect(dayThere("2026-03-05T01:30:00Z", "America/Denver")).toBe("2026-03-04");
    expect(dayThere("2026-03-05T01:30:00+02:00")).toBe("2026-03-05");
  });
});

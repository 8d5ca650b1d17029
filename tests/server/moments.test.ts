import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, aroundDay, isZone, localDay, readMoment, writeMoment } from "../../server/moments.ts";

const read = (text: string) => {
  const moment = readMoment(text);
  if (!moment) throw new Error(`${text} did not read`);
  return moment;
};

describe("moments", () => {
  it("keeps the moment in UTC and the offset that was said", () => {
    expect(read("2026-03-04T10:00:01.5-07:00")).toEqual({ utc: "2026-03-04T17:00:01.500000000Z", offset: -420 });
    expect(writeMoment(read("2026-03-04T10:00:01.5-07:00"))).toBe("2026-03-04T10:00:01.500-07:00");
    expect(writeMoment(read("2026-03-04T17:00:00Z"))).toBe("2026-03-04T17:00:00.000+00:00");
  });

  it("keeps what is finer than a millisecond, and orders by it", () => {
    expect(read("2026-03-04T10:00:00.000001Z").utc < read("2026-03-04T10:00:00.000002Z").utc).toBe(true);
    expect(writeMoment(read("2026-03-04T10:00:00.000001Z"))).toBe("2026-03-04T10:00:00.000001+00:00");
  });

  it("refuses what is no time, or needs a year of more than four digits", () => {
    for (const text of ["", "yesterday", "2026-03-04", "2026-03-04T10:00:00", "9999-12-31T23:59:59-01:00"]) {
      expect(readMoment(text)).toBeUndefined();
    }
  });

  it("orders as text exactly as in time, whatever the offsets", () => {
    const moment = fc.record({
      ms: fc.integer({ min: 0, max: 4_102_444_800_000 }),
      offset: fc.integer({ min: -840, max: 840 }),
    });
    fc.assert(
      fc.property(moment, moment, (a, b) => {
        const write = ({ ms, offset }: typeof a) => {
          const sign = offset < 0 ? "-" : "+";
          const abs = Math.abs(offset);
          const zone = `${sign}${String(Math.floor(abs / 60)).padStart(2, "0")}:${String(abs % 60).padStart(2, "0")}`;
          return `${new Date(ms + offset * 60_000).toISOString().slice(0, 23)}${zone}`;
        };
        const [first, second] = [read(write(a)), read(write(b))];
        expect(Math.sign(a.ms - b.ms)).toBe(first.utc < second.utc ? -1 : first.utc > second.utc ? 1 : 0);
        expect(readMoment(writeMoment(first))).toEqual(first);
      }),
    );
  });

  it("knows the site's day, also across daylight saving and the date line", () => {
    const late = read("2026-03-05T05:30:00Z");
    expect(localDay(late, "America/Denver")).toBe("2026-03-04");
    expect(localDay(late, "Pacific/Auckland")).toBe("2026-03-05");
    expect(localDay(read("2026-03-29T00:30:00Z"), "Europe/Warsaw")).toBe("2026-03-29");
    expect(localDay(read("2026-10-25T22:59:59Z"), "Europe/Warsaw")).toBe("2026-10-25");
    expect(localDay(read("2026-10-25T23:00:00Z"), "Europe/Warsaw")).toBe("2026-10-26");
  });

  it("without a zone goes by the offset said", () => {
    expect(localDay(read("2026-03-04T23:30:00-07:00"))).toBe("2026-03-04");
    expect(localDay(read("2026-03-05T00:30:00+13:00"))).toBe("2026-03-05");
  });

  it("looks far enough around a day for every zone", () => {
    const [from, to] = aroundDay("2026-03-04");
    expect(from <= read("2026-03-04T00:00:00+14:00").utc).toBe(true);
    expect(to >= read("2026-03-04T23:59:59-12:00").utc).toBe(true);
  });

  it("counts days and knows zones", () => {
    expect(addDays("2026-02-27", 2)).toBe("2026-03-01");
    expect(addDays("2028-02-28", 1)).toBe("2028-02-29");
    expect(isZone("America/Denver")).toBe(true);
    expect(isZone("Nowhere/Else")).toBe(false);
  });
});

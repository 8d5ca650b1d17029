import * as chrono from "chrono-node";
import { describe, expect, test } from "vitest";
import { listen, startListening } from "../../../core/index.ts";
import { inWords } from "./spoken-numbers.ts";

/**
 * Days and durations against a general-purpose reader of dates. Ours takes no date out of a phrase; it must know which
 * ones are not today, since what was so on another day was not found on this job. Where the two part, the tables say why.
 */
const TODAY = new Date(2026, 2, 4, 10, 0);

const COUNTS = [
  "a",
  ...Array.from({ length: 11 }, (_, nth) => inWords(nth + 2)),
  "2",
  "3",
  "6",
  "10",
  "18",
  "a couple of",
  "a few",
  "several",
];
const WEEKDAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];
const MONTHS = [
  "january",
  "february",
  "march",
  "april",
  "may",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
];
const many = (count: string, unit: string): string => (/^an?$/.test(count) ? unit : `${unit}s`);

const DAYS: string[] = [
  ...COUNTS.flatMap((count) => ["day", "week", "month", "year"].map((unit) => `${count} ${many(count, unit)} ago`)),
  ...[...WEEKDAYS, "week", "weekend", "month", "year"].map((one) => `last ${one}`),
  ...["yesterday", "yesterday morning", "yesterday afternoon", "yesterday evening", "the day before yesterday"],
  ...[
    "today",
    "this morning",
    "this afternoon",
    "tonight",
    "just now",
    "earlier today",
    "an hour ago",
    "half an hour ago",
  ],
  ...COUNTS.slice(1).map((count) => `${count} minutes ago`),
];

/** Said by one of the two alone, or of another day by one of them. */
const DIFFER: Record<string, { theirs: "another day" | "not read"; why: string }> = {
  "last night": { theirs: "another day", why: "a job on the night shift is the same job in the morning" },
  "thirteen days ago": { theirs: "not read", why: "the library knows spelled numbers up to twelve" },
  "last spring": { theirs: "not read", why: "it knows no seasons" },
  "in 2023": { theirs: "not read", why: "it takes no bare year" },
  "last time": { theirs: "not read", why: "the visit before is no date" },
  "the other day": { theirs: "not read", why: "it is no certain date, and surely not today" },
};

/** Whether our reader takes what was said for found on this job; the day stands before or behind. */
function found(said: string): boolean {
  return listen(startListening(), said).entries.some((one) => one.type === "finding");
}

/** Whether the library puts it before today; nothing where it cannot read it. */
function isBefore(day: string): boolean | undefined {
  const date = chrono.parse(day, TODAY)[0]?.start.date();
  return date && new Date(date.getFullYear(), date.getMonth(), date.getDate()) < new Date(2026, 2, 4);
}

describe("a day that is not today", () => {
  test("a good hundred of them", () => expect(DAYS.length).toBeGreaterThan(100));
  test("read alike, said behind", () => {
    expect(DAYS.map((day) => ({ day, today: found(`the seat was worn ${day}`) }))).toEqual(
      DAYS.map((day) => ({ day, today: isBefore(day) === false })),
    );
  });
  test("read alike, said before", () => {
    expect(DAYS.map((day) => ({ day, today: found(`${day} the seat was worn`) }))).toEqual(
      DAYS.map((day) => ({ day, today: isBefore(day) === false })),
    );
  });
  for (const [day, { theirs, why }] of Object.entries(DIFFER))
    test(`${day}: theirs differs, since ${why}`, () => {
      expect(isBefore(day)).toBe(theirs === "another day" ? true : undefined);
      expect(found(`the seat was worn ${day}`)).toBe(theirs === "another day");
    });
  test("a month by itself may be the coming one, so ours leaves it to the reader of the log", () => {
    for (const month of MONTHS) expect(found(`the seat was worn in ${month}`), month).toBe(true);
  });
});

describe("how long it took", () => {
  const COUNTED = [
    ...Array.from({ length: 60 }, (_, nth) => String(nth + 1)),
    "75",
    "90",
    "120",
    "2.5",
    "1.5",
    "half a",
    ...Array.from({ length: 12 }, (_, nth) => inWords(nth + 1)),
  ];
  const SPELLED = [13, 18, 21, 28, 45, 59, 90].map((value) => inWords(value));
  const ours = (said: string) =>
    listen(startListening(), `took ${said} to stroke`).entries.flatMap((one) =>
      one.type === "reading" ? [[one.value, one.unit]] : [],
    );
  const theirs = (said: string): number | undefined => {
    const date = chrono.parse(`in ${said}`, TODAY)[0]?.start.date();
    return date && (date.getTime() - TODAY.getTime()) / 1000;
  };
  for (const [unit, code, seconds] of [
    ["second", "s", 1],
    ["minute", "min", 60],
  ] as const) {
    const said = COUNTED.filter((count) => code === "min" || !/half/.test(count)).map(
      (count) => `${count} ${count === "half a" || count === "1" || count === "one" ? unit : `${unit}s`}`,
    );
    test(`${said.length} of them in ${unit}s: both the same`, () =>
      expect(said.map((one) => ({ one, ours: ours(one) }))).toEqual(
        said.map((one) => ({ one, ours: [[(theirs(one) ?? Number.NaN) / seconds, code]] })),
      ));
    test(`spelled numbers beyond twelve ${unit}s are ours alone`, () => {
      for (const count of SPELLED) {
        expect(theirs(`${count} ${unit}s`), count).toBeUndefined();
        expect(ours(`${count} ${unit}s`), count).toHaveLength(1);
      }
    });
  }
});

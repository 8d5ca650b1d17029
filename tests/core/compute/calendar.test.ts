import fc from "fast-check";
import { expect, test } from "vitest";
import {
  addDays,
  addMonths,
  dateOfDay,
  dayNumber,
  daysBetween,
  monthsBetween,
  wholeDays,
} from "../../../core/compute/calendar.ts";
import published from "../../published/dates.json" with { type: "json" };

/** Month ends clamp to the last valid day, counted from the first date; sources in the file. */
for (const { on, months, expect: due } of published.add_months)
  test(`${on} and ${months} months is ${due}`, () => expect(addMonths(on, months)).toBe(due));
for (const { what, on, months, wrong } of published.traps)
  test(`not ${wrong}: ${what}`, () => expect(addMonths(on, months)).not.toBe(wrong));
for (const { from, to, days } of published.days)
  test(`${from} to ${to} is ${days} days`, () => expect(daysBetween(from, to)).toBe(days));
for (const { age, seen, wait_lower, days, on } of published.wait_to_date)
  test(`a wait of ${wait_lower} months at age ${age} from ${seen} is ${on}`, () => {
    expect(Math.max(7, wholeDays(wait_lower)) === Math.max(7, days)).toBe(true);
    expect(addDays(seen, Math.max(7, wholeDays(wait_lower)))).toBe(on);
  });

test("183 days are 6.01232 months of 30.4375 days", () => {
  expect(monthsBetween("2025-09-02", "2026-03-04")).toBeCloseTo(6.01232, 5);
});

test("every day of 400 years comes back, one after the other, as the platform's own calendar has it", () => {
  const first = dayNumber("1900-01-01");
  for (let day = first; day < first + 146_097; day++) {
    const date = dateOfDay(day);
    if (dayNumber(date) !== day || date !== new Date(day * 86_400_000).toISOString().slice(0, 10))
      expect(date).toBe(day);
  }
});

test("a date past the year 9999 is the last that four digits can write", () => {
  expect(addMonths("2026-03-04", 1e9)).toBe("9999-12-31");
  expect(addDays("2026-03-04", 1e12)).toBe("9999-12-31");
});

test("24 days, as months and back, stay 24 days", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 20_000 }), (days) => {
      expect(wholeDays(days / 30.4375)).toBe(days);
    }),
  );
});

test("more months are never sooner", () => {
  const day = fc.integer({ min: -100_000, max: 100_000 }).map(dateOfDay);
  fc.assert(
    fc.property(
      day,
      fc.double({ min: 0, max: 300, noNaN: true }),
      fc.double({ min: 0, max: 300, noNaN: true }),
      (on, a, b) => {
        expect(addMonths(on, Math.min(a, b)) <= addMonths(on, Math.max(a, b))).toBe(true);
      },
    ),
  );
});

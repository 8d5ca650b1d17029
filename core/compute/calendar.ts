/**
 * Dates without a clock or a zone, as text YYYY-MM-DD, proleptic Gregorian.
 * Days are counted, never read from the platform's clock type, so that no zone can move a date by one.
 */

/** Days in the month by which ages are reckoned: a four-year cycle of 1461 days over 48 months. */
export const MONTH_DAYS = 30.4375;

const LAST_DATE = "9999-12-31";

/** Days since 1970-01-01. Source of the arithmetic: Howard Hinnant, "chrono-compatible low-level date algorithms". */
export function dayNumber(date: string): number {
  const month = Number(date.slice(5, 7));
  const year = Number(date.slice(0, 4)) - (month <= 2 ? 1 : 0);
  const era = Math.floor(year / 400);
  const yearOfEra = year - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + Number(date.slice(8, 10)) - 1;
  return era * 146097 + yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear - 719468;
}

/** The date of a day number; past the year 9999, which four digits cannot write, the last day of 9999. */
export function dateOfDay(day: number): string {
  const shifted = Math.floor(day) + 719468;
  const era = Math.floor(shifted / 146097);
  const dayOfEra = shifted - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shiftedMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shiftedMonth + (shiftedMonth < 10 ? 3 : -9);
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return year > 9999 ? LAST_DATE : write(year, month, dayOfYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1);
}

/** Whole days from one date to another; negative where the second is earlier. */
export function daysBetween(from: string, to: string): number {
  return dayNumber(to) - dayNumber(from);
}

/** The date so many days later. */
export function addDays(date: string, days: number): string {
  return dateOfDay(dayNumber(date) + days);
}

/** Months of 30.4375 days between two dates. */
export function monthsBetween(from: string, to: string): number {
  return daysBetween(from, to) / MONTH_DAYS;
}

/**
 * The date so many calendar months later; a day that the month lacks becomes its last (31 January + 1 is
 * 28 or 29 February), always counted from the first date, as java.time.LocalDate.plusMonths and Temporal do.
 * A part of a month is days of 30.4375 to the month, rounded down.
 */
export function addMonths(date: string, months: number): string {
  const whole = Math.floor(months + 1e-9);
  const clamped = addWhole(date, whole);
  const days = wholeDays(Math.max(0, months - whole));
  if (days === 0) return clamped;
  // February is shorter than a nearly whole month of 30.4375 days.
  const into = addDays(clamped, days);
  const next = addWhole(date, whole + 1);
  return earlier(into, next);
}

function addWhole(date: string, months: number): string {
  const count = Number(date.slice(0, 4)) * 12 + Number(date.slice(5, 7)) - 1 + months;
  const year = Math.floor(count / 12);
  if (year > 9999) return LAST_DATE;
  const month = (count % 12) + 1;
  return write(year, month, Math.min(Number(date.slice(8, 10)), lastDay(year, month)));
}

/** The earlier of two dates. */
export function earlier(a: string, b: string): string {
  if (a < b) return a;
  return b;
}

/** The later of two dates. */
export function later(a: string, b: string): string {
  if (a > b) return a;
  return b;
}

/** Whole days in so many months of 30.4375 days, rounded down; the slack keeps 24 days from becoming 23. */
export function wholeDays(months: number): number {
  return Math.floor(months * MONTH_DAYS + 1e-9);
}

function lastDay(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

function write(year: number, month: number, day: number): string {
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

const MONTH_NAMES = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/** "8 July 2026", as said to a person. */
export function spokenDate(date: string): string {
  return `${Number(date.slice(8, 10))} ${MONTH_NAMES[Number(date.slice(5, 7)) - 1]} ${Number(date.slice(0, 4))}`;
}

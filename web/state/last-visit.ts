import { type Entry, nameOf, type Part, spokenDate } from "../../core/index.ts";
import type { KnownValve } from "./state.ts";

/** What is said of a valve when its job opens: when it was last seen, what was done to its seat, how old its seals are. */
export function lastVisitWords(known: KnownValve | undefined, today: string): string | undefined {
  if (!known) return undefined;
  const visits = known.history.filter((visit) => visit.on <= today).sort((a, b) => (a.on < b.on ? -1 : 1));
  const last = visits.at(-1);
  if (!last) return undefined;
  const said = [`Last seen ${dayWords(last.on, today)}`];
  const seat = visits.findLast((visit) => visit.entries.some(isOfSeat));
  if (seat) {
    const words = seatWords(seat.entries);
    if (words) said.push(seat === last ? `seat ${words}` : `seat ${words} ${dayWords(seat.on, today)}`);
  }
  const seals = visits.findLast((visit) => visit.entries.some(renewsSeals));
  if (seals) said.push(`seals ${ageWords(seals.on, today)}`);
  const owed = last.entries.findLast((entry) => entry.type === "test" && entry.result === "fail");
  if (owed?.type === "test") said.push(`${nameOf(owed.test, "test").toLowerCase()} failed then`);
  return `${said.join("; ")}.`;
}

const isOfSeat = (entry: Entry): boolean =>
  (entry.type === "work" && entry.status === "done" && entry.part === "seat") ||
  (entry.type === "finding" && entry.part === "seat");

/** What was done to it last; else how it was found. */
function seatWords(entries: readonly Entry[]): string | undefined {
  const done = entries.findLast((entry) => entry.type === "work" && entry.status === "done" && entry.part === "seat");
  if (done?.type === "work") return `was ${nameOf(done.work, "work")}`;
  const found = entries.findLast((entry) => entry.type === "finding" && entry.part === "seat");
  if (found?.type !== "finding") return undefined;
  const what = `${found.absent ? "not " : ""}${nameOf(found.condition, "condition")}`;
  return `was found ${what}${found.extent ? `, ${nameOf(found.extent, "extent")}` : ""}`;
}

const SEALS = new Set<Part | undefined>(["seals", "kit"]);
const renewsSeals = (entry: Entry): boolean =>
  entry.type === "work" && entry.status === "done" && entry.work === "replaced" && SEALS.has(entry.part);

/** "today", "2 September", or with its year where that is another. */
function dayWords(on: string, today: string): string {
  if (on === today) return "earlier today";
  const whole = spokenDate(on);
  return on.slice(0, 4) === today.slice(0, 4) ? whole.slice(0, -5) : whole;
}

/** How old, in whole months; in weeks where it is less than two. */
function ageWords(on: string, today: string): string {
  const [was, is] = [on, today].map((date) => date.split("-").map(Number));
  const months =
    ((is?.[0] ?? 0) - (was?.[0] ?? 0)) * 12 +
    ((is?.[1] ?? 0) - (was?.[1] ?? 0)) -
    ((is?.[2] ?? 0) < (was?.[2] ?? 0) ? 1 : 0);
  if (months >= 2) return `${months} months old`;
  const days = Math.round((Date.parse(today) - Date.parse(on)) / 86_400_000);
  return days < 14 ? `${days} ${days === 1 ? "day" : "days"} old` : `${Math.floor(days / 7)} weeks old`;
}

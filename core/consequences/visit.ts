import type { Condition, Part, Work } from "../shapes/codes.ts";
import type { Entry, Finding, WorkEntry } from "../shapes/entry.ts";
import type { Family, PastJob } from "../shapes/valve.ts";
import { reckonable } from "./doubt.ts";
import { reaches } from "./parts.ts";

/** One job on this valve: an earlier one, or today's, which is the last. */
export interface Visit {
  on: string;
  entries: readonly Entry[];
  /** those of them that say something is wrong */
  faults: readonly Finding[];
  /** its place in the row of visits */
  at: number;
}

/**
 * Earlier jobs oldest first, then today's. The order they were given in counts for nothing, that of two jobs of one
 * day neither: those stand in the order of what they hold. Jobs dated after today are no history yet.
 */
export function inOrder(history: readonly PastJob[], entries: readonly Entry[], on: string): Visit[] {
  const past = history.filter((job) => job.on <= on);
  past.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : byContent(a, b)));
  return [...past, { on, entries }].map((job, at) => {
    const counting = reckonable(job.entries);
    return { on: job.on, entries: counting, faults: counting.filter(isFault), at };
  });
}

/** What was only looked at comes before what was worked on, as a technician would do it. */
function byContent(a: PastJob, b: PastJob): number {
  const worked = (job: PastJob) => (job.entries.some((entry) => entry.type === "work") ? 1 : 0);
  const first = worked(a) - worked(b);
  if (first !== 0) return first;
  const left = plain(a.entries);
  const right = plain(b.entries);
  return left < right ? -1 : left > right ? 1 : 0;
}

/** Entries as text, whatever order their keys were written in. */
function plain(entries: readonly Entry[]): string {
  return JSON.stringify(entries.map((entry) => Object.entries(entry).sort(([a], [b]) => (a < b ? -1 : 1))));
}

/** A finding that something is wrong. */
export function isFault(entry: Entry): entry is Finding {
  return entry.type === "finding" && !entry.absent && entry.condition !== "ok" && entry.condition !== "intact";
}

/** A finding that all is well, or that a fault was looked for and is not there. */
export function isSound(entry: Entry): entry is Finding {
  return entry.type === "finding" && !entry.unsure && (entry.absent === true || isGood(entry.condition));
}

function isGood(condition: Condition): boolean {
  return condition === "ok" || condition === "intact";
}

/** True where `entry` says that one of `works` was done on `part`, without a doubt. */
export function isDone(
  entry: Entry,
  works: readonly Work[],
  part: Part | undefined,
  family: Family,
  sameJob = true,
): entry is WorkEntry {
  return (
    entry.type === "work" &&
    entry.status === "done" &&
    !entry.unsure &&
    works.includes(entry.work) &&
    (reaches(entry.part, part, family, sameJob) ||
      (entry.work === "replaced" && isWhole(entry.part, part)) ||
      (entry.resolved !== undefined && reaches(entry.resolved, part, family, sameJob)))
  );
}

/** A new valve is new throughout; a new body has a new seat area. */
function isWhole(said: Part | undefined, part: Part | undefined): boolean {
  return said === "valve" || (said === "body" && part === "seat_area");
}

/** True where that visit did one of `works` on `part`. */
export function didIn(
  visit: Visit,
  works: readonly Work[],
  part: Part | undefined,
  family: Family,
  sameJob = true,
): boolean {
  return visit.entries.some((entry) => isDone(entry, works, part, family, sameJob));
}

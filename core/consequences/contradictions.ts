import type { Part } from "../shapes/codes.ts";
import type { FollowUp } from "../shapes/consequence.ts";
import type { Entry, WorkEntry } from "../shapes/entry.ts";
import { isFault, isSound } from "./visit.ts";

/** Two things said of one valve in one job that cannot both be: `entry` is the place of the later one. */
export interface Contradiction {
  entry: number;
  why: string;
}

/** Follow-ups of the rules that ask because the record says otherwise. */
const RECORD_SAYS_OTHERWISE = new Set(["seat_flip_twice", "seat_not_reversible"]);

/**
 * What a job says against itself or against the record, in the order said. A later word that settles the earlier one
 * ("needs replacing", then "replaced it") is none; nor is a test that failed and passed after the repair.
 */
export function contradictions(entries: readonly Entry[], followUps: readonly FollowUp[]): Contradiction[] {
  const found: Contradiction[] = [];
  const add = (entry: number, why: string) => {
    if (!found.some((one) => one.entry === entry)) found.push({ entry, why });
  };
  entries.forEach((entry, at) => {
    const before = entries.slice(0, at);
    if (entry.type === "work") for (const why of workAgainst(entry, before)) add(at, why);
    if (entry.type === "need" && before.some((one) => isWork(one, "replaced", "done", entry.part)))
      add(at, "said replaced, and said to be ordered");
    if (entry.type === "finding" && isSound(entry) && faultStands(entry.part, before))
      add(at, "said to be fine, and found faulty before with nothing done in between");
  });
  for (const one of followUps) {
    if (!RECORD_SAYS_OTHERWISE.has(one.rule)) continue;
    const at = entries.findLastIndex((entry) => entry.type === "work" && entry.work === "flipped");
    if (at >= 0) add(at, one.why);
  }
  return found.sort((a, b) => a.entry - b.entry);
}

function workAgainst(entry: WorkEntry, before: readonly Entry[]): string[] {
  const { work, status, part } = entry;
  const was = (other: WorkEntry["work"], as: WorkEntry["status"]) => before.some((one) => isWork(one, other, as, part));
  if (part === undefined) return [];
  if (work === "replaced" && status !== "done" && was("replaced", "done"))
    return [status === "declined" ? "said replaced, and said left in" : "said replaced, and said to need replacing"];
  if (work === "reused" && status === "done" && was("replaced", "done")) return ["said replaced, and said reused"];
  if (work === "replaced" && status === "done" && was("reused", "done")) return ["said reused, and said replaced"];
  if ((work === "removed" || work === "discarded") && status === "done" && was("replaced", "done"))
    return ["said replaced, and taken out again with nothing said to be fitted"];
  if (work === "flipped" && status === "done" && was("flipped", "done")) return ["said flipped twice in one job"];
  return [];
}

function isWork(one: Entry, work: WorkEntry["work"], status: WorkEntry["status"], part: Part | undefined): boolean {
  return one.type === "work" && one.work === work && one.status === status && one.part === part && !one.unsure;
}

/** A fault found on that part, and no work done on it since. */
function faultStands(part: Part | undefined, before: readonly Entry[]): boolean {
  if (part === undefined) return false;
  const fault = before.findLastIndex(
    (one) => isFault(one) && one.part === part && !one.unsure && one.place === undefined,
  );
  if (fault < 0) return false;
  return !before.slice(fault).some((one) => one.type === "work" && one.part === part && one.status === "done");
}

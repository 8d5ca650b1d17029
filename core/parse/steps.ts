/** What each phrase of a session left standing, so that it can be taken back. */

import type { Entry } from "../shapes/entry.ts";
import type { Reference } from "./reference.ts";

/** What a phrase left. */
export interface Step {
  phrase: number;
  entries: Entry[];
  /** the carried parts before it, to which an undo goes back */
  before: Reference;
  after: Reference;
}

/** Steps as a chain, so that a phrase more costs the same however long the job is. */
export interface Steps {
  readonly last: Step;
  readonly before: Steps | undefined;
}

/** The chain with one step changed: "correction, LCV two one four", said long after the tag. */
export function replaceStep(steps: Steps | undefined, old: Step, next: Step): Steps | undefined {
  if (!steps) return undefined;
  return steps.last === old
    ? { last: next, before: steps.before }
    : { last: steps.last, before: replaceStep(steps.before, old, next) };
}

/** The last step that named a valve by its tag. */
export function lastTagged(steps: Steps | undefined): Step | undefined {
  for (let one = steps; one; one = one.before)
    if (one.last.entries.some((entry) => entry.type === "valve" && entry.tag)) return one.last;
  return undefined;
}

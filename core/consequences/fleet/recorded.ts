import type { Due, FollowUp } from "../../shapes/consequence.ts";
import type { Family, PastJob, Valve } from "../../shapes/valve.ts";
import { layOut } from "../bench.ts";
import type { Bench } from "../rule.ts";

/** One valve of a fleet as the record has it: every job, and what stands open and due after the last. */
export interface RecordedValve {
  site?: string;
  tag: string;
  valve: Valve;
  jobs: readonly PastJob[];
  open: readonly FollowUp[];
  due: readonly Due[];
  /** the families of its site's own, where it has some */
  families?: readonly Family[];
}

/** Its jobs laid out for reading; undefined where none is known by `today`. */
export function benchOf(of: RecordedValve, today: string, families: readonly Family[]): Bench | undefined {
  const { valve, jobs } = of;
  const past = jobs.filter((job) => job.on <= today).sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  const last = past[past.length - 1];
  return last && layOut(valve, past.slice(0, -1), last.entries, last.on, of.families ?? families);
}

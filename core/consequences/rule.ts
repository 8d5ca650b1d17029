import type { Part, Test, Work } from "../shapes/codes.ts";
import type { Check } from "../shapes/consequence.ts";
import type { Finding } from "../shapes/entry.ts";
import type { Family, Valve } from "../shapes/valve.ts";
import type { SeatStory } from "./seat-story.ts";
import type { Visit } from "./visit.ts";

/** What a rule of consequences is made of. */

/** The contract's table, top to bottom: of two equal follow-ups the rule that stands first here is the one named. */
export const RULE_ORDER = [
  "hazard_stop",
  "pressure_part_cracked",
  "seat_flip",
  "seat_which_side",
  "seat_second_side",
  "seat_spent",
  "seat_flip_twice",
  "seat_not_reversible",
  "soft_goods_reused",
  "soft_goods_bad",
  "groove_scratched",
  "leak_path",
  "hole_blocked",
  "threads_bad",
  "hard_part_bad",
  "unsure_finding",
  "test_failed",
  "test_owed",
  "torque_off",
  "work_owed",
  "fault_carried",
  "part_owed",
] as const;
export type RuleCode = (typeof RULE_ORDER)[number];

export const PRACTICE = "common practice, no source";

/** All that a rule may look at; nothing of it is ever edited. */
export interface Bench {
  family: Family;
  /** as recorded, with what was said today laid over it */
  valve: Valve;
  visits: readonly Visit[];
  today: Visit;
  on: string;
  seat: SeatStory;
  /** the verdict on a measured seat leak */
  judgeLeak: (visit: Visit, entry: number) => Extract<Check, { check: "seat_leakage" }>;
}

/** What one visit leaves owed, before it is known whether it was done. */
export interface Owed {
  do: string;
  part?: Part;
  when: "now" | "next_inspection";
  why: string;
  test?: Test;
  count?: number;
  /** the finding it rests on, where it rests on one */
  finding?: Finding;
  /** works on that part which settle it; replacing it where nothing is said */
  by?: readonly Work[];
  /** stays owed though the part was found ok since */
  stays?: true;
  /** another way in which a visit (its own, or a later one) settles it */
  settled?: (visit: Visit, later: boolean) => boolean;
  /** another rule's name for it, where the rule hands over */
  rule?: RuleCode;
  /** rule-handled doubt: an unsure finding has been taken into account already */
  doubtful?: true;
}

export interface Rule {
  rule: RuleCode;
  source: string;
  /** `today`: asked of today's visit alone; `faults`: also of earlier ones, whose faults are carried until mended;
   *  `record`: looks at all visits by itself */
  reads: "today" | "faults" | "record";
  owes(visit: Visit, bench: Bench): Owed[];
}

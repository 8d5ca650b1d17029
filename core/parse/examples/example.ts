import type { Entry } from "../../shapes/entry.ts";

/** The rules by which entries are made, as each entry names its own. */
export type RuleName =
  | "finding_is"
  | "finding_has"
  | "finding_does"
  | "finding_absent"
  | "finding_inside"
  | "finding_denied"
  | "finding_immovable"
  | "part_missing"
  | "work_done"
  | "work_needed"
  | "work_declined"
  | "new_part"
  | "needs_part"
  | "placed_replaced"
  | "placed_reused"
  | "placed_installed"
  | "placed_greased"
  | "placed_threadlocked"
  | "placed_cleaned"
  | "placed_tightened"
  | "placed_adjusted"
  | "placed_discarded"
  | "by_tool"
  | "to_go"
  | "turned"
  | "is_off"
  | "left"
  | "left_off"
  | "left_old_in"
  | "reused"
  | "copied"
  | "need"
  | "reading"
  | "test"
  | "valve"
  | "amended"
  | "hazard"
  | "command"
  | "note"
  | "answer";

/** What a rule takes: phrases of one job, and the entries this rule makes of them, all of them, by the contract's keys. */
export interface Hit {
  rule: RuleName;
  say: string | readonly string[];
  gives: readonly Entry[];
  why?: string;
}

/** The nearest neighbour that a rule must leave alone. */
export interface NearMiss {
  not: RuleName;
  say: string | readonly string[];
  why?: string;
}

export type Example = Hit | NearMiss;

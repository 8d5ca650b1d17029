import type {
  Acts,
  Bound,
  Condition,
  Extent,
  Part,
  Place,
  Quantity,
  Service,
  Severity,
  Test,
  Work,
} from "../shapes/codes.ts";
import type { UnitRow } from "./measures.ts";

/** How a verb is used: "lap", "lapped", "lapping"; of work also the noun, "a lapping", and where the part is then. */
export type VerbForm = "base" | "past" | "ing";
export type WorkForm = VerbForm | "noun" | "where";
/** How a condition is said of a part: it "is worn", "has cracks", "does leak". */
export type ConditionForm = "is" | "has" | "does";

/** All that one stretch of words can mean; what it does mean is settled by what stands around it. */
export interface Senses {
  part?: Part;
  /** the part's name ends in a plural */
  plural?: boolean;
  condition?: { code: Condition; form: ConditionForm }[];
  work?: { code: Work; form: WorkForm; with?: string[] }[];
  placing?: VerbForm;
  /** a tool, by the work that is done with it */
  tool?: Work;
  place?: Place;
  severity?: Severity;
  extent?: Extent;
  acts?: Acts;
  service?: Service;
  unit?: UnitRow["code"];
  quantity?: Quantity;
  bound?: Bound;
  test?: Test;
  outcome?: { test: Test; result: "pass" | "fail" };
  verdict?: "pass" | "fail";
  /** the bare word "test" */
  testing?: boolean;
  /** the ROLE bits of all it may play in a sentence */
  roles: number;
  plain?: boolean;
}

/** Senses with all their keys, so that the whole reading asks one shape of object: tenfold the speed of many shapes. */
export const noSenses = (): Senses => ({
  part: undefined,
  plural: undefined,
  condition: undefined,
  work: undefined,
  placing: undefined,
  tool: undefined,
  place: undefined,
  severity: undefined,
  extent: undefined,
  acts: undefined,
  service: undefined,
  unit: undefined,
  quantity: undefined,
  bound: undefined,
  test: undefined,
  outcome: undefined,
  verdict: undefined,
  testing: undefined,
  roles: 0,
  plain: undefined,
});

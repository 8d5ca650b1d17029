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
import type { GrammarRole } from "./grammar.ts";
import type { UnitRow } from "./measures.ts";

/** All that one stretch of words can mean; what it does mean is settled by what stands around it. */
export interface Senses {
  part?: Part;
  /** the part's name ends in a plural */
  plural?: boolean;
  condition?: { code: Condition; form: "is" | "has" | "does" }[];
  work?: { code: Work; form: "base" | "past" | "ing" | "noun"; with?: string[] }[];
  placing?: "base" | "past" | "ing";
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
  roles?: Set<GrammarRole>;
  plain?: boolean;
}

import type {
  Acts,
  Bound,
  Command,
  Condition,
  Extent,
  Hazard,
  Part,
  Place,
  Quantity,
  Service,
  Severity,
  Test,
  Unit,
  Work,
} from "../shapes/codes.ts";
import { COMMAND_ROWS, HAZARD_ROWS } from "../vocabulary/alarms.ts";
import { CONDITION_ROWS } from "../vocabulary/conditions.ts";
import { ACTS_ROWS, EXTENT_ROWS, PLACE_ROWS, SERVICE_ROWS, SEVERITY_ROWS } from "../vocabulary/details.ts";
import { BOUND_ROWS, QUANTITY_ROWS, UNIT_ROWS } from "../vocabulary/measures.ts";
import { PART_ROWS } from "../vocabulary/parts.ts";
import { TEST_ROWS } from "../vocabulary/tests.ts";
import { WORK_ROWS } from "../vocabulary/work.ts";

/** Which codes stand in which kind of table. */
export interface CodeOf {
  part: Part;
  condition: Condition;
  work: Work;
  test: Test;
  hazard: Hazard;
  command: Command;
  quantity: Quantity;
  unit: Unit;
  bound: Bound;
  extent: Extent;
  severity: Severity;
  place: Place;
  acts: Acts;
  service: Service;
}
export type WordKind = keyof CodeOf;
export type Code = CodeOf[WordKind];

/** What every row has, whatever its table. */
export interface NamedRow {
  code: string;
  name: string;
  help?: string;
  iso?: string;
}

/** Every table of words under the kind of its codes; a code that stands in two is first looked for in the first. */
export const TABLES: Record<WordKind, readonly NamedRow[]> = {
  part: PART_ROWS,
  condition: CONDITION_ROWS,
  work: WORK_ROWS,
  test: TEST_ROWS,
  hazard: HAZARD_ROWS,
  command: COMMAND_ROWS,
  quantity: QUANTITY_ROWS,
  unit: UNIT_ROWS,
  bound: BOUND_ROWS,
  extent: EXTENT_ROWS,
  severity: SEVERITY_ROWS,
  place: PLACE_ROWS,
  acts: ACTS_ROWS,
  service: SERVICE_ROWS,
};

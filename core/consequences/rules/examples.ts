import type { Example } from "../example.ts";
import { HARD_PART_EXAMPLES } from "./hard-parts.examples.ts";
import { RECORD_EXAMPLES } from "./record.examples.ts";
import { SEAT_EXAMPLES } from "./seat.examples.ts";
import { SOFT_GOODS_EXAMPLES } from "./soft-goods.examples.ts";
import { STOP_EXAMPLES } from "./stop.examples.ts";
import { TEST_EXAMPLES } from "./tests-owed.examples.ts";
import { TORQUE_EXAMPLES } from "./torque.examples.ts";

/** Every rule's examples; one runner tries them all. */
export const EXAMPLES: readonly Example[] = [
  ...STOP_EXAMPLES,
  ...SEAT_EXAMPLES,
  ...SOFT_GOODS_EXAMPLES,
  ...HARD_PART_EXAMPLES,
  ...TEST_EXAMPLES,
  ...TORQUE_EXAMPLES,
  ...RECORD_EXAMPLES,
];

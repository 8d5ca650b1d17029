import type { Rule } from "../rule.ts";
import { HARD_PART_RULES } from "./hard-parts.ts";
import { RECORD_RULES } from "./record.ts";
import { SEAT_RULES } from "./seat.ts";
import { SOFT_GOODS_RULES } from "./soft-goods.ts";
import { STOP_RULES } from "./stop.ts";
import { TEST_RULES } from "./tests-owed.ts";
import { TORQUE_RULES } from "./torque.ts";

/** Every rule; `unsure_finding` and `fault_carried` are made of these by `followUps`. */
export const RULES: readonly Rule[] = [
  ...STOP_RULES,
  ...SEAT_RULES,
  ...SOFT_GOODS_RULES,
  ...HARD_PART_RULES,
  ...TEST_RULES,
  ...TORQUE_RULES,
  ...RECORD_RULES,
];

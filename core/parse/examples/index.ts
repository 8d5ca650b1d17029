import { ASIDE_EXAMPLES } from "./asides.examples.ts";
import { DEED_EXAMPLES } from "./deeds.examples.ts";
import { DENIAL_EXAMPLES } from "./denials.examples.ts";
import type { Example } from "./example.ts";
import { FINDING_EXAMPLES } from "./findings.examples.ts";
import { JOINT_EXAMPLES } from "./joints.examples.ts";
import { MEASURE_EXAMPLES } from "./measures.examples.ts";
import { WHEREABOUTS_EXAMPLES } from "./whereabouts.examples.ts";
import { WHOLE_EXAMPLES } from "./whole.examples.ts";
import { WORK_EXAMPLES } from "./works.examples.ts";

/** Every rule's examples: what it takes, and its nearest neighbours that it must leave alone. */
export const EXAMPLES: readonly Example[] = [
  ...FINDING_EXAMPLES,
  ...WHEREABOUTS_EXAMPLES,
  ...WORK_EXAMPLES,
  ...DEED_EXAMPLES,
  ...MEASURE_EXAMPLES,
  ...WHOLE_EXAMPLES,
  ...DENIAL_EXAMPLES,
  ...JOINT_EXAMPLES,
  ...ASIDE_EXAMPLES,
];

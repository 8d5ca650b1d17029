import type { Condition, Part, Test, Work } from "../../shapes/codes.ts";

/**
 * The log's codes as ISO 14224:2016 writes them. Mechanisms: the numbers and notations of its table B.2, as a public
 * restatement has them (chapters 5 and 6 from memory). Modes and activities: from memory, of the tables for valves and
 * for maintenance. Which of them a spoken condition is was decided here, by common sense of the trade.
 */
export const CODES_SURE =
  "ISO 14224:2016; mechanisms 1.x to 2.x as in its table B.2, mechanisms 5.x and 6.x, modes and activities from memory; which code a spoken word takes was decided here";

export interface Coded {
  code: string;
  name: string;
}

const MECHANISMS = {
  "1.0": "mechanical failure, general",
  "1.1": "leakage",
  "1.3": "clearance or alignment failure",
  "1.4": "deformation",
  "1.5": "looseness",
  "1.6": "sticking",
  "2.0": "material failure, general",
  "2.2": "corrosion",
  "2.3": "erosion",
  "2.4": "wear",
  "2.5": "breakage",
  "2.7": "overheating",
  "5.1": "blockage or plugged",
  "5.2": "contamination",
  "6.4": "unknown",
} as const;
type MechanismCode = keyof typeof MECHANISMS;

type Fault = Exclude<Condition, "ok" | "intact">;
export type Severity14224 = "critical" | "degraded" | "incipient";

/** Per condition its mechanism, and whether the part still did its work: `critical` where it can no longer. */
const FAULTS: Record<Fault, [mechanism: MechanismCode, severity: Severity14224]> = {
  worn: ["2.4", "degraded"],
  eroded: ["2.3", "degraded"],
  washed_out: ["2.3", "critical"],
  corroded: ["2.2", "degraded"],
  pitted: ["2.2", "degraded"],
  scored: ["2.4", "degraded"],
  scratched: ["2.4", "incipient"],
  nicked: ["1.4", "incipient"],
  cut: ["2.5", "degraded"],
  cracked: ["2.5", "critical"],
  torn: ["2.5", "critical"],
  holed: ["2.5", "critical"],
  bent: ["1.4", "degraded"],
  broken: ["2.5", "critical"],
  stripped: ["1.4", "degraded"],
  galled: ["2.4", "degraded"],
  seized: ["1.6", "critical"],
  sticking: ["1.6", "degraded"],
  loose: ["1.5", "degraded"],
  missing: ["1.5", "degraded"],
  leaking: ["1.1", "critical"],
  plugged: ["5.1", "degraded"],
  fouled: ["5.2", "incipient"],
  swollen: ["2.0", "degraded"],
  hardened: ["2.0", "degraded"],
  flattened: ["1.4", "degraded"],
  weak: ["2.0", "degraded"],
  misaligned: ["1.3", "degraded"],
  frozen: ["5.1", "degraded"],
  damaged: ["1.0", "degraded"],
  chipped: ["2.5", "degraded"],
  dented: ["1.4", "incipient"],
  kinked: ["1.4", "degraded"],
  pinched: ["1.4", "degraded"],
  extruded: ["1.4", "degraded"],
  cross_threaded: ["1.3", "degraded"],
  rounded: ["2.4", "degraded"],
  burnt: ["2.7", "degraded"],
  low: ["6.4", "incipient"],
  dirty: ["5.2", "incipient"],
};

const MODES = {
  LCP: "leakage in closed position",
  ELP: "external leakage, process medium",
  ELU: "external leakage, utility medium",
  FTF: "failure to function on demand",
  DOP: "delayed operation",
  PLU: "plugged or choked",
  STD: "structural deficiency",
  SER: "minor in-service problem",
  OTH: "other",
} as const;
type ModeCode = keyof typeof MODES;

const TEST_MODES: Record<Test, ModeCode> = {
  seat_leak: "LCP",
  stroke: "FTF",
  shell: "ELP",
  packing: "ELP",
  actuator: "ELU",
};
/** Parts that hold the control gas or air, not what flows. */
const UTILITY: ReadonlySet<Part> = new Set<Part>([
  "diaphragm",
  "upper_diaphragm",
  "actuator",
  "tubing",
  "fitting",
  "breather",
  "supply_port",
  "signal_port",
  "positioner",
  "regulator",
  "controller",
  "solenoid",
  "pilot",
]);

const ACTIVITIES: Partial<Record<Work, [code: string, name: string]>> = {
  replaced: ["1", "replace"],
  flipped: ["2", "repair"],
  repaired: ["2", "repair"],
  lapped: ["2", "repair"],
  dressed: ["2", "repair"],
  straightened: ["2", "repair"],
  adjusted: ["4", "adjust"],
  tightened: ["4", "adjust"],
  calibrated: ["4", "adjust"],
  reused: ["5", "refit"],
  installed: ["5", "refit"],
  cleaned: ["7", "service"],
  greased: ["7", "service"],
  drained: ["7", "service"],
  filled: ["7", "service"],
  vented: ["7", "service"],
  threadlocked: ["7", "service"],
  inspected: ["9", "inspection"],
  disassembled: ["9", "inspection"],
};

export const isFaultCode = (condition: Condition): condition is Fault => condition in FAULTS;

export function mechanismOf(condition: Fault): Coded {
  const [code] = FAULTS[condition];
  return { code, name: MECHANISMS[code] };
}

/** How bad a finding is; said to be slight, one step less than its kind. */
export function severityOf(condition: Fault, slight: boolean): Severity14224 {
  const [, severity] = FAULTS[condition];
  if (!slight) return severity;
  return severity === "critical" ? "degraded" : "incipient";
}

export function modeOfTest(test: Test): Coded {
  return coded(TEST_MODES[test]);
}

export function modeOfFinding(condition: Fault, part: Part | undefined): Coded {
  if (condition === "leaking") return coded(part !== undefined && UTILITY.has(part) ? "ELU" : "ELP");
  if (condition === "plugged" || condition === "frozen") return coded("PLU");
  if (condition === "seized") return coded("FTF");
  if (condition === "sticking") return coded("DOP");
  const { code } = mechanismOf(condition);
  if (code.startsWith("2") || code === "1.4") return coded("STD");
  return coded(severityOf(condition, false) === "incipient" ? "SER" : "OTH");
}

export function activityOf(work: Work): Coded {
  const [code, name] = ACTIVITIES[work] ?? ["12", "other"];
  return { code, name };
}

const coded = (code: ModeCode): Coded => ({ code, name: MODES[code] });
/** A failed test shows that something leaks or sticks, not why. */
export const UNKNOWN_MECHANISM: Coded = { code: "6.4", name: MECHANISMS["6.4"] };

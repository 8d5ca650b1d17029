import type { Condition, Hazard, Part, Place, Quantity, Test, Unit, Work } from "../../core/index.ts";

/** How codes read in a sentence. A code that nobody words does not compile where the table is a Record. */

const SPELLED: Partial<Record<Part, string>> = {
  o_ring: "O-ring",
  cage_o_ring: "cage O-ring",
  stem_guide_o_ring: "stem guide O-ring",
  seals: "seals",
  trim: "trim",
};
const PLURAL: ReadonlySet<Part> = new Set<Part>(["seals", "threads", "inlet_threads", "outlet_threads"]);

export const partName = (part: Part): string => SPELLED[part] ?? part.replaceAll("_", " ");
export const isPlural = (part: Part | undefined): boolean => part !== undefined && PLURAL.has(part);
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** After "was found": what the eye or hand found. */
export const CONDITION_WORDS: Record<Condition, string> = {
  ok: "in good order",
  worn: "worn",
  eroded: "eroded",
  washed_out: "washed out",
  corroded: "corroded",
  pitted: "pitted",
  scored: "scored",
  scratched: "scratched",
  nicked: "nicked",
  cut: "cut",
  cracked: "cracked",
  torn: "torn",
  holed: "holed through",
  bent: "bent",
  broken: "broken",
  stripped: "stripped",
  galled: "galled",
  seized: "seized",
  sticking: "sticking",
  loose: "loose",
  missing: "missing",
  leaking: "leaking",
  plugged: "plugged",
  fouled: "fouled",
  swollen: "swollen",
  hardened: "hardened",
  flattened: "flattened",
  weak: "weak",
  misaligned: "misaligned",
  frozen: "iced up",
  damaged: "damaged",
  intact: "intact",
  chipped: "chipped",
  dented: "dented",
  kinked: "kinked",
  pinched: "pinched",
  extruded: "extruded",
  cross_threaded: "cross-threaded",
  rounded: "rounded off",
  burnt: "burnt",
  low: "low",
  dirty: "dirty",
};

/** After "was": what was done. */
export const WORK_WORDS: Record<Work, string> = {
  replaced: "replaced",
  flipped: "flipped to its other side",
  cleaned: "cleaned",
  reused: "put back in service",
  repaired: "repaired",
  lapped: "lapped",
  greased: "greased",
  adjusted: "adjusted",
  tightened: "tightened",
  removed: "removed",
  installed: "installed",
  inspected: "inspected",
  drained: "drained",
  filled: "filled",
  threadlocked: "secured with thread locker",
  discarded: "discarded",
  straightened: "straightened",
  dressed: "dressed",
  vented: "vented",
  calibrated: "calibrated",
  disassembled: "taken apart",
};

export const HAZARD_WORDS: Record<Hazard, string> = {
  gas: "gas",
  trapped_pressure: "trapped pressure",
  not_isolated: "not isolated",
  stored_spring: "spring energy still stored",
  injury: "injury",
  spill: "spill",
  fire: "fire",
};

export const TEST_WORDS: Record<Test, string> = {
  seat_leak: "Seat leak test",
  stroke: "Stroke test",
  shell: "Shell leak test",
  packing: "Packing leak test",
  actuator: "Actuator air leak test",
};

export const QUANTITY_WORDS: Record<Quantity, string> = {
  torque: "torque",
  upstream_pressure: "upstream pressure",
  downstream_pressure: "downstream pressure",
  signal_pressure: "signal pressure",
  supply_pressure: "supply pressure",
  pressure: "pressure",
  leak_rate: "leak rate",
  travel: "travel",
  temperature: "temperature",
  duration: "time",
  length: "length",
  percent_open: "opening",
};

const UNIT_WORDS: Record<Unit, string> = {
  ft_lbf: "ft-lbf",
  in_lbf: "in-lbf",
  N_m: "N·m",
  psi: "psi",
  kPa: "kPa",
  bar: "bar",
  in_H2O: "in H₂O",
  "bubble/min": "bubbles/min",
  "drop/min": "drops/min",
  "mL/min": "mL/min",
  in: "in",
  mm: "mm",
  degF: "°F",
  degC: "°C",
  s: "s",
  min: "min",
  "%": "%",
};
export const unitName = (unit: Unit): string => UNIT_WORDS[unit];

const PLACE_WORDS: Partial<Record<Place, string>> = {
  inside: "on the inside",
  outside: "on the outside",
  groove: "in the groove",
  hole: "at the hole",
  left: "on the left",
  right: "on the right",
  inlet: "on the inlet side",
  outlet: "on the outlet side",
  upper: "at the upper end",
  lower: "at the lower end",
};
export const placeName = (place: Place): string => PLACE_WORDS[place] ?? `at the ${place}`;

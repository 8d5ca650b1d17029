/**
 * Every code an entry may carry, spelled as the log keeps it for good.
 * Codes are added, never renamed or dropped: stored phrases are read again years later.
 * Plain arrays, without zod, so that the browser pays nothing for them.
 */

export const CONDITIONS = [
  "ok", "worn", "eroded", "washed_out", "corroded", "pitted", "scored", "scratched", "nicked", "cut",
  "cracked", "torn", "holed", "bent", "broken", "stripped", "galled", "seized", "sticking", "loose",
  "missing", "leaking", "plugged", "fouled", "swollen", "hardened", "flattened", "weak", "misaligned",
  "frozen", "damaged", "intact", "chipped", "dented", "kinked", "pinched", "extruded", "cross_threaded",
  "rounded", "burnt", "low", "dirty",
] as const;
export type Condition = (typeof CONDITIONS)[number];

export const WORKS = [
  "replaced", "flipped", "cleaned", "reused", "repaired", "lapped", "greased", "adjusted", "tightened",
  "removed", "installed", "inspected", "drained", "filled", "threadlocked", "discarded", "straightened",
  "dressed", "vented", "calibrated", "disassembled",
] as const;
export type Work = (typeof WORKS)[number];

export const STATUSES = ["done", "needed", "declined"] as const;
export type Status = (typeof STATUSES)[number];

export const GENERAL_PARTS = [
  "seat", "plug", "stem", "cage", "guide", "diaphragm", "spring", "gasket", "o_ring", "backup_ring",
  "packing", "seals", "kit", "bonnet", "body", "housing", "bolting", "threads", "nut", "valve", "actuator",
  "oil", "tubing", "fitting",
] as const;
export const NAMED_PARTS = [
  "seat_gasket", "cage_gasket", "cage_o_ring", "stem_guide", "stem_guide_o_ring", "lock_nut",
  "upper_diaphragm", "lower_diaphragm", "diaphragm_plate", "diaphragm_nut", "actuator_spring",
  "upper_housing", "lower_housing", "bonnet_gasket", "bonnet_bolting", "body_bolting", "inlet_threads",
  "outlet_threads", "seat_area", "travel_indicator", "indicator_gasket", "indicator_spring", "breather",
  "supply_port", "signal_port", "vent_hole", "packing_nut", "stem_connector", "positioner", "controller",
  "regulator", "gauge", "strainer", "solenoid", "trim", "yoke", "flange", "handwheel", "adjusting_screw",
  "float", "linkage", "pilot",
] as const;
export const PARTS = [...GENERAL_PARTS, ...NAMED_PARTS] as const;
export type Part = (typeof PARTS)[number];

export const PLACES = [
  "top", "bottom", "upper", "lower", "inlet", "outlet", "inside", "outside", "edge", "center", "groove",
  "face", "hole", "left", "right", "body",
] as const;
export type Place = (typeof PLACES)[number];

export const EXTENTS = ["one_side", "both_sides", "all_around", "partial"] as const;
export type Extent = (typeof EXTENTS)[number];

export const SEVERITIES = ["slight", "severe"] as const;
export type Severity = (typeof SEVERITIES)[number];

export const QUANTITIES = [
  "torque", "upstream_pressure", "downstream_pressure", "signal_pressure", "supply_pressure", "pressure",
  "leak_rate", "travel", "temperature", "duration", "length", "percent_open",
] as const;
export type Quantity = (typeof QUANTITIES)[number];

export const UNITS = [
  "ft_lbf", "in_lbf", "N_m", "psi", "kPa", "bar", "in_H2O", "bubble/min", "drop/min", "mL/min", "in",
  "mm", "degF", "degC", "s", "min", "%",
] as const;
export type Unit = (typeof UNITS)[number];

export const BOUNDS = ["min", "max", "about"] as const;
export type Bound = (typeof BOUNDS)[number];

export const TESTS = ["seat_leak", "stroke", "shell", "packing", "actuator"] as const;
export type Test = (typeof TESTS)[number];
export type TestResult = "pass" | "fail" | null;

export const HAZARDS = [
  "gas", "trapped_pressure", "not_isolated", "stored_spring", "injury", "spill", "fire",
] as const;
export type Hazard = (typeof HAZARDS)[number];

export const COMMANDS = ["finish", "missing", "read_back", "photo", "mute", "unmute"] as const;
export type Command = (typeof COMMANDS)[number];

export const ACTS = ["pressure_opens", "pressure_closes"] as const;
export type Acts = (typeof ACTS)[number];

export const SERVICES = ["normal", "severe"] as const;
export type Service = (typeof SERVICES)[number];

export const LEAK_CLASSES = ["I", "II", "III", "IV", "V", "VI"] as const;
export type LeakClass = (typeof LEAK_CLASSES)[number];

export const ENTRY_TYPES = [
  "finding", "work", "reading", "test", "valve", "need", "hazard", "note", "command",
] as const;
export type EntryType = (typeof ENTRY_TYPES)[number];

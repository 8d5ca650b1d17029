import type { Condition, Part, Quantity, Unit } from "../../core/index.ts";

/**
 * Codes as a person reads them. A code is already the trade's own word with underscores;
 * only those that read badly so are written out here.
 */
const WRITTEN: Record<string, string> = {
  o_ring: "O-ring",
  cage_o_ring: "cage O-ring",
  stem_guide_o_ring: "stem guide O-ring",
  cross_threaded: "cross-threaded",
  seat_leak: "seat leak test",
  stroke: "stroke test",
  shell: "shell test",
  packing_test: "packing test",
  actuator_test: "actuator test",
  gas: "gas",
  trapped_pressure: "pressure still trapped",
  not_isolated: "not isolated",
  stored_spring: "spring still loaded",
  injury: "someone is hurt",
  one_side: "one side",
  percent_open: "open",
  upstream_pressure: "pressure upstream",
  downstream_pressure: "pressure downstream",
  signal_pressure: "signal pressure",
  supply_pressure: "supply pressure",
  seat_inspection: "seat inspection",
  seal_replacement: "seal replacement",
  balanced_dump: "balanced dump valve",
  globe_control: "globe control valve",
  next_inspection: "next inspection",
};

const UNITS: Record<Unit, string> = {
  ft_lbf: "ft·lbf",
  in_lbf: "in·lbf",
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

export function nameOf(code: string): string {
  return WRITTEN[code] ?? code.replaceAll("_", " ");
}

export function partName(part: Part | undefined): string {
  return part ? nameOf(part) : "";
}

/** "packing" and "actuator" name a part and a test alike. */
export function testName(test: string): string {
  return WRITTEN[`${test}_test`] ?? nameOf(test);
}

export function unitName(unit: Unit): string {
  return UNITS[unit];
}

export function conditionName(condition: Condition): string {
  return nameOf(condition);
}

export function quantityName(quantity: Quantity): string {
  return nameOf(quantity);
}

export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

export function listed(words: string[]): string {
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

/** Step 4a: a number with its unit, and what kind of unit it is. */

import type { Quantity, Unit } from "../shapes/codes.ts";
import type { Reading } from "../shapes/entry.ts";
import { wordTable } from "../vocabulary/notation.ts";
import type { Noun } from "./noun.ts";

/** A number with its unit, "twenty eight foot pounds": chunks [from, to). */
export interface Measure {
  from: number;
  to: number;
  value: number;
  upper?: number;
  unit?: Unit | "pound" | "degree";
  bound?: Reading["bound"];
  /** the chunk that says the bound */
  boundAt?: number;
  quantity?: Quantity;
  /** the chunk that says what it is of */
  word?: number;
  /** a chunk that leads up to it and says no more than it does: "tested" at sixty, "leaking" three cc a minute */
  lead?: number;
  /** index of the noun it is said of */
  noun?: Noun;
}

export const PRESSURES = new Set<string>(["psi", "kPa", "bar", "in_H2O"]);

export const TORQUES = new Set<string>(["ft_lbf", "in_lbf", "N_m"]);

export const RATES = new Set<string>(["bubble/min", "drop/min", "mL/min"]);

export const BOLTED = /bolting|nut|threads|bolt/;

export const isPressure = (unit: string | undefined) => unit !== undefined && PRESSURES.has(unit);

export const isRate = (unit: string | undefined) => unit !== undefined && RATES.has(unit);

export const isPressureWord = (quantity: Quantity | undefined) => quantity?.endsWith("pressure") ?? false;

/** "the supply gauge says thirty five": the gauge tells what it measures. */
export function gaugeOf(text: string): Quantity | undefined {
  const of = /^(?:the )?(supply|signal|upstream|downstream|inlet|outlet|output)\b/.exec(text)?.[1];
  return of === undefined ? undefined : GAUGES[of];
}

const GAUGES: Record<string, Quantity> = wordTable({
  supply: "supply_pressure",
  signal: "signal_pressure",
  output: "signal_pressure",
  upstream: "upstream_pressure",
  inlet: "upstream_pressure",
  downstream: "downstream_pressure",
  outlet: "downstream_pressure",
});

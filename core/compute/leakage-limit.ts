import type { LeakClass } from "../shapes/codes.ts";
import { ratedGasScfh, ratedWaterGpm, USUAL_XT } from "./capacity.ts";

/** A seat leakage limit, or why there is none. */
export type SeatLeakageLimit =
  | { ok: true; mLPerMin: number; bubblesPerMin?: number; source: string }
  | { ok: false; problem: "no_limit"; why: string };

export interface LeakageAsk {
  class: LeakClass;
  /** seat port diameter, inches: classes V and VI */
  port_in?: number;
  /** rated flow coefficient: classes II to IV */
  cv?: number;
  xT?: number;
  /** drop across the shut valve during the test, psi */
  dp_psi?: number;
  /** gas where nothing is said; nitrogen counts as air */
  medium?: "gas" | "air" | "nitrogen" | "water";
}

export const LEAKAGE_SOURCE = "ANSI/FCI 70-2, IEC 60534-4";

/** Class VI: port diameter in inches, mL/min, bubbles/min of the standard's tube. ANSI/FCI 70-2-2006 table 2. */
const CLASS_VI: readonly [port: number, mL: number, bubbles?: number][] = [
  [1, 0.15, 1],
  [1.5, 0.3, 2],
  [2, 0.45, 3],
  [2.5, 0.6, 4],
  [3, 0.9, 6],
  [4, 1.7, 11],
  [6, 4, 27],
  [8, 6.75, 45],
  [10, 11.1],
  [12, 16],
  [14, 21.6],
  [16, 28.4],
];
const OF_RATED: Partial<Record<LeakClass, number>> = { II: 0.005, III: 0.001, IV: 0.0001 };
const ML_PER_SCF_HOUR = 471.947443;
const ML_PER_GALLON = 3785.411784;
/** Within this of a row, a port is that row's. */
const ROW_SLACK_IN = 2 / 25.4;

/**
 * The most that a shut seat may pass, in mL/min, and in bubbles/min where the standard counts them.
 * Class I has no test; class VI is a gas test whatever the drop; anything missing is said, never guessed.
 */
export function seatLeakageLimit(ask: LeakageAsk): SeatLeakageLimit {
  const water = ask.medium === "water";
  if (ask.class === "I") return none("class I has no leak test");
  if (ask.class === "VI") {
    if (water) return none("class VI is a gas test");
    if (!(ask.port_in && ask.port_in > 0)) return none("the port size is not known");
    return classVI(ask.port_in);
  }
  if (ask.class === "V") {
    if (!(ask.port_in && ask.port_in > 0)) return none("the port size is not known");
    if (!water) return limit(4.7 * ask.port_in, "class V on gas: 4.7 mL/min per inch of port at 50 psi");
    if (!known(ask.dp_psi)) return none("the test pressure is not known");
    return limit(5e-4 * ask.port_in * ask.dp_psi, "class V on water: 0.0005 mL/min per inch of port and psi");
  }
  if (!(ask.cv && ask.cv > 0)) return none("the rated Cv is not known");
  if (!known(ask.dp_psi)) return none("the test pressure is not known");
  const share = OF_RATED[ask.class] as number;
  const rated = water
    ? ratedWaterGpm(ask.cv, ask.dp_psi) * ML_PER_GALLON
    : ratedGasScfh(ask.cv, ask.dp_psi, ask.xT ?? USUAL_XT) * ML_PER_SCF_HOUR;
  return limit(share * rated, `class ${ask.class}: ${share * 100} % of rated capacity by IEC 60534-2-1`);
}

/** By row, under 1 inch as 1 inch; between rows the rate goes as the diameter squared (rule from memory). */
function classVI(port: number): SeatLeakageLimit {
  const row = (CLASS_VI.find(([size]) => Math.abs(port - size) <= ROW_SLACK_IN + 1e-12) ??
    (port < 1 ? CLASS_VI[0] : undefined)) as (typeof CLASS_VI)[number] | undefined;
  if (row) return limit(row[1], "class VI by port diameter", row[2]);
  const above = CLASS_VI.findIndex(([size]) => size > port);
  const high = CLASS_VI[above];
  const low = CLASS_VI[above - 1];
  if (!high || !low) return none(`the class VI table ends at ${CLASS_VI[CLASS_VI.length - 1]?.[0]} inch`);
  const part = (port ** 2 - low[0] ** 2) / (high[0] ** 2 - low[0] ** 2);
  const bubbles = low[2] !== undefined && high[2] !== undefined ? low[2] + part * (high[2] - low[2]) : undefined;
  return limit(low[1] + part * (high[1] - low[1]), "class VI by port diameter, between rows", bubbles);
}

const known = (dp: number | undefined): dp is number => dp !== undefined && dp > 0;

function limit(mLPerMin: number, how: string, bubblesPerMin?: number): SeatLeakageLimit {
  if (!Number.isFinite(mLPerMin)) return none("the figures given are beyond reckoning");
  const source = `${LEAKAGE_SOURCE}, ${how}`;
  return bubblesPerMin === undefined ? { ok: true, mLPerMin, source } : { ok: true, mLPerMin, bubblesPerMin, source };
}

function none(why: string): SeatLeakageLimit {
  return { ok: false, problem: "no_limit", why };
}

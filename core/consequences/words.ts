import { unitName } from "../compute/unit-names.ts";
import type { Part, Unit } from "../shapes/codes.ts";

/** Codes as a technician says them, for the sentences that give reasons. */

/** "seat gasket", "cage O-ring". */
export function spoken(part: Part | undefined): string {
  return part === undefined ? "a part not named" : part.replaceAll("o_ring", "O-ring").replaceAll("_", " ");
}

export function spokenUnit(unit: Unit): string {
  return unitName(unit);
}

/** "4.1 months", "1 month", "0.25 months": one decimal, or two figures under one. */
export function spokenMonths(months: number): string {
  const figure = monthFigure(months);
  return `${figure} ${figure === "1" ? "month" : "months"}`;
}

export function monthFigure(months: number): string {
  return months < 0.95 ? String(Number(months.toPrecision(2))) : months.toFixed(1).replace(/\.0$/, "");
}

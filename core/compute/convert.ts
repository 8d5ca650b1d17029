import { unitName } from "./unit-names.ts";

/**
 * Units the trade speaks, and what one is worth in the base unit of its kind. Exact by definition but for psi,
 * whose long digits follow from exact ones. Source: NIST SP 811 (2008) appendix B.8; `in_H2O` is its
 * conventional inch of water, 249.08891 Pa.
 */
const WORTH: Record<string, { kind: string; worth: number }> = {
  N_m: { kind: "torque", worth: 1 },
  ft_lbf: { kind: "torque", worth: 1.3558179483314003 },
  in_lbf: { kind: "torque", worth: 1.3558179483314003 / 12 },
  kPa: { kind: "pressure", worth: 1 },
  bar: { kind: "pressure", worth: 100 },
  psi: { kind: "pressure", worth: 6.894757293168361 },
  in_H2O: { kind: "pressure", worth: 0.24908891 },
  mm: { kind: "length", worth: 1 },
  in: { kind: "length", worth: 25.4 },
  s: { kind: "time", worth: 1 },
  min: { kind: "time", worth: 60 },
};

/** No conversion: a sentence for a person, and no number. */
export interface DoesNotConvert {
  ok: false;
  problem: "does_not_convert";
  why: string;
}

/**
 * The same amount in another unit. `degF` and `degC` are temperatures, not differences. A bubble or a drop has no
 * settled volume, so neither converts to anything but itself; nor do unlike quantities: those say so instead.
 */
export function convert(value: number, from: string, to: string): number | DoesNotConvert {
  if (from === to) return value;
  if (from === "degF" && to === "degC") return (value - 32) / 1.8;
  if (from === "degC" && to === "degF") return value * 1.8 + 32;
  for (const unit of [from, to])
    if (unit === "bubble/min" || unit === "drop/min")
      return no(
        `a ${unit === "drop/min" ? "drop" : "bubble"} has no settled volume, so ${unitName(from)} does not convert to ${unitName(to)}`,
      );
  const a = WORTH[from];
  const b = WORTH[to];
  if (!a || !b || a.kind !== b.kind) return no(`${unitName(from)} does not convert to ${unitName(to)}`);
  return (value * a.worth) / b.worth;
}

function no(why: string): DoesNotConvert {
  return { ok: false, problem: "does_not_convert", why };
}

/** True where `value` is no more than `limit`, but for the last bits that a converted limit can lose. */
export function atMost(value: number, limit: number): boolean {
  return value <= limit + Math.abs(limit) * 1e-9;
}

/** True where `value` is no less than `limit`, with the same slack. */
export function atLeast(value: number, limit: number): boolean {
  return value >= limit - Math.abs(limit) * 1e-9;
}

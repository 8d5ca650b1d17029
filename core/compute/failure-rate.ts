import { evenChiSquareQuantile } from "./poisson.ts";

/** How often something fails, with exact bounds; per year where the exposure is in years. */
export interface FailureRate {
  failures: number;
  /** valve-years looked over */
  exposure: number;
  /** failures over exposure; none where nothing was looked over */
  rate?: number;
  lower?: number;
  upper?: number;
  /** two-sided confidence of the bounds, 0 to 1 */
  confidence: number;
}

export const RATE_SOURCE = "exact chi-square bounds of a Poisson count, NIST e-Handbook 8.4.5.1";

/**
 * Failures per unit of exposure where the time looked over was fixed beforehand: chi-square with 2r degrees of freedom
 * below, 2r + 2 above. With no failure the lower bound is 0, and the upper still says how good it can be at worst.
 * Throws RangeError for a count that is none, or a confidence not between 0 and 1.
 */
export function failureRate(failures: number, exposure: number, confidence = 0.9): FailureRate {
  if (!(Number.isInteger(failures) && failures >= 0)) throw new RangeError(`${failures} is no count of failures`);
  if (!(confidence > 0 && confidence < 1)) throw new RangeError("a confidence lies between 0 and 1");
  if (!(exposure > 0)) return { failures, exposure: 0, confidence };
  const beyond = (1 - confidence) / 2;
  return {
    failures,
    exposure,
    rate: failures / exposure,
    lower: failures === 0 ? 0 : evenChiSquareQuantile(beyond, 2 * failures) / (2 * exposure),
    upper: evenChiSquareQuantile(1 - beyond, 2 * failures + 2) / (2 * exposure),
    confidence,
  };
}

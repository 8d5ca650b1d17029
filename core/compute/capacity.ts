/** Rated flow through a control valve: IEC 60534-2-1 / ISA-75.01.01, US units. */

const ATMOSPHERE_PSI = 14.696;
/** 60 degF, on the absolute scale of Rankine. */
const SIXTY_F_IN_R = 519.67;
/** Flow coefficient constant for Cv, scfh at 60 degF and 14.696 psia, psia, degrees Rankine. */
const N7 = 1360;
/** A globe valve, flow opening; the sizing standard's typical value. */
export const USUAL_XT = 0.72;

/**
 * Air (and nitrogen, taken as air) at 60 degF blowing to atmosphere, in standard cubic feet an hour.
 * `dpPsi` is the drop across the valve, in psi; `xT` the pressure drop ratio at which flow chokes.
 */
export function ratedGasScfh(cv: number, dpPsi: number, xT: number = USUAL_XT): number {
  const p1 = dpPsi + ATMOSPHERE_PSI;
  const x = Math.min(dpPsi / p1, xT);
  const expansion = 1 - x / (3 * xT);
  return N7 * cv * p1 * expansion * Math.sqrt(x / SIXTY_F_IN_R);
}

/** Water, not choked, in US gallons a minute. */
export function ratedWaterGpm(cv: number, dpPsi: number): number {
  return cv * Math.sqrt(dpPsi);
}

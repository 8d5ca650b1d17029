/**
 * Flow through a control valve: IEC 60534-2-1 / ISA-75.01.01. The leak limits rest on the US forms; the SI forms let
 * the same equations be held against the standard's own examples.
 */

const ATMOSPHERE_PSI = 14.696;
/** 60 degF, on the absolute scale of Rankine. */
const SIXTY_F_IN_R = 519.67;
/** Table 1: Cv, scfh at 60 degF and 14.696 psia, psia, degrees Rankine. */
const N7 = 1360;
/** Table 1: Kv, m3/h, kPa. */
const N1_SI = 0.1;
/** Table 1: Kv, m3/h at 0 degC and 101.325 kPa, kPa, K. */
const N9_SI = 24.6;
/** A globe valve, flow opening; the sizing standard's typical value. */
export const USUAL_XT = 0.72;

/** The pressure drop ratio that counts, no more than at choking, and the expansion factor there. */
export function expansion(dp: number, p1: number, chokedRatio: number): { x: number; Y: number } {
  const x = Math.min(dp / p1, chokedRatio);
  return { x, Y: 1 - x / (3 * chokedRatio) };
}

/**
 * Air (and nitrogen, taken as air) at 60 degF blowing to atmosphere, in standard cubic feet an hour.
 * `dpPsi` is the drop across the valve, in psi; `xT` the pressure drop ratio at which flow chokes.
 */
export function ratedGasScfh(cv: number, dpPsi: number, xT: number = USUAL_XT): number {
  const p1 = dpPsi + ATMOSPHERE_PSI;
  const { x, Y } = expansion(dpPsi, p1, xT);
  return N7 * cv * p1 * Y * Math.sqrt(x / SIXTY_F_IN_R);
}

/** Water, not choked, in US gallons a minute. */
export function ratedWaterGpm(cv: number, dpPsi: number): number {
  return cv * Math.sqrt(dpPsi);
}

/** Drop at which a liquid chokes, kPa; `FL` is the valve's pressure recovery factor, pressures absolute. */
export function chokedLiquidKPa(p1: number, vapour: number, critical: number, FL: number): number {
  const FF = 0.96 - 0.28 * Math.sqrt(vapour / critical);
  return FL ** 2 * (p1 - FF * vapour);
}

/** Kv that passes `m3PerHour` of liquid at that drop (kPa), `density` relative to water's. */
export function liquidKv(m3PerHour: number, dpKPa: number, density: number): number {
  return m3PerHour / (N1_SI * Math.sqrt(dpKPa / density));
}

/** Kv that passes `m3PerHour` of gas (at 0 degC), turbulent, without reducers. Pressures kPa absolute. */
export function gasKv(gas: {
  m3PerHour: number;
  p1: number;
  p2: number;
  kelvin: number;
  molarMass: number;
  /** ratio of specific heats */
  gamma: number;
  /** compressibility */
  Z: number;
  xT: number;
}): number {
  const { x, Y } = expansion(gas.p1 - gas.p2, gas.p1, (gas.gamma / 1.4) * gas.xT);
  return (gas.m3PerHour / (N9_SI * gas.p1 * Y)) * Math.sqrt((gas.molarMass * gas.kelvin * gas.Z) / x);
}

import type { Family } from "../shapes/valve.ts";
import dump from "./balanced_dump.json";
import globe from "./globe_control.json";

/** The families that ship with the house, each one data file; a test reads both through `familySchema`. */
export const FAMILIES: readonly Family[] = [dump as unknown as Family, globe as unknown as Family];

/** Taken where a valve says no family. */
export const USUAL_FAMILY = FAMILIES[0] as Family;

/**
 * The family of that code, a site's own before ours. Where none is said, the balanced dump valve; a code that nobody
 * knows is read as that valve too, but without its figures: a limit is never borrowed from another design.
 */
export function familyOf(code: string | undefined, own: readonly Family[] = []): Family {
  if (code === undefined) return own.find((one) => one.family === USUAL_FAMILY.family) ?? USUAL_FAMILY;
  return (
    own.find((one) => one.family === code) ??
    FAMILIES.find((one) => one.family === code) ?? {
      ...USUAL_FAMILY,
      family: code,
      name: code.replaceAll("_", " "),
      torque: [],
      bolts: [],
      rated_cv: [],
      kits: [],
      leak_class: undefined,
      bench_range_psi: undefined,
    }
  );
}

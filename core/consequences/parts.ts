import type { Part } from "../shapes/codes.ts";
import { KIND_OF } from "../shapes/part-kinds.ts";
import type { Family } from "../shapes/valve.ts";

/** What kind of thing a part is, where a rule needs to know. */

/** Soft wherever they are met, listed in a family's bill or not: seals, diaphragms, gaskets, rings, packing. */
const SOFT = new Set<Part>([
  "seals",
  "kit",
  "diaphragm",
  "upper_diaphragm",
  "lower_diaphragm",
  "gasket",
  "seat_gasket",
  "cage_gasket",
  "bonnet_gasket",
  "indicator_gasket",
  "o_ring",
  "cage_o_ring",
  "stem_guide_o_ring",
  "backup_ring",
  "packing",
]);
const TRIM = new Set<Part>(["seat", "plug", "cage", "trim"]);
export const PRESSURE_PARTS: ReadonlySet<Part> = new Set<Part>([
  "body",
  "bonnet",
  "housing",
  "upper_housing",
  "lower_housing",
]);
export const THREADS: ReadonlySet<Part> = new Set<Part>(["threads", "inlet_threads", "outlet_threads"]);
/** Parts that hold by their threads: galled, said of them, is galled threads. */
export const THREADED: ReadonlySet<Part> = new Set<Part>([
  "bolting",
  "body_bolting",
  "bonnet_bolting",
  "nut",
  "lock_nut",
  "packing_nut",
  "diaphragm_nut",
  "adjusting_screw",
  "fitting",
]);
export const GUIDES: ReadonlySet<Part> = new Set<Part>(["guide", "stem_guide"]);

export function isSoft(part: Part | undefined, family: Family): boolean {
  return part !== undefined && (SOFT.has(part) || family.bill.some((line) => line.part === part && line.soft));
}

export function isTrim(part: Part | undefined, family: Family): boolean {
  return part !== undefined && (TRIM.has(part) || family.bill.some((line) => line.part === part && line.trim));
}

/** True where `kind` is the general word for `part` ("gasket" for the seat gasket). */
export function isKind(kind: Part | undefined, part: Part): boolean {
  return kind !== undefined && KIND_OF[part] === kind;
}

/** The family's parts that a general word may mean. */
export function ofKind(kind: Part, family: Family): Part[] {
  return family.bill.map((line) => line.part).filter((part) => KIND_OF[part] === kind);
}

/**
 * True where what was done to `said` was done to `part`: the same part, a set that holds it (the seals, the kit, the
 * trim), or one word general and the other named. Across jobs a general word counts only where the
 * family has one such part: "replaced a gasket" last spring does not say which of four.
 */
export function reaches(said: Part | undefined, part: Part | undefined, family: Family, sameJob: boolean): boolean {
  if (said === part) return true;
  if (said === undefined || part === undefined) return false;
  if (said === "seals" || said === "kit") return isSoft(part, family);
  if (said === "trim") return isTrim(part, family);
  const general = isKind(said, part) ? said : isKind(part, said) ? part : undefined;
  return general !== undefined && (sameJob || ofKind(general, family).length <= 1);
}

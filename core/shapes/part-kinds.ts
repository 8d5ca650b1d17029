import type { Part } from "./codes.ts";

/** The general part that a named one is a kind of. */
export const KIND_OF: Partial<Record<Part, Part>> = {
  upper_diaphragm: "diaphragm",
  lower_diaphragm: "diaphragm",
  upper_housing: "housing",
  lower_housing: "housing",
  inlet_threads: "threads",
  outlet_threads: "threads",
  seat_gasket: "gasket",
  cage_gasket: "gasket",
  bonnet_gasket: "gasket",
  indicator_gasket: "gasket",
  cage_o_ring: "o_ring",
  stem_guide_o_ring: "o_ring",
  actuator_spring: "spring",
  indicator_spring: "spring",
  stem_guide: "guide",
  lock_nut: "nut",
  packing_nut: "nut",
  diaphragm_nut: "nut",
  bonnet_bolting: "bolting",
  body_bolting: "bolting",
};

/** What a place makes of a part, and what stands opposite. */

import type { Part, Place } from "../shapes/codes.ts";
import { KIND_OF } from "../shapes/part-kinds.ts";
import { COUNTERPARTS, PLACED } from "../vocabulary/parts.ts";

/** The narrower part that a place makes of a general one, or the part with its place. */
export function placed(named: { part?: Part; place?: Place }): { part?: Part; place?: Place } {
  const { part, place } = named;
  if (!part || !place) return { part, place };
  const kind = KIND_OF[part] ?? part;
  const rule = PLACED.find((one) => (one.part === part || one.part === kind) && one.place.includes(place));
  if (rule) return { part: rule.is, place: undefined };
  // a word that is part of the name is not repeated as a place
  if (part.startsWith(`${place}_`)) return { part, place: undefined };
  return { part, place };
}

/** The part that "the other one" means after this one: upper and lower, inlet and outlet. */
export const counterpart = (part: Part): Part => COUNTERPARTS[part] ?? part;

const OPPOSITE: Partial<Record<Place, Place>> = {
  upper: "lower",
  lower: "upper",
  top: "bottom",
  bottom: "top",
  inlet: "outlet",
  outlet: "inlet",
  left: "right",
  right: "left",
  inside: "outside",
  outside: "inside",
};

/** "same on the other side": upper for lower, inlet for outlet. */
export const oppositePlace = (place: Place): Place => OPPOSITE[place] ?? place;

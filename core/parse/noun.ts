import type { Part, Place } from "../shapes/codes.ts";

/** A part as a phrase names it. */
export interface Named {
  part: Part | undefined;
  place?: Place;
  count?: number;
  plural?: boolean;
  /** "both": two of them */
  both?: boolean;
}

/** A noun phrase: chunks [from, to) naming a part. */
export interface Noun extends Named {
  from: number;
  to: number;
  /** index of the chunk that names the part */
  core: number;
  fresh?: boolean;
  old?: boolean;
  det?: boolean;
  /** "the other one": the counterpart of what was named last */
  other?: boolean;
  /** "the top of the housing": the place is not part of the name */
  apart?: boolean;
  /** "the lower one": the part comes from what was named last */
  one?: boolean;
}

/** Words that stand before a part and belong to its name. */
export const ADJECTIVE_PLACES = new Set(["face", "edge", "groove", "hole", "inside", "outside", "center"]);

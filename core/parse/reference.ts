/** What a phrase leaves for the next one to refer to. */

import type { Test } from "../shapes/codes.ts";
import type { Entry } from "../shapes/entry.ts";
import type { Named } from "./noun.ts";
import type { Draft } from "./scene.ts";

/** Which parts "it" and "them" stand for, and which test a bare "passed" is of. */
export interface Reference {
  parts: Named[];
  /** parts named lately, oldest first, each once */
  recent: Named[];
  lastTest?: Test;
  /** the last phrase did nothing but name the part: "threads", and then "good" */
  awaits?: boolean;
}

export const NO_REFERENCE: Reference = { parts: [], recent: [] };

/** After an amendment, "it" is the part that now stands. */
export function lastParts(entries: readonly Entry[], old: Reference): Reference {
  const last = [...entries].reverse().find((entry) => "part" in entry && entry.part);
  if (!last || !("part" in last) || !last.part) return old;
  const part = last.part;
  if (old.parts.some((one) => one.part === part)) return old;
  return {
    ...old,
    parts: [{ part }],
    recent: [...old.recent.filter((one) => !old.parts.some((gone) => gone.part === one.part)), { part }],
  };
}

/** Another valve has other parts: only what was named after its tag is carried on. */
export function keepAfterTag(drafts: readonly Draft[], reference: Reference): Reference {
  const tagAt = Math.max(...drafts.filter(({ entry }) => entry.type === "valve").flatMap(({ chunks }) => chunks));
  const later = drafts.some(({ entry, chunks }) => "part" in entry && entry.part && Math.max(...chunks) > tagAt);
  return later ? reference : { parts: [], recent: [] };
}

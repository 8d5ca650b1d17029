/** Step 5b: "replaced the bonnet bolts, four of them", "new packing, five rings": how many, said behind. */

import { ROLE } from "../vocabulary/grammar.ts";
import { spellings } from "../vocabulary/notation.ts";
import { has, range } from "./chunks.ts";
import { type ClauseState, emitWork } from "./clause-state.ts";
import type { Scene } from "./scene.ts";

/** What stands behind a number that counts what was just named. */
const OF_THEM = /^(?:of (?:them|em|those|these)|total|all told|altogether|each|ea|pieces|in all)$/;
const BOTH = spellings("both[ of (them|em|those)]");
const RINGED = /^(?:packing|seals|o_ring|backup_ring|cage_o_ring|stem_guide_o_ring)$/;

/** "bolts are shot, need eight", "gonna need two": so many of what was named are owed. */
export function readCountOwed(scene: Scene, state: ClauseState, at: number): number | undefined {
  const count = scene.countAt(at);
  const owed = scene.at(at - 1)?.text ?? "";
  if (count === undefined || state.owed !== at - 1 || !/need|require|want|use$/.test(owed) || state.subject?.open)
    return undefined;
  const next = scene.at(at + 1);
  const more = next && /^(?:more|new ones?|of (?:them|em))$/.test(next.text) ? at + 2 : at + 1;
  if (scene.at(more) && !has(scene.at(more), ROLE.and) && !has(scene.at(more), ROLE.but)) return undefined;
  const last = scene.drafts.at(-1)?.entry;
  if (last?.type !== "finding" || !last.part || last.absent || last.condition === "ok") return undefined;
  emitWork(scene, state, "replaced", "needed", { part: last.part, count }, [at - 1, more], "needs_part");
  return more;
}

/** Gives the work or the finding just before the number that is said of its part; the index to go on from. */
export function readCountBehind(scene: Scene, state: ClauseState, at: number): number | undefined {
  const count = scene.countAt(at) ?? (BOTH.has(scene.at(at)?.text ?? "") ? 2 : undefined);
  const last = scene.drafts.at(-1);
  if (count === undefined || !last || state.subject?.open) return undefined;
  const { entry } = last;
  // "O-rings are shot, both of them": of a finding it is no count
  if (entry.type === "finding" && BOTH.has(scene.at(at)?.text ?? "")) return undefined;
  if ((entry.type !== "work" && entry.type !== "finding") || entry.count !== undefined || !entry.part) return undefined;
  // nothing but small words since
  if (range(Math.max(...last.chunks) + 1, at).some((one) => !scene.isPlain(one))) return undefined;
  const next = scene.at(at + 1)?.text ?? "";
  const two = `${next} ${scene.at(at + 2)?.text ?? ""}`;
  const ring = /^rings?$/.test(next) && RINGED.test(entry.part);
  const both = BOTH.has(scene.at(at)?.text ?? "") && !next;
  const to = both ? at + 1 : OF_THEM.test(two) ? at + 3 : OF_THEM.test(next) || ring ? at + 2 : undefined;
  if (to === undefined || scene.predicateFollows(to) || scene.at(to)?.senses.work || scene.at(to)?.text === "of")
    return undefined;
  last.entry = { ...entry, count };
  last.chunks.push(...range(at, to));
  scene.use(...range(at, to));
  return to;
}

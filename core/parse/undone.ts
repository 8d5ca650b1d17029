/** Step 5b: "meant to lap the seat but never got to it": what was meant was not done. */

import { ROLE } from "../vocabulary/grammar.ts";
import { has, range } from "./chunks.ts";
import type { ClauseState } from "./clause-state.ts";
import type { Scene } from "./scene.ts";

/** Words before a work that say it was meant once, and not that it is owed now. */
const MEANT = /^(?:meant to|was meaning to|wanted to|was hoping to|supposed to|gonna|going to|thought about|about to)$/;
/** What kept it from being done. */
const KEPT_FROM =
  /^(?:i |we )?(?:never (?:did|could|(?:got|had) (?:to it|around to it|the (?:time|chance)))|(?:didnt|did not)(?: (?:get to it|get around to it|have (?:the )?(?:time|parts)|bother))?|couldnt|could not|ran out of (?:time|daylight|parts|day)|had no time)$/;
const LONGEST = 7;

/** Turns the work just before into a declined one; the index to go on from. */
export function readUndone(scene: Scene, state: ClauseState, at: number): number | undefined {
  const last = scene.drafts.at(-1);
  if (last?.entry.type !== "work" || last.entry.status !== "needed" || !wasMeant(scene, state, at)) return undefined;
  const from = has(scene.at(at), ROLE.but) || has(scene.at(at), ROLE.and) ? at + 1 : at;
  for (let to = Math.min(scene.chunks.length, from + LONGEST); to > from; to -= 1) {
    if (
      !KEPT_FROM.test(
        range(from, to)
          .map((one) => scene.at(one)?.text)
          .join(" "),
      )
    )
      continue;
    const next = scene.at(to);
    if (next && !has(next, ROLE.and) && !has(next, ROLE.but) && !scene.isPlain(to)) return undefined;
    last.entry = { ...last.entry, status: "declined" };
    last.chunks.push(...range(at, to));
    scene.use(...range(at, to));
    return to;
  }
  return undefined;
}

function wasMeant(scene: Scene, state: ClauseState, at: number): boolean {
  const lead = state.owed ?? -1;
  if (lead < 0 || lead >= at || !MEANT.test(scene.at(lead)?.text ?? "")) return false;
  // "I'm going to lap it" is still to come, "was gonna lap it" is not
  return !/^(?:gonna|going to|about to)$/.test(scene.at(lead)?.text ?? "") || WAS.test(scene.at(lead - 1)?.text ?? "");
}

const WAS = /^(?:was|were|had been)$/;

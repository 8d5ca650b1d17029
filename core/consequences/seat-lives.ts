import { familyOf } from "../families/index.ts";
import type { Family, Life, PastJob, Valve } from "../shapes/valve.ts";
import { tellSeat } from "./seat-story.ts";
import { inOrder } from "./visit.ts";

/**
 * How long the seat sides of one valve lasted, months, from its jobs in any order up to and with the day `on`: what it
 * can lend to like valves as their `fleet`. `valve`: as set up; its service holds until another is said. Only lives that ran wholly in the service it is in now, as far as it was
 * said; the rest would tell of another service.
 */
export function seatLives(
  valve: Valve,
  history: readonly PastJob[],
  on: string,
  families: readonly Family[] = [],
): readonly Life[] {
  return tellSeat(inOrder(history, [], on), familyOf(valve.family, families), valve.service).steady;
}

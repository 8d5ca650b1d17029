import type { Right } from "../../core/index.ts";
import type { State } from "./state.ts";

/** What a choice of sites calls all there are to see. */
export const everySite = ({ caller }: State): string => (caller?.sites ? "all your sites" : "every site");

/**
 * Whether the page offers what needs this right. The server decides; until it has said who this is, everything is
 * offered, so that a page without a network hides nothing.
 */
export function may(state: State, right: Right): boolean {
  return state.caller?.rights.includes(right) ?? true;
}

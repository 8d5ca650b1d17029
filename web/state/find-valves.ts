import { spokenTag } from "../../core/speech/spoken-tag.ts";
import type { ListedValve, State } from "./state.ts";

/**
 * The valves whose tag has what was typed or said: "213", "lcv", "lcv 2", "two thirteen". All of them where nothing was.
 * Nobody scrolls through two hundred plates with gloves on.
 */
export function findValves(valves: readonly ListedValve[], asked: string): ListedValve[] {
  const written = letters(asked);
  if (!written) return [...valves];
  const spoken = ` ${asked
    .toLowerCase()
    .match(/[a-z0-9]+/g)
    ?.join(" ")} `;
  return valves.filter(
    ({ tag }) =>
      letters(tag).includes(written) || spokenTag(tag).some((way) => ` ${way.replaceAll("L_", "")} `.includes(spoken)),
  );
}

/** The valves that may be meant: of the chosen site, where one is. */
export const valvesHere = ({ valves, settings }: Pick<State, "valves" | "settings">): ListedValve[] =>
  valves.filter(({ site }) => !settings.site || !site || site === settings.site);

const letters = (text: string): string => text.toLowerCase().replaceAll(/[^a-z0-9]/g, "");

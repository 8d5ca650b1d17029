import { type Hazard, nameOf, type Place } from "../../core/index.ts";

/**
 * Words of the screens that no row holds: a row names what a technician says, and these nobody says at the valve.
 * Tasks, rules, verdicts and what a follow-up asks for are the trade's own words with underscores.
 */
export function plainWords(code: string): string {
  return code.replaceAll("_", " ");
}

/** Rows write hazards in capitals, for a sign; in a sentence, and above all aloud, capitals read as letters. */
export function hazardName(hazard: Hazard): string {
  return nameOf(hazard, "hazard").toLowerCase();
}

/** "at the edge", "on the inside": which small word a place takes. */
export function placeWords(place: Place): string {
  const on = place === "inside" || place === "outside" || place === "face" || place === "left" || place === "right";
  return `${on ? "on" : place === "groove" ? "in" : "at"} the ${nameOf(place, "place")}`;
}

export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

export function listed(words: string[]): string {
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

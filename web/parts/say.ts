import { type Entry, nameOf, type Part, type PhraseReading } from "../../core/index.ts";
import { entryWords } from "./entry-words.ts";
import { hazardName, listed } from "./words.ts";

/** What the page says aloud. Short: it is heard between two turns of a wrench. */

export function sayEntry(entry: Entry): string {
  const { stamp, subject, told, unsure } = entryWords(entry);
  const lead = stamp === "Order" ? "to order: " : stamp === "Note" ? "noted" : stamp === "Hazard" ? "hazard: " : "";
  return `${lead}${subject} ${entry.type === "note" ? "" : told.toLowerCase()}${unsure ? ", not sure" : ""}`
    .replaceAll("·", " ")
    .trim();
}

/** What a phrase that touched earlier ones did to them. An answer lands in what was asked of. */
export function touchedWords(reading: PhraseReading): string {
  const turns = new Set(reading.marks.map((mark) => mark.code));
  if (turns.has("undo")) return "Scratched: those entries no longer stand.";
  return turns.has("answer") ? "Answered:" : "Amended:";
}

/** What one phrase became, said back, what it made of earlier ones, and the question it left open. */
export function readBack(
  reading: PhraseReading,
  question = reading.ask[0]?.question,
  amended: readonly Entry[] = [],
): string {
  const sayings = [...reading.entries, ...amended].filter((entry) => entry.type !== "command").map(sayEntry);
  const unread = reading.unread.map((one) => one.text).join(", ");
  if (question) sayings.push(question);
  else if (unread) sayings.push(`did not understand: ${unread}`);
  else if (!sayings.length && reading.touched.length) sayings.push("scratched");
  return sayings.join(". ");
}

export function sayEntries(entries: Entry[]): string {
  const sayings = entries.filter((entry) => entry.type !== "command").map(sayEntry);
  return sayings.length ? sayings.join(". ") : "Nothing on the card yet.";
}

export function sayParts(parts: readonly Part[]): string {
  return parts.length
    ? `Not heard yet: ${listed(parts.map((part) => nameOf(part, "part")))}.`
    : "Nothing is missing from the list.";
}

/** The same, cut short where the list is long: said when a job closes, between two valves. */
export function sayPartsShortly(parts: readonly Part[], most = 4): string {
  if (!parts.length) return "";
  const named = parts.slice(0, most).map((part) => nameOf(part, "part"));
  const more = parts.length - named.length;
  return `Not heard: ${more ? `${named.join(", ")} and ${more} more` : listed(named)}.`;
}

export function alertSpoken(alerts: readonly Entry[]): string {
  const names = alerts.flatMap((entry) => (entry.type === "hazard" ? [hazardName(entry.hazard)] : []));
  return `Stop. Stop. ${listed(names)}. Stop work. Only site procedure clears this.`;
}

import { type Entry, type Listening, listen, startListening } from "../../../core/index.ts";

/**
 * An entry on one line, so that a table of phrases can be read: "finding seat worn one_side", "work seat flipped done",
 * "reading torque 28 ft_lbf bonnet_bolting", "test seat_leak pass". No part is `-`.
 */
export function inShort(entry: Entry): string {
  const words: (string | undefined)[] = [entry.type];
  switch (entry.type) {
    case "finding":
      words.push(
        entry.part ?? "-",
        entry.condition,
        entry.extent,
        entry.severity,
        entry.place && `@${entry.place}`,
        times(entry.count),
        entry.absent && "absent",
        entry.unsure && "unsure",
      );
      break;
    case "work":
      words.push(entry.part ?? "-", entry.work, entry.status, times(entry.count), entry.unsure && "unsure");
      break;
    case "reading":
      words.push(
        entry.quantity,
        entry.bound,
        entry.upper === undefined ? `${entry.value}` : `${entry.value}..${entry.upper}`,
        entry.unit,
        entry.part,
      );
      break;
    case "test":
      words.push(entry.test, entry.result ?? "null");
      break;
    case "valve":
      words.push(entry.tag, entry.size_in === undefined ? undefined : `${entry.size_in}in`, entry.acts, entry.service);
      break;
    case "need":
      words.push(entry.part, times(entry.count));
      break;
    case "hazard":
      words.push(entry.hazard);
      break;
    case "note":
      words.push(entry.text);
      break;
    case "command":
      words.push(entry.command);
      break;
  }
  return words.filter((word) => word).join(" ");
}

const times = (count: number | undefined): string | undefined => (count === undefined ? undefined : `×${count}`);

export const say = (...phrases: string[]): Listening => phrases.reduce(listen, startListening());

/** What stands after the phrases, a line an entry; phrases of one job are parted by " / ". */
export const reads = (phrases: string): string[] => say(...phrases.split(" / ")).entries.map(inShort);

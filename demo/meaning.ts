import type { Entry } from "../core/index.ts";

/** An entry in one short line, for writing down beside an invented phrase what it is meant to say. */
export function meaning(entry: Entry): string {
  switch (entry.type) {
    case "finding":
      return line(
        entry.condition,
        entry.part,
        entry.extent,
        entry.severity,
        entry.place && `@${entry.place}`,
        times(entry.count),
        entry.absent && "absent",
        entry.unsure && "unsure",
      );
    case "work":
      return line(entry.work, entry.part, entry.status, times(entry.count));
    case "reading":
      return line(entry.quantity, entry.part, entry.value, entry.unit);
    case "test":
      return line(entry.test, entry.result ?? "unsaid");
    case "valve":
      return line("valve", entry.tag, entry.size_in, entry.acts, entry.service);
    case "need":
      return line("need", entry.part, times(entry.count));
    case "hazard":
      return line("hazard", entry.hazard);
    case "command":
      return line("command", entry.command);
    case "note":
      return "note";
  }
}

const line = (...words: (string | number | boolean | undefined)[]) =>
  words.filter((word) => word !== undefined && word !== false).join(" ");
const times = (count: number | undefined) => (count === undefined ? undefined : `x${count}`);

import { type Entry, nameOf, type Part } from "../../core/index.ts";
import { hazardName, placeWords } from "./words.ts";

/** The stamp of an entry on the card: what kind of thing the line is, in one word. */
export type Stamp =
  | "Found"
  | "Done"
  | "To do"
  | "Left"
  | "Read"
  | "Test"
  | "Valve"
  | "Order"
  | "Hazard"
  | "Note"
  | "Said";

export interface EntryWords {
  stamp: Stamp;
  /** what it is about: the part, or the thing measured or tested */
  subject: string;
  /** what is said of it */
  told: string;
  /** said with doubt */
  unsure: boolean;
  /** a finding that something is as it should be */
  sound: boolean;
}

/** An entry in plain trade words, in the order a card is read: what kind, of what, what of it. */
export function entryWords(entry: Entry): EntryWords {
  switch (entry.type) {
    case "finding": {
      const told = [
        `${entry.absent ? "not " : ""}${nameOf(entry.condition, "condition")}`,
        entry.severity,
        entry.extent && nameOf(entry.extent, "extent"),
        entry.place && placeWords(entry.place),
        entry.count !== undefined && `${entry.count} of them`,
      ];
      const sound = entry.absent === true || entry.condition === "ok" || entry.condition === "intact";
      return { ...line("Found", partName(entry.part), told, entry.unsure), sound };
    }
    case "work": {
      const stamp = entry.status === "done" ? "Done" : entry.status === "needed" ? "To do" : "Left";
      const told =
        entry.status === "done"
          ? nameOf(entry.work, "work")
          : entry.status === "needed"
            ? `must be ${nameOf(entry.work, "work")}`
            : `not ${nameOf(entry.work, "work")}`;
      const count = entry.count !== undefined && `${entry.count} of them`;
      return line(stamp, partName(entry.part), [told, count], entry.unsure);
    }
    case "reading": {
      const value = entry.upper === undefined ? String(entry.value) : `${entry.value} to ${entry.upper}`;
      const amount = `${entry.bound ? `${nameOf(entry.bound, "bound")} ` : ""}${value} ${nameOf(entry.unit, "unit")}`;
      const quantity = nameOf(entry.quantity, "quantity");
      const subject = entry.part ? `${partName(entry.part)} ${quantity}` : quantity;
      return line("Read", subject, [amount]);
    }
    case "test": {
      const told = entry.result === "pass" ? "passed" : entry.result === "fail" ? "FAILED" : "no result said";
      return line("Test", nameOf(entry.test, "test"), [told]);
    }
    case "valve": {
      const told = [
        entry.size_in !== undefined && `${entry.size_in} inch`,
        entry.acts && nameOf(entry.acts, "acts"),
        entry.service && nameOf(entry.service, "service"),
      ];
      return line("Valve", entry.tag ?? "this valve", told);
    }
    case "need":
      return line("Order", partName(entry.part), [entry.count !== undefined && `${entry.count} of them`]);
    case "hazard":
      return line("Hazard", hazardName(entry.hazard), ["stop; only site procedure clears this"]);
    case "note":
      return line("Note", "", [entry.text]);
    case "command":
      return line("Said", nameOf(entry.command, "command"), []);
  }
}

function partName(part: Part | undefined): string {
  return part ? nameOf(part, "part") : "part not said";
}

function line(stamp: Stamp, subject: string, told: (string | false | undefined)[], unsure?: true): EntryWords {
  return { stamp, subject, told: told.filter(Boolean).join(", "), unsure: unsure === true, sound: false };
}

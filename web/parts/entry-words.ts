import type { Entry } from "../../core/index.ts";
import { conditionName, nameOf, partName, quantityName, testName, unitName } from "./words.ts";

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
        entry.absent ? `not ${conditionName(entry.condition)}` : conditionName(entry.condition),
        entry.severity,
        entry.extent && nameOf(entry.extent),
        entry.place && `at the ${nameOf(entry.place)}`,
        entry.count !== undefined && `${entry.count} of them`,
      ];
      const sound = entry.absent === true || entry.condition === "ok" || entry.condition === "intact";
      return { ...line("Found", partName(entry.part) || "part not said", told, entry.unsure), sound };
    }
    case "work": {
      const stamp = entry.status === "done" ? "Done" : entry.status === "needed" ? "To do" : "Left";
      const told =
        entry.status === "done"
          ? nameOf(entry.work)
          : entry.status === "needed"
            ? `must be ${nameOf(entry.work)}`
            : `not ${nameOf(entry.work)}`;
      const count = entry.count !== undefined && `${entry.count} of them`;
      return line(stamp, partName(entry.part) || "part not said", [told, count], entry.unsure);
    }
    case "reading": {
      const bound = { min: "at least", max: "at most", about: "about" };
      const value = entry.upper === undefined ? String(entry.value) : `${entry.value} to ${entry.upper}`;
      const amount = `${entry.bound ? `${bound[entry.bound]} ` : ""}${value} ${unitName(entry.unit)}`;
      const subject = entry.part
        ? `${partName(entry.part)} ${quantityName(entry.quantity)}`
        : quantityName(entry.quantity);
      return line("Read", subject, [amount]);
    }
    case "test": {
      const told = entry.result === "pass" ? "passed" : entry.result === "fail" ? "FAILED" : "no result said";
      return line("Test", testName(entry.test), [told]);
    }
    case "valve": {
      const told = [
        entry.size_in !== undefined && `${entry.size_in} inch`,
        entry.acts && nameOf(entry.acts),
        entry.service && `${entry.service} service`,
      ];
      return line("Valve", entry.tag ?? "this valve", told);
    }
    case "need":
      return line("Order", partName(entry.part), [entry.count !== undefined && `${entry.count} of them`]);
    case "hazard":
      return line("Hazard", nameOf(entry.hazard), ["stop; only site procedure clears this"]);
    case "note":
      return line("Note", "", [entry.text]);
    case "command":
      return line("Said", COMMANDS[entry.command], []);
  }
}

const COMMANDS: Record<Extract<Entry, { type: "command" }>["command"], string> = {
  finish: "close it out",
  missing: "what is missing",
  read_back: "read it back",
  photo: "take a picture",
  mute: "stop listening",
  unmute: "listen again",
};

function line(stamp: Stamp, subject: string, told: (string | false | undefined)[], unsure?: true): EntryWords {
  return { stamp, subject, told: told.filter(Boolean).join(", "), unsure: unsure === true, sound: false };
}

import type { Entry, Part, Valve } from "../../core/index.ts";
import {
  CONDITION_WORDS,
  capital,
  HAZARD_WORDS,
  isPlural,
  partName,
  placeName,
  QUANTITY_WORDS,
  TEST_WORDS,
  unitName,
  WORK_WORDS,
} from "./names.ts";

export { checkSentence, countedPart, dueSentence, followUpWords, whenWords } from "../../core/index.ts";

/** Entries as sentences for whoever was not there. They say what was said, no more; what follows is worded in core. */

type Of<T extends Entry["type"]> = Extract<Entry, { type: T }>;

/** "was found badly worn on one side", with the verb for its part. */
function findingClause(one: Of<"finding">): string {
  const severity = one.severity === "slight" ? "slightly " : one.severity === "severe" ? "badly " : "";
  const extent = { one_side: "on one side", both_sides: "on both sides", all_around: "all around", partial: "in part" };
  const words = [
    `${severity}${CONDITION_WORDS[one.condition]}`,
    one.extent && extent[one.extent],
    one.place && placeName(one.place),
    one.count !== undefined && `(${one.count})`,
  ];
  const was = isPlural(one.part) ? "were" : "was";
  const what = words.filter(Boolean).join(" ");
  if (one.absent) return `${was} looked at and not found ${what}`;
  return one.unsure ? `may be ${what}` : `${was} found ${what}`;
}

function workClause(one: Of<"work">): string {
  const many = isPlural(one.part);
  const count = one.count === undefined ? "" : ` (${one.count})`;
  const word = `${WORK_WORDS[one.work]}${count}`;
  const maybe = one.unsure ? "perhaps " : "";
  if (one.status === "done") return `${many ? "were" : "was"} ${maybe}${word}`;
  if (one.status === "declined") return `${many ? "were" : "was"} ${maybe}not ${word}`;
  return `${maybe}${many ? "need" : "needs"} to be ${word}`;
}

/** Findings and work, a sentence a part, in the order the parts were first named. */
export function partSentences(entries: readonly Entry[]): string[] {
  const clauses = new Map<Part | "", string[]>();
  for (const entry of entries) {
    if (entry.type !== "finding" && entry.type !== "work") continue;
    const part = entry.part ?? "";
    const said = clauses.get(part) ?? [];
    const clause = entry.type === "finding" ? findingClause(entry) : workClause(entry);
    // "and was found" twice over reads badly: the second finding leans on the first
    const before = said[said.length - 1];
    const lead = /^(was|were) (found|looked at and not found) /.exec(clause)?.[0];
    said.push(lead && before?.startsWith(lead) ? clause.slice(lead.length) : clause);
    clauses.set(part, said);
  }
  return [...clauses].map(([part, said]) => {
    const subject = part === "" ? "A part that was not named" : `The ${partName(part)}`;
    return `${subject} ${joined(said)}.`;
  });
}

/** Readings, tests, needs and notes, a sentence each. */
export function otherSentences(entries: readonly Entry[]): string[] {
  return entries.flatMap((entry) => {
    switch (entry.type) {
      case "reading":
        return [`${capital(readingWords(entry))}.`];
      case "test":
        return [`${testSentence(entry)}`];
      case "need":
        return [`To order or bring: ${entry.count === undefined ? "" : `${entry.count} × `}${partName(entry.part)}.`];
      case "note":
        return [`Note: ${entry.text}`];
      default:
        return [];
    }
  });
}

function readingWords(one: Of<"reading">): string {
  const bound = { min: "at least ", max: "at most ", about: "about " };
  const amount = one.upper === undefined ? String(one.value) : `${one.value} to ${one.upper}`;
  const value = `${one.bound ? bound[one.bound] : ""}${amount} ${unitName(one.unit)}`;
  if (one.quantity === "torque") return `${one.part ? partName(one.part) : "bolting"} torqued to ${value}`;
  return `${one.part ? `${partName(one.part)} ` : ""}${QUANTITY_WORDS[one.quantity]} ${value}`;
}

export function testSentence(one: Of<"test">): string {
  if (one.result === "pass") return `${TEST_WORDS[one.test]}: passed.`;
  if (one.result === "fail") return `${TEST_WORDS[one.test]}: FAILED.`;
  return `${TEST_WORDS[one.test]}: done, no result said.`;
}

/** One entry by itself, as a person reading along wants it. */
export function entrySentence(entry: Entry): string {
  switch (entry.type) {
    case "finding":
    case "work":
      return partSentences([entry])[0] ?? "";
    case "valve": {
      const acts = { pressure_opens: "pressure opens it", pressure_closes: "pressure closes it" };
      const said = [
        entry.tag,
        entry.size_in !== undefined && `${entry.size_in} inch`,
        entry.acts && acts[entry.acts],
        entry.service && `${entry.service} service`,
      ];
      return `Valve: ${said.filter(Boolean).join(", ")}.`;
    }
    case "hazard":
      return `HAZARD: ${HAZARD_WORDS[entry.hazard]}.`;
    case "command":
      return `Command: ${entry.command.replaceAll("_", " ")}.`;
    default:
      return otherSentences([entry])[0] ?? "";
  }
}

/** "2 inch, balanced dump, severe service" */
export function valveWords(valve: Valve, service?: string): string {
  const said = [
    valve.size_in !== undefined && `${valve.size_in} inch`,
    valve.family?.replaceAll("_", " "),
    (service ?? valve.service) && `${service ?? valve.service} service`,
  ];
  return said.filter(Boolean).join(", ");
}

/** Sentences one after the other; a note said without a full stop gets one. */
export function sentences(all: readonly string[]): string {
  return all.map((one) => (/[.!?…]["”’)]?$/.test(one) ? one : `${one}.`)).join(" ");
}

function joined(clauses: readonly string[]): string {
  if (clauses.length < 2) return clauses[0] ?? "";
  return `${clauses.slice(0, -1).join(", ")} and ${clauses[clauses.length - 1]}`;
}

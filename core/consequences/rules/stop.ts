import { PRESSURE_PARTS } from "../parts.ts";
import { type Owed, PRACTICE, type Rule } from "../rule.ts";
import { spoken } from "../words.ts";

/** What stops the job. Nothing in software clears a hazard: only site procedure does. */

const HAZARD_WORDS: Record<string, string> = {
  gas: "gas",
  trapped_pressure: "pressure still trapped",
  not_isolated: "not isolated",
  stored_spring: "a spring still loaded",
  injury: "someone is hurt",
  spill: "a spill",
  fire: "fire",
};

export const STOP_RULES: Rule[] = [
  {
    rule: "hazard_stop",
    source: "site procedure",
    reads: "today",
    owes: (visit) => {
      const said = [...new Set(visit.entries.flatMap((entry) => (entry.type === "hazard" ? [entry.hazard] : [])))];
      if (said.length === 0) return [];
      const words = said.map((hazard) => HAZARD_WORDS[hazard] ?? hazard).join(", ");
      return [
        { do: "stop", when: "now", why: `${words}: stop the whole job and follow site procedure`, stays: true, by: [] },
      ];
    },
  },
  {
    rule: "pressure_part_cracked",
    source: PRACTICE,
    reads: "faults",
    owes: (visit) =>
      visit.faults.flatMap((entry): Owed[] => {
        if (entry.condition !== "cracked") return [];
        if (!entry.part || !PRESSURE_PARTS.has(entry.part)) return [];
        const part = entry.part;
        const on = { part, when: "now", finding: entry } as const;
        if (entry.unsure)
          return [
            { ...on, do: "inspect", why: `${spoken(part)} may be cracked: look before any pressure`, doubtful: true },
          ];
        return [
          { ...on, do: "stop", why: `${spoken(part)} cracked: no pressure on it` },
          { ...on, do: "replace", why: `${spoken(part)} cracked: it holds pressure, however small the crack` },
        ];
      }),
  },
];

import { type Owed, PRACTICE, type Rule } from "../rule.ts";
import { judgeTorque } from "../torque-check.ts";
import { spoken, spokenUnit } from "../words.ts";

/** The last torque of each bolted part must lie within its limit. */
export const TORQUE_RULES: Rule[] = [
  {
    rule: "torque_off",
    source: PRACTICE,
    reads: "today",
    owes: (visit, bench) => {
      const last = new Map<string | undefined, Owed | undefined>();
      for (const entry of visit.entries) {
        if (entry.type !== "reading" || entry.quantity !== "torque") continue;
        const check = judgeTorque(entry, bench);
        if (entry.part === undefined)
          last.set(undefined, {
            do: "ask",
            when: "now",
            why: `torqued to ${entry.value} ${spokenUnit(entry.unit)}: which bolting?`,
            by: [],
          });
        else if (check.verdict === "below" || check.verdict === "above")
          last.set(entry.part, {
            do: "retorque",
            part: entry.part,
            when: "now",
            why: `${spoken(entry.part)} at ${entry.value}${entry.upper === undefined ? "" : ` to ${entry.upper}`} ${spokenUnit(entry.unit)}, limit ${figure(check.min)} to ${figure(check.max)} ${spokenUnit(entry.unit)}`,
            by: [],
          });
        else last.set(entry.part, undefined);
      }
      return [...last.values()].filter((owed) => owed !== undefined);
    },
  },
];

function figure(limit: number | undefined): string {
  return String(Number((limit ?? 0).toFixed(1)));
}

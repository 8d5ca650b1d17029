import { sentences } from "../wording/sentences.ts";
import type { Report } from "./day-report.ts";
import type { Block, Run } from "./pdf/blocks.ts";
import type { Kind, Pen } from "./pdf/looks.ts";

/** The report as what a PDF is set from: the same sentences in the same order as in the mail. */
export function reportBlocks(report: Report): Block[] {
  return [
    one("title", report.title, "title"),
    ...(report.correction ? [one("notice", report.correction, "strong")] : []),
    ...alarm(
      "Hazards",
      report.hazards.map(({ time, valve, what, words }) => `${time}  ${valve}: ${what}, in the words "${words}"`),
    ),
    ...alarm(
      "Failed tests",
      report.failed.map(({ valve, what }) => `${valve}: ${what}`),
    ),
    one("notice", report.reviewed, "strong"),
    one("head", "What was found and done", "head"),
    ...(report.valves.length === 0 ? [one("plain", "No job was recorded on this day.")] : report.valves.map(valve)),
    ...list(
      "Follow-ups",
      report.followUps.map(({ valve, what, when, urgent, why, owner }) => [
        lead(valve),
        run(`${what}, `),
        run(when, urgent ? "alarm" : "strong"),
        aside(`${owner}. ${why}`),
      ]),
    ),
    ...list(
      "Parts used",
      report.parts.used.map(({ count, part, valves }) => [run(`${count} × ${part} `), aside(valves)]),
    ),
    ...list(
      "Parts needed",
      report.parts.needed.map(({ count, part, valves }) => [run(`${count} × ${part} `), aside(valves)]),
    ),
    ...list(
      `Due within ${report.dueDays} days`,
      report.due.map(({ valve, what, why }) => [lead(valve), run(what), aside(why)]),
    ),
    ...list(
      "Not understood, word for word",
      report.notUnderstood.map(({ time, valve, text, what }) => [
        run(`${time}  `),
        lead(valve),
        run(`"${text}"`),
        aside(what),
      ]),
    ),
    { head: "Totals", counts: report.totals },
    one("notice", report.caution, "strong"),
    one("foot", `Times: ${report.zone}.`, "soft"),
  ];
}

const run = (text: string, pen: Pen = "plain"): Run => ({ text, pen });
const one = (as: Kind, text: string, pen: Pen = "plain"): Block => ({ as, runs: [run(text, pen)] });
const lead = (valve: string) => run(`${valve}: `, "strong");
/** Why, said small behind what. */
const aside = (text: string) => run(`\u00a0 ${text}`, "soft");

function alarm(title: string, lines: readonly string[]): Block[] {
  if (lines.length === 0) return [];
  return [{ boxed: [one("boxHead", title, "alarmHead"), ...lines.map((text) => one("boxItem", text))] }];
}

function list(title: string, items: readonly Run[][]): Block[] {
  if (items.length === 0) return [];
  return [one("head", title, "head"), ...items.map((runs): Block => ({ together: [{ as: "item", runs }] }))];
}

function valve({ valve, about, time, by, done, tests, checks }: Report["valves"][number]): Block {
  const what = [about, time, by.length > 0 && `by ${by.join(", ")}`].filter(Boolean).join(", ");
  return {
    together: [
      { as: "valve", runs: [run(valve, "strong"), run(`   ${what}`, "soft")] },
      one("plain", sentences([...done, ...tests]) || "Nothing was understood for this valve."),
      ...(checks.length > 0 ? [one("soft", checks.join(" "), "soft")] : []),
    ],
  };
}

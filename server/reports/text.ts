import type { CountedPart, Report } from "./day-report.ts";

/** The report as plain text, for those who read mail that way. */
export function reportText(report: Report): string {
  const lines: string[] = [report.title, "=".repeat(Math.min(report.title.length, 72)), ""];
  if (report.correction) lines.push(report.correction, "");
  const section = (title: string, body: readonly string[]) => {
    if (body.length > 0) lines.push(title, "-".repeat(title.length), ...body, "");
  };
  section(
    "HAZARDS",
    report.hazards.map((one) => `! ${one.time} ${one.valve}: ${one.what} ("${one.words}")`),
  );
  section(
    "Failed tests",
    report.failed.map((one) => `! ${one.valve}: ${one.what}`),
  );
  lines.push(report.reviewed, "");
  section(
    "What was found and done",
    report.valves.flatMap((one, at) => [
      ...(at > 0 ? [""] : []),
      `${one.valve}${one.about ? ` (${one.about})` : ""}, ${one.time}${one.by.length > 0 ? `, by ${one.by.join(", ")}` : ""}`,
      ...linesOr([...one.done, ...one.tests, ...one.checks], "Nothing was understood for this valve."),
    ]),
  );
  if (report.valves.length === 0) lines.push("No job was recorded on this day.", "");
  section(
    "Follow-ups",
    report.followUps.map((one) => `- ${one.valve}: ${one.what}, ${one.when}. ${one.owner}. ${capped(one.why)}`),
  );
  section("Parts used", report.parts.used.map(partLine));
  section("Parts needed", report.parts.needed.map(partLine));
  section(
    `Due within ${report.dueDays} days`,
    report.due.map((one) => `- ${one.valve}: ${one.what}. ${capped(one.why)}`),
  );
  section(
    "Not understood, word for word",
    report.notUnderstood.map((one) => `- ${one.time} ${one.valve}: "${one.text}" (${one.what})`),
  );
  section(
    "Totals",
    report.totals.map((one) => `  ${String(one.count).padStart(4)} ${one.what}`),
  );
  lines.push(report.caution, `Times: ${report.zone}.`);
  return `${lines.map(oneLine).join("\n")}\n`;
}

const partLine = (one: CountedPart) => `- ${one.count} × ${one.part} (${one.valves})`;
const linesOr = (lines: readonly string[], none: string) =>
  (lines.length > 0 ? lines : [none]).map((one) => `  ${one}`);
const capped = (why: string) => (/[.!?]$/.test(why) ? why : `${why}.`);

/** What people said cannot break out of its line, nor turn the reading direction of what follows. */
function oneLine(text: string): string {
  return text.replace(/[\r\n\u2028\u2029\u0085\v\f]+/g, " ").replace(/[\u202a-\u202e\u2066-\u2069]/g, "");
}

import { nameOf } from "../pages/index.ts";
import type { Part } from "../shapes/codes.ts";
import type { Check, Due, FollowUp } from "../shapes/consequence.ts";

/**
 * What follows, as sentences: the one place where a check, a follow-up or a due date becomes words, so that the
 * terminal, the job page and the report say the same thing.
 */

type Of<C extends Check["check"]> = Extract<Check, { check: C }>;

/** A check with its limit, its verdict and how far from the limit it lies. The source is beside it, not in it. */
export function checkSentence(one: Check): string {
  const told =
    one.check === "torque" ? torqueWords(one) : one.check === "seat_leakage" ? leakWords(one) : strokeWords(one);
  return `${told}${one.note ? ` (${one.note})` : ""}.`;
}

/** True where a check found what it should, false where it did not, undefined where there was nothing to judge by. */
export function isGood(one: Check): boolean | undefined {
  if (one.verdict === "no_limit" || one.verdict === "not_enough") return undefined;
  return one.verdict === "within" || one.verdict === "pass";
}

const NO_LIMIT = "no limit is known to judge it by";

function torqueWords(one: Of<"torque">): string {
  const amount = one.upper === undefined ? figure(one.value) : `${figure(one.value)} to ${figure(one.upper)}`;
  const unit = nameOf(one.unit, "unit");
  const what = `${capital(one.part ? nameOf(one.part, "part") : "bolting")} torque ${amount} ${unit}`;
  if (one.verdict === "no_limit" || one.min === undefined || one.max === undefined) return `${what}: ${NO_LIMIT}`;
  const limits = `the limits ${figure(one.min)} to ${figure(one.max)} ${unit}`;
  return `${what}: ${one.verdict} ${limits}${marginWords(one.margin, unit, one.verdict === "within" ? "at a limit" : "")}`;
}

function leakWords(one: Of<"seat_leakage">): string {
  const unit = nameOf(one.unit, "unit");
  const what = `Seat leakage ${figure(one.measured)} ${unit}`;
  if (one.verdict === "no_limit" || one.allowed === undefined) return `${what}: ${NO_LIMIT}`;
  const limit = `allowed ${figure(one.allowed)}${one.class ? ` (class ${one.class})` : ""}`;
  const verdict = one.verdict === "pass" ? "passed" : "FAILED";
  return `${what}, ${limit}: ${verdict}${marginWords(one.margin, unit, "at the limit")}`;
}

function strokeWords(one: Of<"stroke">): string {
  const unit = nameOf(one.unit, "unit");
  if (one.starts === undefined && one.home === undefined) return "Stroke: not enough was read to judge it";
  const said = [
    one.starts !== undefined && `moves from ${figure(one.starts)} ${unit}`,
    one.full !== undefined && `full at ${figure(one.full)} ${unit}`,
    one.startsBack !== undefined && `starts back at ${figure(one.startsBack)} ${unit}`,
    one.home !== undefined && `home at ${figure(one.home)} ${unit}`,
    one.travel !== undefined &&
      one.travelUnit !== undefined &&
      `travel ${figure(one.travel)} ${nameOf(one.travelUnit, "unit")}`,
    one.hysteresis !== undefined && `hysteresis ${figure(one.hysteresis)} % of travel`,
    one.deadBand !== undefined &&
      `dead band ${figure(one.deadBand)} ${unit}${one.deadBandPercent === undefined ? "" : `, ${figure(one.deadBandPercent)} % of the signal span`}`,
  ];
  const what = `Stroke ${said.filter(Boolean).join("; ")}`;
  if (one.verdict === "not_enough") return `${what}: not enough was read to judge it`;
  if (one.verdict === "no_limit" || one.min === undefined || one.max === undefined) return `${what}: ${NO_LIMIT}`;
  const range = `the bench range ${figure(one.min)} to ${figure(one.max)} ${unit}`;
  return `${what}: ${one.verdict === "within" ? "within" : "OFF"} ${range}${marginWords(one.margin, unit, "at the edge of what is allowed")}`;
}

/** ", 2 ft-lbf to spare", ", 2 bubbles/min too far". */
function marginWords(margin: number | undefined, unit: string, none: string): string {
  if (margin === undefined) return "";
  const size = Math.abs(margin);
  if (size < 1e-9) return none ? `, ${none}` : "";
  return margin > 0 ? `, ${figure(size)} ${unit} to spare` : `, by ${figure(size)} ${unit}`;
}

/** What is to be done, without when: "Replace the seat". */
export function followUpWords(one: FollowUp): string {
  const part = one.part ? `the ${nameOf(one.part, "part")}` : "";
  const count = one.count === undefined ? "" : `${one.count} × `;
  const test = one.test ? nameOf(one.test, "test").toLowerCase() : "";
  if (one.do === "stop") return "STOP: follow the site's procedure";
  if (one.do === "ask") return `Settle${one.part ? ` (${nameOf(one.part, "part")})` : ""}`;
  if (one.do === "retest") return `Repeat the ${test || "test"}`;
  if (one.do === "order") return `Order ${count}${one.part ? nameOf(one.part, "part") : "the part"}`;
  const what = part || (test ? `what the ${test} showed` : "the part that was not named");
  return `${capital(one.do.replaceAll("_", " "))} ${count}${what}`;
}

/** When it is to be done; `inspection`: the date of the next seat inspection, where there is one. */
export function whenWords(one: FollowUp, inspection?: string): string {
  if (one.when === "now") return "now";
  if (one.when === "next_inspection") return `at the next inspection${inspection ? `, due ${inspection}` : ""}`;
  return `by ${one.when}`;
}

export function dueSentence(one: Pick<Due, "task" | "on">): string {
  return `${taskName(one.task)} due ${one.on}`;
}

export function taskName(task: Due["task"]): string {
  return task === "seat_inspection" ? "Seat inspection" : "Seal replacement";
}

export const countedPart = ({ part, count }: { part: Part; count: number }) => `${count} × ${nameOf(part, "part")}`;

/** "40", "0.15", "5182": four figures, since no gauge at a valve shows more. */
export function figure(value: number): string {
  return String(Number(value.toPrecision(4)));
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

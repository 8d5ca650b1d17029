import type { Check, Due, FollowUp, Part } from "../../core/index.ts";
import { dayWords } from "../state/time-words.ts";
import { capital, nameOf, testName, unitName } from "./words.ts";

/** What must be done, in a few words: "Replace seat", "Do the stroke test". */
export function doWords(one: FollowUp): string {
  const part = one.part && nameOf(one.part);
  const count = one.count ? `× ${one.count}` : "";
  if (one.do === "stop") return "STOP the job";
  if (one.test && one.do === "retest") return `Do the ${testName(one.test)}`;
  if (one.test) return capital([nameOf(one.do), part, `for the ${testName(one.test)}`].filter(Boolean).join(" "));
  const lead = one.do === "ask" ? "To settle:" : nameOf(one.do);
  return capital([lead, part, count].filter(Boolean).join(" "));
}

export function whenWords(when: string): string {
  return when === "now" ? "now" : when === "next_inspection" ? "next inspection" : dayWords(when);
}

/** Follow-ups with when and why; `full` adds the rule and its source, for who wants to check. */
export function FollowLines({ followUps, full }: { followUps: readonly FollowUp[]; full?: boolean }) {
  if (!followUps.length) return <p class="none">Nothing follows from what was said so far.</p>;
  return (
    <ul class="follows">
      {followUps.map((one, index) => (
        <li key={index} class={`follow${one.do === "stop" ? " follow-stop" : ""}`}>
          <span class={`when when-${one.when === "now" ? "now" : "later"}`}>{whenWords(one.when)}</span>
          <span class="follow-words">
            <b>{doWords(one)}</b>
            <span class="why">{capital(one.why)}</span>
            {full && (
              <span class="source">
                {nameOf(one.rule)}: {one.source}
              </span>
            )}
          </span>
        </li>
      ))}
    </ul>
  );
}

export function DueLines({ due, today }: { due: readonly Due[]; today: string }) {
  return (
    <ul class="follows">
      {due.map((one) => (
        <li key={one.task} class="follow">
          <span class={`when when-${one.on < today ? "overdue" : "later"}`}>{dayWords(one.on)}</span>
          <span class="follow-words">
            <b>
              {capital(nameOf(one.task))}
              {one.on < today ? ", overdue" : ""}
            </b>
            <span class="why">{capital(one.why)}</span>
          </span>
        </li>
      ))}
    </ul>
  );
}

export function CheckLines({ checks }: { checks: readonly Check[] }) {
  return (
    <ul class="follows">
      {checks.map((one, index) => (
        <li key={index} class="follow">
          <span class={`when when-${good(one) ? "good" : one.verdict === "no_limit" ? "later" : "now"}`}>
            {nameOf(one.verdict)}
          </span>
          <span class="follow-words">
            <b>{checkWords(one)}</b>
            <span class="why">
              {limitWords(one)}
              {one.note ? ` ${one.note}` : ""}
            </span>
            <span class="source">{one.source}</span>
          </span>
        </li>
      ))}
    </ul>
  );
}

function good(one: Check): boolean {
  return one.verdict === "within" || one.verdict === "pass";
}

function checkWords(one: Check): string {
  if (one.check === "seat_leakage")
    return `Seat leakage ${one.measured} ${unitName(one.unit)}${one.class ? `, class ${one.class}` : ""}`;
  const value = one.upper === undefined ? String(one.value) : `${one.value} to ${one.upper}`;
  return `Torque ${one.part ? `${nameOf(one.part)} ` : ""}${value} ${unitName(one.unit)}`;
}

function limitWords(one: Check): string {
  if (one.verdict === "no_limit") return "No limit is known to judge it by.";
  if (one.check === "seat_leakage") return `Allowed ${one.allowed} ${unitName(one.unit)}.`;
  return `Limits ${one.min} to ${one.max} ${unitName(one.unit)}.`;
}

export function PartChips({
  parts,
  label,
}: {
  parts: readonly (Part | { part: Part; count: number })[];
  label: string;
}) {
  if (!parts.length) return null;
  return (
    <div class="chips-row">
      <h3>{label}</h3>
      <ul class="chips">
        {parts.map((one) => {
          const { part, count } = typeof one === "string" ? { part: one, count: 1 } : one;
          return (
            <li key={part}>
              {nameOf(part)}
              {count > 1 ? ` × ${count}` : ""}
            </li>
          );
        })}
      </ul>
    </div>
  );
}

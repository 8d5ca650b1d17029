import {
  type Check,
  checkSentence,
  type Due,
  type FollowUp,
  followUpWords,
  isGood,
  nameOf,
  type Part,
  taskName,
} from "../../core/index.ts";
import { dayWords } from "../state/time-words.ts";
import { capital, plainWords } from "./words.ts";

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
            <b>{followUpWords(one)}</b>
            <span class="why">{capital(one.why)}</span>
            {full && (
              <span class="source">
                {plainWords(one.rule)}: {one.source}
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
              {taskName(one.task)}
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
          <span class={`when when-${isGood(one) ? "good" : isGood(one) === undefined ? "later" : "now"}`}>
            {plainWords(one.verdict)}
          </span>
          <span class="follow-words">
            <b>{checkSentence(one)}</b>
            <span class="source">{one.source}</span>
          </span>
        </li>
      ))}
    </ul>
  );
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
              {nameOf(part, "part")}
              {count > 1 ? ` × ${count}` : ""}
            </li>
          );
        })}
      </ul>
    </div>
  );
}

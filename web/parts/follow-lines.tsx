import type { Child } from "hono/jsx";
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

/** Lines beyond this many are folded away, for the first ones are the urgent ones; a fold of one line hides nothing. */
const MOST_LINES = 6;
const MOST_PARTS = 8;

interface Follows {
  followUps: readonly FollowUp[];
  /** shows all of them, each with its rule and source, for who wants to check */
  full?: boolean;
  /** what stands beside the one at this place */
  beside?: (at: number) => Child;
}

/** Follow-ups with when and why. */
export function FollowLines({ followUps, full, beside }: Follows) {
  if (!followUps.length) return <p class="none">Nothing follows from what was said so far.</p>;
  const most = full || followUps.length <= MOST_LINES + 1 ? followUps.length : MOST_LINES;
  return (
    <>
      <Follows followUps={followUps.slice(0, most)} full={full} beside={beside} />
      {most < followUps.length && (
        <details class="more">
          <summary>{followUps.length - most} more to do</summary>
          <Follows followUps={followUps.slice(most)} full={full} />
        </details>
      )}
    </>
  );
}

function Follows({ followUps, full, beside }: Follows) {
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
            {beside?.(index)}
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
  const most = parts.length <= MOST_PARTS + 2 ? parts.length : MOST_PARTS;
  return (
    <div class="chips-row">
      <h3>
        {label} ({parts.length})
      </h3>
      <Chips parts={parts.slice(0, most)} />
      {most < parts.length && (
        <details class="more">
          <summary>{parts.length - most} more</summary>
          <Chips parts={parts.slice(most)} />
        </details>
      )}
    </div>
  );
}

function Chips({ parts }: { parts: readonly (Part | { part: Part; count: number })[] }) {
  return (
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
  );
}

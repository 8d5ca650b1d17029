import type { Entry, Reason } from "../../core/index.ts";
import { CERTAIN, REASONS } from "../../core/shapes/review-reasons.ts";
import { capital, HAZARD_WORDS, partName } from "../wording/names.ts";
import { testSentence } from "../wording/sentences.ts";

/** All that speaks for looking at a phrase, gathered by whoever weighs its job. */
export interface Evidence {
  /** how sure the recogniser was of the words; null where they were typed */
  heard: number | null;
  /** hazards said in it, whether or not they were scratched */
  alerts: readonly Entry[];
  /** what it puts into the record */
  entries: readonly Entry[];
  unread: readonly string[];
  /** the question it left open */
  question: string | undefined;
  /** what may hurt and is no hazard said: a cracked body */
  stops: readonly string[];
  /** measured values outside their limits */
  failedChecks: readonly string[];
  contradictions: readonly string[];
  /** it means something else than what was decided on */
  changed: boolean;
  /** it came after its job was signed */
  late: boolean;
}

/** Below this a recogniser's words are looked at: of those it calls 0.8 sure, one in five is wrong. */
const HEARD_SURE = 0.8;
/** A word put right for one that sounds like it, and words pieced together, read below this (core/parse/taken.ts). */
const READ_SURE = 0.93;

/** Why a person should look at a phrase, the gravest reason first; none where nothing speaks against it. */
export function reasonsOf(about: Evidence): Reason[] {
  const reasons: Reason[] = [];
  const add = (reason: Reason["reason"], why: string) => reasons.push({ reason, why });
  const { alerts, entries } = about;
  const hazards = new Set([...alerts, ...entries].flatMap((one) => (one.type === "hazard" ? [one.hazard] : [])));
  for (const hazard of hazards) {
    const stands = entries.some((one) => one.type === "hazard" && one.hazard === hazard);
    add("hazard", `A hazard was called: ${HAZARD_WORDS[hazard]}${stands ? "" : ", and scratched later"}.`);
  }
  for (const why of about.stops) add("hazard", why);
  for (const one of entries) if (one.type === "test" && one.result === "fail") add("failed_test", testSentence(one));
  for (const why of about.failedChecks) add("failed_test", why);
  for (const why of about.contradictions) add("contradiction", `${capital(why)}${/[.?!]$/.test(why) ? "" : "."}`);
  if (about.changed) add("changed", "It means something else than what was decided on.");
  if (about.heard !== null && about.heard < HEARD_SURE)
    add("low_confidence", `The words were heard with ${percent(about.heard)} confidence.`);
  else if (entries.some((one) => one.doubtful))
    add("low_confidence", "Words that amended it were heard with little confidence.");
  const least = Math.min(1, ...entries.map((one) => one.confidence ?? 1));
  if (least < READ_SURE)
    add("low_confidence", `${percent(least)} sure of the reading: a word was taken for one that sounds like it.`);
  if (about.unread.length > 0) add("unread", `Not understood: ${about.unread.map((one) => `“${one}”`).join(", ")}.`);
  if (about.question !== undefined) add("question", about.question);
  for (const one of entries) {
    if (!("assumed" in one) || !one.assumed || !one.resolved || !("part" in one) || !one.part) continue;
    add("assumed", `The ${partName(one.part)} is taken to be the ${partName(one.resolved)}.`);
  }
  if (about.late) add("late", "It came after the job was signed.");
  return reasons.sort((a, b) => REASONS.indexOf(a.reason) - REASONS.indexOf(b.reason));
}

export const weightOf = (reasons: readonly Reason[]): number =>
  reasons[0] ? REASONS.indexOf(reasons[0].reason) : CERTAIN;

/** Whether there is anything to decide: a phrase that only orders the log about is none. */
export function hasSomething({ alerts, entries, unread, question }: Evidence): boolean {
  return (
    alerts.length > 0 || unread.length > 0 || question !== undefined || entries.some((one) => one.type !== "command")
  );
}

const percent = (share: number) => `${Math.round(share * 100)} %`;

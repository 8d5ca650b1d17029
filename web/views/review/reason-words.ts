import type { ReasonCode } from "../../../core/index.ts";

/** The stamp of a reason, in a word or two. */
export const REASON_STAMPS: Record<ReasonCode, string> = {
  hazard: "Hazard",
  failed_test: "Failed",
  contradiction: "At odds",
  changed: "Changed",
  low_confidence: "Unsure",
  unread: "Not read",
  question: "Asks",
  assumed: "Assumed",
  late: "Late",
};

/** The same as a count: "2 hazards", "1 not read". */
export function countWords(reason: ReasonCode, count: number): string {
  const many: Record<ReasonCode, [one: string, more: string]> = {
    hazard: ["hazard", "hazards"],
    failed_test: ["failed test", "failed tests"],
    contradiction: ["at odds", "at odds"],
    changed: ["changed since", "changed since"],
    low_confidence: ["unsure", "unsure"],
    unread: ["not read", "not read"],
    question: ["open question", "open questions"],
    assumed: ["assumed", "assumed"],
    late: ["came late", "came late"],
  };
  return `${count} ${many[reason][count === 1 ? 0 : 1]}`;
}

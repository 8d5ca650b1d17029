/**
 * Why a phrase is put before a lead, the gravest first: what can hurt, then what can mislead. Plain, without zod, since
 * the page shows them.
 */
export const REASONS = [
  "hazard",
  "failed_test",
  "contradiction",
  "changed",
  "low_confidence",
  "unread",
  "question",
  "assumed",
  "late",
] as const;
export type ReasonCode = (typeof REASONS)[number];

/** The weight of a phrase that nothing speaks against. */
export const CERTAIN = REASONS.length;

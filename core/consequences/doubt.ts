import type { Entry } from "../shapes/entry.ts";

/**
 * What was heard doubtfully and nobody confirmed. The words are kept like any others; what was read from them is
 * marked, and settles nothing until the speaker says that it was heard right.
 */

/** A phrase heard with less confidence than this is asked about. Below it three in five are not heard word for word. */
export const DOUBT_BELOW = 0.6;

export const isDoubtful = (confidence: number | undefined): boolean =>
  confidence !== undefined && confidence < DOUBT_BELOW;

/**
 * The phrases of a session whose entries stand in doubt: those heard doubtfully, and those that such a one amended.
 * One that was put right in words heard well stands in doubt no more: whoever mends a part of it has heard the rest.
 */
export function doubtfulPhrases(
  readings: readonly { touched: readonly number[] }[],
  confidence: (phrase: number) => number | undefined,
): ReadonlySet<number> {
  const doubtful = new Set<number>();
  for (const [phrase, { touched }] of readings.entries()) {
    if (isDoubtful(confidence(phrase))) for (const one of [phrase, ...touched]) doubtful.add(one);
    else for (const one of touched) doubtful.delete(one);
  }
  return doubtful;
}

/** The entries of a session with those of doubtful phrases marked. A hazard is never doubted: it is acted on. */
export function markDoubtful(entries: readonly Entry[], doubtful: ReadonlySet<number>): readonly Entry[] {
  if (doubtful.size === 0) return entries;
  return entries.map((entry) =>
    entry.phrase !== undefined && entry.type !== "hazard" && doubtful.has(entry.phrase)
      ? { ...entry, doubtful: true }
      : entry,
  );
}

/**
 * The entries as the rules may reckon with them: a finding or work heard doubtfully counts as unsure, so that it is
 * looked at and settles nothing; a figure, a test, an order or a size heard doubtfully counts for nothing yet.
 */
export function reckonable(entries: readonly Entry[]): readonly Entry[] {
  if (!entries.some((entry) => entry.doubtful)) return entries;
  return entries.flatMap((entry): Entry[] => {
    if (!entry.doubtful) return [entry];
    return entry.type === "finding" || entry.type === "work" ? [{ ...entry, unsure: true }] : [];
  });
}

import { CONFUSIONS } from "./confusions.ts";
import { Pattern } from "./notation.ts";

/** A known mishearing, ready to be matched. */
export interface ConfusionRow {
  pattern: Pattern;
  mean: string;
  behind?: Set<string>;
  ahead?: Set<string>;
}

/** Behind which "is" may stand, these may too. */
const SAID = ["its", "thats", "looks", "looked", "were", "feels", "got", "gone", "theyre"];

/** Known mishearings by the first word heard. */
export function confusionsByFirst(): Map<string, ConfusionRow[]> {
  const byFirst = new Map<string, ConfusionRow[]>();
  for (const { hear, mean, behind, ahead } of CONFUSIONS) {
    const row: ConfusionRow = {
      pattern: new Pattern(hear),
      mean,
      behind: behind ? new Set([...behind.split(" "), ...(/\bis\b/.test(behind) ? SAID : [])]) : undefined,
      ahead: ahead ? new Set(ahead.split(" ")) : undefined,
    };
    for (const first of row.pattern.firsts) byFirst.set(first, [...(byFirst.get(first) ?? []), row]);
  }
  return byFirst;
}

import { CONFUSIONS } from "./confusions.ts";
import { byFirstWord, type Opened } from "./first-words.ts";
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
export function confusionsByFirst(): Map<string, Opened<ConfusionRow>> {
  return byFirstWord(
    CONFUSIONS.map(({ hear, mean, behind, ahead }) => ({
      pattern: new Pattern(hear),
      mean,
      behind: behind ? new Set([...behind.split(" "), ...(/\bis\b/.test(behind) ? SAID : [])]) : undefined,
      ahead: ahead ? new Set(ahead.split(" ")) : undefined,
    })),
  );
}

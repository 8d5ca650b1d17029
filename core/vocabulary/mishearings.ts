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

/** Where "the" may stand, these may too. */
const NAMED = ["that", "this", "old", "other", "same"];
/** Ahead of which "is" may stand, these may too: whatever is said of a part. */
const SAID_OF_IT =
  "are was were has had isnt wasnt needs need needed wants looks looked feels seems got gets wont still".split(" ");

/** Known mishearings by the first word heard. */
export function confusionsByFirst(): Map<string, Opened<ConfusionRow>> {
  return byFirstWord(
    CONFUSIONS.map(({ hear, mean, behind, ahead }) => ({
      pattern: new Pattern(hear),
      mean,
      behind: behind
        ? new Set([
            ...behind.split(" "),
            ...(/\bis\b/.test(behind) ? SAID : []),
            ...(/\bthe\b/.test(behind) ? NAMED : []),
          ])
        : undefined,
      ahead: ahead ? new Set([...ahead.split(" "), ...(/\bis\b/.test(ahead) ? SAID_OF_IT : [])]) : undefined,
    })),
  );
}

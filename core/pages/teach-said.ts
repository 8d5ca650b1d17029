import type { TaughtWord } from "../shapes/taught-word.ts";
import { lexicon } from "../vocabulary/lexicon.ts";
import { type Taught, teach } from "./teach.ts";

/** "donut is the cage o-ring", "'donut' means cage o ring", "a donut is what we call a cage o-ring" */
const SAID =
  /^\s*(?:an?\s+|the\s+)?["'“‘]?(.+?)["'”’]?\s+(?:is|are|means?|=)\s+(?:what (?:we|they) call\s+)?(.+?)[\s.]*$/i;

/**
 * A word taught in a sentence: what is said, and the name of what it means, as the log or anybody says it. The last
 * "is" that leaves a name the log knows behind it counts, for a word may have one in it.
 */
export function teachSaid(sentence: string, taught: readonly TaughtWord[] = []): Taught {
  const found = SAID.exec(sentence.normalize("NFKC"));
  const say = found?.[1];
  const named = found?.[2];
  if (!say || !named)
    return { ok: false, problem: "Say it as “donut is the cage O-ring”: the word, then what it names." };
  const as = codeNamed(named);
  if (!as)
    return {
      ok: false,
      problem: `“${named}” is no part, finding or work that the log knows: the glossary lists what it does.`,
    };
  return teach(say, as, taught);
}

/** The part, finding or work that these words name, all of them. */
function codeNamed(named: string): TaughtWord["as"] | undefined {
  const words = named
    .toLowerCase()
    .replace(/['’]/g, "")
    .replace(/[^a-z0-9]+/g, " ")
    .trim()
    .replace(/^(?:an?|the|our) /, "")
    .split(" ");
  const stretch = lexicon().longest(words, 0);
  if (!stretch || stretch.end !== words.length) return undefined;
  const { part, condition, work } = stretch.senses;
  if (part) return { part };
  if (condition?.[0]) return { condition: condition[0].code, form: condition[0].form };
  return work?.[0] ? { work: work[0].code } : undefined;
}

/** Step 6: "already did", "did the packing already": what was owed before is done. */

import type { Part } from "../shapes/codes.ts";
import type { Lexicon } from "../vocabulary/lexicon.ts";

const LEADS = /^(?:(?:actually|oh|no|nope|nah|well|yeah|yep|and|but|uh|um|wait|ok|okay|hey) )*/;
/** One of these is in all that DONE takes: hardly a phrase has any, and need be looked at further. */
const TELLS_DONE = new Set(["already", "did", "done"]);
const DONE =
  /^(?:(?:i|we|ive|weve|its|that|thats) )?(?:already (?:did|done|been done|got done|took care of|taken care of)|(?:did|done|got) (?:(?:it|that|them|this) )?already|all ready did|(?:did|done) (?:that|it))(?: (?:it|that|them|this|that one|this one))?$/;

/** The part whose owed work is told done, if one is named; nothing where the words say anything else. */
export function saidDone(words: readonly string[], lexicon: Lexicon): { part?: Part } | undefined {
  if (!words.some((word) => TELLS_DONE.has(word))) return undefined;
  let part: Part | undefined;
  const rest: string[] = [];
  for (let at = 0; at < words.length; ) {
    const known = lexicon.longest(words, at);
    if (known?.senses.part) {
      if (part) return undefined;
      part = known.senses.part;
      if (/^(?:the|that|my)$/.test(rest.at(-1) ?? "")) rest.pop();
      at = known.end;
    } else {
      rest.push(words[at] as string);
      at += 1;
    }
  }
  const text = rest.join(" ");
  if (!DONE.test(text.replace(LEADS, ""))) return undefined;
  return part ? { part } : {};
}

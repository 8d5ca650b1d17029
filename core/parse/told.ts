/** Step 5: what somebody else told: "Dave says it was leaking" is not what was found here, and stays unread. */

import { ROLE } from "../vocabulary/grammar.ts";
import { type Chunk, has, isTrade } from "./chunks.ts";

/** Chunks [from, to) are in somebody else's words. */
export interface Told {
  from: number;
  to: number;
}

/** How far before "says" its speaker may stand: "the guy out on days says". */
const NEAR = 6;
/** Things that say what they say themselves: "nameplate says two inch". */
const SPEAKS_FOR_ITSELF =
  /^(?:it|that|this|i|we|you|ive|weve|tag|nameplate|plate|sticker|label|book|manual|sheet|ticket|paperwork|meter|display|screen|drawing|card|dial|readout|like)$/;
/** Speakers that are everyday words; a name or an office is a word that no row knows. */
const SOMEBODY = /^(?:he|hes|she|shes|they|theyre|somebody|someone|everybody|everyone|man|guy|guys|boy|people|folks)$/;
const ENDS = /^(?:but|so|however|although|though|except|yet|otherwise|anyway|anyhow)$/;
const OWN_VOICE = /^(?:i|ive|im|we|weve)$/;

/** The stretches of a phrase that somebody else told: each to a turning word, or to "I" once something was told. */
export function toldIn(chunks: readonly Chunk[]): Told[] {
  const told: Told[] = [];
  for (let at = 0; at < chunks.length; at += 1) {
    if (!opens(chunks, at)) continue;
    let to = at + 1;
    for (let trade = false; to < chunks.length; to += 1) {
      const chunk = chunks[to] as Chunk;
      if ((has(chunk, ROLE.but) && ENDS.test(chunk.text)) || (trade && OWN_VOICE.test(chunk.text))) break;
      trade ||= isTrade(chunk);
    }
    told.push({ from: at, to });
    at = to - 1;
  }
  return told;
}

/** "operator told me", "according to", and any speaker but oneself in front of "says". */
function opens(chunks: readonly Chunk[], at: number): boolean {
  const chunk = chunks[at];
  if (has(chunk, ROLE.reported)) return true;
  if (!has(chunk, ROLE.tells)) return false;
  for (let back = at - 1; back >= 0 && back >= at - NEAR; back -= 1) {
    const before = chunks[back] as Chunk;
    if (SPEAKS_FOR_ITSELF.test(before.text)) return false;
    if (SOMEBODY.test(before.text) || before.unknown || before.talk) return true;
    if (isTrade(before) || before.number || has(before, ROLE.and)) return false;
  }
  return false;
}

import { mostSensible, startListening } from "../../core/index.ts";
import type { WayHeard } from "../speech/ear.ts";
import { afterCall } from "./loop.ts";
import type { State } from "./state.ts";
import { wordsHere } from "./taught.ts";

/** Of the ways in which a phrase may have been heard, the one that makes most sense in the job as it stands. */
export function likeliestHere<W extends WayHeard>(ways: readonly [W, ...W[]], state: State): W {
  const { card, heard, settings } = state;
  const [{ confidence: most = 1 }] = ways;
  const context = card ? heard : startListening(wordsHere(state));
  const weighed = ways.map((way) => ({
    way,
    text: (settings.handsFree ? afterCall(way.text, settings.callWord) : undefined) ?? way.text,
    behind: way === ways[0] ? 0 : Math.log(most / (way.confidence ?? 0)),
  }));
  return mostSensible(weighed, context).way;
}

// tokeniser and tagger alone: the whole of it also finds noun phrases and verbs' parts, which nobody asked for here
import nlp from "compromise/two";
import { phrases, sessions } from "./corpus-phrases.ts";
import { shippedCore } from "./shipped-core.ts";
import { figure, medians, perSecond } from "./timing.ts";

const ROUNDS = 5;
const TARGET = 20;

/** Phrases read per second on one core, beside a general-purpose English library tokenising and tagging the same. */
export async function reading(): Promise<string[]> {
  const { listen, startListening } = await shippedCore();
  let kept = 0;
  const readAll = () => {
    for (const say of sessions) {
      let heard = startListening();
      for (const text of say) heard = listen(heard, text);
      kept += heard.entries.length;
    }
  };
  const tagAll = () => {
    for (const text of phrases) kept += nlp(text).docs.length;
  };
  const [ours = Number.NaN, theirs = Number.NaN] = medians(ROUNDS, [readAll, tagAll]);
  const ratio = theirs / ours;
  return [
    `${figure(phrases.length)} phrases of the corpora, median of ${ROUNDS} rounds, turn and turn about`,
    `words to entries, jobs carried along   ${figure(perSecond(phrases.length, ours))} phrases/s`,
    `compromise/two, tokenised and tagged   ${figure(perSecond(phrases.length, theirs))} phrases/s`,
    `ratio ${figure(ratio)} (target ${TARGET}: ${ratio >= TARGET ? "met" : "not met"}; ${figure(kept)} results kept)`,
  ];
}

import { entriesOf } from "./dictionary.ts";
import { END, type History, type LanguageModel, START, shorten } from "./language-model.ts";
import type { Call } from "./said-chances.ts";

/**
 * A language model as the finite-state network that the engine reads: a state a history, arcs that say a word, and a
 * silent one to the shorter history. Lines of "TRANSITION from to chance [word]". `soundsOf` tells how many sounds a word
 * has: each gets its arc here, since the engine takes seconds to add them by itself. `call` may stand before any phrase, or
 * alone: what follows it begins like any phrase.
 */
export function networkText(model: LanguageModel, soundsOf: (word: string) => readonly string[], call?: Call): string {
  const canSay = (word: string) => soundsOf(word).length > 0;
  const members = membersOf(model, canSay);
  const saying = (token: string): readonly (readonly [string, number])[] =>
    members.get(token) ?? (canSay(token) ? [[token, 1]] : []);

  const LAST = 0;
  const states = new Map<History, number>();
  for (const history of model.after.keys()) states.set(history, states.size + 1);
  const stateOf = (history: History) => states.get(history) as number;
  /** The longest known history that what was just said leaves. */
  const stateAfter = (history: History, token: string): number => {
    const longest = `${history.slice(history.indexOf(" ") + 1)} ${token}`;
    return states.get(longest) ?? states.get(token) ?? stateOf("");
  };

  const lines: string[] = [];
  for (const [history, { next, left }] of model.after) {
    const from = stateOf(history);
    for (const [token, chance] of next)
      if (token === END) lines.push(transition(from, LAST, chance));
      else
        for (const [word, share] of saying(token))
          for (const entry of entriesOf(word, soundsOf(word)))
            lines.push(transition(from, stateAfter(history, token), chance * share, entry));
    if (left > 0) lines.push(transition(from, stateOf(shorten(history)), left));
  }
  const CALLED = states.size + 1;
  if (call) {
    for (const entry of entriesOf(call.word, soundsOf(call.word)))
      lines.push(transition(stateOf(START), CALLED, call.share, entry));
    lines.push(transition(CALLED, LAST, call.alone), transition(CALLED, stateOf(START), 1 - call.alone));
  }
  return [
    "FSG_BEGIN said",
    `NUM_STATES ${states.size + (call ? 2 : 1)}`,
    `START_STATE ${stateOf(START)}`,
    `FINAL_STATE ${LAST}`,
    ...lines,
    "FSG_END",
    "",
  ].join("\n");
}

const transition = (from: number, to: number, chance: number, word?: string) =>
  `TRANSITION ${from} ${to} ${chance.toPrecision(5)}${word === undefined ? "" : ` ${word}`}`;

function membersOf(model: LanguageModel, canSay: (word: string) => boolean) {
  const members = new Map<string, [string, number][]>();
  for (const [word, { of, share }] of model.classes) {
    const list = members.get(of) ?? [];
    if (canSay(word)) list.push([word, share]);
    members.set(of, list);
  }
  return members;
}

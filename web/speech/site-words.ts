import type { SiteWords } from "../../core/speech/ear-words.ts";
import type { State } from "../state/state.ts";
import { wordsHere } from "../state/taught.ts";

type Seen = Pick<State, "card" | "settings" | "taught" | "valves">;
let last: { seen: Seen; words: SiteWords } | undefined;

/** What is said at the site at hand and nowhere else, and the call word where it is listened for. The same value as long as nothing of it changed. */
export function siteWords({ card, settings, taught, valves }: Seen): SiteWords {
  const seen = last?.seen;
  if (last && seen?.card === card && seen?.settings === settings && seen?.taught === taught && seen?.valves === valves)
    return last.words;
  const site = card ? card.site : settings.site;
  const here = valves.filter((valve) => !site || !valve.site || valve.site === site).map(({ tag }) => tag);
  const tags = [...new Set(card?.tag ? [...here, card.tag] : here)].sort();
  const words: SiteWords = {
    tags,
    taught: wordsHere({ card, settings, taught }).map(({ say }) => say),
    accepted: [],
    ...(settings.handsFree ? { call: settings.callWord } : {}),
  };
  const same = last && JSON.stringify(last.words) === JSON.stringify(words);
  last = { seen: { card, settings, taught, valves }, words: last && same ? last.words : words };
  return last.words;
}

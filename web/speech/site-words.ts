import type { SiteWords } from "../../core/speech/ear-words.ts";
import type { State } from "../state/state.ts";
import { wordsHere } from "../state/taught.ts";

type Seen = Pick<State, "card" | "settings" | "taught" | "valves" | "saidBefore">;
let last: { seen: Seen; words: SiteWords } | undefined;

/** What is said at the site at hand and nowhere else, and the call word where it is listened for. The same value as long as nothing of it changed. */
export function siteWords({ card, settings, taught, valves, saidBefore }: Seen): SiteWords {
  const now: Seen = { card, settings, taught, valves, saidBefore };
  const seen = last?.seen;
  if (last && seen && (Object.keys(now) as (keyof Seen)[]).every((key) => seen[key] === now[key])) return last.words;
  const site = card ? card.site : settings.site;
  const here = valves.filter((valve) => !site || !valve.site || valve.site === site).map(({ tag }) => tag);
  const tags = [...new Set(card?.tag ? [...here, card.tag] : here)].sort();
  const words: SiteWords = {
    tags,
    taught: wordsHere({ card, settings, taught }).map(({ say }) => say),
    accepted: saidBefore.filter((one) => !site || !one.site || one.site === site).map(({ text }) => text),
    ...(settings.handsFree ? { call: settings.callWord } : {}),
  };
  const same = last && JSON.stringify(last.words) === JSON.stringify(words);
  last = { seen: now, words: last && same ? last.words : words };
  return last.words;
}

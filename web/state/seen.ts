import {
  type Ask,
  byValve,
  type Consequences,
  consequences,
  doubtfulPhrases,
  type Entry,
  type Family,
  familyOf,
  markDoubtful,
  narrow,
  type PhraseReading,
} from "../../core/index.ts";
import type { CardPhrase, KnownValve, State } from "./state.ts";
import { dayThere } from "./time-words.ts";

/** What the screens read out of the state: computed when asked, never stored beside it. */

/** The first alert nobody has said they saw: it stands in front of everything else. */
export function standingAlert(state: State): { phrase: CardPhrase; alerts: Entry[] } | undefined {
  for (const [index, phrase] of state.phrases.entries()) {
    const alerts = state.heard.phrases[index]?.alerts ?? [];
    if (alerts.length && !phrase.alertSeen) return { phrase, alerts };
  }
  return undefined;
}

/** Every hazard said in this job, scratched or not: the alert given stands. */
export function hazardsSaid(state: State): Entry[] {
  return state.heard.phrases.flatMap((reading) => reading.alerts);
}

/** What stands of the valve at hand, and the question still open. */
export interface AtHand {
  tag?: string;
  entries: Entry[];
  ask?: Ask;
}

let narrowed: { key: readonly unknown[]; answer: AtHand } | undefined;

/**
 * The valve at hand, the one named last, else the one the job was opened for, with its general parts narrowed to its
 * own bill of parts. A question of the reader comes before one about which part: its answer may settle both.
 */
export function valveAtHand(state: State): AtHand {
  const { heard, card, known } = state;
  const doubtful = doubtfulPhrases(heard.phrases, (phrase) => state.phrases[phrase]?.confidence);
  const key = [heard, card, known, [...doubtful].join()];
  if (narrowed?.key.every((one, index) => one === key[index])) return narrowed.answer;
  const stretches = byValve(markDoubtful(heard.entries, doubtful), card?.tag);
  const { tag, entries } = stretches[stretches.length - 1] ?? { tag: card?.tag, entries: [] };
  const same = known && known.tag === tag ? known : undefined;
  const bill = familyOf(same?.valve.family, ownFamilies(same)).bill.map((line) => line.part);
  const found = narrow(entries, bill, same?.history);
  const answer = { tag, entries: found.entries, ask: heard.ask[0] ?? found.ask[0] };
  narrowed = { key, answer };
  return answer;
}

const ownFamilies = (known: KnownValve | undefined): Family[] => (known?.ownFamily ? [known.ownFamily.data] : []);

/** What now stands of the phrases that the last one amended or answered: shown where its own entries would be. */
export function amendedNow(state: State): Entry[] {
  const touched = lastSaid(state)?.reading.touched ?? [];
  return valveAtHand(state).entries.filter((entry) => entry.phrase !== undefined && touched.includes(entry.phrase));
}

/** The question that the last phrase left open: an older one stands on the card and is not said again. */
export function questionNow(state: State): string | undefined {
  const { ask } = valveAtHand(state);
  return ask && ask.phrase === state.phrases.length - 1 ? ask.question : undefined;
}

/** What the last phrase left standing, with what its general parts are taken to be. */
export function lastEntries(state: State): Entry[] {
  const last = lastSaid(state);
  if (!last) return [];
  const at = state.phrases.length - 1;
  const standing = valveAtHand(state).entries.filter((entry) => entry.phrase === at);
  // an entry that no longer stands was scratched in its own phrase: the reading says so
  return standing.length === last.reading.entries.length ? standing : last.reading.entries;
}

/** The last phrase said and what it became. */
export function lastSaid(state: State): { phrase: CardPhrase; reading: PhraseReading } | undefined {
  const index = state.phrases.length - 1;
  const phrase = state.phrases[index];
  const reading = state.heard.phrases[index];
  return phrase && reading ? { phrase, reading } : undefined;
}

/** The phrase of the last finding that stands for the valve at hand: what a photograph taken now is of. */
export function lastFinding(state: State): CardPhrase | undefined {
  const found = valveAtHand(state).entries.findLast((entry) => entry.type === "finding" && entry.phrase !== undefined);
  return found?.phrase === undefined ? undefined : state.phrases[found.phrase];
}

/** A site's name where it has one, else its key. */
export function siteName(state: State, site: string | undefined): string {
  return state.sites.find((one) => one.site === site)?.name ?? site ?? "";
}

/** The calendar day of an instant at a site, by its clock where its zone is known. */
export function dayAtSite(state: State, site: string | undefined, instant: string): string {
  return dayThere(instant, state.sites.find((one) => one.site === site)?.zone);
}

/** The day of the job, by the clock of its site. */
export function dayOfJob(state: State): string {
  const { card } = state;
  return card ? dayAtSite(state, card.site, card.startedAt) : "1970-01-01";
}

let asked: { key: readonly unknown[]; answer: Consequences } | undefined;

/**
 * What follows from the job so far, reckoned on the day the job began at its site.
 * The last answer is kept: the screen asks for it far more often than a phrase is said.
 */
export function whatFollows(state: State): Consequences {
  const { card, known, sites } = state;
  const at = valveAtHand(state);
  const key = [card, at, known, sites];
  if (asked?.key.every((one, index) => one === key[index])) return asked.answer;
  const same = known && known.tag === at.tag ? known : undefined;
  const answer = consequences(
    same?.valve ?? (at.tag ? { tag: at.tag } : {}),
    same?.history ?? [],
    at.entries,
    dayOfJob(state),
    same?.fleet ?? [],
    ownFamilies(same),
  );
  asked = { key, answer };
  return answer;
}

import { byValve, type Consequences, consequences, type Entry, type PhraseReading } from "../../core/index.ts";
import type { CardPhrase, State } from "./state.ts";
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

/** The valve at hand: the one named last, else the one the job was opened for. */
export function valveAtHand(state: State): { tag?: string; entries: Entry[] } {
  const stretches = byValve(state.heard.entries, state.card?.tag);
  return stretches[stretches.length - 1] ?? { tag: state.card?.tag, entries: [] };
}

/** The last phrase said and what it became. */
export function lastSaid(state: State): { phrase: CardPhrase; reading: PhraseReading } | undefined {
  const index = state.phrases.length - 1;
  const phrase = state.phrases[index];
  const reading = state.heard.phrases[index];
  return phrase && reading ? { phrase, reading } : undefined;
}

/** A site's name where it has one, else its key. */
export function siteName(state: State, site: string | undefined): string {
  return state.sites.find((one) => one.site === site)?.name ?? site ?? "";
}

/** The day of the job, by the clock of its site. */
export function dayOfJob(state: State): string {
  const { card, sites } = state;
  return card ? dayThere(card.startedAt, sites.find((one) => one.site === card.site)?.zone) : "1970-01-01";
}

let asked: { key: readonly unknown[]; answer: Consequences } | undefined;

/**
 * What follows from the job so far, reckoned on the day the job began at its site.
 * The last answer is kept: the screen asks for it far more often than a phrase is said.
 */
export function whatFollows(state: State): Consequences {
  const { card, heard, known, sites } = state;
  const key = [card, heard, known, sites];
  if (asked?.key.every((one, index) => one === key[index])) return asked.answer;
  const at = valveAtHand(state);
  const same = known && known.tag === at.tag ? known : undefined;
  const answer = consequences(
    same?.valve ?? (at.tag ? { tag: at.tag } : {}),
    same?.history ?? [],
    at.entries,
    dayOfJob(state),
    same?.fleet ?? [],
  );
  asked = { key, answer };
  return answer;
}

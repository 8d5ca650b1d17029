import { type Entry, type FollowUp, isDoubtful, nameOf, type Part } from "../../core/index.ts";
import { sayEntry } from "../parts/say.ts";
import { capital, listed } from "../parts/words.ts";
import { amendedNow, lastEntries, lastSaid, questionNow, standingAlert, whatFollows } from "./seen.ts";
import type { Offer, State } from "./state.ts";

/** The one question that stands open at the bench: read out of the state, so that a page opened again asks it again. */
export type Question =
  /** "close it out" was said with items of the list not heard */
  | { is: "close"; missing: readonly Part[] }
  /** the last phrase was heard doubtfully */
  | { is: "doubt"; phrase: string; heard: string }
  /** a job would start by a tag that was heard doubtfully, or that may be half of another */
  | { is: "start"; offer: Offer }
  /** the reader asks, or what follows from the job does */
  | { is: "reader" | "follow_up"; question: string };

export function openQuestion(state: State): Question | undefined {
  if (state.offered) return { is: "start", offer: state.offered };
  const last = lastSaid(state);
  if (!state.card || standingAlert(state)) return undefined;
  if (state.closing) return { is: "close", missing: whatFollows(state).missing };
  if (!last) return undefined;
  const entries = [...lastEntries(state), ...amendedNow(state)].filter((entry) => entry.type !== "command");
  if (isDoubtful(last.phrase.confidence) && entries.some((entry) => entry.type !== "hazard"))
    return { is: "doubt", phrase: last.phrase.id, heard: entries.map(sayEntry).join(", ") };
  const question = questionNow(state);
  if (question) return { is: "reader", question };
  const asked = askedByFollowUp(state, entries);
  return asked && { is: "follow_up", question: capital(asked.why) };
}

const MOST_NAMED = 3;

/** The question in words, for screen and voice alike. */
export function questionWords(question: Question): string {
  switch (question.is) {
    case "close": {
      const named = question.missing.slice(0, MOST_NAMED).map((part) => nameOf(part, "part"));
      const more = question.missing.length - named.length;
      if (!named.length) return "Close this job?";
      return `Not heard: ${more > 0 ? `${named.join(", ")} and ${more} more` : listed(named)}. Close it anyway?`;
    }
    case "doubt":
      return `I heard: ${question.heard}. Right?`;
    case "start":
      return startWords(question.offer);
    default:
      return question.question;
  }
}

function startWords({ tag, beginSo }: Offer): string {
  if (!beginSo) return `${tag}. Right?`;
  return `${tag} is new here, and ${beginSo === 1 ? "one valve begins" : `${beginSo} valves begin`} so. Open ${tag}?`;
}

/** Whether a plain yes or no answers it. */
export const isYesOrNo = (question: Question): boolean =>
  question.is === "close" || question.is === "doubt" || question.is === "start";

/** Only about what the last phrase said: an older question stands on the card and is not asked again. */
function askedByFollowUp(state: State, entries: readonly Entry[]): FollowUp | undefined {
  return whatFollows(state).followUps.find(
    (one) => one.do === "ask" && entries.some((entry) => "part" in entry && entry.part === one.part),
  );
}

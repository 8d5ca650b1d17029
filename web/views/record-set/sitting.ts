import { RECORD_SET } from "../../../core/speech/record-set/phrases.ts";
import type { Take } from "../../../core/speech/record-set/score.ts";

/** What came out of the ear for a stretch of sound. */
export interface Caught {
  /** empty where nothing of it was heard as words of ours */
  heard: string;
  confidence: number;
  /** at 16,000 a second */
  samples: Float32Array;
}

export interface SpokenTake extends Take, Caught {
  /** how often this phrase was said; the last time counts */
  times: number;
}

/** Phrases are numbered from 0; behind the last of them stands other talk. */
export type Place = "start" | "score" | "talk" | number;

/** One person's way through the set. Only ever on this device, and only as long as this page is open. */
export interface Sitting {
  place: Place;
  takes: readonly (SpokenTake | undefined)[];
  talk: readonly Caught[];
  /** something has been said since the recordings were last saved */
  unsaved: boolean;
}

export const NEW_SITTING: Sitting = {
  place: "start",
  takes: RECORD_SET.map(() => undefined),
  talk: [],
  unsaved: false,
};

/** The phrase at this place as it was heard now: in place of how it was heard before. */
export function withTake(sitting: Sitting, index: number, caught: Caught): Sitting {
  const wanted = RECORD_SET[index];
  if (wanted === undefined) return sitting;
  const times = (sitting.takes[index]?.times ?? 0) + 1;
  return { ...sitting, unsaved: true, takes: sitting.takes.with(index, { wanted, ...caught, times }) };
}

export const withTalk = (sitting: Sitting, caught: Caught): Sitting => ({
  ...sitting,
  unsaved: true,
  talk: [...sitting.talk, caught],
});

/** What is next: the phrases in order, other talk, the score. */
export function placeAfter(place: Place): Place {
  if (place === "start") return 0;
  if (typeof place === "number") return place + 1 < RECORD_SET.length ? place + 1 : "talk";
  return "score";
}

export function placeBefore(place: Place): Place {
  if (place === "talk") return RECORD_SET.length - 1;
  return typeof place === "number" && place > 0 ? place - 1 : "start";
}

/** Where to go on: the first phrase that nobody has said yet. */
export function placeLeft({ takes }: Sitting): Place {
  const left = takes.indexOf(undefined);
  return left < 0 ? "talk" : left;
}

export const spokenTakes = ({ takes }: Sitting): SpokenTake[] => takes.filter((one) => one !== undefined);

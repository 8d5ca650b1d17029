/** What tells a phrase of ours, rightly heard, from anything else. */
export interface Evidence {
  /** score of the words minus that of a free row of phones over the same sound, a frame */
  overPhones: number;
  /** how much likelier the words are than the next best, natural log */
  ahead: number;
}

/**
 * Fitted on 320 utterances of phrases, 80 of them in noise 10 dB below as well, and 90 of other talk, in two synthetic voices,
 * none of them in the language model: of 224 that came out at 0.9 or more 218 were right. How much like speech the sound is told nothing beside these two.
 */
const WEIGHTS = { constant: -1.117, overPhones: 0.247, ahead: 0.681 } as const;
/** Further ahead is no surer. */
const MOST_AHEAD = 8;

/** Chance, 0 to 1, that the phrase was heard word for word. */
export function confidenceOf({ overPhones, ahead }: Evidence): number {
  const sum = WEIGHTS.constant + WEIGHTS.overPhones * overPhones + WEIGHTS.ahead * Math.min(ahead, MOST_AHEAD);
  return 1 / (1 + Math.exp(-sum));
}

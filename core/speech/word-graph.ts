/** A word that may have been said in a stretch of sound. */
export interface GraphWord {
  /** as in the network; fillers stand in brackets */
  word: string;
  /** first frame, and first frame behind it */
  from: number;
  to: number;
  /** how well the sound fits it, in the engine's units (`UNIT`), without how likely the word is there */
  fits: number;
}

/** All words that the search came past, in the order of their first frames. */
export interface WordGraph {
  frames: number;
  words: readonly GraphWord[];
}

/** A step of the engine's scores, natural log: its log base is 1.0001, and it keeps every 1,024th. */
export const UNIT = 1024 * Math.log(1.0001);

export const isFiller = (word: string): boolean => /^[<[(]/.test(word);

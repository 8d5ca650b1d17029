import { daleChall } from "dale-chall";

/**
 * Everyday English, so that a plain word is never taken for a trade word it sounds like. The words are the
 * New Dale-Chall list (Chall and Dale, 1995: about 3,000 words that four in five fourth-graders know).
 */
const FAMILIAR = new Set(daleChall);

/** Whether a word, or the word it is an everyday form of, is plain English: "slipped", "biggest". */
export function isEnglish(word: string): boolean {
  // "retested", "rechecked": once more what the plain word says
  return isPlainEnglish(word) || (word.startsWith("re") && isPlainEnglish(word.slice(2)));
}

function isPlainEnglish(word: string): boolean {
  if (FAMILIAR.has(word)) return true;
  for (const ending of ["s", "es", "ed", "d", "ing", "er", "ly", "est"]) {
    if (!word.endsWith(ending)) continue;
    const stem = word.slice(0, -ending.length);
    if (stem.length < 3) continue;
    if (
      FAMILIAR.has(stem) ||
      FAMILIAR.has(`${stem}e`) ||
      (stem.at(-1) === stem.at(-2) && FAMILIAR.has(stem.slice(0, -1)))
    )
      return true;
  }
  return false;
}

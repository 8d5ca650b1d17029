/**
 * A phrase as the words of the language model: lower case, apostrophes kept ("o'clock", "that's"), a letter of a tag told
 * apart from the word that looks like it: `L_a` is the letter A, "a" the article. Dictionaries list both as one.
 */

/** Words that name a kind of number; after one of them, or before, a lone letter is a letter. */
const DIGIT_WORDS = new Set(
  "oh zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred".split(
    " ",
  ),
);

const LETTER = /^[a-z]$/;
/** "fv", "pcv", "cc": nothing to say but the letters. */
const SPELT = /^(?!hmm+$|mm+$|shh+$|psst$|brr+$)[bcdfghjklmnpqrstvwxz]{2,4}$/;

const RING = /^ring(s|'s)?$/;

/** The written phrase's spoken words. Digits are not expected: numbers are words in what people say. */
export function spokenWords(phrase: string): string[] {
  const words = phrase
    .toLowerCase()
    .replace(/[’`]/g, "'")
    .replace(/[^a-z' ]+/g, " ")
    .split(" ")
    .map((word) => word.replace(/^'+(?!em$|bout$|til$|cause$)|'+$/g, ""))
    .filter(Boolean);
  return joined(words.flatMap((word) => (SPELT.test(word) ? [...word] : word))).map((word, at, words) => {
    if (!LETTER.test(word)) return word;
    if (word !== "a" && word !== "i") return `L_${word}`;
    // the article and the pronoun stand beside letters too ("cc a minute"): a letter has one before it and a tag's rest behind
    const before = words[at - 1] ?? "";
    const behind = words[at + 1] ?? "";
    return LETTER.test(before) && (LETTER.test(behind) || DIGIT_WORDS.has(behind)) ? `L_${word}` : word;
  });
}

/** An O-ring is one word: of two, the first would be a letter, and any other letter as good ("L rings"). */
function joined(words: readonly string[]): string[] {
  return words.flatMap((word, at) => {
    if (words[at - 1] === "o" && RING.test(word)) return [];
    return word === "o" && RING.test(words[at + 1] ?? "") ? `O_${words[at + 1]}` : word;
  });
}

/**
 * Everyday words, one or some in a row, that sound like a word or nearly so: what a recogniser writes for a word it does
 * not expect ("how sing" for housing). Phones are the dictionary's (ARPAbet without stress).
 */

/** How far a sound may be off: of short words next to nothing, or half the language is alike. `wide`: one phone apart. */
const NEAR = [
  { upTo: 3, far: 0.3, wide: 0.5 },
  { upTo: 5, far: 0.35, wide: 0.6 },
  { upTo: Number.POSITIVE_INFINITY, far: 0.5, wide: 0.9 },
];
/** A word is heard as so many at most. */
const MOST_WORDS = 3;

const VOICED: Readonly<Record<string, string>> = {
  P: "B",
  T: "D",
  K: "G",
  F: "V",
  S: "Z",
  SH: "ZH",
  CH: "JH",
  TH: "DH",
};
/** Vowels that are said alike where no stress is, and consonants one is heard for the other. */
const ALIKE: readonly (readonly [string, string, number])[] = [
  ["S", "Z", 0.2],
  ["N", "NG", 0.35],
  ["AA", "AO", 0.1],
  ["AH", "IH", 0.2],
  ["IH", "IY", 0.35],
  ["UH", "UW", 0.35],
  ["AH", "UH", 0.35],
  ["AH", "EH", 0.35],
  ["EH", "IH", 0.4],
  ["AE", "EH", 0.4],
  ["AH", "AE", 0.4],
  ["AH", "AA", 0.4],
  ["AH", "AO", 0.4],
  ["AH", "OW", 0.4],
  ["AO", "OW", 0.4],
  // one phone apart: only in a wider search
  ["TH", "T", 0.55],
  ["TH", "F", 0.55],
  ["TH", "S", 0.55],
  ["DH", "D", 0.55],
  ["M", "N", 0.55],
  ["EY", "EH", 0.55],
  ["EY", "AE", 0.55],
  ["IY", "EH", 0.55],
  ["AY", "AA", 0.55],
  ["OW", "UW", 0.55],
];
const NEVER = Number.POSITIVE_INFINITY;
const swaps = new Map<string, number>();
for (const [a, b, far] of ALIKE) swaps.set(a + b, far).set(b + a, far);

/** One phone for another; the last of a word is the easiest taken for its voiced twin. */
function swapped(a: string, b: string, last: boolean): number {
  if (a === b) return 0;
  return swaps.get(a + b) ?? (VOICED[a] === b || VOICED[b] === a ? (last ? 0.3 : 0.5) : NEVER);
}

/** A phone that is swallowed, or heard where none was. */
function lost(phone: string, last: boolean): number {
  if (phone === "HH") return 0.3;
  if (phone === "T" || phone === "D") return last ? 0.4 : NEVER;
  // "stoke" for a stroke
  if (phone === "R" || phone === "L") return last ? NEVER : 0.6;
  return phone === "Y" || phone === "W" ? 0.4 : NEVER;
}

/** "ER" is a weak vowel and an R, as in "strain or". */
const phonesOf = (sound: string): string[] =>
  sound.split(" ").flatMap((phone) => (phone === "ER" ? ["AH", "R"] : [phone]));

interface Branch {
  next: Map<string, Branch>;
  words: string[];
}

export interface SoundAlike {
  /** one word, or some in a row */
  heard: string;
  far: number;
}

/** Finds what sounds like a word in everyday words, once they are laid out by their phones. */
export class SoundAlikes {
  readonly #root: Branch = { next: new Map(), words: [] };

  constructor(everyday: Iterable<string>, soundsOf: (word: string) => readonly string[]) {
    for (const word of everyday)
      for (const sound of soundsOf(word)) {
        let at = this.#root;
        for (const phone of phonesOf(sound)) {
          const next = at.next.get(phone) ?? { next: new Map(), words: [] };
          at.next.set(phone, next);
          at = next;
        }
        if (!at.words.includes(word)) at.words.push(word);
      }
  }

  /** What sounds like these sounds of one word, the nearest first; `wide`: and what is a phone apart. */
  of(sounds: readonly string[], wide = false): SoundAlike[] {
    const found = new Map<string, number>();
    for (const sound of sounds) {
      const phones = phonesOf(sound);
      const near = NEAR.find(({ upTo }) => phones.length <= upTo)?.[wide ? "wide" : "far"] ?? 0;
      this.#walk(phones, 0, this.#root, 0, [], near, found);
    }
    return [...found].map(([heard, far]) => ({ heard, far })).sort((a, b) => a.far - b.far);
  }

  #walk(
    phones: readonly string[],
    at: number,
    branch: Branch,
    far: number,
    behind: readonly string[],
    near: number,
    found: Map<string, number>,
  ): void {
    if (far > near) return;
    for (const word of branch.words) {
      const heard = [...behind, word];
      if (at === phones.length) {
        const text = heard.join(" ");
        found.set(text, Math.min(far, found.get(text) ?? NEVER));
      } else if (heard.length < MOST_WORDS) this.#walk(phones, at, this.#root, far, heard, near, found);
    }
    const phone = phones[at];
    const last = at >= phones.length - 1;
    if (phone !== undefined) this.#walk(phones, at + 1, branch, far + lost(phone, last), behind, near, found);
    for (const [heard, next] of branch.next) {
      if (phone !== undefined) this.#walk(phones, at + 1, next, far + swapped(phone, heard, last), behind, near, found);
      this.#walk(phones, at, next, far + lost(heard, phone === undefined), behind, near, found);
    }
  }
}

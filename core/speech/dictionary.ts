import { type Dictionary, derivedSounds } from "./derived-sound.ts";

/** Reads a pronouncing dictionary: lines of "word P H O N E S", further sounds of a word as "word(2)". */
export function readDictionary(text: string): Map<string, string[]> {
  const words = new Map<string, string[]>();
  for (const line of text.split("\n")) {
    const gap = line.indexOf(" ");
    if (gap <= 0 || line.startsWith(";;")) continue;
    const word = line.slice(0, gap).replace(/\(\d+\)$/, "");
    const sound = line.slice(gap + 1).trim();
    const list = words.get(word);
    if (list) list.push(sound);
    else words.set(word, [sound]);
  }
  return words;
}

/** A word's sounds as a dictionary names them: the word itself, "word(2)", "word(3)". */
export const entriesOf = (word: string, sounds: readonly string[]): string[] =>
  sounds.map((_, i) => (i === 0 ? word : `${word}(${i + 1})`));

/** The lines of a dictionary for these words alone. */
export function dictionaryText(words: Iterable<string>, soundsOf: (word: string) => readonly string[]): string {
  const lines: string[] = [];
  for (const word of words) {
    const sounds = soundsOf(word);
    entriesOf(word, sounds).forEach((entry, i) => {
      lines.push(`${entry} ${sounds[i]}`);
    });
  }
  return `${lines.join("\n")}\n`;
}

/** Sounds of a word: our own table first, else the dictionary's, else made from words that either has. */
export function soundsFrom(dictionary: Dictionary, own: Readonly<Record<string, readonly string[]>>) {
  const both: Dictionary = { get: (word) => own[word] ?? dictionary.get(word) };
  return (word: string): readonly string[] => both.get(word) ?? derivedSounds(word, both);
}

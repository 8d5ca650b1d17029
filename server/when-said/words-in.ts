/**
 * The words of a phrase as they are listed: what stands between two spaces, in small letters, each once. Signs stay with
 * their word, so that whatever is looked for and has no space in it stands in one of them, just as it does in the phrase.
 */
export const wordsIn = (text: string): string[] => [...new Set(text.toLowerCase().split(/\s+/).flatMap(piecesOf))];

/** What is looked for, and has to stand within a listed word: of a long one its beginning. */
export const lookedFor = (word: string): string => [...word.toLowerCase()].slice(0, HALF).join("");

/** A key has a longest size, and text without any spaces may be of any. */
const HALF = 20;

/** A long word as pieces that overlap by half: whatever is no longer than half a piece stands whole in one of them. */
function piecesOf(word: string): string[] {
  // letters, not units of which two may make one
  const letters = [...word];
  if (letters.length <= 2 * HALF) return word === "" ? [] : [word];
  const pieces: string[] = [];
  for (let at = 0; at + HALF < letters.length; at += HALF) pieces.push(letters.slice(at, at + 2 * HALF).join(""));
  return pieces;
}

/** The pattern of what holds these letters, whatever signs are among them. */
export const holding = (letters: string): string => `%${plain(letters)}%`;

/** Letters in a pattern of LIKE, none of them a sign of its own there. */
export const plain = (letters: string): string => letters.replace(/[\\%_]/g, (sign) => `\\${sign}`);

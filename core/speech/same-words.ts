/** Words alone, as they are said: case, apostrophes, commas and the room between words are no part of that. */
export const bareWords = (text: string): string =>
  text
    .toLowerCase()
    .replace(/['’]/g, "")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();

/** Whether it was heard word for word. */
export const sameWords = (wanted: string, heard: string): boolean => bareWords(wanted) === bareWords(heard);

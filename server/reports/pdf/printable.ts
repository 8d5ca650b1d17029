/** What stands for a character that the font has not. */
export const LACKING = "\ufffd";

const PLAIN = /^[\x20-\x7e]*$/;

/**
 * Makes what people said fit for the page: one line, nothing that turns the reading direction, no missing glyph.
 * A letter and its mark said apart become one where there is one, since the font has that drawn.
 */
export function printable(text: string, has: (char: string) => boolean): string {
  if (PLAIN.test(text)) return text;
  const flat = text
    .replace(/[\r\n\t\u2028\u2029\u0085\v\f]+/g, " ")
    // joiners and variants mean nothing without the pictures they join
    .replace(/[\p{Cc}\p{Cf}]|\p{Variation_Selector}/gu, "")
    .normalize("NFC");
  return flat.replace(/[^\x20-\x7e]/gu, (char) => (has(char) ? char : LACKING)).replace(/\ufffd+/g, LACKING);
}

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

/** The font inside the PDF: comes with the PDF maker, Latin, Greek and Cyrillic with the signs of the trade (≥ µ °). */
const require = createRequire(import.meta.url);
const FOLDER = join(dirname(require.resolve("pdfmake/package.json")), "fonts/Roboto");
export const FONT_FILES = { normal: "Roboto-Regular.ttf", bold: "Roboto-Medium.ttf" } as const;
export const fontBytes = (file: string): Buffer => readFileSync(join(FOLDER, file));

interface Font {
  hasGlyphForCodePoint(code: number): boolean;
}
let font: Font | undefined;

/** What stands for a character that the font has not. */
export const LACKING = "�";

/** No line of the page holds so many letters, and the PDF maker takes ages to find where such a word can be broken. */
const LONG_WORD = /\S{60}(?=\S)/gu;

/**
 * Text in pieces of some two thousand letters, to be set as paragraphs: what one long paragraph costs the PDF maker
 * grows with its square.
 */
export function paragraphs(text: string): string[] {
  return pdfText(text).match(/[\s\S]{1,2000}(?=[\s\u200b]|$)|[\s\S]{1,2000}/gu) ?? [""];
}

/** Makes what people said fit for the page: one line, nothing that turns the reading direction, no missing glyph. */
export function pdfText(text: string): string {
  font ??= (require("fontkit") as { create(bytes: Buffer): Font }).create(fontBytes(FONT_FILES.normal));
  const has = font;
  const flat = text
    .replace(/[\r\n\t\u2028\u2029\u0085\v\f]+/g, " ")
    // joiners and variants mean nothing without the pictures they join
    .replace(/[\p{Cc}\p{Cf}]|\p{Variation_Selector}/gu, "");
  return Array.from(flat, (one) => (has.hasGlyphForCodePoint(one.codePointAt(0) ?? 0) ? one : LACKING))
    .join("")
    .replace(/�+/g, LACKING)
    .replace(LONG_WORD, "$&\u200b");
}

import { type PlacesTable, pairKerning } from "./pair-kerning.ts";
import { remember } from "./remember.ts";

/** A word as a page has it: the numbers of its glyphs as bytes, a kern between two as `)kern(`; width for size 1. */
export interface Word {
  glyphs: string;
  width: number;
}

export interface Typeface {
  /** what a page calls it, and where it is in the file */
  id: string;
  ref(): object;
  /** one line's height and how far below its top the letters stand, for size 1 */
  line: { height: number; baseline: number };
  has(char: string): boolean;
  word(text: string): Word;
}

/** What is used of an embedded font of pdfkit, whose types say nothing of it: pinned there to one version. */
export interface EmbeddedFont {
  id: string;
  ref(): object;
  ascender: number;
  lineHeight(size: number): number;
  /** thousandths of the size in one of the font's own units */
  scale: number;
  font: {
    hasGlyphForCodePoint(code: number): boolean;
    glyphForCodePoint(code: number): { id: number; advanceWidth: number };
    GPOS?: PlacesTable;
  };
  /** what goes into the file: glyphs, and by their number there how wide they are and which letters they stand for */
  subset: { includeGlyph(id: number): number };
  widths: number[];
  unicode: number[][];
}

/**
 * A font with a memory: each letter is looked up once and each pair of letters kerned once, which is all that Latin,
 * Greek and Cyrillic need. No ligatures, so that what is copied out of the page are the letters that were written.
 */
export function typeface(embedded: EmbeddedFont): Typeface {
  const { font, scale } = embedded;
  const letter = remember((char: string) => takeIn(embedded, char.codePointAt(0) ?? 0));
  const between = font.GPOS ? pairKerning(font.GPOS) : () => 0;
  const kern = remember((pair: string) => {
    const [left = 0, right = 0] = Array.from(pair, (char) => font.glyphForCodePoint(char.codePointAt(0) ?? 0).id);
    return Math.round(between(left, right) * scale);
  });
  const word = remember((text: string): Word => {
    let glyphs = "";
    let width = 0;
    let before = "";
    for (const char of text) {
      const kerned = before ? kern(before + char) : 0;
      const next = letter(char);
      glyphs += kerned ? `)${-kerned}(${next.glyphs}` : next.glyphs;
      width += next.width + kerned / 1000;
      before = char;
    }
    return { glyphs, width };
  });
  // one glyph may stand for several letters and is read back as the first: a plain space before a hard one
  letter(" ");
  const has = remember((char: string) => font.hasGlyphForCodePoint(char.codePointAt(0) ?? 0));
  const line = { height: embedded.lineHeight(1), baseline: embedded.ascender / 1000 };
  return { id: embedded.id, ref: () => embedded.ref(), line, has, word };
}

/** A letter's glyph into the file, as pdfkit does it itself, but unshaped. */
function takeIn({ font, subset, widths, unicode, scale }: EmbeddedFont, code: number): Word {
  const glyph = font.glyphForCodePoint(code);
  const at = subset.includeGlyph(glyph.id);
  widths[at] ??= glyph.advanceWidth * scale;
  unicode[at] ??= [code];
  return { glyphs: byte(at >> 8) + byte(at & 0xff), width: (glyph.advanceWidth * scale) / 1000 };
}

/** What would end a PDF string, or be changed in it, stands behind a backslash. Half as much to pack as hex. */
function byte(code: number): string {
  const char = String.fromCharCode(code);
  if (char === "\r") return "\\r";
  return /[()\\]/.test(char) ? `\\${char}` : char;
}

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
  };
  /** what goes into the file: glyphs, and by their number there how wide they are and which letters they stand for */
  subset: { includeGlyph(id: number): number };
  widths: number[];
  unicode: number[][];
  /** shapes by all rules of the font; measures in thousandths of the size */
  layout(text: string): { positions: { xAdvance: number; advanceWidth: number }[] };
}

/**
 * A font with a memory. Shaping each word by all the font's rules costs more than all the rest of a report; here each
 * letter is looked up once and each pair of letters kerned once, which is all that Latin, Greek and Cyrillic need. No
 * ligatures, so that what is copied out of the page are the letters that were written.
 */
export function typeface(font: EmbeddedFont, kern: Kern): Typeface {
  const letter = remember((char: string) => takeIn(font, char.codePointAt(0) ?? 0));
  const word = remember((text: string): Word => {
    let glyphs = "";
    let width = 0;
    let before = "";
    for (const char of text) {
      const kerned = before ? kern(before + char, font) : 0;
      const next = letter(char);
      glyphs += kerned ? `)${-kerned}(${next.glyphs}` : next.glyphs;
      width += next.width + kerned / 1000;
      before = char;
    }
    return { glyphs, width };
  });
  // one glyph may stand for several letters and is read back as the first: a plain space before a hard one
  letter(" ");
  const has = remember((char: string) => font.font.hasGlyphForCodePoint(char.codePointAt(0) ?? 0));
  const line = { height: font.lineHeight(1), baseline: font.ascender / 1000 };
  return { id: font.id, ref: () => font.ref(), line, has, word };
}

/** What is added between two letters, in thousandths of the size: the same in every file, so kept from one to the next. */
export type Kern = (pair: string, font: EmbeddedFont) => number;
export function kerning(): Kern {
  const found = new Map<string, number>();
  return (pair, font) => {
    const known = found.get(pair);
    if (known !== undefined) return known;
    const { positions } = font.layout(pair);
    const [first] = positions;
    const kern = first && positions.length === 2 ? Math.round(first.xAdvance - first.advanceWidth) : 0;
    found.set(pair, kern);
    return kern;
  };
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

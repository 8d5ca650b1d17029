/**
 * Our own stencil lettering, as strokes with the bridges that hold a cut plate together. One glyph stands on 8 x 12
 * units and is drawn with butt ends. Signs it has no glyph for leave a gap; the words are in the label for whoever listens.
 */
const GLYPHS: Record<string, string> = {
  A: "M1.2 11.9V3.4L3.2 1.2M4.8 1.2L6.8 3.4V11.9M2.9 7.4H5.8",
  B: "M1.2 .1V11.9M2.9 1.2H5L6.8 2.6V4.4L5.2 5.7H2.9M5.8 6.6L6.8 7.6V9.2L5.2 10.8H2.9",
  C: "M6.8 3.6V2.6L5.4 1.2H4.6M3.4 1.2H2.6L1.2 2.6V9.4L2.6 10.8H3.4M4.6 10.8H5.4L6.8 9.4V8.4",
  D: "M1.2 .1V11.9M2.9 1.2H4.8L6.8 3.2V8.8L4.8 10.8H2.9",
  E: "M1.2 .1V11.9M2.9 1.2H6.8M2.9 6H6M2.9 10.8H6.8",
  F: "M1.2 .1V11.9M2.9 1.2H6.8M2.9 6H6",
  G: "M6.8 3.4V2.6L5.4 1.2H4.6M3.4 1.2H2.6L1.2 2.6V9.4L2.6 10.8H3.4M4.6 10.8H5.4L6.8 9.4V6.4H4.4",
  H: "M1.2 .1V11.9M6.8 .1V11.9M2.9 6H5.1",
  I: "M1.2 .1V11.9",
  J: "M6.8 .1V9.4L5.4 10.8H4.6M3.4 10.8H2.6L1.2 9.4V8.4",
  K: "M1.2 .1V11.9M6.6 .4L3.6 5.9M3.6 6.1L6.6 11.6",
  L: "M1.2 .1V11.9M2.9 10.8H6.8",
  M: "M1.2 11.9V.1M9.2 .1V11.9M3.2 2.2L5.2 7L7.2 2.2",
  N: "M1.2 11.9V.1M6.8 .1V11.9M2.9 2.2L5.1 9.8",
  O: "M3.4 1.2H2.6L1.2 2.6V9.4L2.6 10.8H3.4M4.6 1.2H5.4L6.8 2.6V9.4L5.4 10.8H4.6",
  P: "M1.2 .1V11.9M2.9 1.2H5.4L6.8 2.6V5L5 6.8H2.9",
  Q: "M3.4 1.2H2.6L1.2 2.6V9.4L2.6 10.8H3.4M4.6 1.2H5.4L6.8 2.6V9.4L5.4 10.8H4.6M4.6 7.8L7.4 11.6",
  R: "M1.2 .1V11.9M2.9 1.2H5.4L6.8 2.6V4.8L5 6.4H2.9M4.6 7.6L6.6 11.7",
  S: "M6.8 3.4V2.6L5.4 1.2H4.6M3.4 1.2H2.6L1.2 2.6V4.4L2.8 6H5.2L6.8 7.6V9.4L5.4 10.8H4.6M3.4 10.8H2.6L1.2 9.4V8.6",
  T: "M.4 1.2H7.6M4 2.9V11.9",
  U: "M1.2 .1V9.4L2.6 10.8H3.4M4.6 10.8H5.4L6.8 9.4V.1",
  V: "M1.1 .2L2.7 11.6M6.9 .2L5.3 11.6",
  W: "M1.2 .1V11.9M9.2 .1V11.9M3.2 9.8L5.2 5L7.2 9.8",
  X: "M1.2 .2L3.3 5M6.8 .2L1.2 11.8M4.7 7L6.8 11.8",
  Y: "M1 .2L3 5.8M7 .2L5 5.8M4 7V11.9",
  Z: "M1.2 1.2H6.6L2 9M1.2 10.8H6.8",
  0: "M3.4 1.2H2.6L1.2 2.6V9.4L2.6 10.8H3.4M4.6 1.2H5.4L6.8 2.6V9.4L5.4 10.8H4.6",
  1: "M4.6 .1V11.9M.2 5.2L2.9 2.5",
  2: "M1.2 3.4V2.6L2.6 1.2H3.4M4.6 1.2H5.4L6.8 2.6V4.6L2.2 9M1.2 10.8H6.8",
  3: "M1.2 3.4V2.6L2.6 1.2H3.4M4.6 1.2H5.4L6.8 2.6V4.2L5.4 5.6H3.4M5.8 6.6L6.8 7.6V9.4L5.4 10.8H4.6M3.4 10.8H2.6L1.2 9.4V8.6",
  4: "M5.6 .1V11.9M4 1L1.4 7.4H3.9M7.2 7.4H8",
  5: "M6.8 1.2H2.9M1.4 .1V5.4H5.2L6.8 7V9.4L5.4 10.8H4.6M3.4 10.8H2.6L1.2 9.4V8.6",
  6: "M6.8 3.2V2.6L5.4 1.2H4.6M3.4 1.2H2.6L1.2 2.6V9.4L2.6 10.8H3.4M4.6 10.8H5.4L6.8 9.4V7.2L5.2 5.6H2.9",
  7: "M1.2 1.2H6.8L5 5M4.4 6.2L2.2 11.7",
  8: "M3.4 1.2H2.6L1.2 2.6V4.2L2.6 5.4H3.4M4.6 5.4H5.4L6.8 4.2V2.6L5.4 1.2H4.6M2.2 6.6L1.2 7.6V9.4L2.6 10.8H3.4M4.6 10.8H5.4L6.8 9.4V7.6L5.8 6.6",
  9: "M1.2 8.8V9.4L2.6 10.8H3.4M4.6 10.8H5.4L6.8 9.4V2.8L5.2 1.2H4.6M3.4 1.2H2.6L1.2 2.6V4.8L2.8 6.4H5.1",
  "-": "M1.6 6H5.6",
  ".": "M1.2 10.8H3.4",
  "/": "M6.6 .2L1.4 11.8",
};
/** Widths of the glyphs that are not 8 wide, and the room between two. */
const WIDTHS: Record<string, number> = { I: 2.4, M: 10.4, W: 10.4, "-": 7.2, ".": 4.6, " ": 4, 1: 5.8, 4: 8.2 };
const ROOM = 1.7;

/** Words in stencil. `class` sets the height; the strokes take the text colour. */
export function Stencil({ text, class: name = "" }: { text: string; class?: string }) {
  let at = 0;
  const placed = [...text.toUpperCase()].map((letter) => {
    const glyph = { letter, at };
    at += (WIDTHS[letter] ?? 8) + ROOM;
    return glyph;
  });
  return (
    <svg class={`stencil ${name}`} viewBox={`0 0 ${Math.max(1, at - ROOM).toFixed(1)} 12`} role="img" aria-label={text}>
      {placed.map((glyph) => (
        <path key={glyph.at} d={GLYPHS[glyph.letter] ?? ""} transform={`translate(${glyph.at.toFixed(1)} 0)`} />
      ))}
    </svg>
  );
}

/**
 * Our own stencil lettering, as strokes with the bridges that hold a cut plate together. One glyph stands on 8 x 12
 * units and is drawn with butt ends. Signs it has no glyph for leave a gap; the words are in the label for whoever listens.
 */
const GLYPHS: Record<string, string> = {
  A: "M1.2 10.8V3.4L3.2 1.2M4.6 1.2L6.8 3.4V10.8M2.9 7.2H5.8",
  B: "M1.2 1.2V10.8M2.9 1.2H5L6.6 2.6V4.6L5.2 6H2.9M5.6 6.4L6.8 7.6V9.2L5.2 10.8H2.9",
  C: "M6.8 3.6V3L5 1.2H4.6M3.4 1.2H3L1.2 3V9L3 10.8H3.4M4.6 10.8H5L6.8 9V8.4",
  D: "M1.2 1.2V10.8M2.9 1.2H4.8L6.8 3.2V8.8L4.8 10.8H2.9",
  E: "M1.2 1.2V10.8M2.9 1.2H6.8M2.9 6H5.8M2.9 10.8H6.8",
  F: "M1.2 1.2V10.8M2.9 1.2H6.8M2.9 6H5.8",
  G: "M6.8 3.4V3L5 1.2H4.6M3.4 1.2H3L1.2 3V9L3 10.8H3.4M4.6 10.8H5L6.8 9V6.4H4.4",
  H: "M1.2 1.2V10.8M6.8 1.2V10.8M2.9 6H5.1",
  I: "M4 1.2V10.8",
  J: "M6.8 1.2V9L5 10.8H4.6M3.4 10.8H3L1.2 9V8",
  K: "M1.2 1.2V10.8M3 5.8L6.6 1.2M4 6L6.8 10.8",
  L: "M1.2 1.2V10.8M2.9 10.8H6.8",
  M: "M1.2 10.8V1.2M6.8 1.2V10.8M2.7 2.2L4 5.6L5.3 2.2",
  N: "M1.2 10.8V1.2M6.8 1.2V10.8M2.7 2.6L5.3 9.4",
  O: "M3.4 1.2H3L1.2 3V9L3 10.8H3.4M4.6 1.2H5L6.8 3V9L5 10.8H4.6",
  P: "M1.2 1.2V10.8M2.9 1.2H5L6.8 3V5L5 6.8H2.9",
  Q: "M3.4 1.2H3L1.2 3V9L3 10.8H3.4M4.6 1.2H5L6.8 3V9L5 10.8H4.6M4.6 7.8L7.4 11.6",
  R: "M1.2 1.2V10.8M2.9 1.2H5L6.8 3V5L5 6.6H2.9M4.6 7.6L6.8 10.8",
  S: "M6.8 3V2.8L5.2 1.2H4.6M3.4 1.2H2.8L1.2 2.8V4.4L2.8 6H5.2L6.8 7.6V9.2L5.2 10.8H4.6M3.4 10.8H2.8L1.2 9.2V9",
  T: "M.8 1.2H7.2M4 2.9V10.8",
  U: "M1.2 1.2V9L3 10.8H3.4M4.6 10.8H5L6.8 9V1.2",
  V: "M1.1 1.2L3.5 10.6M6.9 1.2L4.5 10.6",
  W: "M1.2 1.2V10.8M6.8 1.2V10.8M2.7 9.8L4 6.4L5.3 9.8",
  X: "M1.2 1.2L3.5 5.2M6.8 1.2L1.2 10.8M4.5 6.8L6.8 10.8",
  Y: "M1 1.2L3.6 5.8M7 1.2L4.4 5.8M4 7V10.8",
  Z: "M1.2 1.2H6.6L1.9 9.2M1.2 10.8H6.8",
  0: "M3.4 1.2H3L1.2 3V9L3 10.8H3.4M4.6 1.2H5L6.8 3V9L5 10.8H4.6",
  1: "M1.8 3L3.4 1.4M4.4 1.2V10.8",
  2: "M1.2 3.4V2.8L2.8 1.2H3.4M4.6 1.2H5.2L6.8 2.8V4.6L2 9.4M1.2 10.8H6.8",
  3: "M1.2 1.2H6.4L4 4.8M4.2 5.4H5.2L6.8 7V9.2L5.2 10.8H4.6M3.4 10.8H2.8L1.2 9.2V8.8",
  4: "M5.4 1.2V10.8M3.9 1.4L1.2 7.6H4.2M6.5 7.6H7.6",
  5: "M6.6 1.2H2.9M1.4 1.2V5.4H5.2L6.8 7V9.2L5.2 10.8H4.6M3.4 10.8H2.8L1.2 9.2V8.8",
  6: "M6.4 2.6V2.4L5.2 1.2H4.6M3.4 1.2H2.8L1.2 2.8V9.2L2.8 10.8H3.4M4.6 10.8H5.2L6.8 9.2V7.2L5.2 5.6H2.9",
  7: "M1.2 1.2H6.8L4.9 5.2M4.3 6.4L2.4 10.8",
  8: "M3.4 1.2H2.8L1.4 2.6V4.6L2.6 5.8H3.4M4.6 5.8H5.4L6.6 4.6V2.6L5.2 1.2H4.6M2.2 6.6L1.2 7.6V9.2L2.8 10.8H3.4M4.6 10.8H5.2L6.8 9.2V7.6L5.8 6.6",
  9: "M1.6 9.4V9.6L2.8 10.8H3.4M4.6 10.8H5.2L6.8 9.2V2.8L5.2 1.2H4.6M3.4 1.2H2.8L1.2 2.8V4.8L2.8 6.4H5.1",
  "-": "M2 6H6",
  ".": "M2.8 10.2H5",
  "/": "M6.6 1.2L1.4 10.8",
};
const ADVANCE = 9.4;

/** Words in stencil. `class` sets the height; the strokes take the text colour. */
export function Stencil({ text, class: name = "" }: { text: string; class?: string }) {
  const letters = [...text.toUpperCase()];
  const width = Math.max(1, letters.length) * ADVANCE - 1.4;
  return (
    <svg class={`stencil ${name}`} viewBox={`0 0 ${width} 12`} role="img" aria-label={text}>
      {letters.map((letter, index) => (
        <path key={index} d={GLYPHS[letter] ?? ""} transform={`translate(${(index * ADVANCE).toFixed(1)} 0)`} />
      ))}
    </svg>
  );
}

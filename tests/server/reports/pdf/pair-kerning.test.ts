import PDFDocument from "pdfkit";
import { describe, expect, it } from "vitest";
import { openFaces } from "../../../../server/reports/pdf/faces.ts";
import { type PlacesTable, pairKerning } from "../../../../server/reports/pdf/pair-kerning.ts";

/** The font as the PDF's writer has it, which can apply all its rules. */
interface Shaper {
  GPOS: PlacesTable;
  layout(text: string): { glyphs: { id: number; advanceWidth: number }[]; positions: { xAdvance: number }[] };
}
const shaperOf = (file: PDFKit.PDFDocument) => (file as unknown as { _font: { font: Shaper } })._font.font;

const LETTERS = [..."ABFLPTVWYafilortvwy0127-.,:;/'\"()×°½µ≥ŁŻĄżłóéΓΔΤΥαλπτГТУЧагтуч"];

describe("kerning", () => {
  const file = new PDFDocument({ autoFirstPage: false, font: "" });
  const { regular, medium } = openFaces(file);
  // the last font opened is the file's own
  const shaper = shaperOf(file);

  it("is what the font's whole rules give, for each pair of letters of three scripts and the signs", () => {
    const kern = pairKerning(shaper.GPOS);
    let kerned = 0;
    for (const left of LETTERS)
      for (const right of LETTERS) {
        const { glyphs, positions } = shaper.layout(left + right);
        const [one, two] = glyphs;
        // two letters drawn as one are not kerned
        if (!one || !two || glyphs.length > 2) continue;
        const wanted = (positions[0]?.xAdvance ?? 0) - one.advanceWidth;
        expect(kern(one.id, two.id), left + right).toBe(wanted);
        if (wanted !== 0) kerned++;
      }
    expect(kerned).toBeGreaterThan(500);
  });

  it.each([
    ["regular", regular],
    ["medium", medium],
  ])("makes words of the %s font narrower, and stands in what is written", (_, face) => {
    const [together, apart] = [face.word("AV"), [..."AV"].map((char) => face.word(char))];
    expect(together.width).toBeLessThan((apart[0]?.width ?? 0) + (apart[1]?.width ?? 0));
    expect(together.glyphs).toMatch(/\)\d+\(/);
  });
});

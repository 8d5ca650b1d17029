import PDFDocument from "pdfkit";
import type { Block, PdfOrder } from "./blocks.ts";
import { drawPage, footerOf } from "./draw-page.ts";
import { openFaces } from "./faces.ts";
import { lineBreaker, type Typefaces } from "./lines.ts";
import { PAPER } from "./looks.ts";
import { pagesOf } from "./pages.ts";
import { LACKING, printable } from "./printable.ts";
import { ReadOrder } from "./read-order.ts";
import { rowsOf } from "./rows.ts";

const LACKS = `${LACKING} stands for characters that this PDF's font has not. The mail itself has them.`;

/** Sets blocks as pages of A4. Reads two font files and fetches nothing. */
export async function setPdf(asked: PdfOrder): Promise<Buffer> {
  // an empty name keeps pdfkit from loading a font that nobody uses
  const file = new PDFDocument({
    autoFirstPage: false,
    font: "",
    pdfVersion: "1.7",
    lang: "en",
    displayTitle: true,
    tagged: true,
    size: [PAPER.width, PAPER.height],
    margin: 0,
  });
  const whole = bytesOf(file);
  const faces = openFaces(file);
  const { title, blocks } = clean(asked, faces);
  Object.assign(file.info, { Title: title, Creator: "Handsfull", Producer: "Handsfull" });
  const breakLines = lineBreaker(faces);
  const pages = pagesOf(rowsOf(blocks, breakLines));
  const order = new ReadOrder(file);
  for (const [at, placed] of pages.entries()) {
    file.addPage();
    for (const { id, ref } of Object.values(faces)) Object.assign(file.page.fonts, { [id]: ref() });
    for (const marks of drawPage(placed, footerOf(title, at + 1, pages.length, breakLines), faces)) order.write(marks);
  }
  order.end();
  file.end();
  return whole;
}

/** All words made fit for the page, and a word about it where the font lacked some. */
function clean({ title, blocks }: PdfOrder, { regular }: Typefaces): PdfOrder {
  let lacks = false;
  const printed = (text: string) => {
    const made = printable(text, regular.has);
    lacks ||= made.includes(LACKING);
    return made;
  };
  const cleanOf = (block: Block): Block => {
    if ("together" in block) return { together: block.together.map(cleanOf) };
    if ("boxed" in block) return { boxed: block.boxed.map(cleanOf) };
    if ("counts" in block) return block;
    return { as: block.as, runs: block.runs.map(({ text, pen }) => ({ text: printed(text), pen })) };
  };
  const all = { title: printed(title), blocks: blocks.map(cleanOf) };
  return lacks ? { ...all, blocks: [...all.blocks, { as: "foot", runs: [{ text: LACKS, pen: "soft" }] }] } : all;
}

function bytesOf(file: PDFKit.PDFDocument): Promise<Buffer> {
  const chunks: Buffer[] = [];
  file.on("data", (chunk: Buffer) => chunks.push(chunk));
  return new Promise((resolve, reject) => {
    file.on("end", () => resolve(Buffer.concat(chunks)));
    file.on("error", reject);
  });
}

import { createRequire } from "node:module";
import { parentPort, workerData } from "node:worker_threads";

/**
 * Sets one document as PDF in a thread of its own: laying out hundreds of pages takes seconds, in which the server
 * would answer nobody. Plain JavaScript: it runs as it stands, from source and beside the built server alike.
 * Fetches nothing and reads no file: the fonts come with the order.
 */
const { fonts, document, edge } = workerData;
const pdfmake = createRequire(import.meta.url)("pdfmake");
for (const [file, bytes] of Object.entries(fonts)) pdfmake.virtualfs.writeFileSync(file, Buffer.from(bytes));
const [normal, bold] = Object.keys(fonts);
pdfmake.setFonts({ Roboto: { normal, bold } });
pdfmake.setUrlAccessPolicy(() => false);
pdfmake.setLocalAccessPolicy(() => false);
pdfmake.addTableLayouts({
  boxed: { hLineColor: () => edge, vLineColor: () => edge, hLineWidth: () => 2, vLineWidth: () => 2 },
});
const footer = (page, pages) => ({
  columns: [
    { text: document.info.title, style: "soft" },
    { text: `page ${page} of ${pages}`, style: "soft", alignment: "right", width: 80 },
  ],
  margin: [48, 14, 48, 0],
});
parentPort?.postMessage(await pdfmake.createPdf({ ...document, footer }).getBuffer());

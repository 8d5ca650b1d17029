import { Worker } from "node:worker_threads";
import { PDF_WORKER } from "../places.ts";
import { sentences } from "../wording/sentences.ts";
import type { Report } from "./day-report.ts";
import { FONT_FILES, fontBytes, LACKING, paragraphs, pdfText } from "./pdf-text.ts";

type Block = Record<string, unknown> | Block[];

/** The report as PDF (A4), the same sentences in the same order. Set in a thread of its own: see pdf-worker.mjs. */
export async function reportPdf(report: Report): Promise<Buffer> {
  const content = body(report);
  const lacks = JSON.stringify(content).includes(LACKING);
  return setInThread({
    info: { title: pdfText(report.title), creator: "Handsfull" },
    language: "en",
    displayTitle: true,
    pageSize: "A4",
    pageMargins: [48, 44, 48, 52],
    defaultStyle: { font: "Roboto", fontSize: 10.5, lineHeight: 1.2 },
    styles: STYLES,
    content: lacks ? [...content, soft(LACKS)] : content,
  });
}

function setInThread(document: object): Promise<Buffer> {
  const fonts = Object.fromEntries(Object.values(FONT_FILES).map((file) => [file, fontBytes(file)]));
  const worker = new Worker(PDF_WORKER, { workerData: { fonts, document, edge: ALARM }, execArgv: [] });
  return new Promise((resolve, reject) => {
    worker.once("message", (bytes: Uint8Array) => {
      resolve(Buffer.from(bytes));
      void worker.terminate();
    });
    worker.once("error", (cause) => reject(new Error("the report could not be set as PDF", { cause })));
    worker.once("exit", (code) => reject(new Error(`the PDF was not finished (${code})`)));
  });
}

const LACKS = `${LACKING} stands for characters that this PDF's font has not. The mail itself has them.`;
const ALARM = "#a3121b";
const STYLES = {
  title: { fontSize: 19, bold: true, margin: [0, 0, 0, 6] },
  head: { fontSize: 13, bold: true, margin: [0, 14, 0, 4] },
  valve: { bold: true, margin: [0, 6, 0, 1] },
  soft: { fontSize: 9, color: "#4c5258" },
  review: { bold: true, margin: [0, 6, 0, 4] },
  alarm: { color: ALARM, bold: true },
};

function body(report: Report): Block[] {
  return [
    { text: pdfText(report.title), style: "title" },
    ...(report.correction ? [{ text: report.correction, style: "review" }] : []),
    ...alarm(
      "Hazards",
      report.hazards.map((one) => `${one.time}  ${one.valve}: ${one.what}, in the words "${one.words}"`),
    ),
    ...alarm(
      "Failed tests",
      report.failed.map((one) => `${one.valve}: ${one.what}`),
    ),
    { text: pdfText(report.reviewed), style: "review" },
    { text: "What was found and done", style: "head" },
    ...(report.valves.length === 0 ? [{ text: "No job was recorded on this day." }] : report.valves.map(valve)),
    ...list(
      "Follow-ups",
      report.followUps.map((one) => [
        lead(one.valve),
        pdfText(`${one.what}, `),
        { text: one.when, ...(one.urgent ? { style: "alarm" } : { bold: true }) },
        why(one.why, one.owner),
      ]),
    ),
    ...list(
      "Parts used",
      report.parts.used.map((one) => [pdfText(`${one.count} × ${one.part} `), why(one.valves)]),
    ),
    ...list(
      "Parts needed",
      report.parts.needed.map((one) => [pdfText(`${one.count} × ${one.part} `), why(one.valves)]),
    ),
    ...list(
      `Due within ${report.dueDays} days`,
      report.due.map((one) => [lead(one.valve), pdfText(one.what), why(one.why)]),
    ),
    ...list(
      "Not understood, word for word",
      report.notUnderstood.flatMap((one) => {
        const [first = "", ...more] = paragraphs(`"${one.text}"`);
        const [what = "", ...rest] = paragraphs(`\u00a0 ${one.what}`);
        const end = [{ text: what, style: "soft" }, ...rest.map(soft)];
        const head = [pdfText(`${one.time}  `), lead(one.valve), first];
        return more.length + rest.length > 0 ? [head, ...more.map((text) => [text]), end] : [[...head, ...end]];
      }),
    ),
    {
      unbreakable: true,
      layout: "lightHorizontalLines",
      table: {
        headerRows: 1,
        widths: ["*", 60],
        body: [
          [{ text: "Totals", style: "head", colSpan: 2 }, {}],
          ...report.totals.map((one) => [{ text: one.what }, { text: String(one.count), alignment: "right" }]),
        ],
      },
    },
    { text: report.caution, style: "review" },
    soft(`Times: ${pdfText(report.zone)}.`),
  ];
}

const lead = (valve: string): Block => ({ text: `${pdfText(valve)}: `, bold: true });
const soft = (text: string): Block => ({ text, style: "soft", margin: [0, 4, 0, 0] });
const why = (text: string, owner?: string): Block => ({
  text: pdfText(`\u00a0 ${owner ? `${owner}. ` : ""}${text}`),
  style: "soft",
});

function alarm(title: string, lines: readonly string[]): Block[] {
  if (lines.length === 0) return [];
  const cell = [{ text: title, fontSize: 13, style: "alarm" }, { ul: lines.map(pdfText) }];
  return [
    {
      table: { widths: ["*"], body: [[{ stack: cell, margin: [6, 4, 6, 4] }]] },
      layout: "boxed",
      margin: [0, 4, 0, 4],
    },
  ];
}

/** A head never stands alone at the foot of a page: it stays with its first line. */
function list(title: string, lines: readonly unknown[][]): Block[] {
  const [first, ...more] = lines.map((text) => ({ text, margin: [0, 1, 0, 2] }));
  if (!first) return [];
  return [
    { unbreakable: true, stack: [{ text: title, style: "head" }, { ul: [first] }] },
    ...(more.length > 0 ? [{ ul: more }] : []),
  ];
}

function valve(one: Report["valves"][number]): Block {
  const by = one.by.length > 0 && `by ${one.by.join(", ")}`;
  const about = [one.about, one.time, by].filter(Boolean).join(", ");
  const said = sentences([...one.done, ...one.tests]) || "Nothing was understood for this valve.";
  return {
    // what is longer than a page must break
    unbreakable: said.length < 1_500,
    stack: [
      { text: [pdfText(one.valve), { text: pdfText(`   ${about}`), style: "soft", bold: false }], style: "valve" },
      ...paragraphs(said).map((text) => ({ text })),
      ...(one.checks.length > 0 ? [{ text: pdfText(one.checks.join(" ")), style: "soft" }] : []),
    ],
  };
}

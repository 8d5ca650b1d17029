import { Worker } from "node:worker_threads";
import { PDF_THREAD } from "../places.ts";
import type { Report } from "./day-report.ts";
import type { Answered, Asked } from "./pdf/thread.ts";
import { reportBlocks } from "./report-blocks.ts";

/** The report as PDF (A4), the same sentences in the same order. */
export async function reportPdf(report: Report): Promise<Buffer> {
  current ??= startThread();
  try {
    return await current.set({ title: report.title, blocks: reportBlocks(report) });
  } catch (cause) {
    throw new Error("the report could not be set as PDF", { cause });
  }
}

/** Reports come in bunches, at the end of a day, and starting a thread takes longer than most reports. */
const REST_MS = 60_000;

interface Thread {
  set(order: Asked["order"]): Promise<Buffer>;
}
let current: Thread | undefined;

/** One thread sets all PDFs, one after the other, and ends when nothing was asked of it for a while. */
function startThread(): Thread {
  const worker = new Worker(PDF_THREAD, { execArgv: [] });
  const waiting = new Map<number, { resolve(pdf: Buffer): void; reject(cause: unknown): void }>();
  let asked = 0;
  let rest: NodeJS.Timeout | undefined;

  const ended = (cause: unknown) => {
    if (current === thread) current = undefined;
    clearTimeout(rest);
    for (const one of waiting.values()) one.reject(cause);
    waiting.clear();
  };
  worker.on("error", ended);
  worker.on("exit", (code) => ended(new Error(`the thread that sets PDFs ended (${code})`)));
  worker.on("message", (answer: Answered) => {
    const one = waiting.get(answer.id);
    waiting.delete(answer.id);
    if ("pdf" in answer) one?.resolve(Buffer.from(answer.pdf.buffer, answer.pdf.byteOffset, answer.pdf.byteLength));
    else one?.reject(answer.problem);
    if (waiting.size > 0) return;
    // a thread at rest keeps no command from ending
    worker.unref();
    rest = setTimeout(() => {
      if (current === thread) current = undefined;
      void worker.terminate();
    }, REST_MS).unref();
  });

  const thread: Thread = {
    set: (order) =>
      new Promise((resolve, reject) => {
        const id = ++asked;
        worker.postMessage({ id, order } satisfies Asked);
        waiting.set(id, { resolve, reject });
        clearTimeout(rest);
        worker.ref();
      }),
  };
  return thread;
}

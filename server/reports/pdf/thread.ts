import { parentPort } from "node:worker_threads";
import type { PdfOrder } from "./blocks.ts";
import { setPdf } from "./set-pdf.ts";

/** Laying out hundreds of pages takes its time, in which the server would answer nobody: so it is done in a thread. */
export interface Asked {
  id: number;
  order: PdfOrder;
}
export type Answered = { id: number; pdf: Uint8Array } | { id: number; problem: unknown };

parentPort?.on("message", async ({ id, order }: Asked) => {
  const answer: Answered = await setPdf(order).then(
    (pdf) => ({ id, pdf }),
    (problem: unknown) => ({ id, problem }),
  );
  parentPort?.postMessage(answer);
});

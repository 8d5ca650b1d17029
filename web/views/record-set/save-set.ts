import type { RecordedLine } from "../../../core/shapes/record-set.ts";
import { wavOf } from "../../speech/wav.ts";
import { instantHere } from "../../state/time-words.ts";
import { type Caught, type Sitting, spokenTakes } from "./sitting.ts";

const RATE = 16_000;

/** The recordings as one file of JSON lines, handed to the browser as a download. Nothing goes over a network. */
export async function saveSet(sitting: Sitting, wide: boolean | undefined): Promise<void> {
  const at = instantHere(new Date());
  const lines: RecordedLine[] = [
    { is: "record_set", version: 1, at, of: sitting.takes.length, ...(wide === undefined ? {} : { wide }) },
  ];
  for (const take of spokenTakes(sitting))
    lines.push({ is: "phrase", wanted: take.wanted, times: take.times, ...(await recorded(take)) });
  for (const caught of sitting.talk) lines.push({ is: "other_talk", ...(await recorded(caught)) });
  const file = new Blob(
    lines.map((line) => `${JSON.stringify(line)}\n`),
    { type: "application/x-ndjson" },
  );
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = `record-set-${at.slice(0, 16).replace(/[:T]/g, "-")}.jsonl`;
  link.click();
  // the download has begun with the click; some browsers still read the address a moment later
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

async function recorded({ heard, confidence, samples }: Caught) {
  return { heard, confidence: Math.min(1, Math.max(0, confidence)), wav: await base64(wavOf(samples, RATE)) };
}

/** By the platform's reader: a phrase is some hundred thousand bytes. */
function base64(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result).replace(/^[^,]*,/, ""));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(new Blob([bytes]));
  });
}

import { readFile } from "node:fs/promises";
import { hear, mostSensible } from "../../core/index.ts";
import { HEARD_FROM, type Heard } from "../../core/speech/hearing.ts";
import { hearRecording } from "../../core/speech/recorded.ts";
import { decodeWave } from "../../core/speech/wave.ts";
import { openEar } from "../ear/open-ear.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";

const OPTIONS = { help: { help: "this text" } };
const HELP = helpText(
  "npm run -s listen -- FILE.wav [FILE.wav ...]",
  "Hears what is said in each WAV file, on this machine, and prints one line of JSON a file: the text, how sure the ear is,\nthe entries and the words that were read as nothing. Nothing is stored, nothing is sent. Exit code 1 if a file could not be read.",
  OPTIONS,
  [],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("listen", asked.problem);
const { options, words: files } = asked.value;
if (options.has("help")) process.stdout.write(HELP);
else if (files.length === 0) {
  process.stderr.write(HELP);
  process.exitCode = 2;
} else {
  const ear = await openEar((line) => process.stderr.write(`listen: ${line}\n`));
  for (const file of files) {
    const bytes = await readFile(file).catch((cause: NodeJS.ErrnoException) => cause);
    const recording =
      bytes instanceof Error
        ? ({ ok: false, problem: bytes.code === "ENOENT" ? "there is no such file" : bytes.message } as const)
        : decodeWave(new Uint8Array(bytes));
    if (!recording.ok) {
      process.exitCode = 1;
      put({ file, error: recording.problem });
      continue;
    }
    const phrases = hearRecording(ear, recording.value).map(sensible);
    const heard = phrases.filter(({ confidence }) => confidence >= HEARD_FROM);
    const { entries, unread } = hear({ id: file, say: heard.map(({ text }) => text) });
    const confidence =
      heard.length > 0
        ? Math.min(...heard.map((one) => one.confidence))
        : Math.max(0, ...phrases.map((one) => one.confidence));
    put({
      file,
      text: heard.map(({ text }) => text).join(" "),
      confidence: Math.round(confidence * 1000) / 1000,
      entries,
      unread,
    });
  }
}

/** The way in which a phrase was heard that the reader makes most of, as sure as it is likely beside the first. */
function sensible({ text, confidence, others }: Heard): { text: string; confidence: number } {
  const way = mostSensible([{ text, behind: 0 }, ...others]);
  return { text: way.text, confidence: confidence * Math.exp(-way.behind) };
}

function put(line: object): void {
  process.stdout.write(`${JSON.stringify(line)}\n`);
}

import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readPhrase } from "../../core/index.ts";
import type { Hearing } from "../../core/speech/hearing.ts";
import { HEARD_FROM } from "../../core/speech/hearing.ts";
import { scoreSet, type Take } from "../../core/speech/record-set/score.ts";
import { scoreWords } from "../../core/speech/record-set/score-words.ts";
import { hearRecording } from "../../core/speech/recorded.ts";
import { decodeWave } from "../../core/speech/wave.ts";
import { openEar } from "../ear/open-ear.ts";
import { readSettings, type Settings } from "../env.ts";
import { serve } from "../serve.ts";
import { helpText, readArguments, wrongUse } from "./arguments.ts";
import { type RecordedSet, readRecordedSet } from "./recorded-set.ts";

/** Serves the screen that measures the ear on a voice, on an empty log of its own; or scores saved recordings again. */
const OPTIONS = {
  score: {
    value: "FILE",
    help: "recordings that the screen saved: heard again by the ear of this machine, and scored",
  },
  help: { help: "this text" },
};
const HELP = helpText(
  "npm run -s record-set [-- --score FILE]",
  "Prints the address of a screen that walks a person through 40 phrases and scores the ear on them. It listens on this\nmachine only, sends nothing, and its log is empty and removed at the end. The same screen is in every log at #/record-set,\nwhere the ear also knows the tags and words of the site.",
  OPTIONS,
  ["PORT", "LOG_LEVEL"],
);

const asked = readArguments(process.argv.slice(2), OPTIONS);
if (!asked.ok) wrongUse("record-set", asked.problem);
const { options, words } = asked.value;
if (words.length > 0) wrongUse("record-set", `${words[0]} is not known here; see --help`);
const file = options.get("score");
if (options.has("help")) process.stdout.write(HELP);
else if (file !== undefined) await scoreAgain(file);
else {
  const read = readSettings({ ...process.env, HOST: "", DATA_DIR: "", DATABASE_URL: "", SMTP_URL: "" }, process.cwd());
  if (!read.ok) wrongUse("record-set", read.problem);
  await offer(read.value);
}

async function offer(settings: Settings): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), "handsfull-record-set-"));
  const forget = () => rm(folder, { recursive: true, force: true });
  const own = {
    ...settings,
    host: "127.0.0.1",
    tls: undefined,
    dataDir: folder,
    mailFolder: join(folder, "mail"),
    databaseUrl: `file:${join(folder, "handsfull.db")}`,
  };
  const served = await serve(own).catch(async (cause: NodeJS.ErrnoException) => {
    await forget();
    if (cause.code !== "EADDRINUSE") throw cause;
    return wrongUse(
      "record-set",
      `port ${own.port} is taken: set PORT to another one, or open #/record-set of the log that runs there`,
    );
  });
  process.stdout.write(
    `Measure the ear at ${served.address}#/record-set\nCtrl+C stops it; what was not saved is gone.\n`,
  );
  let leaving = false;
  const leave = async () => {
    if (leaving) return;
    leaving = true;
    await served.stop();
    await forget();
    process.exit(0);
  };
  process.on("SIGTERM", leave);
  process.on("SIGINT", leave);
}

async function scoreAgain(file: string): Promise<void> {
  const text = await readFile(file, "utf8").catch((cause: NodeJS.ErrnoException) =>
    wrongUse("record-set", `${file}: ${cause.code === "ENOENT" ? "there is no such file" : cause.message}`),
  );
  const set = readRecordedSet(text);
  if (!set.ok) wrongUse("record-set", `${file}: ${set.problem}`);
  const { phrases, talk } = set.value;
  const ear = await openEar((line) => process.stderr.write(`record-set: ${line}\n`));
  const anew: RecordedSet = {
    ...set.value,
    phrases: phrases.map((one) => ({ ...one, ...heardAgain(ear, one.wav, file) })),
    talk: talk.map((one) => ({ ...one, ...heardAgain(ear, one.wav, file) })),
  };
  put("As the page heard it", set.value);
  put("As this machine hears the same sound", anew);
}

function put(head: string, { phrases, talk }: RecordedSet): void {
  const takes: Take[] = phrases.map(({ wanted, heard, confidence }) => ({ wanted, heard, confidence }));
  const score = scoreSet(
    takes,
    talk.map(({ heard }) => heard),
    (text) => readPhrase(text).entries,
  );
  process.stdout.write(
    `${head}\n${scoreWords(score)
      .map((line) => `  ${line}\n`)
      .join("")}\n`,
  );
}

function heardAgain(ear: Hearing, wav: string, file: string): { heard: string; confidence: number } {
  const recording = decodeWave(Buffer.from(wav, "base64"));
  if (!recording.ok) wrongUse("record-set", `${file}: ${recording.problem}`);
  const heard = hearRecording(ear, recording.value).filter(({ text, confidence }) => text && confidence >= HEARD_FROM);
  return {
    heard: heard.map(({ text }) => text).join(" "),
    confidence: heard.length > 0 ? Math.min(...heard.map(({ confidence }) => confidence)) : 0,
  };
}

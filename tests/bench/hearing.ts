import { readFileSync } from "node:fs";
import { hear } from "../../core/index.ts";
import { NO_SITE } from "../../core/speech/ear-words.ts";
import { HEARD_FROM } from "../../core/speech/hearing.ts";
import { hearRecording } from "../../core/speech/recorded.ts";
import { sameWords } from "../../core/speech/same-words.ts";
import { decodeWave } from "../../core/speech/wave.ts";
import { openEar } from "../../server/ear/open-ear.ts";
import { afterCall } from "../../web/state/loop.ts";
import { USUAL } from "../../web/state/settings.ts";
import { CAN_SPEAK, inNoise, saidAloud } from "../server/ear/said-aloud.ts";

const SET: { phrases: string[]; talk: string[] } = JSON.parse(
  readFileSync(new URL("hearing-set.json", import.meta.url), "utf8"),
);
const VOICES = ["slt", "rms"] as const;
const LEVELS = [undefined, 20, 10] as const;
/** Every so many of the set: a whole table in some minutes. */
const STEP = 4;

/** Phrases heard word for word, by loudness of noise, in two synthetic voices; and what other talk was taken for. */
export async function hearing(): Promise<string[]> {
  if (!CAN_SPEAK) return ["not run: apt-get install -y flite sox"];
  const notes: string[] = [];
  const began = performance.now();
  const ear = await openEar((line) => notes.push(line));
  const ready = (performance.now() - began) / 1000;
  const lines: string[] = [];
  let sound = 0;
  let work = 0;
  const one = (text: string, voice: (typeof VOICES)[number], level: number | undefined) => {
    const file = saidAloud(text, voice);
    const read = decodeWave(new Uint8Array(readFileSync(level === undefined ? file : inNoise(file, level))));
    if (!read.ok) throw new Error(read.problem);
    const start = performance.now();
    const [heard] = hearRecording(ear, read.value);
    work += performance.now() - start;
    sound += (read.value.samples.length / read.value.rate) * 1000;
    return heard;
  };
  const sure: boolean[] = [];
  for (const level of LEVELS) {
    let right = 0;
    let all = 0;
    let invents = 0;
    let talk = 0;
    for (const voice of VOICES) {
      for (const phrase of SET.phrases.filter((_, i) => i % STEP === 0)) {
        const heard = one(phrase, voice, level);
        const same = sameWords(phrase, heard?.text ?? "");
        all++;
        if (same) right++;
        if ((heard?.confidence ?? 0) >= 0.9) sure.push(same);
      }
      for (const text of SET.talk.filter((_, i) => i % STEP === 0)) {
        const heard = one(text, voice, level);
        talk++;
        if (heard && heard.confidence >= HEARD_FROM && hear({ id: "talk", say: [heard.text] }).entries.length > 0)
          invents++;
      }
    }
    const noise = level === undefined ? "clean" : `pink noise ${level} dB below`;
    lines.push(`${noise}: ${right} of ${all} phrases word for word; ${invents} of ${talk} of other talk left an entry`);
  }
  return [
    ...notes,
    ...lines,
    `of ${sure.length} reported at 0.9 or more, ${sure.filter(Boolean).length} word for word`,
    ...(await calling()),
    `ready in ${ready.toFixed(1)} s; a second of sound takes ${(work / sound).toFixed(2)} s`,
    "synthetic voices: people will differ",
  ];
}

/** How often the call word is heard where somebody calls, and in an hour of talk and noise where nobody does. */
async function calling(): Promise<string[]> {
  const call = USUAL.callWord;
  const ear = await openEar(() => {}, { ...NO_SITE, call });
  const counts = { called: 0, calls: 0, alarms: 0, seconds: 0 };
  const isCalled = (file: string) => {
    const read = decodeWave(new Uint8Array(readFileSync(file)));
    if (!read.ok) throw new Error(read.problem);
    counts.seconds += read.value.samples.length / read.value.rate;
    const heard = hearRecording(ear, read.value).filter(({ confidence }) => confidence >= HEARD_FROM);
    return heard.some(({ text }) => afterCall(text, call) !== undefined);
  };
  for (const voice of VOICES)
    for (const level of [20, 10])
      for (const text of SET.phrases.filter((_, i) => i % (2 * STEP) === 1)) {
        counts.calls++;
        if (isCalled(inNoise(saidAloud(`${call}, ${text}`, voice), level))) counts.called++;
      }
  counts.seconds = 0;
  for (const voice of VOICES)
    for (const level of [20, 10])
      for (const text of [...SET.talk, ...SET.phrases.filter((_, i) => i % STEP === 0)])
        if (isCalled(inNoise(saidAloud(text, voice), level))) counts.alarms++;
  ear.free();
  const hours = counts.seconds / 3600;
  return [
    `"${call}" heard in ${counts.called} of ${counts.calls} calls over noise 20 and 10 dB below`,
    `  and ${counts.alarms} times in ${(60 * hours).toFixed(0)} minutes of talk where nobody called: ${(counts.alarms / hours).toFixed(1)} an hour of talking without pause`,
  ];
}

import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import { isDoubtful } from "../../../core/index.ts";
import { NO_SITE } from "../../../core/speech/ear-words.ts";
import type { Hearing } from "../../../core/speech/hearing.ts";
import { hearRecording } from "../../../core/speech/recorded.ts";
import { decodeWave } from "../../../core/speech/wave.ts";
import { openEar } from "../../../server/ear/open-ear.ts";
import { CAN_SPEAK, inNoise, saidAloud } from "./said-aloud.ts";

describe.skipIf(!CAN_SPEAK)("an ear that may be called (speech made by flite; apt-get install -y flite sox)", () => {
  let ear: Hearing;
  const phrasesIn = (file: string) => {
    const read = decodeWave(new Uint8Array(readFileSync(file)));
    if (!read.ok) throw new Error(read.problem);
    return hearRecording(ear, read.value);
  };
  const heard = (file: string) =>
    phrasesIn(file)
      .map(({ text }) => text)
      .join(" ");
  beforeAll(async () => {
    ear = await openEar(() => {}, { ...NO_SITE, call: "For the log" });
  }, 120_000);

  test("hears the call word before a phrase and by itself, written as it was set", () => {
    expect(heard(saidAloud("for the log, seat worn on one side"))).toBe("for the log seat worn on one side");
    expect(heard(saidAloud("for the log"))).toBe("for the log");
  }, 120_000);

  test("hears no call where the words stand apart, or nobody calls", () => {
    for (const words of ["they came for the logging truck", "it is full of sand", "seat worn on one side"])
      expect(heard(saidAloud(words))).not.toMatch(/^for the log\b/);
  }, 120_000);

  test("is as sure of what it hears over pink noise 20 dB below as one may be who need not ask again", () => {
    const phrases = [
      "stem is bent needs a new one",
      "found sand in the body",
      "upper housing is cracked",
      "scratch that",
    ];
    const right = phrases.flatMap((words) =>
      phrasesIn(inNoise(saidAloud(words, "slt"), 20)).filter(({ text }) => text === words),
    );
    expect(right.length).toBeGreaterThanOrEqual(3);
    expect(right.filter(({ confidence }) => isDoubtful(confidence))).toEqual([]);
  }, 120_000);
});

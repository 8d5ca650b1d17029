import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { EAR_RATE } from "../../../core/speech/resample.ts";
import { decodeWave } from "../../../core/speech/wave.ts";
import type { Luck } from "../learning/luck.ts";

/** Voices to learn from; those that hearing is measured with, flite's slt and rms, are none of them. */
const FLITE = ["kal", "kal16", "awb"];
const ESPEAK = ["en-us", "en-gb", "en-gb-scotland", "en-gb-x-rp"];
const VARIANTS = ["m1", "m2", "m3", "m4", "m5", "m6", "m7", "f1", "f2", "f3", "f4", "f5", "croak"];
/** How often the first kind of voice, whose sound is cut from a person's, is taken. */
const FLITE_SHARE = 0.7;

/** Lines spoken by synthesis, each in another voice, pitch, pace and colour; 16,000 samples a second. Needs flite, espeak-ng and sox. */
export function spoken(lines: readonly string[], luck: Luck): Float32Array[] {
  const folder = mkdtempSync(join(tmpdir(), "handsfull-learn-"));
  try {
    return lines.map((line) => inSomeVoice(line, folder, luck));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function inSomeVoice(line: string, folder: string, luck: Luck): Float32Array {
  const bare = join(folder, "bare.wav");
  const file = join(folder, "said.wav");
  if (luck.chance(FLITE_SHARE)) execFileSync("flite", ["-voice", luck.one(FLITE), "-t", line, "-o", bare]);
  else {
    const [pitch, pace] = [luck.between(20, 80), luck.between(130, 200)].map((n) => String(Math.round(n)));
    const voice = `${luck.one(ESPEAK)}+${luck.one(VARIANTS)}`;
    execFileSync("espeak-ng", ["-v", voice, "-p", pitch as string, "-s", pace as string, "-w", bare, line]);
  }
  const effects = ["rate", String(EAR_RATE)];
  if (luck.chance(0.6)) effects.push("pitch", luck.between(-350, 450).toFixed(0));
  if (luck.chance(0.5)) effects.push("tempo", "-s", luck.between(0.85, 1.15).toFixed(3));
  if (luck.chance(0.5))
    effects.push("equalizer", luck.one(["300", "800", "1500", "3000"]), "1q", luck.between(-6, 6).toFixed(1));
  execFileSync("sox", ["-R", bare, "-c", "1", "-b", "16", file, ...effects], { stdio: ["ignore", "ignore", "ignore"] });
  const read = decodeWave(new Uint8Array(readFileSync(file)));
  if (!read.ok) throw new Error(read.problem);
  return read.value.samples;
}

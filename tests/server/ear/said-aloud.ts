import { execFileSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Whether speech can be made on this machine; the tests that need it say so by name where it cannot. */
export const CAN_SPEAK = has("flite") && has("sox");
if (!CAN_SPEAK && process.env.REQUIRE_BROWSER === "1")
  throw new Error("flite and sox are required here: apt-get install -y flite sox");

/** A WAV file of a phrase in a synthetic voice (flite's "slt" or "rms"), half a second of quiet at both ends. */
export function saidAloud(phrase: string, voice: "slt" | "rms" = "rms"): string {
  const folder = mkdtempSync(join(tmpdir(), "handsfull-said-"));
  const bare = join(folder, "bare.wav");
  const file = join(folder, "said.wav");
  execFileSync("flite", ["-voice", voice, "-t", phrase, "-o", bare]);
  execFileSync("sox", [bare, file, "pad", "0.5", "0.5"]);
  return file;
}

/** The same with pink noise, `decibels` under the speech, made by sox. */
export function inNoise(file: string, decibels: number): string {
  const noise = file.replace(/\.wav$/, ".noise.wav");
  const mixed = file.replace(/\.wav$/, `.${decibels}.wav`);
  const level = Number(/RMS lev dB\s+(-?[\d.]+)/.exec(stats(file))?.[1] ?? -25);
  execFileSync("sox", ["-R", "-r", "16000", "-n", "-c", "1", noise, "synth", seconds(file), "pinknoise"]);
  const own = Number(/RMS lev dB\s+(-?[\d.]+)/.exec(stats(noise))?.[1] ?? -20);
  execFileSync("sox", ["-m", "-v", "1", file, "-v", String(10 ** ((level - decibels - own) / 20)), noise, mixed]);
  return mixed;
}

/** Other sounds, by what sox is asked to make. */
export function soxSound(rate: number, ...effects: string[]): string {
  const file = join(mkdtempSync(join(tmpdir(), "handsfull-sound-")), "sound.wav");
  execFileSync("sox", ["-R", "-r", String(rate), "-n", "-c", "1", "-b", "16", file, ...effects]);
  return file;
}

const seconds = (file: string) => execFileSync("soxi", ["-D", file], { encoding: "utf8" }).trim();

function stats(file: string): string {
  // sox writes its figures where errors go
  return execFileSync("sh", ["-c", `sox "$1" -n stats 2>&1`, "sh", file], { encoding: "utf8" });
}

function has(command: string): boolean {
  try {
    execFileSync("sh", ["-c", `command -v ${command}`], { stdio: "ignore" });
    return true;
  } catch {
    // that it is not there is the answer
    return false;
  }
}

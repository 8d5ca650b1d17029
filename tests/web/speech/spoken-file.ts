import { execFile } from "node:child_process";
import { mkdtemp } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";

const run = promisify(execFile);

/** Seconds of quiet between one phrase and the next: the ear is done with one before the next begins. */
const GAP = 3;

/**
 * A recording of somebody saying this, one phrase after the other, by a synthetic voice, with a room's faint hiss under it
 * and silence before and behind it: a browser's false microphone plays it over and over.
 */
export async function spokenFile(...phrases: string[]): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "handsfull-spoken-"));
  const at = (name: string) => join(folder, name);
  try {
    const files: string[] = [];
    for (const [n, words] of phrases.entries()) {
      await run("flite", ["-voice", "slt", "-t", words, "-o", at(`bare-${n}.wav`)]);
      await run("sox", [at(`bare-${n}.wav`), at(`said-${n}.wav`), "pad", "0", n + 1 < phrases.length ? `${GAP}` : "0"]);
      files.push(at(`said-${n}.wav`));
    }
    await run("sox", [...files, at("said.wav")]);
    // one and a half seconds before, for the microphone to open; twelve behind, for a busy machine to be done before it comes again
    await run("sox", [at("said.wav"), "-r", "48000", at("long.wav"), "pad", "1.5", "12"]);
    const { stdout } = await run("soxi", ["-D", at("long.wav")]);
    await run("sox", [
      "-r",
      "48000",
      "-n",
      "-b",
      "16",
      at("hiss.wav"),
      "synth",
      stdout.trim(),
      "pinknoise",
      "vol",
      "0.001",
    ]);
    await run("sox", ["-m", "-v", "1", at("long.wav"), "-v", "1", at("hiss.wav"), "-b", "16", at("all.wav")]);
  } catch (cause) {
    throw new Error("no recording could be made: apt-get install -y flite sox", { cause });
  }
  return at("all.wav");
}

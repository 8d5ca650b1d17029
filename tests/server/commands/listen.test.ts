import { execFile } from "node:child_process";
import { copyFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { beforeAll, describe, expect, test } from "vitest";
import { CAN_SPEAK, inNoise, saidAloud, soxSound } from "../ear/said-aloud.ts";

const ROOT = fileURLToPath(new URL("../../..", import.meta.url));
const run = promisify(execFile);

interface Line {
  file: string;
  text: string;
  confidence: number;
  entries: Record<string, unknown>[];
  unread: unknown[];
  error?: string;
}

async function listen(files: string[]): Promise<Line[]> {
  const asked = run("node", ["--import", "tsx", "server/commands/listen.ts", ...files], { cwd: ROOT });
  // an exit code of 1 says that some file was none; its line says which
  const { stdout } = await asked.catch((cause: { stdout?: string }) => ({ stdout: cause.stdout ?? "" }));
  return stdout
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line));
}

describe.skipIf(!CAN_SPEAK)("what is said aloud (speech made by flite; apt-get install -y flite sox)", () => {
  let lines: Line[];
  const files: string[] = [];
  // None of these is a line of the language model.
  const PHRASES = [
    "the seat ring is worn on one side",
    "replaced the stem packing",
    "bonnet bolts torqued to forty five foot pounds",
  ];
  const CHATTER = ["did anybody see the truck keys", "my daughter has a recital on thursday"];

  beforeAll(async () => {
    for (const phrase of PHRASES) files.push(saidAloud(phrase));
    for (const phrase of CHATTER) files.push(saidAloud(phrase));
    const rate44 = join(tmpdir(), `handsfull-44-${process.pid}.wav`);
    await run("sox", [files[1] as string, "-r", "44100", "-c", "2", rate44]);
    files.push(rate44, inNoise(files[0] as string, 20));
    files.push(
      soxSound(16_000, "trim", "0", "3"),
      soxSound(48_000, "synth", "30", "sine", "60", "sine", "120", "gain", "-6"),
    );
    files.push(soxSound(16_000, "synth", "2", "square", "300", "gain", "12"));
    const broken = join(tmpdir(), `handsfull-broken-${process.pid}.wav`);
    writeFileSync(broken, "no sound at all");
    const gone = join(tmpdir(), `handsfull-gone-${process.pid}.wav`);
    const empty = join(tmpdir(), `handsfull-cut-${process.pid}.wav`);
    copyFileSync(files[0] as string, empty);
    writeFileSync(empty, "RIFF");
    files.push(broken, gone, empty);
    lines = await listen(files);
  }, 300_000);

  test("comes back word for word, with its entries", () => {
    expect(lines.slice(0, 3).map(({ text }) => text)).toEqual(PHRASES);
    expect(lines[0]?.entries).toMatchObject([{ type: "finding", condition: "worn", part: "seat", extent: "one_side" }]);
    expect(lines[1]?.entries).toMatchObject([{ type: "work", work: "replaced" }]);
    expect(lines[2]?.entries).toMatchObject([{ type: "reading", quantity: "torque", value: 45, unit: "ft_lbf" }]);
    for (const { confidence } of lines.slice(0, 3)) expect(confidence).toBeGreaterThan(0.2);
  });
  test("leaves no entry where it was other talk", () => {
    for (const { entries } of lines.slice(3, 5)) expect(entries).toEqual([]);
  });
  test("is heard at 44.1 kHz in two channels, and over pink noise 20 dB below", () => {
    expect(lines[5]?.text).toBe(PHRASES[1]);
    expect(lines[6]?.entries).toMatchObject([{ type: "finding", condition: "worn", part: "seat" }]);
  });
  test("is nothing in silence, hum and a clipped tone", () => {
    for (const { text, entries } of lines.slice(7, 10)) {
      expect(text).toBe("");
      expect(entries).toEqual([]);
    }
  });
  test("and a file that is none gets a line that says what to do", () => {
    expect(lines.slice(10).map(({ error }) => error)).toEqual([
      expect.stringMatching(/no WAV file/),
      expect.stringMatching(/no such file/),
      expect.stringMatching(/no WAV file/),
    ]);
  });
});

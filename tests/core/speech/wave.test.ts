import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decodeWave } from "../../../core/speech/wave.ts";

/** A WAV file written by hand: format code, bits, channels, samples a second, the bytes of its sound. */
function wave(code: number, bits: number, channels: number, rate: number, sound: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(44 + sound.length);
  const view = new DataView(bytes.buffer);
  const name = (at: number, text: string) => bytes.set(new TextEncoder().encode(text), at);
  name(0, "RIFF");
  view.setUint32(4, 36 + sound.length, true);
  name(8, "WAVEfmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, code, true);
  view.setUint16(22, channels, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, (rate * channels * bits) / 8, true);
  view.setUint16(32, (channels * bits) / 8, true);
  view.setUint16(34, bits, true);
  name(36, "data");
  view.setUint32(40, sound.length, true);
  bytes.set(sound, 44);
  return bytes;
}
const HALF: Record<string, number[]> = {
  "1/8": [192],
  "1/16": [0x00, 0x40],
  "1/24": [0x00, 0x00, 0x40],
  "1/32": [0x00, 0x00, 0x00, 0x40],
  "3/32": [0x00, 0x00, 0x00, 0x3f],
};

describe("a WAV file", () => {
  test.each(Object.entries(HALF))("written as %s holds what it holds", (kind, half) => {
    const [code = 1, bits = 16] = kind.split("/").map(Number);
    const read = decodeWave(wave(code, bits, 1, 16_000, Uint8Array.from([...half, ...half])));
    expect(read).toEqual({ ok: true, value: { samples: Float32Array.of(0.5, 0.5), rate: 16_000 } });
  });
  test("of two channels becomes their mean", () => {
    const read = decodeWave(wave(1, 16, 2, 44_100, Uint8Array.from([0x00, 0x40, 0x00, 0x00])));
    expect(read.ok && [...read.value.samples]).toEqual([0.25]);
  });
  test("cut off in its sound gives what is there", () => {
    const whole = wave(1, 16, 1, 8_000, new Uint8Array(200));
    const read = decodeWave(whole.subarray(0, 44 + 51));
    expect(read.ok && read.value.samples.length).toBe(25);
  });
  test.each([
    ["nothing", new Uint8Array(0), /no WAV file/],
    ["text", new TextEncoder().encode("seat worn one side, flipped it"), /no WAV file/],
    ["a way of writing not known", wave(85, 16, 1, 16_000, new Uint8Array(8)), /use PCM/],
    ["no rate", wave(1, 16, 1, 0, new Uint8Array(8)), /samples a second/],
    ["no sound", wave(1, 16, 1, 16_000, new Uint8Array(0)).subarray(0, 36), /no sound/],
  ])("of %s is refused in words", (_, bytes, problem) => {
    const read = decodeWave(bytes);
    expect(read.ok || read.problem).toMatch(problem);
  });
  test("of any bytes neither throws nor gives a sample that is no number", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), fc.nat(120), fc.nat(255), (noise, at, value) => {
        const bytes = wave(3, 32, 1, 16_000, noise);
        bytes[at % bytes.length] = value;
        const read = decodeWave(bytes);
        if (read.ok) for (const sample of read.value.samples) expect(Number.isFinite(sample)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});

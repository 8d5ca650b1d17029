import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readLayers, writeLayers } from "../../../core/speech/learnt/written-layers.ts";
import { Denoiser } from "../../../core/speech/noise/denoise.ts";
import { exponentialIntegral, KnownNoise } from "../../../core/speech/noise/known-noise.ts";
import {
  addFrame,
  BANDS,
  BINS,
  HOP,
  inBands,
  powerOf,
  SIZE,
  spectrumAt,
  toBins,
} from "../../../core/speech/noise/spectrum.ts";
import { LAYER_SIZES, SIZES } from "../../../core/speech/noise/speech-in-noise.ts";
import { learntLayers } from "../../../core/speech/noise/weights.ts";
import { decodeWave } from "../../../core/speech/wave.ts";
import { CAN_SPEAK, inNoise, saidAloud } from "../../server/ear/said-aloud.ts";

/** The same hiss each time, within ±1. */
function hiss(length: number): Float32Array {
  let state = 7;
  return Float32Array.from({ length }, () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 1_073_741_823.5 - 1;
  });
}

// Abramowitz & Stegun, Handbook of Mathematical Functions, table 5.1 and 5.2.
test.each([
  [0.01, 4.0379296],
  [0.1, 1.8229239],
  [0.5, 0.5597736],
  [1, 0.2193839],
  [2, 0.0489005],
  [5, 0.0011483],
])("the exponential integral of %d is %d", (x, value) => {
  expect(Math.abs(exponentialIntegral(x) / value - 1)).toBeLessThan(1e-4);
});

describe("a spectrum", () => {
  test("of overlapping frames, put back as they are, is the sound", () => {
    const sound = hiss(SIZE * 4);
    const sum = new Float64Array(sound.length);
    const all = new Float64Array(BINS).fill(1);
    for (let at = 0; at + SIZE <= sound.length; at += HOP)
      addFrame(spectrumAt(sound, at), all, sum.subarray(at, at + SIZE));
    for (let i = SIZE; i < sound.length - SIZE; i++) expect(sum[i]).toBeCloseTo(sound[i] ?? 0, 6);
  });

  test("in bands has each tone where the ear has it, and gains that are alike stay so from bin to bin", () => {
    const power = new Float64Array(BINS);
    const bands = new Float32Array(BANDS);
    const loudest = [200, 1000, 4000].map((hertz) => {
      const tone = Float32Array.from({ length: SIZE }, (_, i) => Math.sin((2 * Math.PI * hertz * i) / 16_000));
      powerOf(spectrumAt(tone, 0), power);
      inBands(power, bands);
      return bands.indexOf(Math.max(...bands));
    });
    // 283, 1000 and 2146 mels (O'Shaughnessy 1987) of the 92 to 2826 that 40 bands share
    expect(loudest).toEqual([2, 13, 30]);
    const gains = new Float64Array(BINS);
    toBins(new Float32Array(BANDS).fill(0.3), gains);
    for (const gain of gains) expect(gain).toBeCloseTo(0.3, 6);
  });
});

test("noise is known within 1 dB after a second of it, and speech over it is not taken for it", () => {
  const known = new KnownNoise(BINS);
  const power = new Float64Array(BINS);
  const room = hiss(16_000);
  let mean = 0;
  let frames = 0;
  for (let at = 0; at + SIZE <= room.length; at += HOP) {
    powerOf(spectrumAt(room, at), power);
    known.hear(power);
    mean += power.reduce((sum, x) => sum + x, 0);
    frames++;
  }
  const before = known.power.reduce((sum, x) => sum + x, 0);
  expect(Math.abs(10 * Math.log10(before / (mean / frames)))).toBeLessThan(1);
  for (let frame = 0; frame < 50; frame++) known.hear(power.map((x) => 300 * x));
  expect(known.power.reduce((sum, x) => sum + x, 0)).toBeLessThan(2 * before);
});

test("steady hiss is taken down by more than 12 dB", () => {
  const quiet = hiss(32_000).map((x) => 0.02 * x);
  const loud = (sound: Float32Array) => 10 * Math.log10(sound.reduce((sum, x) => sum + x * x, 0) / sound.length);
  expect(loud(new Denoiser().push(quiet).subarray(16_000)) - loud(quiet)).toBeLessThan(-12);
});

test("weights are written and read again within half a step of each", () => {
  const [first, ...rest] = learntLayers();
  if (!first) throw new Error("nothing was learnt");
  const back = readLayers(writeLayers([first, ...rest]), LAYER_SIZES);
  expect(back.map(({ weights }) => weights.length)).toEqual(SIZES.slice(1).map((to, n) => to * (SIZES[n] ?? 0)));
  const largest = Math.max(...first.weights.map(Math.abs));
  for (const [i, weight] of first.weights.entries())
    expect(Math.abs((back[0]?.weights[i] ?? 0) - weight)).toBeLessThan(largest / 80);
  expect(() => readLayers("0 1 abc", LAYER_SIZES)).toThrow("something else");
});

describe.skipIf(!CAN_SPEAK)("speech in noise", () => {
  const samples = (file: string) => {
    const read = decodeWave(new Uint8Array(readFileSync(file)));
    if (!read.ok) throw new Error(read.problem);
    return read.value.samples;
  };
  /** Power in bands, frame after frame, dB, from its own mean: what the ear compares. */
  const seen = (sound: Float32Array, loud: (frame: number) => boolean) => {
    const power = new Float64Array(BINS);
    const frames: number[] = [];
    for (let frame = 0; frame * HOP + SIZE <= sound.length; frame++) {
      if (!loud(frame)) continue;
      const bands = new Float32Array(BANDS);
      powerOf(spectrumAt(sound, frame * HOP), power);
      inBands(power, bands);
      for (const band of bands) frames.push(10 * Math.log10(band + 1e-7));
    }
    const mean = frames.reduce((sum, x) => sum + x, 0) / frames.length;
    return frames.map((x) => x - mean);
  };

  test.each([
    ["slt", 20],
    ["slt", 10],
    ["rms", 20],
    ["rms", 10],
  ] as const)("of %s, a voice it has not learnt from, is nearer to the speech alone: %d dB", (voice, level) => {
    const file = saidAloud("seat ring worn on one side, flipped it and put it back", voice);
    const clean = samples(file);
    const noisy = samples(inNoise(file, level));
    const filtered = new Denoiser().push(noisy);
    const power = (frame: number) =>
      clean.subarray(frame * HOP, frame * HOP + SIZE).reduce((sum, x) => sum + x * x, 0) / SIZE;
    const loudest = Math.max(...Array.from({ length: Math.floor((clean.length - SIZE) / HOP) }, (_, n) => power(n)));
    const loud = (frame: number) => power(frame) > loudest / 300 && frame * HOP + SIZE <= filtered.length;
    const wanted = seen(clean, loud);
    const off = (sound: Float32Array) => {
      const got = seen(sound, loud);
      return Math.sqrt(got.reduce((sum, x, i) => sum + (x - (wanted[i] ?? 0)) ** 2, 0) / got.length);
    };
    expect(off(filtered)).toBeLessThan(0.8 * off(noisy));
  });
});

import { KnownNoise } from "../../../core/speech/noise/known-noise.ts";
import { BANDS, BINS, HOP, inBands, powerOf, SIZE, spectrumAt } from "../../../core/speech/noise/spectrum.ts";
import { aboveNoise, LEAST } from "../../../core/speech/noise/speech-in-noise.ts";
import type { Luck } from "../learning/luck.ts";
import { someNoise } from "./noises.ts";

/** How loud the noise is under the speech, dB: from louder than it to hardly there. */
const QUIETEST = 32;
const LOUDEST = -3;
const LOUD = 0.1;

/** One utterance in noise, frame by frame: what the network is given, and what it should say; `BANDS` numbers a frame each. */
export interface Example {
  above: Float32Array;
  wanted: Float32Array;
}

/** Speech with room around it, mixed with some noise that is therefore known. */
export function exampleOf(speech: Float32Array, luck: Luck): Example {
  const before = Math.round(luck.between(6000, 9000));
  const length = before + speech.length + Math.round(luck.between(5000, 8000));
  const level = Math.sqrt(speech.reduce((power, x) => power + x * x, 0) / speech.length) + 1e-9;
  const clean = new Float32Array(length);
  for (let i = 0; i < speech.length; i++) clean[before + i] = ((speech[i] as number) * LOUD) / level;
  const noise = someNoise(length, luck);
  const share = LOUD * 10 ** (-luck.between(LOUDEST, QUIETEST) / 20);
  const mixed = clean.map((x, i) => x + share * (noise[i] as number));

  const frames = Math.floor((length - SIZE) / HOP) + 1;
  const example = { above: new Float32Array(frames * BANDS), wanted: new Float32Array(frames * BANDS) };
  const known = new KnownNoise(BINS);
  const power = new Float64Array(BINS);
  const [all, room, words] = [new Float32Array(BANDS), new Float32Array(BANDS), new Float32Array(BANDS)];
  for (let frame = 0; frame < frames; frame++) {
    powerOf(spectrumAt(clean, frame * HOP), power);
    inBands(power, words);
    powerOf(spectrumAt(mixed, frame * HOP), power);
    inBands(power, all);
    known.hear(power);
    inBands(known.power, room);
    const own = (of: Float32Array) => of.subarray(frame * BANDS, (frame + 1) * BANDS);
    aboveNoise(all, room, own(example.above));
    shares(words, all, own(example.wanted));
  }
  return example;
}

/** The gain that makes the words' own sound of all, on a scale of logarithms: 0 all of it, 1 the least. */
function shares(words: Float32Array, all: Float32Array, into: Float32Array): void {
  for (let band = 0; band < BANDS; band++) {
    const gain = Math.sqrt(((words[band] as number) + 1e-12) / ((all[band] as number) + 1e-12));
    into[band] = Math.log(Math.max(LEAST, Math.min(1, gain))) / Math.log(LEAST);
  }
}

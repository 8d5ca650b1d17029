import { KnownNoise } from "./known-noise.ts";
import { addFrame, BANDS, BINS, HOP, inBands, powerOf, SIZE, type Spectrum, spectrumAt, toBins } from "./spectrum.ts";
import { AHEAD, AROUND, aboveNoise, BEHIND, SIZES, SpeechInNoise } from "./speech-in-noise.ts";
import { learntLayers } from "./weights.ts";

/** Less than the network may say: what it is sure to be noise still sounds like the room, faintly. */
const LEAST_GAIN = 0.1;

interface Frame {
  spectrum: Spectrum;
  /** how far each band stands above the noise */
  above: Float32Array;
}

/**
 * Takes noise off speech at 16,000 samples a second, block after block: the noise is known as far as it is steady, and a small
 * network says what of each band is speech. Gives as many samples as it was given, later by one window and three frames.
 */
export class Denoiser {
  readonly #noise = new KnownNoise(BINS);
  readonly #speech = new SpeechInNoise(learntLayers());
  readonly #power = new Float64Array(BINS);
  readonly #bands = new Float32Array(BANDS);
  readonly #noiseBands = new Float32Array(BANDS);
  readonly #around = new Float32Array(SIZES[0]);
  readonly #gains = new Float32Array(BANDS);
  readonly #gainOfBin = new Float64Array(BINS);
  readonly #sum = new Float64Array(SIZE);
  #sound: number[] = [];
  /** those that a frame still to come needs, the newest last */
  readonly #frames: Frame[] = [];

  push(block: Float32Array): Float32Array {
    for (const sample of block) this.#sound.push(sample);
    const out: number[] = [];
    let at = 0;
    for (; at + SIZE <= this.#sound.length; at += HOP) {
      this.#hear(spectrumAt(this.#sound, at));
      if (this.#frames.length <= AHEAD) continue;
      this.#give();
      for (let i = 0; i < HOP; i++) out.push(this.#sum[i] as number);
      this.#sum.copyWithin(0, HOP);
      this.#sum.fill(0, SIZE - HOP);
    }
    this.#sound = this.#sound.slice(at);
    return Float32Array.from(out);
  }

  #hear(spectrum: Spectrum): void {
    const above = new Float32Array(BANDS);
    powerOf(spectrum, this.#power);
    inBands(this.#power, this.#bands);
    this.#noise.hear(this.#power);
    inBands(this.#noise.power, this.#noiseBands);
    aboveNoise(this.#bands, this.#noiseBands, above);
    this.#frames.push({ spectrum, above });
    if (this.#frames.length > BEHIND + 1 + AHEAD) this.#frames.shift();
  }

  /** The frame that enough is known about now: what followed it has been heard. */
  #give(): void {
    const now = this.#frames.length - 1 - AHEAD;
    for (const [n, off] of AROUND.entries()) {
      const { above } = this.#frames[Math.max(0, now + off)] as Frame;
      this.#around.set(above, n * BANDS);
    }
    this.#speech.gains(this.#around, this.#gains);
    for (let band = 0; band < BANDS; band++) this.#gains[band] = Math.max(LEAST_GAIN, this.#gains[band] as number);
    toBins(this.#gains, this.#gainOfBin);
    addFrame((this.#frames[now] as Frame).spectrum, this.#gainOfBin, this.#sum);
  }
}

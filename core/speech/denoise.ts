import { fourier } from "./fourier.ts";

const SIZE = 512;
const HOP = SIZE / 4;
const BINS = SIZE / 2 + 1;
/** Frames of nothing but room, at the start, that the noise is first known from: a third of a second. */
const FIRST_FRAMES = 40;
/** How much of what the last frame told of speech still counts; nearer to 1, weak sounds at a word's end are lost. */
const OF_LAST_FRAME = 0.95;
/** How much of the known noise is kept from frame to frame where nobody speaks. Faster, it takes speech for noise. */
const OF_KNOWN_NOISE = 0.98;
const LEAST_GAIN = 0.12;

/**
 * Takes steady noise off speech at 16,000 samples a second, block after block: the log-spectral amplitude estimator of
 * Ephraim & Malah (IEEE Trans. ASSP 33, 1985) with their decision-directed signal-to-noise ratio (ASSP 32, 1984); the noise
 * is learnt where speech is unlikely. Gives as many samples as it was given, later by one window.
 */
export class Denoiser {
  readonly #window = Float64Array.from({ length: SIZE }, (_, i) => Math.sin((Math.PI * (i + 0.5)) / SIZE));
  readonly #noise = new Float64Array(BINS);
  readonly #before = new Float64Array(BINS);
  readonly #re = new Float64Array(SIZE);
  readonly #im = new Float64Array(SIZE);
  #sound: number[] = [];
  #sum = new Float64Array(SIZE);
  #frames = 0;

  push(block: Float32Array): Float32Array {
    for (const sample of block) this.#sound.push(sample);
    const out: number[] = [];
    let at = 0;
    for (; at + SIZE <= this.#sound.length; at += HOP) {
      this.#frame(at);
      for (let i = 0; i < HOP; i++) out.push((this.#sum[i] as number) / 2);
      this.#sum.copyWithin(0, HOP);
      this.#sum.fill(0, SIZE - HOP);
    }
    this.#sound = this.#sound.slice(at);
    return Float32Array.from(out);
  }

  #frame(at: number): void {
    const re = this.#re;
    const im = this.#im;
    for (let i = 0; i < SIZE; i++) re[i] = (this.#sound[at + i] as number) * (this.#window[i] as number);
    im.fill(0);
    fourier(re, im);
    this.#frames++;
    for (let k = 0; k < BINS; k++) {
      const gain = this.#gain(k, (re[k] as number) ** 2 + (im[k] as number) ** 2);
      re[k] = (re[k] as number) * gain;
      im[k] = (im[k] as number) * gain;
      if (k > 0 && k < SIZE / 2) {
        re[SIZE - k] = re[k] as number;
        im[SIZE - k] = -(im[k] as number);
      }
    }
    fourier(re, im, true);
    for (let i = 0; i < SIZE; i++)
      this.#sum[i] = (this.#sum[i] as number) + (re[i] as number) * (this.#window[i] as number);
  }

  #gain(k: number, power: number): number {
    const known = this.#noise[k] as number;
    if (this.#frames <= FIRST_FRAMES) {
      this.#noise[k] = known + (power - known) / this.#frames;
      return LEAST_GAIN;
    }
    const noise = Math.max(known, 1e-12);
    const posterior = Math.min(power / noise, 1e4);
    const before = (this.#before[k] as number) / noise;
    const prior = Math.max(OF_LAST_FRAME * before + (1 - OF_LAST_FRAME) * Math.max(posterior - 1, 0), 3e-3);
    const v = (prior / (1 + prior)) * posterior;
    const gain = Math.max(LEAST_GAIN, Math.min(1, (prior / (1 + prior)) * Math.exp(0.5 * exponentialIntegral(v))));
    this.#before[k] = gain * gain * power;
    // Speech is likely where the ratio says so; elsewhere the noise follows what is heard.
    const likelihood = Math.exp(Math.min(v, 50)) / (1 + prior);
    const speech = likelihood / (likelihood + 1);
    const keep = OF_KNOWN_NOISE + (1 - OF_KNOWN_NOISE) * speech;
    this.#noise[k] = keep * noise + (1 - keep) * power;
    return gain;
  }
}

/** E1(x), x > 0. Abramowitz & Stegun, Handbook of Mathematical Functions, 5.1.53 and 5.1.56. */
export function exponentialIntegral(x: number): number {
  if (x < 1e-8) return exponentialIntegral(1e-8);
  if (x <= 1)
    return (
      -Math.log(x) -
      0.57721566 +
      x * (0.99999193 + x * (-0.24991055 + x * (0.05519968 + x * (-0.00976004 + x * 0.00107857))))
    );
  const over = x * (x * (x * (x + 8.5733287401) + 18.059016973) + 8.6347608925) + 0.2677737343;
  const under = x * (x * (x * (x + 9.5733223454) + 25.6329561486) + 21.0996530827) + 3.9584969228;
  return (over / under) * (Math.exp(-x) / x);
}

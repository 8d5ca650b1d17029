import { BANDS } from "./spectrum.ts";

/** The frames that tell of a frame's speech: those before it thinner the longer ago, and three that follow, 24 ms. */
export const AROUND = [-8, -5, -3, -2, -1, 0, 1, 2, 3] as const;
export const AHEAD = AROUND[AROUND.length - 1] as number;
export const BEHIND = -AROUND[0];
/** Numbers that go in, that pass between, and that come out. */
export const SIZES = [AROUND.length * BANDS, 256, 128, BANDS] as const;
/** No band is weakened more than this while learning: an ear wants some room left beneath the words. */
export const LEAST = 0.08;

/** One row of the network: `weights[to * from + ...]`, a row of weights for each number that comes out. */
export interface Layer {
  weights: Float32Array;
  biases: Float32Array;
}

/** How far each band of a frame stands above the noise known there, in the network's measure. */
export function aboveNoise(power: Float32Array, noise: Float32Array, into: Float32Array): void {
  for (let band = 0; band < BANDS; band++) {
    const over = Math.log((power[band] as number) + 1e-12) - Math.log((noise[band] as number) + 1e-12);
    into[band] = Math.max(-3, Math.min(12, over)) / 4;
  }
}

/** What comes out of a layer before it is bent: sums of what goes in by weight. */
export function through({ weights, biases }: Layer, from: Float32Array, to: Float32Array): void {
  for (let j = 0; j < to.length; j++) {
    let sum = biases[j] as number;
    const row = j * from.length;
    for (let i = 0; i < from.length; i++) sum += (weights[row + i] as number) * (from[i] as number);
    to[j] = sum;
  }
}

/** What is below nothing is nothing. */
export function bend(values: Float32Array): void {
  for (let j = 0; j < values.length; j++) if ((values[j] as number) < 0) values[j] = 0;
}

/**
 * A small network that says for each band of a frame how much of its sound is speech: it has learnt from speech whose noise
 * was known (`server/ear/learn-noise`). The least mean square of the log gain is what it was taught, since the ear's own
 * measure of sound is the logarithm of bands.
 */
export class SpeechInNoise {
  readonly #layers: readonly Layer[];
  readonly #between: Float32Array[];

  constructor(layers: readonly Layer[]) {
    this.#layers = layers;
    this.#between = SIZES.slice(1).map((size) => new Float32Array(size));
  }

  /** From the measures of the frames around, one after the other, the amplitude gain of each band. */
  gains(around: Float32Array, into: Float32Array): void {
    let from = around;
    for (const [n, layer] of this.#layers.entries()) {
      const to = this.#between[n] as Float32Array;
      through(layer, from, to);
      if (n < this.#layers.length - 1) bend(to);
      from = to;
    }
    for (let band = 0; band < BANDS; band++) into[band] = LEAST ** (1 / (1 + Math.exp(-(from[band] as number))));
  }
}

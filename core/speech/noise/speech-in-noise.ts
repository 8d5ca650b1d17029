import { bend, type Layer, through } from "../learnt/layers.ts";
import type { LayerSize } from "../learnt/written-layers.ts";
import { BANDS } from "./spectrum.ts";

/** The frames that tell of a frame's speech: those before it thinner the longer ago, and three that follow, 24 ms. */
export const AROUND = [-8, -5, -3, -2, -1, 0, 1, 2, 3] as const;
export const AHEAD = AROUND[AROUND.length - 1] as number;
export const BEHIND = -AROUND[0];
/** Numbers that go in, that pass between, and that come out. */
export const SIZES = [AROUND.length * BANDS, 256, 128, BANDS] as const;
export const LAYER_SIZES: readonly LayerSize[] = SIZES.slice(1).map((to, n) => [SIZES[n] as number, to]);
/** No band is weakened more than this while learning: an ear wants some room left beneath the words. */
export const LEAST = 0.08;

/** How far each band of a frame stands above the noise known there, in the network's measure. */
export function aboveNoise(power: Float32Array, noise: Float32Array, into: Float32Array): void {
  for (let band = 0; band < BANDS; band++) {
    const over = Math.log((power[band] as number) + 1e-12) - Math.log((noise[band] as number) + 1e-12);
    into[band] = Math.max(-3, Math.min(12, over)) / 4;
  }
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

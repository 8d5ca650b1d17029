import type { Layer } from "../../../core/speech/learnt/layers.ts";
import { SIZES } from "../../../core/speech/noise/speech-in-noise.ts";
import type { Luck } from "../learning/luck.ts";
import { addRow, addTimes, dot } from "../learning/rows.ts";
import { Weights } from "../learning/weights.ts";

const BATCH = 256;
const RATE = 2e-3;

/** A layer, what came out of it last, and how far that was wrong. */
interface Learning {
  layer: { weights: Weights; biases: Weights };
  out: Float64Array;
  error: Float64Array;
}

/** Learns the network's weights from examples, by back-propagation of the mean square error. */
export class Learner {
  readonly #layers: Learning[];
  readonly #in = new Float64Array(SIZES[0]);
  #steps = 0;
  #inBatch = 0;

  constructor(luck: Luck) {
    this.#layers = SIZES.slice(1).map((to, n) => {
      const from = SIZES[n] as number;
      // He et al. (2015): sums neither grow nor fade from layer to layer
      const weights = new Weights(from * to, { spread: Math.sqrt(2 / from), normal: () => luck.normal() });
      return { layer: { weights, biases: new Weights(to) }, out: new Float64Array(to), error: new Float64Array(to) };
    });
  }

  get layers(): Layer[] {
    return this.#layers.map(({ layer }) => ({
      weights: Float32Array.from(layer.weights.values),
      biases: Float32Array.from(layer.biases.values),
    }));
  }

  /** What goes into the next example: to be filled by who calls. */
  get given(): Float64Array {
    return this.#in;
  }

  /** Mean square error on one example, from which nothing is learnt. */
  errorOn(wanted: Float32Array): number {
    this.#forward();
    const { out } = this.#layers.at(-1) as Learning;
    return out.reduce((sum, value, j) => sum + (value - (wanted[j] as number)) ** 2, 0) / out.length;
  }

  /** Learns from one example; `done` is the share of all learning that lies behind, over which the steps grow small. */
  learn(wanted: Float32Array, done: number): number {
    const error = this.errorOn(wanted);
    const last = this.#layers.at(-1) as Learning;
    for (let j = 0; j < last.out.length; j++) {
      const value = last.out[j] as number;
      last.error[j] = 2 * (value - (wanted[j] as number)) * value * (1 - value);
    }
    this.#backward();
    if (++this.#inBatch === BATCH) {
      this.#step(RATE * 0.5 * (1 + Math.cos(Math.PI * done)) + 1e-5);
      this.#inBatch = 0;
    }
    return error;
  }

  #forward(): void {
    let from: Float64Array = this.#in;
    for (const { layer, out } of this.#layers) {
      const last = out === this.#layers.at(-1)?.out;
      for (let j = 0; j < out.length; j++) {
        const sum = (layer.biases.values[j] as number) + dot(layer.weights.values, j * from.length, from);
        out[j] = last ? 1 / (1 + Math.exp(-sum)) : Math.max(0, sum);
      }
      from = out;
    }
  }

  #backward(): void {
    for (let n = this.#layers.length - 1; n >= 0; n--) {
      const { layer, error } = this.#layers[n] as Learning;
      const below = this.#layers[n - 1];
      const from = below?.out ?? this.#in;
      below?.error.fill(0);
      for (let j = 0; j < error.length; j++) {
        const wrong = error[j] as number;
        if (wrong === 0) continue;
        layer.biases.slopes[j] = (layer.biases.slopes[j] as number) + wrong;
        addTimes(layer.weights.slopes, j * from.length, wrong, from);
        if (below) addRow(below.error, wrong, layer.weights.values, j * from.length);
      }
      // what was below nothing changes nothing
      if (below) for (let i = 0; i < from.length; i++) if (from[i] === 0) below.error[i] = 0;
    }
  }

  #step(rate: number): void {
    this.#steps++;
    for (const { layer } of this.#layers)
      for (const kind of ["weights", "biases"] as const) layer[kind].step(this.#steps, BATCH, rate);
  }
}

import { type Layer, SIZES } from "../../../core/speech/noise/speech-in-noise.ts";
import type { Luck } from "./luck.ts";

const BATCH = 256;
const RATE = 2e-3;
/** Adam, Kingma & Ba (2015), with the figures given there. */
const MEAN_KEPT = 0.9;
const SQUARE_KEPT = 0.999;

/** A layer with what learning needs beside it. */
interface Learning {
  layer: Numbers;
  slope: Numbers;
  mean: Numbers;
  square: Numbers;
  out: Float64Array;
  error: Float64Array;
}

/** As a layer; in the processor's own numbers, which takes half the time. */
interface Numbers {
  weights: Float64Array;
  biases: Float64Array;
}

const empty = (from: number, to: number): Numbers => ({
  weights: new Float64Array(from * to),
  biases: new Float64Array(to),
});

/** Learns the network's weights from examples, by back-propagation of the mean square error. */
export class Learner {
  readonly #layers: Learning[];
  readonly #in = new Float64Array(SIZES[0]);
  #steps = 0;
  #inBatch = 0;

  constructor(luck: Luck) {
    this.#layers = SIZES.slice(1).map((to, n) => {
      const from = SIZES[n] as number;
      const layer = empty(from, to);
      // He et al. (2015): sums neither grow nor fade from layer to layer
      for (let i = 0; i < layer.weights.length; i++) layer.weights[i] = luck.normal() * Math.sqrt(2 / from);
      const beside = { slope: empty(from, to), mean: empty(from, to), square: empty(from, to) };
      return { layer, ...beside, out: new Float64Array(to), error: new Float64Array(to) };
    });
  }

  get layers(): Layer[] {
    return this.#layers.map(({ layer }) => ({
      weights: Float32Array.from(layer.weights),
      biases: Float32Array.from(layer.biases),
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
        const sum = (layer.biases[j] as number) + dot(layer.weights, j * from.length, from);
        out[j] = last ? 1 / (1 + Math.exp(-sum)) : Math.max(0, sum);
      }
      from = out;
    }
  }

  #backward(): void {
    for (let n = this.#layers.length - 1; n >= 0; n--) {
      const { layer, slope, error } = this.#layers[n] as Learning;
      const below = this.#layers[n - 1];
      const from = below?.out ?? this.#in;
      below?.error.fill(0);
      for (let j = 0; j < error.length; j++) {
        const wrong = error[j] as number;
        if (wrong === 0) continue;
        slope.biases[j] = (slope.biases[j] as number) + wrong;
        addTimes(slope.weights, j * from.length, wrong, from);
        if (below) addRow(below.error, wrong, layer.weights, j * from.length);
      }
      // what was below nothing changes nothing
      if (below) for (let i = 0; i < from.length; i++) if (from[i] === 0) below.error[i] = 0;
    }
  }

  #step(rate: number): void {
    this.#steps++;
    const ofMean = 1 - MEAN_KEPT ** this.#steps;
    const ofSquare = 1 - SQUARE_KEPT ** this.#steps;
    for (const { layer, slope, mean, square } of this.#layers)
      for (const kind of ["weights", "biases"] as const) {
        const [values, slopes, means, squares] = [layer[kind], slope[kind], mean[kind], square[kind]];
        for (let i = 0; i < values.length; i++) {
          const g = (slopes[i] as number) / BATCH;
          const m = MEAN_KEPT * (means[i] as number) + (1 - MEAN_KEPT) * g;
          const s = SQUARE_KEPT * (squares[i] as number) + (1 - SQUARE_KEPT) * g * g;
          means[i] = m;
          squares[i] = s;
          values[i] = (values[i] as number) - (rate * (m / ofMean)) / (Math.sqrt(s / ofSquare) + 1e-8);
        }
        slopes.fill(0);
      }
  }
}

// Rows are four numbers at a time: their lengths are multiples of four, and this is where all the time goes.

function dot(rows: Float64Array, at: number, row: Float64Array): number {
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  for (let i = 0; i < row.length; i += 4) {
    a += (rows[at + i] as number) * (row[i] as number);
    b += (rows[at + i + 1] as number) * (row[i + 1] as number);
    c += (rows[at + i + 2] as number) * (row[i + 2] as number);
    d += (rows[at + i + 3] as number) * (row[i + 3] as number);
  }
  return a + b + c + d;
}

function addTimes(rows: Float64Array, at: number, times: number, row: Float64Array): void {
  for (let i = 0; i < row.length; i += 4) {
    rows[at + i] = (rows[at + i] as number) + times * (row[i] as number);
    rows[at + i + 1] = (rows[at + i + 1] as number) + times * (row[i + 1] as number);
    rows[at + i + 2] = (rows[at + i + 2] as number) + times * (row[i + 2] as number);
    rows[at + i + 3] = (rows[at + i + 3] as number) + times * (row[i + 3] as number);
  }
}

function addRow(into: Float64Array, times: number, rows: Float64Array, at: number): void {
  for (let i = 0; i < into.length; i += 4) {
    into[i] = (into[i] as number) + times * (rows[at + i] as number);
    into[i + 1] = (into[i + 1] as number) + times * (rows[at + i + 1] as number);
    into[i + 2] = (into[i + 2] as number) + times * (rows[at + i + 2] as number);
    into[i + 3] = (into[i + 3] as number) + times * (rows[at + i + 3] as number);
  }
}

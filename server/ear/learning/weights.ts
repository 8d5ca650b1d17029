const MEAN_KEPT = 0.9;
const SQUARE_KEPT = 0.999;

/** Weights with what learning needs beside them. In the processor's own numbers, which takes half the time. */
export class Weights {
  readonly values: Float64Array;
  /** what each weight did to the error, summed over the examples since the last step */
  readonly slopes: Float64Array;
  readonly #mean: Float64Array;
  readonly #square: Float64Array;

  /** `spread` is the standard deviation they begin with; without chance they begin as zero. */
  constructor(length: number, begin?: { spread: number; normal: () => number }) {
    this.values = new Float64Array(length);
    if (begin) for (let i = 0; i < length; i++) this.values[i] = begin.spread * begin.normal();
    this.slopes = new Float64Array(length);
    this.#mean = new Float64Array(length);
    this.#square = new Float64Array(length);
  }

  /**
   * Step number `step`, from 1, after `examples` of them. Adam, Kingma & Ba (2015), with the figures given there. `shrink` is
   * the share of `rate` by which each weight is drawn to zero: Loshchilov & Hutter, ICLR 2019.
   */
  step(step: number, examples: number, rate: number, shrink = 0): void {
    const ofMean = 1 - MEAN_KEPT ** step;
    const ofSquare = 1 - SQUARE_KEPT ** step;
    const [values, slopes, means, squares] = [this.values, this.slopes, this.#mean, this.#square];
    for (let i = 0; i < values.length; i++) {
      const g = (slopes[i] as number) / examples;
      const m = MEAN_KEPT * (means[i] as number) + (1 - MEAN_KEPT) * g;
      const s = SQUARE_KEPT * (squares[i] as number) + (1 - SQUARE_KEPT) * g * g;
      means[i] = m;
      squares[i] = s;
      const value = values[i] as number;
      values[i] = value - rate * (m / ofMean / (Math.sqrt(s / ofSquare) + 1e-8) + shrink * value);
    }
    slopes.fill(0);
  }
}

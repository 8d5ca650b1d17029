/** One layer of a network: `weights[to * from + ...]`, a row of weights for each number that comes out. */
export interface Layer {
  weights: Float32Array;
  biases: Float32Array;
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

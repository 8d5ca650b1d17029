import { type Layer, SIZES } from "./speech-in-noise.ts";

/** The signs of a weight, from the most against to the most for: what may stand in a text between backticks. */
const SIGNS = Array.from({ length: 94 }, (_, i) => String.fromCharCode(33 + i))
  .filter((sign) => !"\\`$".includes(sign))
  .join("");
const MOST = (SIGNS.length - 1) / 2;

/** Layers as text: a line for each number that comes out, its bias, the step of its weights, and a sign for each of them. */
export function writeLayers(layers: readonly Layer[]): string {
  return layers
    .flatMap(({ weights, biases }) => {
      const from = weights.length / biases.length;
      return Array.from(biases, (bias, j) => {
        const row = weights.subarray(j * from, (j + 1) * from);
        const step = row.reduce((most, weight) => Math.max(most, Math.abs(weight)), 1e-9) / MOST;
        const signs = Array.from(row, (weight) => SIGNS[Math.round(weight / step) + MOST]).join("");
        return `${bias.toPrecision(6)} ${step.toPrecision(6)} ${signs}`;
      });
    })
    .join("\n");
}

/** Throws where the text is not of layers of these sizes. */
export function readLayers(text: string): Layer[] {
  const lines = text.trim().split("\n");
  const layers = SIZES.slice(1).map((size, n) => {
    const from = SIZES[n] as number;
    const layer = { weights: new Float32Array(size * from), biases: new Float32Array(size) };
    for (let j = 0; j < size; j++) {
      const [bias, step, signs] = (lines.shift() ?? "").split(" ");
      if (signs?.length !== from) throw new Error(`the weights of a network of ${SIZES.join(", ")} are something else`);
      layer.biases[j] = Number(bias);
      for (let i = 0; i < from; i++)
        layer.weights[j * from + i] = (SIGNS.indexOf(signs[i] as string) - MOST) * Number(step);
    }
    return layer;
  });
  return layers;
}

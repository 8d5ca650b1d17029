import type { Layer } from "./layers.ts";

/** The signs of a weight, from the most against to the most for: what may stand in a text between backticks. */
const SIGNS = Array.from({ length: 94 }, (_, i) => String.fromCharCode(33 + i))
  .filter((sign) => !"\\`$".includes(sign))
  .join("");
const MOST = (SIGNS.length - 1) / 2;
/** The place of each sign by its code. */
const VALUES = Array.from({ length: 127 }, (_, code) => SIGNS.indexOf(String.fromCharCode(code)));

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

/** Numbers that go into a layer, and that come out of it. */
export type LayerSize = readonly [from: number, to: number];

/** Throws where the text is not of layers of these sizes. */
export function readLayers(text: string, sizes: readonly LayerSize[]): Layer[] {
  const lines = text.trim().split("\n");
  const layers = sizes.map(([from, to]) => {
    const layer = { weights: new Float32Array(to * from), biases: new Float32Array(to) };
    for (let j = 0; j < to; j++) {
      const [bias, step, signs] = (lines.shift() ?? "").split(" ");
      if (signs?.length !== from)
        throw new Error(`the weights of a network of ${sizes.join(" and ")} are something else`);
      layer.biases[j] = Number(bias);
      for (let i = 0; i < from; i++)
        layer.weights[j * from + i] = ((VALUES[signs.charCodeAt(i)] as number) - MOST) * Number(step);
    }
    return layer;
  });
  return layers;
}

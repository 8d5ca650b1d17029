import { writeFileSync } from "node:fs";
import { writeLayers } from "../../core/speech/learnt/written-layers.ts";
import { BANDS } from "../../core/speech/noise/spectrum.ts";
import { AROUND } from "../../core/speech/noise/speech-in-noise.ts";
import { SAID_LINES } from "../../core/speech/said/index.ts";
import { type Example, exampleOf } from "../ear/learn-noise/examples.ts";
import { Learner } from "../ear/learn-noise/learner.ts";
import { spoken } from "../ear/learn-noise/spoken.ts";
import { Luck } from "../ear/learning/luck.ts";

/**
 * Teaches the network that tells speech from noise anew and writes its weights down: `npx tsx server/commands/learn-noise.ts`,
 * half an hour. Needs flite, espeak-ng and sox. Two numbers make it shorter: how many lines, how many passes.
 */
const LINES = Number(process.argv[2] ?? 1200);
const PASSES = Number(process.argv[3] ?? 8);
/** Kept apart to see what was learnt. */
const APART = 60;
/** Utterances whose frames are shuffled together. */
const TOGETHER = 60;
/** Frames before the noise is known at all teach nothing. */
const FIRST = 20;

const luck = new Luck(7);
const lines = SAID_LINES.filter((line) => line.length > 12 && line.length < 90);
luck.shuffle(lines);
const speech = spoken(lines.slice(0, LINES + APART), luck);
const apart = speech.splice(0, APART).map((one) => exampleOf(one, luck));
const learner = new Learner(luck);

for (let pass = 0; pass < PASSES; pass++) {
  luck.shuffle(speech);
  for (let at = 0; at < speech.length; at += TOGETHER) {
    // mixed anew in each pass: no noise is heard twice
    const examples = speech.slice(at, at + TOGETHER).map((one) => exampleOf(one, luck));
    const done = (pass + at / speech.length) / PASSES;
    for (const frame of shuffled(examples)) learner.learn(frame(), done);
  }
  let error = 0;
  let frames = 0;
  for (const frame of framesOf(apart)) {
    error += learner.errorOn(frame());
    frames++;
  }
  process.stdout.write(
    `pass ${pass + 1} of ${PASSES}: mean square error ${(error / frames).toFixed(5)} on what was kept apart\n`,
  );
}

writeFileSync(
  new URL("../../core/speech/noise/weights.ts", import.meta.url),
  `import type { Layer } from "../learnt/layers.ts";
import { readLayers } from "../learnt/written-layers.ts";
import { LAYER_SIZES } from "./speech-in-noise.ts";

/** What the network has learnt, written here by \`npx tsx server/commands/learn-noise.ts\`. */
const LEARNT = \`
${writeLayers(learner.layers)}
\`;

let layers: Layer[] | undefined;

/** Read when first asked for. */
export function learntLayers(): Layer[] {
  layers ??= readLayers(LEARNT, LAYER_SIZES);
  return layers;
}
`,
);

/** Every frame of the examples: each puts its surroundings before the learner and gives what should come out. */
function* framesOf(examples: readonly Example[]): Generator<() => Float32Array> {
  for (const { above, wanted } of examples) {
    const frames = above.length / BANDS;
    for (let frame = FIRST; frame < frames; frame++)
      yield () => {
        for (const [n, off] of AROUND.entries()) {
          const at = Math.max(0, Math.min(frames - 1, frame + off)) * BANDS;
          learner.given.set(above.subarray(at, at + BANDS), n * BANDS);
        }
        return wanted.subarray(frame * BANDS, (frame + 1) * BANDS);
      };
  }
}

function shuffled(examples: readonly Example[]): (() => Float32Array)[] {
  const frames = [...framesOf(examples)];
  luck.shuffle(frames);
  return frames;
}

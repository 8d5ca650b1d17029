import { writeFileSync } from "node:fs";
import { BEGIN, END } from "../../core/speech/language-model.ts";
import { writeLayers } from "../../core/speech/learnt/written-layers.ts";
import { BEFORE, NextWord, RARE } from "../../core/speech/next-word/next-word.ts";
import { saidTexts } from "../../core/speech/said-texts.ts";
import { Learner } from "../ear/learn-next-word/learner.ts";
import { Luck } from "../ear/learning/luck.ts";

/**
 * Teaches the network of next words anew and writes its weights down: `npx tsx server/commands/learn-next-word.ts`, half an
 * hour, after many new lines in `core/speech/said`. A number makes it shorter: how many passes. With `apart` behind it, one
 * line in thirty is kept apart and nothing is written: it only says how well those are foretold.
 */
const PASSES = Number(process.argv[2] ?? 8);
const APART = process.argv[3] === "apart" ? 30 : Number.POSITIVE_INFINITY;
/** A word that is said less often is rare: too little is known of it. */
const LEAST = 2;

const luck = new Luck(11);
const all = saidTexts().flatMap(({ lines, weight }) =>
  lines.flatMap((line) => Array.from({ length: weight }, () => line)),
);
luck.shuffle(all);
const apart = all.filter((_, n) => n % APART === APART - 1);
const lines = all.filter((_, n) => n % APART !== APART - 1);

const counts = new Map<string, number>();
for (const line of lines) for (const word of [...line, END]) counts.set(word, (counts.get(word) ?? 0) + 1);
const known = [...counts].filter(([, n]) => n >= LEAST).map(([word]) => word);
const words = [BEGIN, RARE, ...known.sort()];
// what never comes next is drawn once, so that it is known never to come
const said = words.map((word) => counts.get(word) ?? 1);
const numbers = new Map(words.map((word, number) => [word, number]));
const rare = numbers.get(RARE) as number;

const examples: { before: Int32Array; word: number }[] = lines.flatMap((line) => {
  const row = [...Array.from({ length: BEFORE }, () => BEGIN), ...line, END].map((word) => numbers.get(word) ?? rare);
  return row
    .slice(BEFORE)
    .map((word, at) => ({ before: Int32Array.from(row.slice(at, at + BEFORE)), word }))
    .filter(({ word }) => word !== rare);
});

const learner = new Learner(said, luck);
for (let pass = 0; pass < PASSES; pass++) {
  luck.shuffle(examples);
  for (const [n, { before, word }] of examples.entries())
    learner.learn(before, word, (pass + n / examples.length) / PASSES);
  process.stdout.write(`pass ${pass + 1} of ${PASSES}: ${told(new NextWord(words, learner.layers))}\n`);
}

if (apart.length === 0)
  writeFileSync(
    new URL("../../core/speech/next-word/weights.ts", import.meta.url),
    `import { readLayers } from "../learnt/written-layers.ts";
import { LAYER_SIZES, NextWord } from "./next-word.ts";

/** The words that the network knows, and what it has learnt, written here by \`npx tsx server/commands/learn-next-word.ts\`. */
const WORDS = \`
${words.join(" ")}
\`;
const LEARNT = \`
${writeLayers(learner.layers)}
\`;

let network: NextWord | undefined;

/** Read when first asked for. */
export function learntNextWord(): NextWord {
  if (!network) {
    const words = WORDS.trim().split(" ");
    network = new NextWord(words, readLayers(LEARNT, LAYER_SIZES(words.length)));
  }
  return network;
}
`,
  );

/** How well lines are foretold: those kept apart, else some of those learnt. */
function told(network: NextWord): string {
  let sum = 0;
  let n = 0;
  for (const line of apart.length > 0 ? apart : lines.slice(0, 700))
    for (const [at, word] of [...line, END].entries()) {
      const chance = network.of(word, line.slice(0, at));
      if (chance === undefined) continue;
      sum += chance;
      n++;
    }
  const before = ["seat", "is"];
  const whole = words.reduce((all, word) => all + Math.exp(network.of(word, before) ?? 0), 0);
  return `perplexity ${Math.exp(-sum / n).toFixed(1)} ${apart.length > 0 ? "of lines kept apart" : "of lines learnt"}; all chances after "${before.join(" ")}" sum to ${whole.toFixed(2)}`;
}

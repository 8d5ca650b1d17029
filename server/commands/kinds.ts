import { writeFileSync } from "node:fs";
import { findKinds } from "../../core/speech/find-kinds.ts";
import { LOGGED_LINES, SAID_LINES } from "../../core/speech/said/index.ts";
import { spokenWords } from "../../core/speech/spoken-words.ts";
import { WORD_CLASSES } from "../../core/speech/word-classes.ts";

/** Finds the kinds of words in what is said anew and writes them down: `npx tsx server/commands/kinds.ts`, some seconds. */

/** Least perplexity on lines that were kept apart, within what a table may weigh. */
const KINDS = 150;
/** A word said less often than this tells nothing of its kind. */
const SAID_OFTEN = 2;

const classOf = new Map(Object.entries(WORD_CLASSES).flatMap(([name, words]) => words.map((word) => [word, name])));
// what is logged counts twice, as in the model
const lines = [...SAID_LINES, ...LOGGED_LINES, ...LOGGED_LINES].map((line) =>
  spokenWords(line).map((word) => classOf.get(word) ?? word),
);
const often = new Map<string, number>();
for (const word of lines.flat()) often.set(word, (often.get(word) ?? 0) + 1);
const kinds = findKinds(lines, KINDS).flatMap((kind) => {
  const words = kind.filter((word) => (often.get(word) ?? 0) >= SAID_OFTEN);
  return words.length > 1 ? [words.flatMap((word) => WORD_CLASSES[word] ?? word).join(" ")] : [];
});
const file = new URL("../../core/speech/kinds.ts", import.meta.url);
writeFileSync(
  file,
  `/**
 * Kinds of words: those that stand in like places in what is said, a kind a line. Found by \`findKinds\` in the lines of
 * \`said\` and written here by \`npx tsx server/commands/kinds.ts\`, since finding them takes too long for a phone.
 */
const FOUND = \`
${kinds.join("\n")}
\`;

/** The words of each kind, by its name. */
export const KINDS: Readonly<Record<string, readonly string[]>> = Object.fromEntries(
  FOUND.trim()
    .split("\\n")
    .map((line, at) => [\`K_\${at}\`, line.split(" ")]),
);
`,
);
process.stdout.write(`${kinds.length} kinds\n`);

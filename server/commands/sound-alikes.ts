import { readFileSync, writeFileSync } from "node:fs";
import { readDictionary, soundsFrom } from "../../core/speech/dictionary.ts";
import { SoundAlikes } from "../../core/speech/find-sound-alikes.ts";
import { SAID_LINES } from "../../core/speech/said/index.ts";
import { OWN_SOUNDS } from "../../core/speech/sounds.ts";
import { spokenWords } from "../../core/speech/spoken-words.ts";
import { COMMAND_ROWS, HAZARD_ROWS } from "../../core/vocabulary/alarms.ts";
import { everydayWords } from "../../core/vocabulary/english.ts";
import { PLAIN } from "../../core/vocabulary/grammar.ts";
import { lexicon } from "../../core/vocabulary/lexicon.ts";
import { TALK } from "../../core/vocabulary/talk.ts";
import { DICTIONARY_FILE } from "../ear/model-files.ts";

/**
 * Finds the everyday words that sound like words of the trade and writes them down:
 * `npx tsx server/commands/sound-alikes.ts`, some seconds.
 */

/** A word said less often than this in our lines is not listened for. */
const SAID_OFTEN = 2;
/** Rows of several words for one: more of them are ever less like it. */
const MOST_ROWS = 6;
/** Small words that are misheard, and are no words of a row by themselves. */
const SMALL = `air least already around both closes closed need needs new old order picture inside outside
  one three six seven eight nine ten twelve`.split(/\s+/);
const FILLERS = new Set("uh uhh um umm er ah oh ohs hm hmm mm mhm ha haha huh eh aw ooh im us wee".split(" "));

const { tradeWords, longest } = lexicon();
const dictionary = readDictionary(readFileSync(DICTIONARY_FILE, "utf8"));
const soundsOf = soundsFrom(dictionary, OWN_SOUNDS);
const often = new Map<string, number>();
for (const word of SAID_LINES.flatMap(spokenWords)) often.set(word, (often.get(word) ?? 0) + 1);
const said = (word: string) => (often.get(word) ?? 0) >= SAID_OFTEN;

/** What hazards and orders to the log are told by. */
const alarmWords = [...HAZARD_ROWS, ...COMMAND_ROWS].flatMap(({ say }) => say.join(" ").match(/[a-z]+/g) ?? []);
/** Whether the word by itself means something in the log. */
function means(word: string): boolean {
  const senses = longest([word], 0)?.senses;
  return (
    senses !== undefined &&
    Object.entries(senses).some(([kind, sense]) => !/^(?:roles|plain)$/.test(kind) && sense !== undefined)
  );
}
const targets = [...often.keys()].filter(
  (word) =>
    /^[a-z]{3,}$/.test(word) &&
    said(word) &&
    !PLAIN.has(word) &&
    (tradeWords.has(word) || means(word) || alarmWords.includes(word)),
);

/** "strain" of a strainer: a word is split where it looks like two. */
const beginnings = targets.flatMap((word) =>
  [...word].map((_, at) => word.slice(0, at)).filter((start) => start.length > 3),
);
const common = new Set(
  [...everydayWords(), ...PLAIN, ...often.keys(), ...beginnings].filter(
    (word) => /^(?:a|i|[a-z]{2,})$/.test(word) && dictionary.has(word) && !FILLERS.has(word),
  ),
);
/** Of a single word any that the dictionary has of the very same sound: a recogniser knows rare ones as well ("heir"). */
const bySound = new Map<string, string[]>();
for (const [word, sounds] of dictionary)
  if (/^[a-z]{3,}$/.test(word)) for (const sound of sounds) bySound.set(sound, [...(bySound.get(sound) ?? []), word]);
const sameSound = (target: string) =>
  soundsOf(target)
    .flatMap((sound) => bySound.get(sound) ?? [])
    .map((heard) => ({ heard, far: 0 }));
const alikes = new SoundAlikes(common, soundsOf);

/**
 * Whether it is worth being a row: words that mean something are left alone ("plug in"), so are small words side by side and,
 * where it only nearly sounds so, what other talk is about ("truck").
 */
function isRow(row: readonly string[], far: number, target: string): boolean {
  const [first = "", ...more] = row;
  if (more.length === 0) return !means(first) && !PLAIN.has(first) && (far === 0 || !TALK.has(first));
  if (far > 0 && means(first) && !PLAIN.has(first) && more.every((word) => PLAIN.has(word))) return false;
  if (row.includes(target) || longest(row, 0)?.end === row.length) return false;
  return row.join("") === target || row.some((word) => !PLAIN.has(word));
}
/** What is often said at a valve is meant as it is heard ("blew it out with air"). */
const OFTEN_MEANT = 12;
const meansIt = (word: string) => tradeWords.has(word) || (often.get(word) ?? 0) >= OFTEN_MEANT;
/** "leak" is no mishearing of "leaks": a form of the same word is left as it is. */
const stem = (word: string) => word.replace(/(?:e?d|e?s|e?r|ing|e?rs)$/, "");
const isFormOf = (heard: string, target: string) => stem(heard) === stem(target);
/** How often the rarest word of a row is said: of rows that sound the same, the one with the commonest words is heard. */
const rarest = (row: readonly string[]) => Math.min(...row.map((word) => often.get(word) ?? 0));

const found = [...new Set([...targets, ...SMALL])].sort().flatMap((target) => {
  const rows = [...alikes.of(soundsOf(target)), ...sameSound(target).filter(({ heard }) => !common.has(heard))]
    .map(({ heard, far }) => ({ row: heard.split(" "), far }))
    .filter(({ row, far }) => row[0] !== target && isRow(row, far, target) && (far === 0 || !SMALL.includes(target)))
    .sort((a, b) => a.far - b.far || rarest(b.row) - rarest(a.row));
  // one everyday word that is a phone apart, where the word is long enough to be told by the rest
  const near = SMALL.includes(target)
    ? []
    : alikes
        .of(soundsOf(target), true)
        .filter(({ heard }) => !heard.includes(" ") && heard.length > 2 && !TALK.has(heard) && !meansIt(heard))
        .map(({ heard, far }) => ({ row: [heard], far }))
        .filter(({ row, far }) => row[0] !== target && isRow(row, far, target) && !isFormOf(row[0] as string, target))
        .filter(({ row }) => !rows.some((one) => one.row.join(" ") === row[0]))
        .slice(0, MOST_ROWS)
        .map(({ row }) => `~${row[0]}`);
  const single = rows.filter(({ row }) => row.length === 1);
  const several = rows.filter(({ row }) => row.length > 1).slice(0, MOST_ROWS);
  const all = [...[...single, ...several].map(({ row }) => row.join(" ")), ...near];
  return all.length > 0 ? [`${target}: ${all.join(", ")}`] : [];
});
/** As many words a line as are read at a glance. */
const WIDTH = 120;
const lines: string[] = [];
for (const one of found) {
  const last = lines.at(-1);
  if (last !== undefined && last.length + one.length + 2 <= WIDTH) lines[lines.length - 1] = `${last}; ${one}`;
  else lines.push(one);
}
writeFileSync(
  new URL("../../core/vocabulary/sound-alikes.ts", import.meta.url),
  `/**
 * What a recogniser may write for a word, because it sounds the same or nearly so: the word, then everyday words and rows of
 * them, the nearest first; behind \`~\` what is a phone apart. Found by \`SoundAlikes\` in a pronouncing dictionary and written here by
 * \`npx tsx server/commands/sound-alikes.ts\`; what no dictionary tells is in confusions.ts.
 */
const FOUND = \`
${lines.join("\n")}
\`;

export interface SoundAlikeRow {
  heard: readonly string[];
  mean: string;
  /** a phone apart, and not the same sound */
  near: boolean;
}

/** The rows by the first word heard, the longest first. */
export function soundAlikesByFirst(): Map<string, SoundAlikeRow[]> {
  const byFirst = new Map<string, SoundAlikeRow[]>();
  for (const one of FOUND.trim().split(/; |\\n/)) {
    const [mean = "", rows = ""] = one.split(": ");
    for (const row of rows.split(", ")) {
      const near = row.startsWith("~");
      const heard = row.slice(near ? 1 : 0).split(" ");
      const first = heard[0] as string;
      const all = byFirst.get(first) ?? [];
      byFirst.set(first, all);
      all.push({ heard, mean, near });
    }
  }
  for (const rows of byFirst.values()) rows.sort((a, b) => b.heard.length - a.heard.length);
  return byFirst;
}
`,
);
process.stdout.write(`${found.length} words\n`);

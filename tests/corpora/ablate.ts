import { type Listening, listen } from "../../core/index.ts";
import { emptySession } from "../../core/parse/listening.ts";
import { type Lexicon, lexicon } from "../../core/vocabulary/lexicon.ts";
import { bare, type Case, CORPORA, isLookedAt, loadCases } from "./corpus.ts";

/**
 * What each step of reading brings: the only-scored cases read with one step left out at a time. Prints a table for
 * the contributor guide.
 */
const none = { byFirst: new Map() };
const whole = lexicon();

const ABLATIONS: [string, Lexicon, ((one: Case) => string[])?][] = [
  ["nothing", whole],
  ["without known confusions", { ...whole, confusions: new Map() }],
  ["without matching by sound", { ...whole, tradeWords: new Set() }],
  ["without words known to sound alike", { ...whole, soundAlikes: new Map() }],
  ["without any of these", { ...whole, confusions: new Map(), tradeWords: new Set(), soundAlikes: new Map() }],
  ["without idioms of other talk", { ...whole, idioms: none }],
  ["without undo and amendment", { ...whole, undo: none, amend: none }],
  ["without hazards' own patterns", { ...whole, hazards: none }],
  ["without commands' own patterns", { ...whole, commands: none }],
  ["each phrase by itself (no carry-over)", whole, (one) => one.say.flatMap((text) => read([text], whole))],
];

function read(say: readonly string[], words: Lexicon): string[] {
  let session: Listening = emptySession(words);
  for (const text of say) session = listen(session, text);
  return session.entries.map(bare);
}

const cases = CORPORA.flatMap((name) => loadCases(name)).filter((one) => !isLookedAt(one));
const share = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`;
console.log(
  `| left out | cases wholly right (of ${cases.length}) | chatter that invents (of ${cases.filter((one) => one.entries.length === 0).length}) |`,
);
console.log("| --- | --- | --- |");
for (const [name, words, how] of ABLATIONS) {
  let right = 0;
  let invented = 0;
  for (const one of cases) {
    const got = how ? how(one) : read(one.say, words);
    const want = one.entries.map(bare);
    if (got.length === want.length && got.every((text, at) => text === want[at])) right += 1;
    if (want.length === 0 && got.length > 0) invented += 1;
  }
  console.log(`| ${name} | ${right} (${share(right, cases.length)}) | ${invented} |`);
}

import type { Hazard } from "../shapes/codes.ts";
import { COMMAND_ROWS, HAZARD_ROWS, NO_HAZARD } from "./alarms.ts";
import { byFirstWord, type Opened } from "./first-words.ts";
import { TURNS } from "./grammar.ts";
import { IDIOMS } from "./idioms.ts";
import { Pattern } from "./notation.ts";
import { ASIDES, CALLS } from "./talk.ts";

/** Patterns found by their first word. */
export interface PatternIndex<Code> {
  byFirst: Map<string, Opened<{ pattern: Pattern; code: Code }>>;
}

function index<Code>(rows: readonly { line: string; code: Code }[]): PatternIndex<Code> {
  return { byFirst: byFirstWord(rows.map(({ line, code }) => ({ pattern: new Pattern(line), code }))) };
}

const plainIndex = (lines: readonly string[]) => index(lines.map((line) => ({ line, code: true as const })));

/** The longest pattern that matches at `start`. */
export function matchAt<Code>(
  found: PatternIndex<Code>,
  words: readonly string[],
  start: number,
): { code: Code; end: number } | undefined {
  const opened = found.byFirst.get(words[start] ?? "");
  if (!opened) return undefined;
  let best: { code: Code; end: number } | undefined;
  for (const { pattern, code } of opened.bySecond.get(words[start + 1] ?? "") ?? opened.free) {
    const end = pattern.match(words, start);
    if (end > start && (!best || end > best.end)) best = { code, end };
  }
  return best;
}

/** Hazards, commands, idioms and the turns of a phrase: lines too free to be looked up word by word. */
export interface PhrasePatterns {
  hazards: PatternIndex<Hazard>;
  noHazard: PatternIndex<true>;
  commands: PatternIndex<string>;
  idioms: PatternIndex<true>;
  calls: PatternIndex<true>;
  undo: PatternIndex<true>;
  amend: PatternIndex<true>;
  note: PatternIndex<true>;
}

/** The patterns of the shipped rows. */
export function phrasePatterns(): PhrasePatterns {
  return {
    hazards: index(HAZARD_ROWS.flatMap((row) => row.say.map((line) => ({ line, code: row.code })))),
    noHazard: plainIndex(NO_HAZARD),
    commands: index(COMMAND_ROWS.flatMap((row) => row.say.map((line) => ({ line, code: row.code as string })))),
    idioms: plainIndex(IDIOMS),
    calls: plainIndex([...CALLS, ...ASIDES]),
    undo: plainIndex(TURNS.undo),
    amend: plainIndex(TURNS.amend),
    note: plainIndex(TURNS.note),
  };
}

import type { Acts, Bound, Condition, Extent, Hazard, Part, Place, Quantity, Service, Severity, Test, Work } from "../shapes/codes.ts";
import { COMMAND_ROWS, HAZARD_ROWS, NO_HAZARD } from "./alarms.ts";
import { CONDITION_ROWS } from "./conditions.ts";
import { CONFUSIONS } from "./confusions.ts";
import { ACTS_ROWS, EXTENT_ROWS, PLACE_ROWS, SERVICE_ROWS, SEVERITY_ROWS } from "./details.ts";
import { GRAMMAR, type GrammarRole, PLAIN, TURNS } from "./grammar.ts";
import { inflect, plurals } from "./inflect.ts";
import { LETTER_SOUNDS, SPELLING_ALPHABET, TAG_GROUPS } from "./letters.ts";
import { BOUND_ROWS, QUANTITY_ROWS, UNIT_ROWS, type UnitRow } from "./measures.ts";
import { Pattern, spell, wordTable } from "./notation.ts";
import { COUNT_WORDS, FRACTIONS, ONES, SCALES, SOUND_NUMBERS, TEENS, TENS } from "./numerals.ts";
import { PART_ROWS } from "./parts.ts";
import { IDIOMS, TALK } from "./talk.ts";
import { TEST_ROWS, VERDICTS } from "./tests.ts";
import { PLACING_VERBS, WORK_ROWS } from "./work.ts";

/** All that one stretch of words can mean; what it does mean is settled by what stands around it. */
export interface Senses {
  part?: Part;
  /** the part's name ends in a plural */
  plural?: boolean;
  condition?: { code: Condition; form: "is" | "has" | "does" }[];
  work?: { code: Work; form: "base" | "past" | "ing" | "noun"; with?: string[] }[];
  placing?: "base" | "past" | "ing";
  place?: Place;
  severity?: Severity;
  extent?: Extent;
  acts?: Acts;
  service?: Service;
  unit?: UnitRow["code"];
  quantity?: Quantity;
  bound?: Bound;
  test?: Test;
  outcome?: { test: Test; result: "pass" | "fail" };
  verdict?: "pass" | "fail";
  /** the bare word "test" */
  testing?: boolean;
  roles?: Set<GrammarRole>;
  plain?: boolean;
}

interface TrieNode {
  next?: Map<string, TrieNode>;
  senses?: Senses;
}

/** Patterns found by their first word. */
export interface PatternIndex<Code> {
  byFirst: Map<string, { pattern: Pattern; code: Code }[]>;
}

/** A known mishearing, ready to be matched. */
export interface ConfusionRow {
  pattern: Pattern;
  mean: string;
  behind?: Set<string>;
  ahead?: Set<string>;
}

/** Behind which "is" may stand, these may too. */
const SAID = ["its", "thats", "looks", "looked", "were", "feels", "got", "gone", "theyre"];

function confusionTable(): Map<string, ConfusionRow[]> {
  const byFirst = new Map<string, ConfusionRow[]>();
  for (const { hear, mean, behind, ahead } of CONFUSIONS) {
    const row: ConfusionRow = {
      pattern: new Pattern(hear),
      mean,
      behind: behind ? new Set([...behind.split(" "), ...(/\bis\b/.test(behind) ? SAID : [])]) : undefined,
      ahead: ahead ? new Set(ahead.split(" ")) : undefined,
    };
    for (const first of row.pattern.firsts) byFirst.set(first, [...(byFirst.get(first) ?? []), row]);
  }
  return byFirst;
}

/** What a stretch that begins with a word may be. */
export const OPENS = { noHazard: 1, hazard: 2, idiom: 4, command: 8, tag: 16, number: 32, turn: 64 } as const;

export interface Lexicon {
  /** the longest stretch known from `start`: its senses and the index after it */
  longest(words: readonly string[], start: number): { senses: Senses; end: number } | undefined;
  hazards: PatternIndex<Hazard>;
  noHazard: PatternIndex<true>;
  commands: PatternIndex<string>;
  idioms: PatternIndex<true>;
  undo: PatternIndex<true>;
  amend: PatternIndex<true>;
  note: PatternIndex<true>;
  /** known mishearings, by the first word heard */
  confusions: Map<string, ConfusionRow[]>;
  /** what a word may open, as OPENS bits: most words open nothing, and need not be asked seven times */
  opens: Map<string, number>;
  /** every single word that some row uses */
  words: Set<string>;
  /** the words that parts, conditions, work, tests and units are made of */
  tradeWords: Set<string>;
}

/** A word a site taught: it means the same as a code the log has. */
export interface TaughtWord {
  say: string;
  as: { part: Part } | { condition: Condition; form?: "is" | "has" | "does" } | { work: Work };
}

function index<Code>(rows: readonly { line: string; code: Code }[]): PatternIndex<Code> {
  const byFirst: PatternIndex<Code>["byFirst"] = new Map();
  for (const { line, code } of rows) {
    const pattern = new Pattern(line);
    for (const first of pattern.firsts) {
      const list = byFirst.get(first);
      if (list) list.push({ pattern, code });
      else byFirst.set(first, [{ pattern, code }]);
    }
  }
  return { byFirst };
}

/** The longest pattern that matches at `start`. */
export function matchAt<Code>(found: PatternIndex<Code>, words: readonly string[], start: number): { code: Code; end: number } | undefined {
  let best: { code: Code; end: number } | undefined;
  for (const { pattern, code } of found.byFirst.get(words[start] ?? "") ?? []) {
    const end = pattern.match(words, start);
    if (end > start && (!best || end > best.end)) best = { code, end };
  }
  return best;
}

const LONG_FORMS: Record<string, string> = wordTable({ wont: "will not", wouldnt: "would not", doesnt: "does not", didnt: "did not", isnt: "is not", wasnt: "was not", arent: "are not", werent: "were not", cant: "can not", havent: "have not", hasnt: "has not", couldnt: "could not" });

/** "won't hold" is also said "will not hold". */
function uncontracted(text: string): string[] {
  const words = text.split(" ");
  const at = words.findIndex((word) => LONG_FORMS[word] !== undefined);
  return at < 0 ? [text] : [text, words.map((word, nth) => (nth === at ? LONG_FORMS[word] : word)).join(" ")];
}

export function buildLexicon(taught: readonly TaughtWord[] = []): Lexicon {
  const root: TrieNode = {};
  const words = new Set<string>();
  let tradeWords = new Set<string>();
  /** orders ("unplug"): too short a form to be known by sound */
  const bases = new Set<string>();

  const put = (text: string, add: (senses: Senses) => void) => {
    let node = root;
    for (const word of text.split(" ")) {
      words.add(word);
      node.next ??= new Map();
      let next = node.next.get(word);
      if (!next) {
        next = {};
        node.next.set(word, next);
      }
      node = next;
    }
    node.senses ??= {};
    add(node.senses);
  };
  const putAll = (lines: readonly string[], add: (senses: Senses) => void) => {
    for (const line of lines) for (const text of spell(line)) for (const variant of uncontracted(text)) if (variant) put(variant, add);
  };
  const putPart = (line: string, code: Part) => {
    for (const name of spell(line)) {
      for (const [nth, form] of plurals(name).entries()) {
        const add = (senses: Senses) => {
          senses.part ??= code;
          if (nth > 0 || /s$/.test(form)) senses.plural ??= true;
        };
        put(form, add);
        // "locknut", "orings": two short words are often written or heard as one
        const pieces = form.split(" ");
        if (pieces.length === 2 && form.length <= 16) put(pieces.join(""), add);
      }
    }
  };
  const putWork = (code: Work, verb: string, along?: string[]) => {
    const forms = inflect(verb);
    for (const form of ["base", "past", "ing"] as const)
      for (const text of forms[form]) {
        if (form === "base" && !text.includes(" ")) bases.add(text);
        put(text, (senses) => {
          senses.work ??= [];
          senses.work.push({ code, form, with: along });
        });
      }
  };

  for (const row of PART_ROWS) for (const line of row.say) putPart(line, row.code);
  for (const row of CONDITION_ROWS)
    for (const form of ["is", "has", "does"] as const)
      putAll(row[form] ?? [], (senses) => {
        senses.condition ??= [];
        if (!senses.condition.some((one) => one.code === row.code && one.form === form)) senses.condition.push({ code: row.code, form });
      });
  for (const row of WORK_ROWS) {
    for (const verb of row.verbs) putWork(row.code, verb);
    for (const { verb, words: along } of row.with ?? []) {
      putWork(row.code, verb, along);
      // said together ("blew out the strainer") the two words are one verb
      const forms = inflect(verb);
      for (const form of ["base", "past", "ing"] as const)
        for (const text of forms[form])
          for (const small of along)
            put(`${text} ${small}`, (senses) => {
              senses.work ??= [];
              senses.work.push({ code: row.code, form });
            });
    }
    putAll(row.nouns ?? [], (senses) => {
      senses.work ??= [];
      senses.work.push({ code: row.code, form: "noun" });
    });
  }
  for (const verb of PLACING_VERBS) {
    const forms = inflect(verb);
    for (const form of ["base", "past", "ing"] as const)
      for (const text of forms[form])
        put(text, (senses) => {
          senses.placing ??= form === "base" && forms.past.includes(text) ? "past" : form;
        });
  }
  for (const text of ["put", "set"]) put(text, (senses) => {
    // the past of these is spelled like the base: what is said at the valve has mostly been done
    senses.placing = "past";
  });
  for (const row of PLACE_ROWS) putAll(row.say, (senses) => { senses.place ??= row.code; });
  for (const row of SEVERITY_ROWS) putAll(row.say, (senses) => { senses.severity ??= row.code; });
  for (const row of EXTENT_ROWS) putAll(row.say, (senses) => { senses.extent ??= row.code; });
  for (const row of ACTS_ROWS) putAll(row.say, (senses) => { senses.acts ??= row.code; });
  for (const row of SERVICE_ROWS) putAll(row.say, (senses) => { senses.service ??= row.code; });
  for (const row of UNIT_ROWS) putAll(row.say, (senses) => { senses.unit ??= row.code; });
  for (const row of QUANTITY_ROWS) putAll(row.say, (senses) => { senses.quantity ??= row.code; });
  for (const row of BOUND_ROWS) putAll(row.say, (senses) => { senses.bound ??= row.code; });
  for (const row of TEST_ROWS) {
    putAll(row.say, (senses) => { senses.test ??= row.code; });
    putAll(row.pass, (senses) => { senses.outcome ??= { test: row.code, result: "pass" }; });
    putAll(row.fail, (senses) => { senses.outcome ??= { test: row.code, result: "fail" }; });
  }
  for (const result of ["pass", "fail"] as const) putAll(VERDICTS[result], (senses) => { senses.verdict ??= result; });
  put("test", (senses) => { senses.testing = true; });
  put("tests", (senses) => { senses.testing = true; });
  tradeWords = new Set([...words].filter((word) => !PLAIN.has(word) && !TALK.has(word) && !bases.has(word)));
  for (const role of Object.keys(GRAMMAR) as GrammarRole[])
    putAll(GRAMMAR[role], (senses) => {
      senses.roles ??= new Set();
      senses.roles.add(role);
    });
  for (const { say, as } of taught) {
    const text = say.toLowerCase().replace(/['’]/g, "").replace(/[^a-z0-9]+/g, " ").trim();
    if (!text) continue;
    if ("part" in as) {
      for (const form of plurals(text)) put(form, (senses) => { senses.part = as.part; });
    } else if ("condition" in as) {
      put(text, (senses) => { senses.condition = [{ code: as.condition, form: as.form ?? "is" }]; });
    } else putWork(as.work, text);
  }

  const patterns = {
    hazards: index(HAZARD_ROWS.flatMap((row) => row.say.map((line) => ({ line, code: row.code })))),
    noHazard: index(NO_HAZARD.map((line) => ({ line, code: true as const }))),
    commands: index(COMMAND_ROWS.flatMap((row) => row.say.map((line) => ({ line, code: row.code as string })))),
    idioms: index(IDIOMS.map((line) => ({ line, code: true as const }))),
    undo: index(TURNS.undo.map((line) => ({ line, code: true as const }))),
    amend: index(TURNS.amend.map((line) => ({ line, code: true as const }))),
    note: index(TURNS.note.map((line) => ({ line, code: true as const }))),
  };
  return {
    longest(list, start) {
      return longestFrom(root, list, start);
    },
    ...patterns,
    confusions: confusionTable(),
    opens: openings(patterns),
    words,
    tradeWords,
  };
}

function openings(patterns: Pick<Lexicon, "hazards" | "noHazard" | "commands" | "idioms" | "undo" | "amend" | "note">): Map<string, number> {
  const opens = new Map<string, number>();
  const add = (words: Iterable<string>, bit: number) => {
    for (const word of words) opens.set(word, (opens.get(word) ?? 0) | bit);
  };
  add(patterns.noHazard.byFirst.keys(), OPENS.noHazard);
  add(patterns.hazards.byFirst.keys(), OPENS.hazard);
  add(patterns.idioms.byFirst.keys(), OPENS.idiom);
  add(patterns.commands.byFirst.keys(), OPENS.command);
  for (const turns of [patterns.undo, patterns.amend, patterns.note]) add(turns.byFirst.keys(), OPENS.turn);
  add(["note"], OPENS.turn);
  add([..."abcdefghijklmnopqrstuvwxyz", "double", ...Object.keys(LETTER_SOUNDS), ...Object.keys(SPELLING_ALPHABET), ...TAG_GROUPS], OPENS.tag);
  add([ONES, TEENS, TENS, SCALES, FRACTIONS, SOUND_NUMBERS, COUNT_WORDS].flatMap((table) => Object.keys(table)), OPENS.number);
  add(["a", "an", "point", "between", "from"], OPENS.number);
  return opens;
}

function longestFrom(node: TrieNode, list: readonly string[], at: number): { senses: Senses; end: number } | undefined {
  const word = list[at];
  if (word === undefined || !node.next) return undefined;
  const exact = node.next.get(word);
  let best = exact ? (longestFrom(exact, list, at + 1) ?? (exact.senses ? { senses: exact.senses, end: at + 1 } : undefined)) : undefined;
  // "body's", "upstream's": what follows the name is its verb, and apostrophes are not heard
  const bare = word.length > 3 && word.endsWith("s") ? node.next.get(word.slice(0, -1)) : word.length > 4 && word.endsWith("in") ? node.next.get(`${word}g`) : undefined;
  if (bare) {
    const other = longestFrom(bare, list, at + 1) ?? (bare.senses ? { senses: bare.senses, end: at + 1 } : undefined);
    if (other && (!best || other.end > best.end)) best = other;
  }
  return best;
}

let shipped: Lexicon | undefined;
/** The lexicon of the shipped rows, made once. */
export function lexicon(): Lexicon {
  shipped ??= buildLexicon();
  return shipped;
}

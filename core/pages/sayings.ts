import { CONDITION_ROWS } from "../vocabulary/conditions.ts";
import { isEnglish } from "../vocabulary/english.ts";
import { inflect } from "../vocabulary/inflect.ts";
import { lexicon } from "../vocabulary/lexicon.ts";
import { matchAt } from "../vocabulary/patterns.ts";
import { TEST_ROWS } from "../vocabulary/tests.ts";
import { WORK_ROWS } from "../vocabulary/work.ts";
import { type NamedRow, TABLES, type WordKind } from "./tables.ts";

/** How many ways of saying it are shown: enough to see the drift, few enough to read. */
const MOST = 4;

/**
 * A few natural ways of saying what a row is for, its name left out. Lines kept for what a recogniser mishears ("red it back") or a thumb shortens ("gskt") are not shown, so a
 * line counts only where all its words are everyday English or stand in some row's name.
 */
export function sayingsOf(kind: WordKind, row: NamedRow): string[] {
  const shown: string[] = [];
  const bare = (words: string) =>
    words
      .toLowerCase()
      .replace(/[^a-z0-9%]/g, "")
      .replace(/s$/, "");
  const told = new Set([bare(row.name)]);
  // a unit or a hazard reads badly without its small words ("bubble minute")
  const whole = kind === "unit" || kind === "hazard";
  for (const saying of braid(linesOf(kind, row).map((line) => formsOf(line, whole)))) {
    if (!isNatural(saying) || told.has(bare(saying))) continue;
    told.add(bare(saying));
    shown.push(withApostrophes(saying));
    if (shown.length === MOST) break;
  }
  return shown;
}

/** The lines of a row, whatever its table calls them. Of work the past forms: what is said most is what was done. */
function linesOf(kind: WordKind, row: NamedRow): string[] {
  if (kind === "condition") {
    const { is = [], has = [], does = [] } = CONDITION_ROWS.find((one) => one.code === row.code) ?? {};
    return braid([is, has, does]);
  }
  if (kind === "work") {
    const { verbs = [], with: along = [] } = WORK_ROWS.find((one) => one.code === row.code) ?? {};
    const past = (verb: string) => inflect(verb).past[0] ?? "";
    return braid([verbs.map(past), along.map(({ verb, words }) => `${past(verb)} ${words[0]}`)]);
  }
  if (kind === "test") {
    const { say = [], pass = [], fail = [] } = TEST_ROWS.find((one) => one.code === row.code) ?? {};
    return braid([say, pass, fail]);
  }
  return "say" in row ? (row as { say: string[] }).say : [];
}

/** One of each list in turn, so that a long list does not crowd out a short one. */
function braid(lists: string[][]): string[] {
  const longest = Math.max(0, ...lists.map((list) => list.length));
  return Array.from({ length: longest }, (_, at) => lists.flatMap((list) => list[at] ?? [])).flat();
}

/**
 * A line with its first choices, once for each word of its first choice; `whole` keeps what may be left out.
 * A line with a gap in it has no form that can be shown.
 */
function formsOf(line: string, whole: boolean): string[] {
  if (line.includes("..")) return [];
  const plain = whole ? line.replace(/\[/g, "").replace(/\]/g, "") : withoutOptional(line);
  const first = /\(([^()]*)\)/.exec(plain);
  const forms = first ? (first[1] ?? "").split("|").map((one) => plain.replace(first[0], one)) : [plain];
  return forms.map((form) => firstChoices(form).replace(/\s+/g, " ").trim());
}

function withoutOptional(line: string): string {
  const less = line.replace(/\[[^[\]]*\]/g, "");
  return less === line ? line : withoutOptional(less);
}

/** From the inside out, for choices stand within choices. */
function firstChoices(line: string): string {
  const less = line.replace(/\(([^()|]*)[^()]*\)/g, "$1");
  return less === line ? line : firstChoices(less);
}

let known: Set<string> | undefined;
function isNatural(saying: string): boolean {
  if (!saying || /^of |\b(\w+) \1\b|\b(?:the|an|a|of|by|at)$/.test(saying)) return false;
  known ??= new Set(
    Object.values(TABLES).flatMap((rows) => rows.flatMap((row) => row.name.toLowerCase().split(/[\s-]+/))),
  );
  const named = known;
  const words = saying.split(" ");
  // what people say about anything but the valve ("take a break") is not read as a word of the log
  if (words.some((_, at) => matchAt(lexicon().idioms, words, at))) return false;
  return words.every((word) => {
    if (MISHEARD.has(word) || (word.length === 1 && word !== "a")) return false;
    return named.has(word) || SHORT_FORMS[word] !== undefined || TRADE.has(word) || isEnglish(word);
  });
}

/** Words of the rows that stand there for what was meant and not heard so. */
const MISHEARD = new Set([
  "oh",
  "clothes",
  "watts",
  "red",
  "reed",
  "pitcher",
  "doubt",
  "owed",
  "inchs",
  "sees",
  "seas",
]);

/** Rows are written without apostrophes, since none are heard; a page is read. */
const SHORT_FORMS: Record<string, string> = {
  wont: "won't",
  cant: "can't",
  dont: "don't",
  doesnt: "doesn't",
  didnt: "didn't",
  isnt: "isn't",
  wasnt: "wasn't",
  couldnt: "couldn't",
  wouldnt: "wouldn't",
  thats: "that's",
  whats: "what's",
  its: "it's",
  im: "I'm",
  ive: "I've",
};
function withApostrophes(saying: string): string {
  return saying.replace(/[a-z]+/g, (word) => SHORT_FORMS[word] ?? word);
}

/** Trade words that no general list of English holds and no name does either. */
const TRADE = new Set(
  (
    "bushing capscrew celsius degreased fahrenheit galling gouged isolated kilopascal kilopascals lever lubed " +
    "milliliter millimeter millimeters newton newtons nick pressurized psig recalibrated reversed sandblasted " +
    "stud studs threadlocker wiredrawn"
  ).split(" "),
);

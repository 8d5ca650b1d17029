/**
 * What is likely said after what: a model of word triples, smoothed after Kneser and Ney (interpolated, one discount an
 * order), over words and over classes of words that stand for one another.
 * Source of the smoothing: Chen & Goodman, "An Empirical Study of Smoothing Techniques for Language Modeling",
 * Harvard TR-10-98, 1998, sections 2.7 and 4.1.6.
 */

/** What stands before the first word, and after the last. */
export const BEGIN = "<s>";
export const END = "</s>";

/** The words before which the next is said: none, one, or two joined by a space. */
export type History = string;
/** Nothing said yet. */
export const START: History = `${BEGIN} ${BEGIN}`;

/** Lines of words, and how much each line of them counts. */
export interface SaidLines {
  lines: readonly (readonly string[])[];
  weight: number;
}

export interface ModelShape {
  /** words that stand for one another, by the name of their class */
  classes: Readonly<Record<string, readonly string[]>>;
  /** words that may be said though no line has them, with their relative weights */
  unsaid: ReadonlyMap<string, number>;
  /** the share of what is said after nothing known that they get together */
  unsaidShare: number;
}

/** Chances of tokens: words, classes and END. */
export interface LanguageModel {
  /** after a history: the chances of what was seen there, what falls back included; `left` falls back to the shorter one */
  after: Map<History, { next: Map<string, number>; left: number }>;
  /** class of a word, where it has one, and its share in that class */
  classes: Map<string, { of: string; share: number }>;
}

/** Taken off each count after one and after two words. Least perplexity on lines that were kept apart. */
const DISCOUNTS = [0, 0.7, 0.8] as const;
/**
 * A history seen less often than this, by its number of words, is not worth a state: the engine goes through all states
 * a hundred times a second, whatever is said; and all of them are weighed afterwards (`said-chances.ts`).
 */
const WORTH_A_STATE = [0, 4, 40] as const;

type Counts = Map<History, Map<string, number>>;

/** What was counted in lines: what came after two words, after one, and how often each word was said. */
export interface Counted {
  triples: Counts;
  pairs: Counts;
  /** chances of tokens after nothing known */
  alone: Map<string, number>;
  classOf: ReadonlyMap<string, string>;
  /** class of a word, where it has one, and its share in that class */
  classes: LanguageModel["classes"];
}

export function counted(texts: readonly SaidLines[], shape: ModelShape): Counted {
  const classOf = new Map<string, string>();
  for (const [name, members] of Object.entries(shape.classes))
    for (const one of members) if (!classOf.has(one)) classOf.set(one, name);
  const { triples, said } = count(texts, classOf);
  const pairs = shortened(triples);
  const alone = chancesAlone(shortened(pairs).get("") ?? new Map(), shape);
  return { triples, pairs, alone, classOf, classes: sharesOf(classOf, said) };
}

/** The model that is searched while sound comes: of the histories only those that are worth a state. */
export function languageModel({ triples, pairs, alone, classes }: Counted): LanguageModel {
  const after: LanguageModel["after"] = new Map([["", { next: alone, left: 0 }]]);
  for (const counts of [pairs, triples])
    for (const [history, row] of counts)
      if (isWorthAState(history, row, after)) after.set(history, chancesAfter(history, row, after));
  return { after, classes };
}

function isWorthAState(history: History, row: Map<string, number>, after: LanguageModel["after"]): boolean {
  if (history === START || history === BEGIN) return true;
  return sum(row) >= WORTH_A_STATE[history.includes(" ") ? 2 : 1] && after.has(shorten(history));
}

function count(texts: readonly SaidLines[], classOf: ReadonlyMap<string, string>) {
  const triples: Counts = new Map();
  const said = new Map<string, number>();
  for (const { lines, weight } of texts)
    for (const line of lines) {
      let history = START;
      for (const word of [...line, END]) {
        add(said, word, weight);
        const token = classOf.get(word) ?? word;
        add(rowOf(triples, history), token, weight);
        history = `${history.slice(history.indexOf(" ") + 1)} ${token}`;
      }
    }
  return { triples, said };
}

/** Kneser and Ney's: after a shorter history a word counts once for each longer one that it was seen after. */
function shortened(longer: Counts): Counts {
  const counts: Counts = new Map();
  for (const [history, row] of longer) {
    const shorter = rowOf(counts, shorten(history));
    // No longer history stands before the first word: it counts as often as it was said.
    for (const [token, n] of row) add(shorter, token, history === START ? n : Math.min(1, n));
  }
  return counts;
}

/** A history without its first word. */
export const shorten = (history: History): History => {
  const gap = history.indexOf(" ");
  return gap < 0 ? "" : history.slice(gap + 1);
};

function chancesAfter(history: History, row: Map<string, number>, after: LanguageModel["after"]) {
  const below = after.get(shorten(history));
  if (!below) throw new Error(`nothing is known after "${shorten(history)}"`);
  const { all, left } = discounted(history, row);
  const next = new Map<string, number>();
  for (const [token, n] of row)
    next.set(token, (n - Math.min(1, n) * discountOf(history)) / all + left * chanceOf(token, shorten(history), after));
  return { next, left };
}

const discountOf = (history: History) => DISCOUNTS[history.includes(" ") ? 2 : 1];

/** How often anything came after a history, and the share of it that is left to the shorter one. */
function discounted(history: History, row: Map<string, number>): { all: number; left: number } {
  const all = sum(row);
  let taken = 0;
  for (const n of row.values()) taken += Math.min(1, n) * discountOf(history);
  return { all, left: taken / all };
}

/**
 * The same chances with no history left out, worked out one by one as they are asked for: for weighing a few ways in which
 * something may have been said, not for searching all of them.
 */
export class EveryHistory {
  readonly #counted: Counted;
  readonly #shares = new Map<History, { all: number; left: number }>();

  constructor(counted: Counted) {
    this.#counted = counted;
  }

  /** The chance of a word, or of END, after the two words before it. */
  chanceOf(word: string, [first, second]: readonly [string, string]): number {
    const { classes } = this.#counted;
    const share = classes.get(word)?.share ?? 1;
    return share * this.#chance(this.#token(word), `${this.#token(first)} ${this.#token(second)}`);
  }

  readonly #token = (word: string) => this.#counted.classOf.get(word) ?? word;

  #chance(token: string, history: History): number {
    const { alone, pairs, triples } = this.#counted;
    if (history === "") return alone.get(token) ?? 0;
    const row = (history.includes(" ") ? triples : pairs).get(history);
    const below = this.#chance(token, shorten(history));
    if (!row) return below;
    let share = this.#shares.get(history);
    if (!share) {
      share = discounted(history, row);
      this.#shares.set(history, share);
    }
    const n = row.get(token) ?? 0;
    return (n - Math.min(1, n) * discountOf(history)) / share.all + share.left * below;
  }
}

/** The chance of a token after a history, falling back as far as it takes. */
export function chanceOf(token: string, history: History, after: LanguageModel["after"]): number {
  const known = after.get(history);
  const chance = known?.next.get(token);
  if (chance !== undefined) return chance;
  if (history === "") return 0;
  return (known?.left ?? 1) * chanceOf(token, shorten(history), after);
}

function chancesAlone(follows: Map<string, number>, shape: ModelShape): Map<string, number> {
  const unsaid = [...shape.unsaid].filter(([word]) => !follows.has(word));
  const share = unsaid.length > 0 ? shape.unsaidShare : 0;
  const all = sum(follows);
  const weights = unsaid.reduce((total, [, weight]) => total + weight, 0);
  const alone = new Map<string, number>();
  for (const [token, n] of follows) alone.set(token, ((1 - share) * n) / all);
  for (const [word, weight] of unsaid) alone.set(word, (share * weight) / weights);
  return alone;
}

/** Within a class each member counts as said twice more than it was: what was said of one is likely of all. */
function sharesOf(classOf: Map<string, string>, said: Map<string, number>): LanguageModel["classes"] {
  const totals = new Map<string, number>();
  const weight = (word: string) => 2 + (said.get(word) ?? 0);
  for (const [word, of] of classOf) add(totals, of, weight(word));
  return new Map([...classOf].map(([word, of]) => [word, { of, share: weight(word) / (totals.get(of) as number) }]));
}

function rowOf(counts: Counts, history: History): Map<string, number> {
  let row = counts.get(history);
  if (!row) {
    row = new Map();
    counts.set(history, row);
  }
  return row;
}

const add = (counts: Map<string, number>, key: string, weight: number) =>
  counts.set(key, (counts.get(key) ?? 0) + weight);

function sum(row: Map<string, number>): number {
  let all = 0;
  for (const n of row.values()) all += n;
  return all;
}

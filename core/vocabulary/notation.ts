/** A table asked with words people say: it holds its own rows and nothing that every object has ("constructor"). */
export function wordTable<Value>(rows: Record<string, Value>): Record<string, Value> {
  return Object.assign(Object.create(null), rows) as Record<string, Value>;
}

/**
 * The notation of the word rows: `(a|b)` either, `[x]` may be left out, `..` up to three other words.
 * `spell` writes a line out in full; `Pattern` is for lines whose full spelling would be too long.
 */
export function spell(line: string): string[] {
  const out = spellFrom(line, 0, false).texts;
  return [...new Set(out.map((text) => text.replace(/\s+/g, " ").trim()))];
}

/** All that some lines spell out, to ask of a text whether it is one of them: a look-up, where a regular expression is a walk. */
export const spellings = (...lines: readonly string[]): ReadonlySet<string> => new Set(lines.flatMap(spell));

function spellFrom(line: string, start: number, nested: boolean): { texts: string[]; end: number } {
  let all: string[] = [];
  let run: string[] = [""];
  let at = start;
  while (at < line.length) {
    const sign = line[at] as string;
    if (sign === "(" || sign === "[") {
      const inner = spellFrom(line, at + 1, true);
      const choices = sign === "[" ? ["", ...inner.texts] : inner.texts;
      run = run.flatMap((head) => choices.map((tail) => head + tail));
      at = inner.end + 1;
    } else if (sign === ")" || sign === "]") {
      if (nested) return { texts: [...all, ...run], end: at };
      at += 1;
    } else if (sign === "|") {
      all = [...all, ...run];
      run = [""];
      at += 1;
    } else {
      let end = at;
      while (end < line.length && !"([)]|".includes(line[end] as string)) end += 1;
      const text = line.slice(at, end);
      run = run.map((head) => head + text);
      at = end;
    }
  }
  return { texts: [...all, ...run], end: at };
}

type Node = { is: "word"; words: Set<string> } | { is: "gap" } | Choice;

interface Choice {
  is: "choice";
  of: Node[][];
  optional: boolean;
  /** the choices by the word they begin with, where each begins with one */
  byFirst?: Map<string, Node[][]>;
}

/** A line matched word by word, without spelling it out. */
export class Pattern {
  readonly #nodes: Node[];
  /** the words it may begin with */
  readonly firsts: Set<string>;
  /** the words that may stand second, where one must: most lines are ruled out by it at a glance */
  readonly seconds: Set<string> | undefined;

  constructor(line: string) {
    // "valve[s]" and "pack[ing]": an ending that may be left out is two words to choose from
    const plain = line.replace(/([a-z]+)\[([a-z]+)\]/g, "($1|$1$2)").replace(/\(([a-z]+) \)/g, "($1)");
    this.#nodes = parse(plain.match(/\.\.|[a-z0-9%/]+|[()[\]|]/g) ?? [], { at: 0 });
    this.firsts = firstsOf(this.#nodes);
    this.seconds = this.#nodes[0]?.is === "word" ? certainFirsts(this.#nodes.slice(1)) : undefined;
  }

  /** The index after the last word matched from `start`, or -1. */
  match(words: readonly string[], start: number): number {
    if (this.seconds && !this.seconds.has(words[start + 1] ?? "")) return -1;
    return matchNodes(this.#nodes, 0, words, start, asIs);
  }
}

function parse(tokens: string[], cursor: { at: number }): Node[] {
  return parseChoices(tokens, cursor)[0] ?? [];
}

function parseChoices(tokens: string[], cursor: { at: number }): Node[][] {
  const choices: Node[][] = [];
  let run: Node[] = [];
  while (cursor.at < tokens.length) {
    const token = tokens[cursor.at] as string;
    cursor.at += 1;
    if (token === ")" || token === "]") break;
    if (token === "|") {
      choices.push(run);
      run = [];
    } else if (token === "(" || token === "[") {
      const of = parseChoices(tokens, cursor);
      const flat = of.every((one) => one.length === 1 && one[0]?.is === "word");
      if (flat && token === "(")
        run.push({ is: "word", words: new Set(of.flatMap((one) => [...(one[0] as { words: Set<string> }).words])) });
      else run.push({ is: "choice", of, optional: token === "[", byFirst: choicesByFirst(of) });
    } else if (token === "..") run.push({ is: "gap" });
    else run.push({ is: "word", words: new Set([token]) });
  }
  choices.push(run);
  return choices;
}

function choicesByFirst(choices: Node[][]): Map<string, Node[][]> | undefined {
  const byFirst = new Map<string, Node[][]>();
  for (const one of choices) {
    if (one[0]?.is !== "word") return undefined;
    for (const word of one[0].words) byFirst.set(word, [...(byFirst.get(word) ?? []), one]);
  }
  return byFirst;
}

function firstsOf(nodes: Node[]): Set<string> {
  const firsts = new Set<string>();
  for (const node of nodes) {
    if (node.is === "gap") continue;
    if (node.is === "word") {
      for (const word of node.words) firsts.add(word);
      return firsts;
    }
    for (const one of node.of) for (const word of firstsOf(one)) firsts.add(word);
    if (!node.optional && node.of.every((one) => one.length > 0)) return firsts;
  }
  return firsts;
}

/** The words a run of nodes must begin with; nothing where it may begin with any, or be left out. */
function certainFirsts(nodes: Node[]): Set<string> | undefined {
  for (const node of nodes) {
    if (node.is === "gap") return undefined;
    if (node.is === "word" || (!node.optional && node.of.every((one) => one.length > 0 && one[0]?.is === "word")))
      return firstsOf(nodes);
    if (node.is === "choice" && !node.of.every((one) => one.length === 0 || one[0]?.is === "word")) return undefined;
  }
  return undefined;
}

const asIs = (end: number) => end;
const GAP = 3;
const NO_CHOICE: Node[][] = [];

function matchNodes(
  nodes: Node[],
  at: number,
  words: readonly string[],
  from: number,
  done: (end: number) => number,
): number {
  const node = nodes[at];
  if (!node) return done(from);
  if (node.is === "word")
    return node.words.has(words[from] ?? "") ? matchNodes(nodes, at + 1, words, from + 1, done) : -1;
  if (node.is === "gap") {
    for (let skip = 0; skip <= GAP && from + skip <= words.length; skip += 1) {
      const end = matchNodes(nodes, at + 1, words, from + skip, done);
      if (end >= 0) return end;
    }
    return -1;
  }
  let best = -1;
  for (const one of node.byFirst ? (node.byFirst.get(words[from] ?? "") ?? NO_CHOICE) : node.of) {
    const end = matchNodes(one, 0, words, from, (next) => matchNodes(nodes, at + 1, words, next, done));
    if (end > best) best = end;
  }
  if (node.optional) {
    const end = matchNodes(nodes, at + 1, words, from, done);
    if (end > best) best = end;
  }
  return best;
}

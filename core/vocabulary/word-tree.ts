import { noSenses, type Senses } from "./senses.ts";

/** What is known of stretches that begin alike, a word a step. */
interface Branch {
  next: Map<string, Branch> | undefined;
  senses: Senses | undefined;
}

/** Stretches of words and what each can mean, found by their words from the first on. */
export class WordTree {
  readonly #root: Branch = { next: undefined, senses: undefined };
  /** every single word that some stretch uses */
  readonly words = new Set<string>();

  /** Adds to what a stretch ("cage o ring") can mean. */
  put(text: string, add: (senses: Senses) => void): void {
    let branch = this.#root;
    for (const word of text.split(" ")) {
      this.words.add(word);
      branch.next ??= new Map();
      let next = branch.next.get(word);
      if (!next) {
        next = { next: undefined, senses: undefined };
        branch.next.set(word, next);
      }
      branch = next;
    }
    branch.senses ??= noSenses();
    add(branch.senses);
  }

  /** What a stretch may begin with, in every form that `longest` takes for it: "body" also as "bodys". */
  get firsts(): string[] {
    const roots = [...(this.#root.next?.keys() ?? [])];
    return roots.flatMap((word) => {
      const forms = [word];
      if (word.length > 2) forms.push(`${word}s`);
      if (word.length > 5 && word.endsWith("ing")) forms.push(word.slice(0, -1));
      return forms;
    });
  }

  /** The longest stretch known from `start`: its senses and the index after it. */
  longest(words: readonly string[], start: number): { senses: Senses; end: number } | undefined {
    return longestFrom(this.#root, words, start);
  }
}

function longestFrom(
  branch: Branch,
  words: readonly string[],
  at: number,
): { senses: Senses; end: number } | undefined {
  const word = words[at];
  if (word === undefined || !branch.next) return undefined;
  const exact = branch.next.get(word);
  let best = exact && endingAt(exact, words, at);
  // "body's", "upstream's": what follows the name is its verb, and apostrophes are not heard
  const bare =
    word.length > 3 && word.endsWith("s")
      ? branch.next.get(word.slice(0, -1))
      : word.length > 4 && word.endsWith("in")
        ? branch.next.get(`${word}g`)
        : undefined;
  if (bare) {
    const other = endingAt(bare, words, at);
    if (other && (!best || other.end > best.end)) best = other;
  }
  return best;
}

const endingAt = (branch: Branch, words: readonly string[], at: number) =>
  longestFrom(branch, words, at + 1) ?? (branch.senses ? { senses: branch.senses, end: at + 1 } : undefined);

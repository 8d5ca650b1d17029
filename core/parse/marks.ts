/** A mark for each chunk that something was made of. */

import type { Unread } from "../shapes/entry.ts";
import { PLAIN, ROLE } from "../vocabulary/grammar.ts";
import { type Chunk, has } from "./chunks.ts";
import type { Mark } from "./listening.ts";
import type { Scene } from "./scene.ts";
import { MOST_WORDS, type Word } from "./words.ts";

/** Step 7: what each stretch of the phrase was taken for, and which words were taken for nothing. */
export function marksOf(scene: Scene, words: readonly Word[]): Mark[] {
  const marks: Mark[] = [];
  for (const chunk of scene.chunks) {
    if (!chunk.used) continue;
    const first = words[chunk.from];
    const last = words[chunk.to - 1];
    if (!first || !last) continue;
    const { as, code } = kindOf(chunk);
    marks.push({ at: [first.from, last.to], as, ...(code ? { code } : {}) });
  }
  return marks;
}

function kindOf(chunk: Chunk): { as: Mark["as"]; code?: string } {
  const { senses } = chunk;
  if (chunk.hazard) return { as: "hazard", code: chunk.hazard };
  if (chunk.command) return { as: "command", code: chunk.command };
  if (chunk.tag) return { as: "valve", code: chunk.tag };
  // "bottom one": a word that stands for a part is no figure
  if (chunk.number?.bareOne && has(chunk, ROLE.one)) return { as: "plain" };
  // "put a new gasket in": the small word, not the inch
  if (!chunk.number && senses.unit && has(chunk, ROLE.prep)) return { as: "plain" };
  if (chunk.number || senses.unit) return { as: "number" };
  if (senses.part) return { as: "part", code: senses.part };
  if (senses.outcome) return { as: "test", code: senses.outcome.test };
  if (senses.test) return { as: "test", code: senses.test };
  if (senses.acts || senses.service) return { as: "valve" };
  if (senses.condition?.[0]) return { as: "condition", code: senses.condition[0].code };
  if (senses.work?.[0]) return { as: "work", code: senses.work[0].code };
  if (senses.placing) return { as: "work" };
  if (senses.place || senses.severity || senses.extent || senses.quantity || senses.bound) return { as: "detail" };
  if (senses.verdict) return { as: "test" };
  return { as: "plain" };
}

/** Words of the small kind, which change nothing said or unsaid. */
const isPlainWord = (word: string) => PLAIN.has(word) || word.length === 1;

/** The words of a phrase that nothing was made of, joined into stretches, and the marks with them. */
export function unreadOf(
  text: string,
  words: readonly Word[],
  covered: readonly boolean[],
  marks: readonly Mark[],
  phrase: number,
  anything: boolean,
): { marks: Mark[]; unread: Unread[] } {
  if (words.length === 0) return { marks: [], unread: text ? [{ phrase, text, at: [0, text.length] }] : [] };
  if (!anything)
    return { marks: [{ at: [0, text.length], as: "unread" }], unread: [{ phrase, text, at: [0, text.length] }] };
  const unread: Unread[] = [];
  const extra: Mark[] = [];
  let open: { from: number; to: number } | undefined;
  const close = () => {
    if (!open) return;
    unread.push({ phrase, text: text.slice(open.from, open.to), at: [open.from, open.to] });
    extra.push({ at: [open.from, open.to], as: "unread" });
    open = undefined;
  };
  for (const [at, word] of words.entries()) {
    if (covered[at]) {
      close();
      continue;
    }
    if (isPlainWord(word.text)) {
      if (!open) extra.push({ at: [word.from, word.to], as: "plain" });
      continue;
    }
    if (open) open.to = word.to;
    else open = { from: word.from, to: word.to };
  }
  close();
  // a phrase too long to be read to its end is kept to its end
  const lastWord = words[words.length - 1];
  if (words.length >= MOST_WORDS && lastWord && lastWord.to < text.length) {
    unread.push({ phrase, text: text.slice(lastWord.to), at: [lastWord.to, text.length] });
    extra.push({ at: [lastWord.to, text.length], as: "unread" });
  }
  // plain words between two unread ones were taken into the unread stretch
  const kept = extra.filter(
    (mark) => mark.as === "unread" || !unread.some((one) => mark.at[0] >= one.at[0] && mark.at[1] <= one.at[1]),
  );
  return { marks: [...marks, ...kept].sort((a, b) => a.at[0] - b.at[0]), unread };
}

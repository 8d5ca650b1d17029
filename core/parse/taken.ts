/** Step 7: what has been taken of one phrase: its entries, and what each of its words was taken for. */

import type { Ask, Entry } from "../shapes/entry.ts";
import type { Mark, PhraseReading } from "./listening.ts";
import { marksOf, unreadOf } from "./marks.ts";
import type { Draft, Scene } from "./scene.ts";
import { without } from "./standing.ts";
import { splitWords, type Word } from "./words.ts";

/** Built up run by run while a phrase is read; it hands out values. */
export class Taken {
  readonly text: string;
  readonly phrase: number;
  readonly words: readonly Word[];
  /** the words as the later steps see them */
  readonly list: readonly string[];
  entries: Entry[] = [];
  /** hazards said, scratched or not */
  readonly alerts: Entry[] = [];
  /** the last run was read with mishearings undone: its entries are less sure */
  respelled = false;
  readonly #covered: boolean[];
  readonly #marks: Mark[] = [];

  constructor(text: string, phrase: number) {
    this.text = text;
    this.phrase = phrase;
    this.words = splitWords(text);
    this.list = this.words.map((word) => word.text);
    this.#covered = this.list.map(() => false);
  }

  /** Words [from, to) are accounted for. */
  cover(from: number, to: number): void {
    for (let at = from; at < to; at += 1) this.#covered[at] = true;
  }

  /** Words [from, to) are accounted for, as one mark. */
  coverAs(from: number, to: number, as: Mark["as"], code: string): void {
    this.cover(from, to);
    const first = this.words[from];
    const last = this.words[to - 1];
    if (first && last) this.#marks.push({ at: [first.from, last.to], as, code });
  }

  /** What each chunk of a run that begins at word `from` was taken for. */
  mark(scene: Scene, from: number): void {
    this.#marks.push(...marksOf(scene, this.words.slice(from)));
  }

  /** Keeps drafts as entries; `span` gives the characters each was said with. */
  keep(drafts: readonly Draft[], span: (draft: Draft) => [number, number]): void {
    for (const draft of drafts) {
      const at = span(draft);
      const entry: Entry = {
        ...draft.entry,
        words: this.text.slice(at[0], at[1]),
        rule: draft.rule,
        confidence: (draft.named ? 0.98 : 0.95) * (this.respelled ? 0.93 : 1),
        phrase: this.phrase,
        at,
      };
      this.entries.push(entry);
      if (entry.type === "hazard") this.alerts.push(entry);
    }
  }

  /** The characters from the first of a draft's chunks to its last, of a run that begins at word `from`. */
  spanOf(draft: Draft, scene: Scene, from: number): [number, number] {
    const chunks = [...draft.chunks, ...(draft.also ?? [])]
      .map((at) => scene.chunks[at])
      .filter((one) => one !== undefined);
    const first = Math.min(...chunks.map((one) => one.from)) + from;
    const last = Math.max(...chunks.map((one) => one.to)) - 1 + from;
    return [this.words[first]?.from ?? 0, this.words[last]?.to ?? this.text.length];
  }

  /** What the phrase did, once it is read to its end. `anything`: it left an entry or changed one. */
  reading(anything: boolean, ask: Ask[], touched: number[]): PhraseReading {
    const { text, words, phrase, alerts } = this;
    const { marks, unread } = unreadOf(text, words, this.#covered, this.#marks, phrase, anything);
    const doubt = unread.length > 0 && this.entries.length > 0 ? 0.93 ** Math.min(unread.length, 3) : 1;
    this.entries = this.entries.map((entry) => ({
      ...without(entry),
      confidence: Number(((entry.confidence ?? 0.95) * doubt).toFixed(3)),
    }));
    return { text, entries: this.entries, unread, ask, marks, touched, alerts };
  }
}

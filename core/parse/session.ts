import type { Ask, Entry } from "../shapes/entry.ts";
import { matchAt, OPENS } from "../vocabulary/patterns.ts";
import { amend } from "./amend.ts";
import { chunk } from "./chunks.ts";
import type { Fragment } from "./fragment.ts";
import {
  countOf,
  Heard,
  type Listening,
  type Mark,
  NO_REFERENCE,
  type PhraseReading,
  type Reference,
  replaceStep,
  type Step,
  type Steps,
  without,
} from "./listening.ts";
import { marksOf, unreadOf } from "./marks.ts";
import { readMeant } from "./meant.ts";
import { ranked } from "./order.ts";
import { numberWaiting, partAnswer, partWanted, unitAnswer, type Waiting, wantsPart } from "./questions.ts";
import { keepAfterTag, lastParts } from "./reference.ts";
import type { Carry, Draft } from "./scene.ts";
import type { Turn } from "./turns.ts";
import { splitWords, type Word } from "./words.ts";

export function take(session: Listening, text: string): Listening {
  const phrase = countOf(session);
  const words = splitWords(text);
  const list = words.map((word) => word.text);
  const working = new Working(session, text, words, list, phrase);
  working.read();
  return working.result();
}

/** The work of reading one phrase: the only place that builds up a step, and it hands out values. */
class Working {
  readonly #session: Listening;
  readonly #text: string;
  readonly #words: Word[];
  readonly #list: string[];
  readonly #phrase: number;
  #steps: Steps | undefined;
  #current: Entry[] = [];
  #reference: Reference;
  readonly #start: Reference;
  #muted: boolean;
  readonly #covered: boolean[];
  readonly #marks: Mark[] = [];
  readonly #touched = new Set<number>();
  readonly #alerts: Entry[] = [];
  readonly #asks: Ask[] = [];
  #turned = false;
  /** the run of words before an amendment, in case nothing was read from it */
  #restFrom: number | undefined;
  #restTo = 0;
  #waiting: Waiting | undefined;
  /** the least sure word-for-word reading of this phrase's runs */
  #respelled = false;

  constructor(session: Listening, text: string, words: Word[], list: string[], phrase: number) {
    this.#session = session;
    this.#text = text;
    this.#words = words;
    this.#list = list;
    this.#phrase = phrase;
    this.#steps = session.steps;
    this.#start = session.steps?.last.after ?? NO_REFERENCE;
    this.#reference = this.#start;
    this.#muted = session.muted;
    this.#covered = list.map(() => false);
  }

  read(): void {
    if (this.#muted) {
      this.#readMuted();
      return;
    }
    if (this.#answered()) return;
    let from = 0;
    let pending: Turn["kind"] | undefined;
    for (const turn of this.#turns()) {
      this.#segment(from, turn.from, pending === "amend");
      from = turn.to;
      if (turn.kind === "undo") {
        this.#undo(turn);
        pending = undefined;
      } else if (turn.kind === "amend") {
        pending = "amend";
        this.#cover(turn.from, turn.to, "command", "amend");
      } else {
        this.#note(turn);
        return;
      }
    }
    this.#segment(from, this.#list.length, pending === "amend");
  }

  /** Between "stop listening" and "start listening" only hazards and the call to listen are heard. */
  #readMuted(): void {
    const fragment = readMeant(this.#list, this.#carry(), this.#session.lexicon);
    const kept = fragment.drafts.filter(
      ({ entry }) => entry.type === "hazard" || (entry.type === "command" && entry.command === "unmute"),
    );
    this.#accept({ ...fragment, drafts: kept }, 0);
    if (kept.some(({ entry }) => entry.type === "command")) this.#muted = false;
  }

  /** A word or two that answer the question asked last. */
  #answered(): boolean {
    if (
      this.#list.length === 0 ||
      this.#list.length > 4 ||
      !(this.#session.waiting || this.#steps?.last.entries.some(wantsPart))
    )
      return false;
    const fragment = readMeant(this.#list, this.#carry(), this.#session.lexicon);
    const { waiting } = this.#session;
    const reading = waiting && unitAnswer(waiting, this.#list, fragment);
    if (reading) {
      this.#cover(0, this.#list.length, "number", "answer");
      this.#push([{ entry: reading, chunks: [], rule: "answer", named: true }], () => [0, this.#text.length]);
      return true;
    }
    const step = this.#steps?.last;
    const after = step && partAnswer(step.entries, this.#list, fragment);
    if (!step || !after) return false;
    this.#cover(0, this.#list.length, "part", "answer");
    this.#touched.add(step.phrase);
    const parts = lastParts(after, step.after);
    this.#steps = { last: { ...step, entries: after.map(without), after: parts }, before: this.#steps?.before };
    this.#reference = { ...this.#reference, parts: parts.parts, recent: parts.recent };
    this.#turned = true;
    return true;
  }

  #turns(): Turn[] {
    const turns: Turn[] = [];
    const { lexicon } = this.#session;
    for (let at = 0; at < this.#list.length; ) {
      if (!((lexicon.opens.get(this.#list[at] as string) ?? 0) & OPENS.turn)) {
        at += 1;
        continue;
      }
      const note =
        matchAt(lexicon.note, this.#list, at) ??
        (this.#list[at] === "note" && this.#noteAlone(at) ? { end: at + 1 } : undefined);
      if (note && note.end < this.#list.length && this.#opensNote(at)) {
        turns.push({ kind: "note", from: at, to: note.end });
        return turns;
      }
      const undo = matchAt(lexicon.undo, this.#list, at);
      const change = matchAt(lexicon.amend, this.#list, at);
      if (undo && undo.end >= (change?.end ?? 0)) {
        turns.push({ kind: "undo", from: at, to: undo.end });
        at = undo.end;
      } else if (change) {
        turns.push({ kind: "amend", from: at, to: change.end });
        at = change.end;
      } else at += 1;
    }
    return turns;
  }

  #noteAlone(at: number): boolean {
    return at === 0 || /^(?:okay|ok|uh|um|and|also|so|well|please)$/.test(this.#list[at - 1] ?? "");
  }

  /** "a note", "no note": the word as a thing is no lead-in. */
  #opensNote(at: number): boolean {
    return !/^(?:a|the|no|my|his|that|this|any|on|of|sticky|left|quick)$/.test(this.#list[at - 1] ?? "");
  }

  #note(turn: Turn): void {
    const first = this.#words[turn.to];
    const last = this.#words[this.#words.length - 1];
    if (!first || !last) return;
    const said = this.#text.slice(first.from).trim().replace(/\.$/, "").toLowerCase();
    this.#cover(turn.from, turn.to, "command", "note");
    this.#cover(turn.to, this.#list.length, "detail", "note");
    this.#push([{ entry: { type: "note", text: said }, chunks: [], rule: "note", named: true }], () => [
      first.from,
      last.to,
    ]);
  }

  #carry(): Carry {
    const here = this.#current.length > 0 ? this.#current : (this.#steps?.last?.entries ?? []);
    return {
      parts: this.#reference.parts,
      recent: this.#reference.recent,
      last: here,
      lastTest: this.#reference.lastTest,
    };
  }

  #segment(from: number, to: number, amends: boolean): void {
    if (to <= from) return;
    if (!amends) {
      this.#restFrom = from;
      this.#restTo = to;
    }
    const words = this.#list.slice(from, to);
    const fragment = readMeant(words, this.#carry(), this.#session.lexicon);
    if (amends && this.#amend(words, fragment, from)) return;
    this.#accept(fragment, from);
  }

  #amend(words: string[], fragment: Fragment, from: number): boolean {
    const inPhrase = this.#current.length > 0;
    // a tag after "correction" renames the valve, however long ago it was named
    const renames = !inPhrase && fragment.drafts.some(({ entry }) => entry.type === "valve" && entry.tag);
    const tagged = renames ? this.#lastTagged() : undefined;
    const step = inPhrase ? undefined : (tagged ?? this.#steps?.last);
    const before = inPhrase ? this.#current : (step?.entries ?? []);
    const after = amend(before, words, fragment);
    if (!after) {
      // "order three, make that four body bolts": nothing stood yet, so the slip is dropped and the rest read on
      return this.#restart(words, from);
    }
    for (const { entry } of fragment.drafts) if (entry.type === "hazard") this.#alerts.push(entry);
    for (const [at, one] of fragment.scene.chunks.entries()) {
      if (one.unknown || one.talk) continue;
      if (!one.senses.plain) fragment.scene.use(at);
      for (let word = one.from; word < one.to; word += 1) this.#covered[from + word] = true;
    }
    this.#marks.push(...marksOf(fragment.scene, this.#words.slice(from)));
    if (inPhrase) this.#current = ranked(after);
    else if (step) {
      this.#touched.add(step.phrase);
      const parts = lastParts(after, step.after);
      this.#steps = replaceStep(this.#steps, step, { ...step, entries: after.map(without), after: parts });
    }
    const named = lastParts(after, this.#reference);
    this.#reference = { ...this.#reference, parts: named.parts, recent: named.recent };
    this.#turned = true;
    return true;
  }

  #restart(words: string[], from: number): boolean {
    if (this.#current.length > 0 || this.#restFrom === undefined) return false;
    const before = chunk(this.#list.slice(this.#restFrom, this.#restTo), this.#session.lexicon);
    const first = chunk(words, this.#session.lexicon)[0];
    const slip = before.at(-1);
    if (!slip || !first || !((slip.number && first.number) || (slip.senses.part && first.senses.part))) return false;
    const start = this.#restFrom;
    const kept = this.#list.slice(start, start + slip.from);
    const fragment = readMeant([...kept, ...words], this.#carry(), this.#session.lexicon);
    if (fragment.drafts.length === 0) return false;
    for (let at = start; at < from; at += 1) this.#covered[at] = true;
    // the words stand apart in the phrase: the entry points at where its last words were said
    this.#push(fragment.drafts, () => [
      this.#words[start]?.from ?? 0,
      this.#words[from + words.length - 1]?.to ?? this.#text.length,
    ]);
    for (let at = from; at < from + words.length; at += 1) this.#covered[at] = true;
    this.#reference = { ...this.#reference, parts: fragment.named, recent: fragment.recent };
    return true;
  }

  #accept(fragment: Fragment, from: number): void {
    for (const one of fragment.scene.chunks) {
      if (!one.used) continue;
      for (let word = one.from; word < one.to; word += 1) this.#covered[from + word] = true;
    }
    this.#marks.push(...marksOf(fragment.scene, this.#words.slice(from)));
    this.#respelled = (fragment.respelled?.length ?? 0) > 0;
    const kept = this.#muted
      ? fragment.drafts.filter(({ entry }) => entry.type === "hazard" || entry.type === "command")
      : fragment.drafts;
    this.#push(kept, (draft) => {
      const chunks = [...draft.chunks, ...(draft.also ?? [])]
        .map((at) => fragment.scene.chunks[at])
        .filter((one) => one !== undefined);
      const first = Math.min(...chunks.map((one) => one.from)) + from;
      const last = Math.max(...chunks.map((one) => one.to)) - 1 + from;
      return [this.#words[first]?.from ?? 0, this.#words[last]?.to ?? this.#text.length];
    });
    const wanted = numberWaiting(fragment, this.#phrase);
    if (wanted && this.#asks.length === 0) {
      this.#asks.push(wanted.ask);
      this.#waiting = wanted.waiting;
    }
    const tested = [...kept].reverse().find(({ entry }) => entry.type === "test")?.entry;
    this.#reference = {
      parts: fragment.named,
      recent: fragment.recent,
      lastTest: tested?.type === "test" ? tested.test : this.#reference.lastTest,
    };
    if (kept.some(({ entry }) => entry.type === "valve" && entry.tag))
      this.#reference = keepAfterTag(kept, this.#reference);
  }

  #push(drafts: readonly Draft[], span: (draft: Draft) => [number, number]): void {
    for (const draft of drafts) {
      const at = span(draft);
      const entry: Entry = {
        ...draft.entry,
        words: this.#text.slice(at[0], at[1]),
        rule: draft.rule,
        confidence: (draft.named ? 0.98 : 0.95) * (this.#respelled ? 0.93 : 1),
        phrase: this.#phrase,
        at,
      };
      this.#current.push(entry);
      if (entry.type === "hazard") this.#alerts.push(entry);
      if (entry.type === "command" && entry.command === "mute") this.#muted = true;
      if (entry.type === "command" && entry.command === "unmute") this.#muted = false;
    }
  }

  #lastTagged(): Step | undefined {
    for (let one = this.#steps; one; one = one.before)
      if (one.last.entries.some((entry) => entry.type === "valve" && entry.tag)) return one.last;
    return undefined;
  }

  #undo(turn: Turn): void {
    this.#cover(turn.from, turn.to, "command", "undo");
    this.#turned = true;
    if (this.#current.length > 0 || this.#spoken(turn.from)) {
      // inside a phrase it drops the words before it
      this.#current = [];
      this.#reference = this.#start;
      for (let at = 0; at < turn.from; at += 1) this.#covered[at] = true;
      return;
    }
    const last = this.#steps?.last;
    if (!last) return;
    this.#touched.add(last.phrase);
    this.#steps = this.#steps?.before;
    this.#reference = last.before;
  }

  /** Something of the trade was said before the undo, though it left no entry. */
  #spoken(to: number): boolean {
    const parts = chunk(this.#list.slice(0, to), this.#session.lexicon);
    return parts.some(
      (one) =>
        one.senses.part !== undefined ||
        (one.senses.condition !== undefined && !one.senses.plain && one.text.length > 4 && !one.senses.verdict),
    );
  }

  #cover(from: number, to: number, as: Mark["as"], code: string): void {
    for (let at = from; at < to; at += 1) this.#covered[at] = true;
    const first = this.#words[from];
    const last = this.#words[to - 1];
    if (first && last) this.#marks.push({ at: [first.from, last.to], as, code });
  }

  result(): Listening {
    const { marks, unread } = unreadOf(
      this.#text,
      this.#words,
      this.#covered,
      this.#marks,
      this.#phrase,
      this.#current.length > 0 || this.#turned,
    );
    const doubt = unread.length > 0 && this.#current.length > 0 ? 0.93 ** Math.min(unread.length, 3) : 1;
    this.#current = this.#current.map((entry) => ({
      ...without(entry),
      confidence: Number(((entry.confidence ?? 0.95) * doubt).toFixed(3)),
    }));
    const which = this.#asks.length === 0 ? partWanted(this.#current, this.#phrase) : undefined;
    if (which) this.#asks.push(which);
    const reading: PhraseReading = {
      text: this.#text,
      entries: this.#current,
      unread,
      ask: this.#asks,
      marks,
      touched: [...this.#touched],
      alerts: this.#alerts,
    };
    const steps =
      this.#current.length > 0
        ? {
            last: { phrase: this.#phrase, entries: this.#current, before: this.#start, after: this.#reference },
            before: this.#steps,
          }
        : this.#rename();
    const session = this.#session;
    const ask = this.#current.length > 0 || this.#turned || this.#asks.length > 0 ? this.#asks : session.ask;
    const from = { ask, muted: this.#muted, waiting: this.#waiting, lexicon: session.lexicon, steps };
    return new Heard(from, session instanceof Heard ? session : undefined, reading);
  }

  /** A phrase that only names a part ("okay, the bonnet bolts") is what "it" means next. */
  #rename(): Steps | undefined {
    const last = this.#steps?.last;
    if (this.#reference === this.#start || this.#reference.parts === this.#start.parts || this.#turned)
      return this.#steps;
    if (!last)
      return {
        last: { phrase: this.#phrase, entries: [], before: this.#start, after: this.#reference },
        before: undefined,
      };
    return { last: { ...last, after: this.#reference }, before: this.#steps?.before };
  }
}

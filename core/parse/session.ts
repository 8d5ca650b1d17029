/** Steps 2 and 6: one phrase heard into a session: its turns, the runs between them, and what they change. */

import type { Ask, Entry } from "../shapes/entry.ts";
import { amend } from "./amend.ts";
import { chunk } from "./chunks.ts";
import type { Fragment } from "./fragment.ts";
import { countOf, Heard, type Listening } from "./listening.ts";
import { readMeant } from "./meant.ts";
import { asNumbers } from "./mishearing.ts";
import { ranked } from "./order.ts";
import { numberWaiting, partAnswer, partWanted, unitAnswer, type Waiting, wantsPart, workWanted } from "./questions.ts";
import { keepAfterTag, lastParts, NO_REFERENCE, type Reference } from "./reference.ts";
import { saidDone } from "./said-done.ts";
import type { Carry, Draft } from "./scene.ts";
import { without } from "./standing.ts";
import { lastTagged, replaceStep, type Steps } from "./steps.ts";
import { Taken } from "./taken.ts";
import { type Turn, turnsOf } from "./turns.ts";

/** Hears the next phrase ("seat's washed out, scratch that, plug's scored"); the session as it stands after it. */
export function take(session: Listening, text: string): Listening {
  const working = new Working(session, text);
  working.read();
  return working.result();
}

/** "oops, scratch that": nothing is said before the undo. */
const STARTLED = /^(?:oops|whoops|wait|hang|dang|shoot|crap|damn|darn|nuts)$/;

/** The work of reading one phrase: the only place that builds up a step, and it hands out values. */
class Working {
  readonly #session: Listening;
  readonly #taken: Taken;
  readonly #list: readonly string[];
  /** what stands of the phrases before, as this one leaves it */
  #steps: Steps | undefined;
  #reference: Reference;
  readonly #start: Reference;
  #muted: boolean;
  readonly #touched = new Set<number>();
  readonly #asks: Ask[] = [];
  #turned = false;
  /** the run of words before an amendment, in case nothing was read from it */
  #restFrom: number | undefined;
  #restTo = 0;
  #waiting: Waiting | undefined;

  constructor(session: Listening, text: string) {
    this.#session = session;
    this.#taken = new Taken(text, countOf(session));
    this.#list = this.#taken.list;
    this.#steps = session.steps;
    this.#start = session.steps?.last.after ?? NO_REFERENCE;
    this.#reference = this.#start;
    this.#muted = session.muted;
  }

  read(): void {
    if (this.#muted) {
      this.#readMuted();
      return;
    }
    if (this.#answered() || this.#doneAlready()) return;
    let from = 0;
    let pending: Turn["kind"] | undefined;
    for (const turn of turnsOf(this.#list, this.#session.lexicon)) {
      this.#segment(from, turn.from, pending === "amend");
      from = turn.to;
      if (turn.kind === "undo") {
        this.#undo(turn);
        pending = undefined;
      } else if (turn.kind === "amend") {
        pending = "amend";
        this.#taken.coverAs(turn.from, turn.to, "command", "amend");
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
      this.#taken.coverAs(0, this.#list.length, "number", "answer");
      this.#keep([{ entry: reading, chunks: [], rule: "answer", named: true }], () => [0, this.#taken.text.length]);
      return true;
    }
    const step = this.#steps?.last;
    const after = step && partAnswer(step.entries, this.#list, fragment);
    if (!step || !after) return false;
    this.#taken.coverAs(0, this.#list.length, "part", "answer");
    this.#touched.add(step.phrase);
    const parts = lastParts(after, step.after);
    this.#steps = { last: { ...step, entries: after.map(without), after: parts }, before: this.#steps?.before };
    this.#reference = { ...this.#reference, parts: parts.parts, recent: parts.recent };
    this.#turned = true;
    return true;
  }

  /** "already did": what was owed is done. */
  #doneAlready(): boolean {
    const said = this.#list.length <= 9 ? saidDone(this.#list, this.#session.lexicon) : undefined;
    if (!said) return false;
    for (let one = this.#steps; one; one = one.before) {
      const step = one.last;
      const owed = (entry: Entry) =>
        entry.type === "work" && entry.status === "needed" && (!said.part || entry.part === said.part);
      if (step.entries.some(owed)) {
        this.#taken.coverAs(0, this.#list.length, "work", "done");
        this.#touched.add(step.phrase);
        const entries = step.entries.map((entry) => (owed(entry) ? ({ ...entry, status: "done" } as Entry) : entry));
        this.#steps = replaceStep(this.#steps, step, { ...step, entries });
        this.#turned = true;
        return true;
      }
      if (!said.part) return false;
    }
    return false;
  }

  /** "note that …": the rest of the phrase, as it was said. */
  #note(turn: Turn): void {
    const { words, text } = this.#taken;
    const first = words[turn.to];
    const last = words[words.length - 1];
    if (!first || !last) return;
    const said = text.slice(first.from).trim().replace(/\.$/, "").toLowerCase();
    this.#taken.coverAs(turn.from, turn.to, "command", "note");
    this.#taken.coverAs(turn.to, this.#list.length, "detail", "note");
    const entry: Entry = { type: "note", text: said };
    this.#keep([{ entry, chunks: [], rule: "note", named: true }], () => [first.from, last.to]);
  }

  #carry(): Carry {
    const here = this.#taken.entries.length > 0 ? this.#taken.entries : (this.#steps?.last?.entries ?? []);
    return {
      parts: this.#reference.parts,
      recent: this.#reference.recent,
      last: here,
      lastTest: this.#reference.lastTest,
      awaits: this.#reference.awaits,
    };
  }

  #segment(from: number, to: number, amends: boolean): void {
    if (to <= from) return;
    if (!amends) {
      this.#restFrom = from;
      this.#restTo = to;
    }
    const said = this.#list.slice(from, to);
    const words = amends ? asNumbers(said, this.#session.lexicon) : said;
    const fragment = readMeant(words, this.#carry(), this.#session.lexicon);
    if (amends && this.#amend(words, fragment, from)) return;
    this.#accept(fragment, from);
  }

  /** Where an entry that an amendment made came from. */
  #amended(from: number, count: number): Pick<Entry, "words" | "rule" | "confidence" | "phrase" | "at"> {
    const { words, text, phrase } = this.#taken;
    const at: [number, number] = [words[from]?.from ?? 0, words[from + count - 1]?.to ?? text.length];
    return { words: text.slice(at[0], at[1]), rule: "amended", confidence: 0.93, phrase, at };
  }

  /** Words with a meaning stood before the amendment, and nothing was made of them. */
  #talked(): boolean {
    if (this.#restFrom === undefined) return false;
    const before = chunk(this.#list.slice(this.#restFrom, this.#restTo), this.#session.lexicon);
    return before.some((one) => one.unknown || one.talk || one.number || (!one.senses.plain && !one.senses.roles));
  }

  #amend(words: string[], fragment: Fragment, from: number): boolean {
    const inPhrase = this.#taken.entries.length > 0;
    // spoken inside a phrase it puts right the words just before: talk put right is still talk
    if (!inPhrase && this.#talked()) return this.#restart(words, from);
    // a tag after "correction" renames the valve, however long ago it was named
    const renames = !inPhrase && fragment.drafts.some(({ entry }) => entry.type === "valve" && entry.tag);
    const tagged = renames ? lastTagged(this.#steps) : undefined;
    const step = inPhrase ? undefined : (tagged ?? this.#steps?.last);
    const before = inPhrase ? this.#taken.entries : (step?.entries ?? []);
    let after = amend(before, words, fragment);
    if (!after) {
      // "order three, make that four body bolts": nothing stood yet, so the slip is dropped and the rest read on
      return this.#restart(words, from);
    }
    for (const { entry } of fragment.drafts) if (entry.type === "hazard") this.#taken.alerts.push(entry);
    for (const [at, one] of fragment.scene.chunks.entries()) {
      if (one.unknown || one.talk) continue;
      if (!one.senses.plain) fragment.scene.use(at);
      this.#taken.cover(from + one.from, from + one.to);
    }
    this.#taken.mark(fragment.scene, from);
    after = after.map((entry) => (entry.rule ? entry : { ...entry, ...this.#amended(from, words.length) }));
    if (inPhrase) this.#taken.entries = ranked(after);
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
    if (this.#taken.entries.length > 0 || this.#restFrom === undefined) return false;
    const before = chunk(this.#list.slice(this.#restFrom, this.#restTo), this.#session.lexicon);
    const first = chunk(words, this.#session.lexicon)[0];
    const slip = before.at(-1);
    if (!slip || !first || !((slip.number && first.number) || (slip.senses.part && first.senses.part))) return false;
    const start = this.#restFrom;
    const kept = this.#list.slice(start, start + slip.from);
    const fragment = readMeant([...kept, ...words], this.#carry(), this.#session.lexicon);
    if (fragment.drafts.length === 0) return false;
    const end = from + words.length;
    this.#taken.cover(start, end);
    // the words stand apart in the phrase: the entry points at where its last words were said
    const { words: said, text } = this.#taken;
    this.#keep(fragment.drafts, () => [said[start]?.from ?? 0, said[end - 1]?.to ?? text.length]);
    this.#reference = { ...this.#reference, parts: fragment.named, recent: fragment.recent };
    return true;
  }

  #accept(fragment: Fragment, from: number): void {
    const { scene } = fragment;
    for (const one of scene.chunks) if (one.used) this.#taken.cover(from + one.from, from + one.to);
    this.#taken.mark(scene, from);
    this.#taken.respelled = (fragment.respelled?.length ?? 0) > 0;
    const kept = this.#muted
      ? fragment.drafts.filter(({ entry }) => entry.type === "hazard" || entry.type === "command")
      : fragment.drafts;
    this.#keep(kept, (draft) => this.#taken.spanOf(draft, scene, from));
    const wanted = numberWaiting(fragment, this.#taken.phrase);
    if (wanted && this.#asks.length === 0) {
      this.#asks.push(wanted.ask);
      this.#waiting = wanted.waiting;
    }
    const undone = workWanted(fragment, this.#taken.phrase);
    if (undone && this.#asks.length === 0) this.#asks.push(undone);
    const tested = [...kept].reverse().find(({ entry }) => entry.type === "test")?.entry;
    this.#reference = {
      parts: fragment.named,
      recent: fragment.recent,
      lastTest: tested?.type === "test" ? tested.test : this.#reference.lastTest,
      awaits: kept.length === 0 && fragment.named !== this.#reference.parts,
    };
    if (kept.some(({ entry }) => entry.type === "valve" && entry.tag))
      this.#reference = keepAfterTag(kept, this.#reference);
  }

  /** Keeps drafts as entries of the phrase; "stop listening" counts from there on. */
  #keep(drafts: readonly Draft[], span: (draft: Draft) => [number, number]): void {
    this.#taken.keep(drafts, span);
    for (const { entry } of drafts) {
      if (entry.type === "command" && entry.command === "mute") this.#muted = true;
      if (entry.type === "command" && entry.command === "unmute") this.#muted = false;
    }
  }

  #undo(turn: Turn): void {
    this.#taken.coverAs(turn.from, turn.to, "command", "undo");
    this.#turned = true;
    if (this.#taken.entries.length > 0 || this.#spoken(turn.from)) {
      // inside a phrase it drops the words before it
      this.#taken.entries = [];
      this.#reference = this.#start.parts.length === 0 ? { ...this.#start, parts: this.#reference.parts } : this.#start;
      this.#taken.cover(0, turn.from);
      return;
    }
    const last = this.#steps?.last;
    if (!last) return;
    this.#touched.add(last.phrase);
    this.#steps = this.#steps?.before;
    // "scratch that, cracked": with no part to go back to, it is still the one just spoken of
    const bare = last.before.parts.length === 0 && turn.to < this.#list.length;
    this.#reference = bare ? { ...last.before, parts: last.after.parts } : last.before;
  }

  /** Something was said before the undo, of the trade or not, though it left no entry. */
  #spoken(to: number): boolean {
    const parts = chunk(this.#list.slice(0, to), this.#session.lexicon);
    return parts.some(
      (one) =>
        (one.unknown && !STARTLED.test(one.text)) ||
        one.talk ||
        one.senses.part !== undefined ||
        (one.senses.condition !== undefined && !one.senses.plain && one.text.length > 4 && !one.senses.verdict),
    );
  }

  /** The session as it stands after the phrase. */
  result(): Listening {
    const { phrase } = this.#taken;
    const spoken = this.#taken.entries.length > 0;
    const which = this.#asks.length === 0 ? partWanted(this.#taken.entries, phrase) : undefined;
    if (which) this.#asks.push(which);
    const reading = this.#taken.reading(spoken || this.#turned, this.#asks, [...this.#touched]);
    const last = { phrase, entries: this.#taken.entries, before: this.#start, after: this.#reference };
    const steps = spoken ? { last, before: this.#steps } : this.#rename();
    const session = this.#session;
    const ask = spoken || this.#turned || this.#asks.length > 0 ? this.#asks : session.ask;
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
        last: { phrase: this.#taken.phrase, entries: [], before: this.#start, after: this.#reference },
        before: undefined,
      };
    return { last: { ...last, after: this.#reference }, before: this.#steps?.before };
  }
}

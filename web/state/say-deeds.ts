import { type Entry, isDoubtful, type PhraseReading, readPhrase, startListening } from "../../core/index.ts";
import { alertSpoken, sayEntries, sayParts } from "../parts/say.ts";
import { cameraOrder } from "../speech/camera-words.ts";
import { meantBy } from "./answers.ts";
import { benchOrder } from "./bench-orders.ts";
import { findValves, valvesHere } from "./find-valves.ts";
import type { Hands } from "./hands.ts";
import type { JobDeeds } from "./job-deeds.ts";
import type { Heard } from "./loop.ts";
import { openQuestion, questionWords } from "./questions.ts";
import { type Answer, answerTo, toDo } from "./saying-back.ts";
import { standingAlert, valveAtHand, whatFollows } from "./seen.ts";
import type { CardPhrase, Settings } from "./state.ts";
import type { Store } from "./store.ts";
import { wordsHere } from "./taught.ts";

type How = CardPhrase["how"];
type Said = Omit<Heard, "text">;

export interface SayDeeds {
  /** says a phrase: an answer, a phrase of the open job, or, with none open, the valve to choose */
  say(text: string, how: How, confidence?: number, sound?: Heard["sound"]): Promise<void>;
  /** what was overheard without being called: only a hazard in it is taken */
  overhear(heard: Heard): Promise<void>;
  /** hears one phrase for whoever asks, and not into the job; the answer ends it unheard */
  hearOnce(take: (text: string) => void): () => void;
  /** answers the open question by touch */
  reply(yes: boolean): Promise<void>;
  undo(): Promise<void>;
  /** asks whether the job may be closed where something was not heard; closes it where nothing is missing */
  askToClose(): Promise<void>;
  startWithStray(): Promise<void>;
}

export function sayDeeds(
  store: Store,
  hands: Hands,
  jobs: JobDeeds,
  set: (settings: Partial<Settings>) => void,
): SayDeeds {
  const answered = (answer: Answer) => hands.turned({ is: "answered", ...answer });

  /** The site of a tag said without one: the chosen site, else the only one that has such a valve. */
  function siteOf(tag: string | undefined): string | undefined {
    const { settings, valves } = store.state();
    if (settings.site) return settings.site;
    const sites = new Set(valves.filter((valve) => valve.tag === tag).map((valve) => valve.site));
    return sites.size === 1 ? [...sites][0] : undefined;
  }

  /** With no job open the words choose the valve. */
  async function choose(text: string, how: How, heard: Said = {}): Promise<void> {
    const reading = readPhrase(text, startListening(wordsHere(store.state())));
    const tag = tagIn(reading.entries);
    const beginSo = tag && isAll(text, reading) ? valvesBeginning(tag) : 0;
    if (!tag && !reading.alerts.length) search(text);
    else if (tag && beginSo) {
      store.happen({ is: "offered", offer: { tag, text, beginSo } });
      ask();
    } else if (tag && isDoubtful(heard.confidence) && !reading.alerts.length) {
      store.happen({ is: "offered", offer: { tag, text } });
      ask();
    } else await open(tag, text, how, heard);
  }

  /** How many valves of the site have a tag that begins so, where none is named just so: "HV-2" may be half of one said. */
  function valvesBeginning(tag: string): number {
    const tags = new Set(valvesHere(store.state()).map((valve) => valve.tag));
    return tags.has(tag) ? 0 : [...tags].filter((one) => one.startsWith(tag)).length;
  }

  /** A part of a tag shows the valves that have it; where there is one alone, it is asked whether that is meant. */
  function search(text: string): void {
    const found = new Set(findValves(valvesHere(store.state()), text).map(({ tag }) => tag));
    const [only] = found;
    if (only && found.size === 1) {
      store.happen({ is: "offered", offer: { tag: only, text: only } });
      ask();
    } else {
      store.happen({ is: "strayed", text });
      const say = found.size ? `${found.size} valves have that. Say more of the tag.` : undefined;
      answered({ mood: found.size ? "doubtful" : "not_understood", say });
    }
  }

  async function open(tag: string | undefined, text: string, how: How, heard: Said = {}): Promise<void> {
    await jobs.start(tag, siteOf(tag));
    // a bare tag is the name of the job; anything more is a phrase of it and must not be lost
    if (text.toUpperCase() !== tag) await inJob(text, how, heard);
  }

  /** Says the open question. */
  function ask(): void {
    const question = openQuestion(store.state());
    if (question) answered({ mood: "doubtful", say: questionWords(question), asks: true });
  }

  async function inJob(text: string, how: How, heard: Said = {}): Promise<void> {
    const state = store.state();
    const ahead = readPhrase(text, state.heard);
    // what is only overheard while muted is not taken down; a hazard and the word that ends it are
    if (state.heard.muted && how === "heard" && !ahead.alerts.length && !isOrder(ahead)) return;
    if (isDoubtful(heard.confidence) && takesBack(ahead)) {
      // taking back in doubt would lose what was heard well
      const told = "Not sure that I heard that. Say it again.";
      answered({ mood: "not_understood", say: state.settings.readBack === "tones" ? undefined : told });
      return;
    }
    const before = toDo(state);
    const added = jobs.add(text, how, heard);
    answer(before);
    await added;
  }

  /** Speaks what became of the last phrase, and does what it commands. */
  function answer(before: readonly string[]): void {
    const state = store.state();
    const reading = state.heard.phrases.at(-1);
    if (!reading) return;
    if (reading.alerts.length) {
      answered({ mood: "hazard", say: alertSpoken(reading.alerts) });
      return;
    }
    // an alert that nobody has seen is not talked over
    if (standingAlert(state)) return;
    const command = reading.entries.find((entry) => entry.type === "command")?.command;
    if (command === "photo") {
      hands.keepsakes.openCamera();
      answered({ mood: "understood", say: state.settings.readBack === "tones" ? undefined : "Say now." });
    } else if (command === "finish") void askToClose(isDoubtful(state.phrases.at(-1)?.confidence));
    else if (command === "read_back") tell(sayEntries(valveAtHand(state).entries));
    else if (command === "missing") tell(sayParts(whatFollows(state).missing));
    else answered(answerTo(state, before));
  }

  /** Whether the words were an order to the open camera: they say nothing of the valve and are no phrase of the job. */
  function tellCamera(words: string, how: How): boolean {
    const { camera, heard } = store.state();
    const order = camera && cameraOrder(words);
    if (!order || (heard.muted && how === "heard")) return false;
    store.happen({ is: "camera", camera: order === "shut" ? undefined : { ...camera, order: { is: order } } });
    return true;
  }

  /** who wants the next phrase heard, in place of the job */
  let taker: ((text: string) => void) | undefined;

  function tookOnce(words: string): boolean {
    const take = taker;
    taker = undefined;
    if (!take) return false;
    listen(false);
    take(words);
    return true;
  }

  /** Opens and shuts the ear as a tap on the pad does, where it is not so already. */
  function listen(on: boolean): void {
    if ((store.state().loop.mic === "shut") === on) hands.turned({ is: "tapped" });
  }

  /** What was asked for is said whatever is said back otherwise, and stands on the screen for who cannot hear it. */
  function tell(text: string): void {
    store.happen({ is: "told", text });
    answered({ mood: "understood", say: text });
  }

  async function askToClose(doubted = false): Promise<void> {
    const state = store.state();
    if (!state.card || standingAlert(state)) return;
    if (!doubted && !whatFollows(state).missing.length) return jobs.close();
    store.happen({ is: "closing", closing: true });
    ask();
  }

  async function confirm(id: string): Promise<void> {
    store.happen({ is: "confirmed", id });
    const phrase = store.state().phrases.find((one) => one.id === id);
    const kept = phrase && jobs.keep(phrase);
    answered(answerTo(store.state()));
    await kept;
  }

  return {
    async say(text, how, confidence, sound) {
      const words = text.trim();
      if (!words || (how === "heard" && tookOnce(words)) || tellCamera(words, how)) return;
      const order = benchOrder(words);
      if (order) {
        set(order.set);
        answered({ mood: "understood", say: order.told });
        return;
      }
      const asked = openQuestion(store.state());
      const meant = meantBy(words, asked, store.state().heard);
      if (meant.is === "right" && asked?.is === "doubt") return confirm(asked.phrase);
      if (meant.is === "close") return jobs.close();
      if (meant.is === "start" && asked?.is === "start") return open(asked.offer.tag, asked.offer.text, how);
      if (meant.is === "go_on") return goOn();
      for (const [at, one] of (meant.is === "phrases" ? meant.texts : [words]).entries()) {
        // said in one breath: the sound belongs to the first
        const heard = { confidence, ...(at === 0 ? { sound } : {}) };
        if (store.state().card) await inJob(one, how, heard);
        else await choose(one, how, heard);
      }
    },
    async overhear({ text, ...said }) {
      const { card, heard } = store.state();
      const context = card ? heard : startListening(wordsHere(store.state()));
      if (readPhrase(text, context).alerts.length)
        await (card ? inJob(text, "heard", said) : choose(text, "heard", said));
    },
    hearOnce(take) {
      taker = take;
      listen(true);
      return () => {
        if (taker !== take) return;
        taker = undefined;
        listen(false);
      };
    },
    async reply(yes) {
      const asked = openQuestion(store.state());
      if (asked?.is === "doubt") return yes ? confirm(asked.phrase) : inJob("scratch that", "typed");
      if (asked?.is === "start" && yes) return open(asked.offer.tag, asked.offer.text, "heard");
      if (asked?.is === "close" && yes) return jobs.close();
      return goOn();
    },
    undo: () => inJob("scratch that", "typed"),
    askToClose: () => askToClose(),
    async startWithStray() {
      const { stray } = store.state();
      await jobs.start(undefined);
      if (stray) await inJob(stray, "typed");
    },
  };

  /** The question is dropped. A closing said and not meant is taken back, or the job would stand as finished. */
  async function goOn(): Promise<void> {
    const state = store.state();
    const finished = state.heard.phrases
      .at(-1)
      ?.entries.some((one) => one.type === "command" && one.command === "finish");
    store.happen({ is: "offered" });
    // not a new one: those that begin so stay on the screen
    if (state.offered?.beginSo) store.happen({ is: "strayed", text: state.offered.tag });
    store.happen({ is: "closing", closing: false });
    if (state.closing && finished) await inJob("scratch that", "typed");
    else answered({ mood: "understood" });
  }
}

function tagIn(entries: readonly Entry[]): string | undefined {
  for (const entry of entries) if (entry.type === "valve" && entry.tag) return entry.tag;
  return undefined;
}

/** The phrase names a valve and says nothing else. */
const isAll = (text: string, { entries, unread }: PhraseReading): boolean =>
  text.trim() !== "" && entries.length === 1 && entries[0]?.type === "valve" && unread.length === 0;

const isOrder = (reading: PhraseReading): boolean => reading.entries.some((entry) => entry.type === "command");

/** The phrase only scratches what stood before it. */
const takesBack = ({ marks, entries, touched }: PhraseReading): boolean =>
  touched.length > 0 && entries.length === 0 && marks.some((mark) => mark.code === "undo");

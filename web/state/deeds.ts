import { type Entry, readPhrase, startListening, type Taught, type TaughtWord, teach } from "../../core/index.ts";
import { alertSpoken, readBack, sayEntries, sayParts, sayPartsShortly } from "../parts/say.ts";
import { cameraOrder } from "../speech/camera-words.ts";
import type { Sound } from "../speech/clip.ts";
import type { KeepsakeDeeds } from "./keepsake-deeds.ts";
import { amendedNow, questionNow, standingAlert, valveAtHand, whatFollows } from "./seen.ts";
import type { CardPhrase, JobCard, KnownValve, Settings } from "./state.ts";
import type { Store } from "./store.ts";
import { type KeptWord, wordsHere } from "./taught.ts";
import { instantHere } from "./time-words.ts";

/** What the deeds need from the rooms that touch the world; main.ts hands them in. */
export interface Hands {
  shelf: {
    keepJob(card: JobCard): Promise<void>;
    keepPhrase(phrase: CardPhrase): Promise<void>;
    markSeen(id: string): Promise<void>;
    closeJob(card: JobCard): Promise<void>;
    setOpenJob(id: string): Promise<void>;
    job(id: string): Promise<{ card: JobCard; phrases: CardPhrase[] } | undefined>;
    keepSettings(settings: Settings): Promise<void>;
    askAgain(): Promise<void>;
    keepTaught(words: KeptWord[]): Promise<void>;
  };
  flush(): void;
  /** sends the words taught and fetches those of the site */
  sendWords(): void;
  /** what is known of a valve, from the server or from this device */
  knowValve(tag: string): Promise<KnownValve | undefined>;
  /** what is done with sound and photographs */
  keepsakes: KeepsakeDeeds;
  speak(text: string): void;
  quiet(): void;
  openEar(): void;
  closeEar(): void;
  newId(): string;
  now(): Date;
  /** changes over to the newer page that waits */
  takeNewer(): void;
}

export interface Deeds {
  keepsakes: KeepsakeDeeds;
  /** says a phrase: into the open job, or, with none open, to choose the valve */
  say(text: string, how: "typed" | "heard", confidence?: number, sound?: Promise<Sound | undefined>): Promise<void>;
  start(tag: string | undefined, site?: string): Promise<void>;
  /** starts a job without a tag and says the words that named none */
  startWithStray(): Promise<void>;
  undo(): Promise<void>;
  seenAlert(): Promise<void>;
  close(): Promise<void>;
  reopen(): Promise<void>;
  keepAgain(id: string): Promise<void>;
  askAgain(): Promise<void>;
  talk(on: boolean): void;
  set(settings: Partial<Settings>): void;
  dropStray(): void;
  takeNewer(): void;
  /** teaches a word of this site; it is read from then on, in what was said before too */
  teach(say: string, as: TaughtWord["as"]): Promise<Taught>;
  unteach(word: KeptWord): Promise<void>;
  /** after a job was taken up again: fetches what is known of its valve */
  recall(): Promise<void>;
}

export function deeds(store: Store, hands: Hands): Deeds {
  const problemWords = (problem: unknown) => (problem instanceof Error ? problem.message : String(problem));

  /** After the last phrase of the job, so that a clock set back does not change the order of what was said. */
  function instantAfterLast(): string {
    const last = store.state().phrases.at(-1);
    const now = hands.now();
    return instantHere(last && Date.parse(last.saidAt) >= now.getTime() ? new Date(Date.parse(last.saidAt) + 1) : now);
  }

  async function keep(phrase: CardPhrase): Promise<void> {
    try {
      await hands.shelf.keepPhrase(phrase);
      store.happen({ is: "on_device", id: phrase.id });
      hands.flush();
    } catch (problem) {
      store.happen({ is: "not_on_device", id: phrase.id, problem: problemWords(problem) });
      // the page may still hold it for the server: then it is not lost yet
      hands.flush();
    }
  }

  async function learn(tag: string | undefined): Promise<void> {
    if (!tag || store.state().known?.tag === tag) return;
    const known = await hands.knowValve(tag);
    // the valve may have changed while the server was asked
    if (known && valveAtHand(store.state()).tag === tag) store.happen({ is: "knew", known });
  }

  async function start(tag: string | undefined, site = store.state().settings.site): Promise<void> {
    const card: JobCard = { id: hands.newId(), tag, site, startedAt: instantHere(hands.now()) };
    store.happen({ is: "started", card });
    try {
      await hands.shelf.keepJob(card);
      hands.flush();
    } catch (problem) {
      store.happen({ is: "noticed", notice: `This device does not keep the job: ${problemWords(problem)}` });
    }
    await learn(tag);
  }

  /** The site of a tag said without one: the chosen site, else the only one that has such a valve. */
  function siteOf(tag: string | undefined): string | undefined {
    const { settings, valves } = store.state();
    if (settings.site) return settings.site;
    const sites = new Set(valves.filter((valve) => valve.tag === tag).map((valve) => valve.site));
    return sites.size === 1 ? [...sites][0] : undefined;
  }

  async function sayInJob(
    text: string,
    how: "typed" | "heard",
    confidence?: number,
    sound?: Promise<Sound | undefined>,
  ): Promise<void> {
    const { card, heard } = store.state();
    if (!card) return;
    if (heard.muted && how === "heard") {
      // what is only overheard while muted is not taken down; a hazard and the word that ends it are
      const ahead = readPhrase(text, heard);
      if (!ahead.alerts.length && !ahead.entries.some((entry) => entry.type === "command")) return;
    }
    const phrase: CardPhrase = {
      id: hands.newId(),
      job: card.id,
      text,
      saidAt: instantAfterLast(),
      how,
      confidence,
      delivery: "keeping",
    };
    store.happen({ is: "said", phrase });
    const kept = keep(phrase);
    answer();
    await kept;
    // the words come first: their sound may take its time
    if (sound) void hands.keepsakes.keepClip(phrase, sound);
    await learn(valveAtHand(store.state()).tag);
  }

  /** Speaks what became of the last phrase, and does what it commands. */
  function answer(): void {
    const state = store.state();
    const reading = state.heard.phrases.at(-1);
    if (!reading) return;
    if (reading.alerts.length) {
      hands.speak(alertSpoken(reading.alerts));
      return;
    }
    // an alert that nobody has seen is not talked over
    if (standingAlert(state)) return;
    const command = reading.entries.find((entry) => entry.type === "command")?.command;
    if (command === "photo") {
      hands.keepsakes.openCamera();
      if (state.settings.readBack) hands.speak("Say now.");
    } else if (command === "finish") void close();
    else if (command === "read_back") hands.speak(sayEntries(valveAtHand(state).entries));
    else if (command === "missing") hands.speak(sayParts(whatFollows(state).missing));
    else if (state.settings.readBack) hands.speak(readBack(reading, questionNow(state), amendedNow(state)));
  }

  /** Whether the words were an order to the open camera: they say nothing of the valve and are no phrase of the job. */
  function tellCamera(words: string, how: "typed" | "heard"): boolean {
    const { camera, heard } = store.state();
    const order = camera && cameraOrder(words);
    if (!order || (heard.muted && how === "heard")) return false;
    store.happen({ is: "camera", camera: order === "shut" ? undefined : { ...camera, order: { is: order } } });
    return true;
  }

  async function close(): Promise<void> {
    const state = store.state();
    const { card } = state;
    if (!card || standingAlert(state)) return;
    const { missing } = whatFollows(state);
    if (state.settings.readBack) hands.speak(`${valveAtHand(state).tag ?? "Job"} closed. ${sayPartsShortly(missing)}`);
    store.happen({ is: "closed", at: instantHere(hands.now()), missing });
    const closed = store.state().closed;
    if (closed) await hands.shelf.closeJob({ ...closed, tag: card.tag });
    hands.flush();
  }

  async function keepTaught(words: KeptWord[]): Promise<void> {
    store.happen({ is: "taught", words });
    try {
      await hands.shelf.keepTaught(words);
    } catch (problem) {
      store.happen({ is: "noticed", notice: `This device does not keep the word: ${problemWords(problem)}` });
    }
    hands.sendWords();
  }

  return {
    keepsakes: hands.keepsakes,
    start,
    close,
    async say(text, how, confidence, sound) {
      const words = text.trim();
      if (!words) return;
      if (tellCamera(words, how)) return;
      if (store.state().card) return sayInJob(words, how, confidence, sound);
      const reading = readPhrase(words, startListening(wordsHere(store.state())));
      const tag = tagIn(reading.entries);
      if (!tag && !reading.alerts.length) {
        store.happen({ is: "strayed", text: words });
        return;
      }
      await start(tag, siteOf(tag));
      // a bare tag is the name of the job; anything more is a phrase of it and must not be lost
      if (words.toUpperCase() !== tag) await sayInJob(words, how, confidence, sound);
    },
    async startWithStray() {
      const { stray } = store.state();
      await start(undefined);
      if (stray) await sayInJob(stray, "typed");
    },
    async undo() {
      await sayInJob("scratch that", "typed");
    },
    async seenAlert() {
      const alert = standingAlert(store.state());
      if (!alert) return;
      hands.quiet();
      store.happen({ is: "alert_seen", id: alert.phrase.id });
      await hands.shelf.markSeen(alert.phrase.id);
    },
    async reopen() {
      const { closed } = store.state();
      const kept = closed && (await hands.shelf.job(closed.id));
      if (!kept) return;
      store.happen({ is: "restored", ...kept });
      await hands.shelf.setOpenJob(kept.card.id);
      await hands.keepsakes.recall();
      await learn(valveAtHand(store.state()).tag);
    },
    async keepAgain(id) {
      const phrase = store.state().phrases.find((one) => one.id === id);
      if (phrase) await keep(phrase);
    },
    async askAgain() {
      await hands.shelf.askAgain();
      hands.flush();
    },
    talk(on) {
      if (on) hands.openEar();
      else hands.closeEar();
    },
    set(settings) {
      store.happen({ is: "set", settings });
      if (settings.readBack === false) hands.quiet();
      // another site has words of its own
      if ("site" in settings) hands.sendWords();
      hands.shelf.keepSettings(store.state().settings).catch((problem: unknown) => {
        store.happen({ is: "noticed", notice: `This device does not keep the setting: ${problemWords(problem)}` });
      });
    },
    dropStray() {
      store.happen({ is: "strayed" });
    },
    takeNewer: hands.takeNewer,
    async teach(say, as) {
      const { taught, settings } = store.state();
      const answer = teach(say, as, wordsHere(store.state()));
      if (answer.ok) {
        const at = instantHere(hands.now());
        await keepTaught([...taught, { ...answer.value, site: settings.site, id: hands.newId(), at }]);
      }
      return answer;
    },
    async unteach(word) {
      const { taught } = store.state();
      // the server never took it: nobody else needs to be told
      if (word.problem || !word.id) await keepTaught(taught.filter((one) => one !== word));
      else await keepTaught(taught.map((one) => (one === word ? { ...one, withdrawn: true, sent: false } : one)));
    },
    async recall() {
      await hands.keepsakes.recall();
      await learn(valveAtHand(store.state()).tag);
    },
  };
}

function tagIn(entries: Entry[]): string | undefined {
  for (const entry of entries) if (entry.type === "valve" && entry.tag) return entry.tag;
  return undefined;
}

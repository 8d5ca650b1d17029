/// <reference lib="webworker" />
import createModule from "soundswallower";
import { readDictionary, soundsFrom } from "../../../core/speech/dictionary.ts";
import { earWords, NO_SITE, type SiteWords } from "../../../core/speech/ear-words.ts";
import type { EngineModule } from "../../../core/speech/engine.ts";
import { Hearing } from "../../../core/speech/hearing.ts";
import { OWN_SOUNDS } from "../../../core/speech/sounds.ts";
import { TalkSpotter } from "../../../core/speech/talk-spans.ts";
import { type EarFiles, earFiles } from "./ear-files.ts";
import type { FromEar, ToEar, TurnTells } from "./messages.ts";
import { PhraseListener } from "./phrase-listener.ts";

/** The ear's own thread: files, engine, words, and every phrase that is said. The page only hears what came of it. */

const worker = self as unknown as DedicatedWorkerGlobalScope;
const tell = (message: FromEar, moved: Transferable[] = []) => worker.postMessage(message, moved);

/** Told to stop while no sound comes, it ends all the same. */
const STOP_WAIT_MS = 800;

interface Loaded {
  files: EarFiles;
  module: EngineModule;
  soundsOf: (word: string) => readonly string[];
}

let site: SiteWords = NO_SITE;
/** the site's words that the hearing has */
let taught: SiteWords | undefined;
let loading: Promise<Loaded | undefined> | undefined;
let loaded: Loaded | undefined;
let hearing: Hearing | undefined;
let listener: PhraseListener | undefined;
let source: MessagePort | undefined;
let rate = 48_000;
/** it keeps what it learnt of the room from one recognition to the next */
let spotter = new TalkSpotter();

worker.addEventListener("message", ({ data }: MessageEvent<ToEar>) => {
  switch (data.to) {
    case "load":
      void load();
      break;
    case "words":
      site = data.site;
      rebuild();
      break;
    case "sound":
      rate = data.rate;
      spotter = new TalkSpotter();
      listenTo(data.port);
      break;
    case "listen":
      void load().then(() => listen(data.turn, data.interim));
      break;
    case "stop": {
      const stopped = listener;
      stopped?.stop();
      setTimeout(() => stopped?.cut(), STOP_WAIT_MS);
      break;
    }
    case "abort":
      listener?.abort();
      listener = undefined;
      rebuild();
      break;
  }
});

function listenTo(port: MessagePort): void {
  source?.close();
  source = port;
  port.onmessage = ({ data }: MessageEvent<Float32Array>) => {
    try {
      listener?.push(data);
    } catch (problem) {
      // the engine's own words are pages long and say nothing to a person
      console.error("The ear failed in the middle of a phrase.", problem);
      listener = undefined;
      hearing = undefined;
      taught = undefined;
      tell({ is: "missing", why: "the ear failed and starts anew" });
      rebuild();
    }
  };
}

function listen(turn: number, interim: boolean): void {
  if (!hearing) return;
  listener?.abort();
  const say = (tells: TurnTells) => {
    tell({ turn, ...tells }, "samples" in tells ? [tells.samples.buffer] : []);
    if (tells.is === "stopped" && listener === mine) listener = undefined;
    if (tells.is === "heard" || tells.is === "nothing" || tells.is === "stopped") setTimeout(rebuild);
  };
  const mine = new PhraseListener({ hearing, rate, interim, spotter, tell: say });
  listener = mine;
}

function load(): Promise<Loaded | undefined> {
  loading ??= fetchAll().then(
    (all) => {
      loaded = all;
      rebuild();
      return all;
    },
    (problem: unknown) => {
      // asked again, it tries again
      loading = undefined;
      tell({ is: "missing", why: problem instanceof Error ? problem.message : String(problem) });
      return undefined;
    },
  );
  return loading;
}

async function fetchAll(): Promise<Loaded> {
  // what the engine prints about itself is for its makers; it is given its files and looks for none
  const quiet = { print() {}, printErr() {}, modelBase: "none/" };
  const [files, module] = await Promise.all([
    earFiles((coming) => tell({ is: "coming", ...coming })),
    createModule(quiet) as Promise<unknown>,
  ]);
  const soundsOf = soundsFrom(readDictionary(files.dictionary), OWN_SOUNDS);
  return { files, module: module as EngineModule, soundsOf };
}

/** Listens for the words of the site as they stand now. Not in the middle of a phrase: then after it. */
function rebuild(): void {
  if (!loaded || taught === site || (listener && !listener.idle)) return;
  taught = site;
  hearing?.free();
  hearing = undefined;
  try {
    hearing = hearingOf(loaded, site);
  } catch (problem) {
    console.error("The site's own words could not be listened for; the rest are.", problem);
    hearing = hearingOf(loaded, NO_SITE);
  }
  listener?.hearWith(hearing);
  tell({ is: "ready", wide: loaded.files.wide });
}

const hearingOf = ({ module, files, soundsOf }: Loaded, words: SiteWords) =>
  new Hearing(module, files.model, earWords(soundsOf, words));

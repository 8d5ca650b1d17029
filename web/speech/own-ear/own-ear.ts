import type { SiteWords } from "../../../core/speech/ear-words.ts";
import type { Coming, FromEar, ToEar, TurnTells } from "./messages.ts";
import { Microphone } from "./microphone.ts";

/** What one recognition hears of the ear. Errors by the names of the Web Speech API, and `ear-missing`. */
export interface Listener {
  interim: boolean;
  tells(what: TurnTells): void;
  fails(error: string, message: string): void;
}

/** What the ear tells while nobody listens by it. */
export interface EarTells {
  /** how the first load gets on, and nothing once it is over */
  coming(coming: Coming | undefined): void;
  ready(): void;
  /** it could not be had; whoever listens is told by `fails` instead */
  missing(): void;
}

/** Whether this browser has what the ear is made of. All of it comes with a secure origin only. */
export const canHearItself = (): boolean =>
  typeof Worker === "function" &&
  typeof WebAssembly === "object" &&
  typeof AudioWorkletNode === "function" &&
  typeof caches === "object" &&
  navigator.mediaDevices !== undefined;

/** The ear on this page: one worker and one microphone, whoever listens; one listens at a time. */
export class OwnEar {
  #worker: Worker | undefined;
  readonly #microphone = new Microphone(() => this.#fail("audio-capture", "the microphone went away"));
  readonly #tells: EarTells;
  #site: SiteWords | undefined;
  #turn = 0;
  #listener: Listener | undefined;
  #wide: boolean | undefined;

  constructor(tells: EarTells) {
    this.#tells = tells;
  }

  /** Whether it hears by the wide acoustic model; not known before it is ready. */
  get wide(): boolean | undefined {
    return this.#wide;
  }

  /** Fetches what is not here yet and gets ready, so that the first phrase need not wait for it. */
  load(): void {
    this.#say({ to: "load" });
  }

  /** Words of the site and tags of its valves: listened for from the next phrase on. */
  words(site: SiteWords): void {
    this.#site = site;
    if (this.#worker) this.#say({ to: "words", site });
  }

  listen(listener: Listener): void {
    this.#listener = listener;
    const turn = ++this.#turn;
    this.load();
    this.#microphone.open().then(
      (source) => {
        if (source) this.#say({ to: "sound", ...source }, [source.port]);
        if (turn === this.#turn) this.#say({ to: "listen", turn, interim: listener.interim });
        else this.#microphone.rest();
      },
      (problem: unknown) => {
        if (turn !== this.#turn) return;
        const name = problem instanceof Error ? problem.name : "";
        const refused = name === "NotAllowedError" || name === "SecurityError";
        this.#fail(refused ? "not-allowed" : "audio-capture", String(problem));
      },
    );
  }

  /** What was said until now still comes, then `stopped`. */
  stop(): void {
    this.#say({ to: "stop" });
    this.#microphone.rest();
  }

  abort(): void {
    this.#turn++;
    this.#listener = undefined;
    this.#worker?.postMessage({ to: "abort" } satisfies ToEar);
    this.#microphone.rest();
  }

  #say(message: ToEar, moved: Transferable[] = []): void {
    this.#worker ??= this.#start();
    this.#worker.postMessage(message, moved);
  }

  #start(): Worker {
    const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module", name: "ear" });
    worker.addEventListener("message", ({ data }: MessageEvent<FromEar>) => this.#hear(data));
    worker.addEventListener("error", (event) => {
      // its script did not come: one that never ran cannot try again, the next one can
      worker.terminate();
      if (this.#worker === worker) this.#worker = undefined;
      // its end of the sound went with it
      this.#microphone.shut();
      this.#missing(event.message);
    });
    if (this.#site) worker.postMessage({ to: "words", site: this.#site } satisfies ToEar);
    return worker;
  }

  #hear(message: FromEar): void {
    if ("turn" in message) {
      if (message.turn === this.#turn) this.#listener?.tells(message);
    } else if (message.is === "coming") this.#tells.coming({ got: message.got, of: message.of });
    else {
      this.#tells.coming(undefined);
      if (message.is === "missing") this.#missing(message.why);
      else {
        this.#wide = message.wide;
        this.#tells.ready();
      }
    }
  }

  #missing(why: string): void {
    if (this.#listener) this.#fail("ear-missing", why);
    else this.#tells.missing();
  }

  #fail(error: string, message: string): void {
    const listener = this.#listener;
    if (!listener) return;
    this.abort();
    listener.fails(error, message);
  }
}

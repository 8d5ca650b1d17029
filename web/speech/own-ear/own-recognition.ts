import type { OnClip } from "../clip.ts";
import type { Recognition, RecognitionMaker } from "../recognition.ts";
import type { TurnTells } from "./messages.ts";
import type { Listener, OwnEar } from "./own-ear.ts";

type Told = (() => void) | null;
type Results = Parameters<NonNullable<Recognition["onresult"]>>[0];

interface Alternative {
  transcript: string;
  confidence: number;
}

/** The ways in which a phrase may have been heard, each as sure as it is likely beside the first. */
const alternatives = ({ text, confidence, others }: Extract<TurnTells, { is: "heard" }>): Alternative[] => [
  { transcript: text, confidence },
  ...others.map((way) => ({ transcript: way.text, confidence: confidence * Math.exp(-way.behind) })),
];

/**
 * Our own ear as a SpeechRecognition (W3C Web Speech API): the same names and order of events. What it hears with less
 * confidence than it takes to be heard comes as `nomatch`. Sound never leaves the device.
 */
export function ownRecognition(ear: OwnEar): RecognitionMaker {
  return class OwnRecognition extends EventTarget implements Recognition {
    /** the sound of each phrase comes with it: nothing else need record */
    static readonly givesClips = true;
    lang = "en-US";
    continuous = false;
    interimResults = false;
    maxAlternatives = 1;
    /** sound never leaves the device */
    processLocally = true;
    onstart: Told = null;
    onaudiostart: Told = null;
    onspeechstart: Told = null;
    onspeechend: Told = null;
    onaudioend: Told = null;
    onend: Told = null;
    onerror: Recognition["onerror"] = null;
    onresult: Recognition["onresult"] = null;
    onnomatch: ((event: unknown) => void) | null = null;
    /** ours alone: 16 kHz sound of a phrase, before its final result */
    onclip: OnClip | null = null;
    #state: "idle" | "starting" | "running" | "stopping" = "idle";
    #settled = 0;

    start(): void {
      if (this.#state !== "idle") throw new DOMException("This recognition has started already.", "InvalidStateError");
      this.#state = "starting";
      this.#settled = 0;
      if (!/^en\b/i.test(this.lang)) {
        queueMicrotask(() => this.#fail("language-not-supported", `${this.lang} is not heard here, English is`));
        return;
      }
      const listener: Listener = {
        interim: this.interimResults,
        tells: (what) => this.#hear(what),
        fails: (error, message) => this.#fail(error, message),
      };
      ear.listen(listener);
    }

    stop(): void {
      if (this.#state === "starting") this.abort();
      else if (this.#state === "running") {
        this.#state = "stopping";
        ear.stop();
      }
    }

    abort(): void {
      if (this.#state === "idle") return;
      ear.abort();
      this.#end();
    }

    #hear(what: TurnTells): void {
      switch (what.is) {
        case "listening":
          this.#state = "running";
          this.#tell("start");
          this.#tell("audiostart");
          break;
        case "speechstart":
        case "speechend":
          this.#tell(what.is);
          break;
        case "partial":
          if (this.interimResults && what.text)
            this.#tell("result", this.#results([{ transcript: what.text, confidence: 0 }], false));
          break;
        case "heard":
          this.onclip?.(what.samples, 16_000);
          this.#tell("result", this.#results(alternatives(what).slice(0, Math.max(1, this.maxAlternatives)), true));
          this.#settled++;
          if (!this.continuous) this.stop();
          break;
        case "nothing":
          // what was being heard is taken back
          if (this.interimResults) this.#tell("result", this.#results([{ transcript: "", confidence: 0 }], false));
          this.#tell("nomatch", { resultIndex: this.#settled, results: [] });
          if (!this.continuous) this.stop();
          break;
        case "stopped":
          this.#end();
          break;
      }
    }

    #results(ways: Alternative[], isFinal: boolean): Results {
      const results: Results["results"] = {
        length: this.#settled + 1,
        [this.#settled]: { ...ways, isFinal, length: ways.length },
      };
      return { resultIndex: this.#settled, results };
    }

    #fail(error: string, message: string): void {
      this.#tell("error", { error, message });
      this.#end();
    }

    #end(): void {
      if (this.#state === "idle") return;
      if (this.#state !== "starting") this.#tell("audioend");
      this.#state = "idle";
      this.#tell("end");
    }

    #tell(name: string, detail: object = {}): void {
      const event = Object.assign(new Event(name), detail);
      const told = (this as unknown as Record<string, unknown>)[`on${name}`];
      if (typeof told === "function") told.call(this, event);
      this.dispatchEvent(event);
    }
  };
}

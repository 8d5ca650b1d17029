import { HEARD_FROM, type Hearing } from "../../../core/speech/hearing.ts";
import type { MayBeAll } from "../../../core/speech/may-be-all.ts";
import { EAR_RATE, Resampler } from "../../../core/speech/resample.ts";
import { Framer, type TalkSpotter } from "../../../core/speech/talk-spans.ts";
import type { TurnTells } from "./messages.ts";

/**
 * Room before the first syllable, frames of 10 ms: it takes some of them to know that somebody talks, and the confidence
 * was fitted on phrases with as much before them.
 */
const BEFORE = 100;
/** So much of a phrase is waited for before it is known how loud and how noisy it is; decoding catches up at once. */
const JUDGE_AFTER = 40;
/** Speech this far above the room needs no noise taken off it, dB. */
const CLEAN = 40;
/** Told to stop in the middle of a word, so much more is still listened to, frames. */
const TRAIL = 30;
/** This far above the room is not yet quiet, dB. */
const QUIET = 7;
const PARTIAL_EVERY = 20;
const LEVEL_EVERY = 10;
/** The engine's first guess of how loud speech is: its loudest frames are brought to this, dB. */
const SPEECH_LEVEL = -18;
const MOST_GAIN = 30;

interface Phrase {
  frames: Float32Array[];
  room: number;
  loudest: number;
  /** how many frames the engine has; none until the phrase has been judged */
  fed: number;
  gain: number;
  partial: string;
}

/** Hears phrase after phrase in sound that does not end: finds where one begins, decodes while it comes, tells what it was. */
export class PhraseListener {
  #hearing: Hearing;
  readonly #tell: (tells: TurnTells) => void;
  readonly #interim: boolean;
  readonly #resampler: Resampler;
  readonly #framer = new Framer();
  readonly #spotter: TalkSpotter;
  #before: Float32Array[] = [];
  #phrase: Phrase | undefined;
  #frames = 0;
  #quiet = 0;
  /** frames still to be listened to once told to stop */
  #left: number | undefined;

  constructor(given: {
    hearing: Hearing;
    rate: number;
    interim: boolean;
    spotter: TalkSpotter;
    tell: (tells: TurnTells) => void;
  }) {
    this.#hearing = given.hearing;
    this.#tell = given.tell;
    this.#interim = given.interim;
    this.#spotter = given.spotter;
    this.#resampler = new Resampler(given.rate);
  }

  /** Nobody is talking: nothing is lost if the words are changed now. */
  get idle(): boolean {
    return !this.#phrase;
  }

  /** From the next phrase on. */
  hearWith(hearing: Hearing): void {
    this.#hearing = hearing;
  }

  push(block: Float32Array): void {
    for (const frame of this.#framer.push(this.#resampler.push(block))) {
      if (this.#left === 0) return;
      this.#frame(frame);
      if (this.#left !== undefined) this.#stopping();
    }
  }

  /** Ends after the word that is being said. */
  stop(): void {
    this.#left ??= TRAIL;
    if (this.#quiet >= TRAIL || this.#frames === 0) this.#end();
  }

  /** Ends now, with what there is. */
  #end(): void {
    this.#left = 0;
    if (this.#phrase) this.#finish(this.#phrase);
    this.#tell({ is: "stopped" });
  }

  /** Whatever still has to come does not come any more. */
  cut(): void {
    if (this.#left !== undefined && this.#left > 0) this.#end();
  }

  /** Ends now and forgets what was said. */
  abort(): void {
    if (this.#phrase && this.#phrase.fed > 0) this.#hearing.end();
    this.#phrase = undefined;
    this.#left = 0;
  }

  #stopping(): void {
    this.#left = (this.#left as number) - 1;
    if (this.#left <= 0 || this.#quiet >= TRAIL) this.#end();
  }

  #frame(frame: Float32Array): void {
    if (this.#frames++ === 0) this.#tell({ is: "listening" });
    const event = this.#spotter.frame(frame, this.#mayBeAll);
    const { room, now } = this.#spotter.level;
    this.#quiet = now > room + QUIET ? 0 : this.#quiet + 1;
    if (this.#frames % LEVEL_EVERY === 0) this.#tell({ is: "level", room, now });
    this.#before.push(frame);
    if (this.#before.length > BEFORE) this.#before.shift();
    if (this.#phrase) {
      this.#phrase.frames.push(frame);
      this.#phrase.loudest = Math.max(this.#phrase.loudest, now);
      this.#decode(this.#phrase);
    } else if (event === "begins") {
      this.#phrase = { frames: [...this.#before], room, loudest: now, fed: 0, gain: 1, partial: "" };
      this.#tell({ is: "speechstart" });
    }
    if (event === "ends" && this.#phrase) this.#finish(this.#phrase);
  }

  /** Of what the engine has so far; a phrase too short to have been judged yet goes on. */
  readonly #mayBeAll = (): MayBeAll =>
    this.#phrase !== undefined && this.#phrase.fed > 0 ? this.#hearing.mayBeAll : "no";

  #decode(phrase: Phrase, whole = false): void {
    if (phrase.fed === 0) {
      if (!whole && phrase.frames.length < BEFORE + JUDGE_AFTER) return;
      phrase.gain = Math.min(MOST_GAIN, 10 ** ((SPEECH_LEVEL - phrase.loudest) / 20));
      this.#hearing.begin({ noisy: phrase.loudest - phrase.room < CLEAN });
    }
    for (; phrase.fed < phrase.frames.length; phrase.fed++) {
      const frame = phrase.frames[phrase.fed] as Float32Array;
      this.#hearing.feed(frame.map((sample) => Math.max(-1, Math.min(1, sample * phrase.gain))));
    }
    if (!this.#interim || whole || phrase.fed % PARTIAL_EVERY !== 0) return;
    const { partial } = this.#hearing;
    if (partial === phrase.partial) return;
    phrase.partial = partial;
    this.#tell({ is: "partial", text: partial });
  }

  #finish(phrase: Phrase): void {
    this.#phrase = undefined;
    this.#tell({ is: "speechend" });
    this.#decode(phrase, true);
    const { text, confidence, words, others } = this.#hearing.end();
    const samples = joined(phrase.frames);
    if (text && confidence >= HEARD_FROM) this.#tell({ is: "heard", text, confidence, words, others, samples });
    else this.#tell({ is: "nothing", samples });
  }
}

function joined(frames: readonly Float32Array[]): Float32Array {
  const length = EAR_RATE / 100;
  const all = new Float32Array(frames.length * length);
  for (const [index, frame] of frames.entries()) all.set(frame, index * length);
  return all;
}

import { confidenceOf, type Evidence } from "./confidence.ts";
import { Denoiser } from "./denoise.ts";
import { type EarWords, isCall, writtenWord } from "./ear-words.ts";
import { type AcousticModel, type Decoded, Engine, type EngineModule, type HeardWord } from "./engine.ts";
import { PHONE_DICTIONARY, PHONE_NETWORK } from "./phone-loop.ts";

/** What an utterance was heard as. */
export interface Heard {
  /** empty where it was none of our words */
  text: string;
  /** chance that the text is right, word for word */
  confidence: number;
  words: { word: string; at: number; lasts: number; confidence: number }[];
  evidence: Evidence;
}

/** Settings of the search that measured best; a wider one takes twice the time for little. */
const WORDS_SEARCH = {
  lw: 6.5,
  wip: 0.65,
  silprob: 0.5,
  beam: 1e-48,
  pbeam: 1e-48,
  wbeam: 1e-36,
  // more of them in one frame cost a fifth of the time and won no phrase
  maxhmmpf: 3000,
  cmn: "live",
  compallsen: true,
  // the network has an arc for each sound of a word already
  fsgusealtpron: false,
};
const PHONES_SEARCH = { ...WORDS_SEARCH, lw: 2, wip: 1 };
/** Scores of whole paths are whole numbers, to this base. */
const ENGINE_LOG_BASE = 1.0001;
/** Under this nothing was heard: most talk that is not ours lies below, few of our phrases do. */
export const HEARD_FROM = 0.2;

/**
 * One listener: utterances go through `begin`, `feed`, `end`. Sound is 16,000 samples a second and may come in pieces; some
 * tenths of a second without speech should stand at both ends. Kept alive, it keeps what it learnt of room and speaker.
 */
export class Hearing {
  readonly #words: Engine;
  readonly #phones: Engine;
  readonly #mayBeAll: EarWords["mayBeAll"];
  #denoiser: Denoiser | undefined;

  constructor(module: EngineModule, model: AcousticModel, words: EarWords) {
    this.#words = new Engine(module, model, words.dictionary, words.network, WORDS_SEARCH);
    this.#phones = new Engine(module, model, PHONE_DICTIONARY, PHONE_NETWORK, PHONES_SEARCH);
    this.#mayBeAll = words.mayBeAll;
  }

  /** `noisy` takes the noise off first: it costs clean speech a little, and noisy speech gains much. */
  begin({ noisy }: { noisy: boolean }): void {
    this.#denoiser = noisy ? new Denoiser() : undefined;
    this.#words.begin();
    this.#phones.begin();
  }

  feed(samples: Float32Array): void {
    const sound = this.#denoiser ? this.#denoiser.push(samples) : samples;
    if (sound.length === 0) return;
    this.#words.feed(sound);
    this.#phones.feed(sound);
  }

  /** The words so far; they may change until the end. */
  get partial(): string {
    return textOf(this.#words.partial.split(" "));
  }

  /** Whether the words so far may be all that somebody has to say: nobody breaks off at "torqued to". */
  get mayBeAll(): boolean {
    return this.#mayBeAll(
      this.#words.partial
        .split(" ")
        .filter((word) => word && !isFiller(word))
        .map(bareWord),
    );
  }

  end(): Heard {
    const words = this.#words.end();
    const phones = this.#phones.end();
    const spoken = (words.words ?? []).filter(({ word }) => !isFiller(word));
    if (spoken.length === 0) return { text: "", confidence: 0, words: [], evidence: { overPhones: 0, fit: 0 } };
    const evidence = evidenceOf(words, phones, callBefore(spoken));
    return {
      text: textOf(spoken.map(({ word }) => word)),
      confidence: confidenceOf(evidence),
      words: spoken.map(({ word, at, lasts, score }) => ({
        word: textOf([word]),
        at,
        lasts,
        confidence: Math.exp(score),
      })),
      evidence,
    };
  }

  /** Gives back its memory, which is not collected by itself. It hears no more. */
  free(): void {
    this.#words.free();
    this.#phones.free();
  }
}

/** The call that something was said after; undefined where nobody called, or only called. */
function callBefore([first, ...rest]: readonly HeardWord[]): HeardWord | undefined {
  return first && rest.length > 0 && isCall(first.word) ? first : undefined;
}

/** How well somebody called says nothing of what was said then: its sound is left out. */
function evidenceOf(words: Decoded, phones: Decoded, call: HeardWord | undefined): Evidence {
  const frames = Math.max(1, words.frames - Math.round((call?.lasts ?? 0) * 100));
  const ofWords = scoreWithout(words, call);
  const ofPhones = scoreWithout(phones, call);
  return { overPhones: (ofWords - ofPhones) / frames, fit: ofPhones / frames };
}

/** The score of a path but for a stretch of it, in the engine's units; what lies across its ends counts by its part. */
function scoreWithout({ score, words = [] }: Decoded, stretch: HeardWord | undefined): number {
  if (!stretch) return score;
  const end = stretch.at + stretch.lasts;
  const within = words.reduce((sum, { at, lasts, score: own }) => {
    const shared = Math.max(0, Math.min(at + lasts, end) - Math.max(at, stretch.at));
    return sum + own * (shared / lasts);
  }, 0);
  return score - within / Math.log(ENGINE_LOG_BASE);
}

const isFiller = (word: string) => /^[<[(]/.test(word);

/** Heard words as text; further sounds of a word carry a number that is no part of it. */
const textOf = (words: readonly string[]): string =>
  words
    .filter((word) => word && !isFiller(word))
    .map((word) => writtenWord(bareWord(word)))
    .join(" ");

const bareWord = (word: string): string => word.replace(/\(\d+\)$/, "");

import { confidenceOf, type Evidence } from "./confidence.ts";
import { type EarWords, isCall, writtenWord } from "./ear-words.ts";
import { type AcousticModel, type Decoded, Engine, type EngineModule } from "./engine.ts";
import type { MayBeAll } from "./may-be-all.ts";
import { Denoiser } from "./noise/denoise.ts";
import { PHONE_DICTIONARY, PHONE_NETWORK } from "./phone-loop.ts";
import type { SaidChances } from "./said-chances.ts";
import { LIKELIHOOD_WEIGHT, type WayHeard, type WordHeard, waysHeard } from "./ways-heard.ts";
import { isFiller, UNIT } from "./word-graph.ts";

/** What an utterance was heard as. */
export interface Heard {
  /** empty where it was none of our words */
  text: string;
  /** chance that the text is right, word for word */
  confidence: number;
  words: { word: string; at: number; lasts: number; confidence: number }[];
  /** other ways in which it may have been said, the likeliest first; `behind` in the same measure of all, 0 is as likely */
  others: { text: string; behind: number }[];
  evidence: Evidence;
}

/** Settings of the search that measured best; a wider one takes twice the time for little. Its best path is not asked for. */
const WORDS_SEARCH = {
  lw: 6.5,
  wip: 0.65,
  silprob: 0.5,
  beam: 1e-48,
  pbeam: 1e-48,
  wbeam: 1e-36,
  maxhmmpf: 3500,
  cmn: "live",
  compallsen: true,
  bestpath: false,
  // the network has an arc for each sound of a word already
  fsgusealtpron: false,
};
const PHONES_SEARCH = { ...WORDS_SEARCH, lw: 2, wip: 1, bestpath: true };
const FRAMES_A_SECOND = 100;
/** Other ways than these are too unlikely to be asked for. */
const MOST_OTHERS = 7;
/** Ahead of nothing: as if the next way were so far behind. */
const FAR_BEHIND = 30;
/** Under this nothing was heard: most talk that is not ours lies below, and 3 in 100 of our phrases that were heard rightly. */
export const HEARD_FROM = 0.3;

/**
 * One listener: utterances go through `begin`, `feed`, `end`. Sound is 16,000 samples a second and may come in pieces; some
 * tenths of a second without speech should stand at both ends. Kept alive, it keeps what it learnt of room and speaker.
 */
export class Hearing {
  readonly #words: Engine;
  readonly #phones: Engine;
  readonly #mayBeAll: EarWords["mayBeAll"];
  readonly #chances: SaidChances;
  #denoiser: Denoiser | undefined;

  constructor(module: EngineModule, model: AcousticModel, words: EarWords) {
    this.#words = new Engine(module, model, words.dictionary, words.network, WORDS_SEARCH);
    this.#chances = words.chances;
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
    return this.#soFar().map(writtenWord).join(" ");
  }

  /** Whether the words so far may be all that somebody has to say: nobody breaks off at "torqued to". */
  get mayBeAll(): MayBeAll {
    return this.#mayBeAll(this.#soFar());
  }

  /** Words of the network; further sounds of a word carry a number that is no part of it. */
  #soFar(): string[] {
    return this.#words.partial
      .split(" ")
      .filter((word) => word && !isFiller(word))
      .map((word) => word.replace(/\(\d+\)$/, ""));
  }

  end(): Heard {
    this.#words.end();
    this.#phones.end();
    const ways = distinct(waysHeard(this.#words.graph(), this.#chances));
    const [best, ...rest] = ways;
    if (!best || best.words.length === 0) return NOTHING;
    const others = rest.slice(0, MOST_OTHERS).map((way) => ({ text: textOf(way), behind: behind(way, best) }));
    const evidence = evidenceOf(best, others[0]?.behind ?? FAR_BEHIND, this.#phones.best());
    return {
      text: textOf(best),
      confidence: confidenceOf(evidence),
      words: best.words.map((one) => ({
        word: writtenWord(one.word),
        at: one.from / FRAMES_A_SECOND,
        lasts: (one.to - one.from) / FRAMES_A_SECOND,
        confidence: shareOfWays(one, ways, best),
      })),
      others,
      evidence,
    };
  }

  /** Gives back its memory, which is not collected by itself. It hears no more. */
  free(): void {
    this.#words.free();
    this.#phones.free();
  }
}

const NOTHING: Heard = {
  text: "",
  confidence: 0,
  words: [],
  others: [],
  evidence: { overPhones: 0, ahead: 0 },
};

const textOf = ({ words }: WayHeard): string => words.map(({ word }) => writtenWord(word)).join(" ");

/** Ways that are written alike are one: the better. */
function distinct(ways: readonly WayHeard[]): WayHeard[] {
  const texts = new Set<string>();
  return ways.filter((way) => {
    const text = textOf(way);
    if (texts.has(text)) return false;
    texts.add(text);
    return true;
  });
}

/** How much less likely a way is than the best, natural log, with the sound's weight taken back to that of one observation. */
const behind = (way: WayHeard, best: WayHeard): number => ((best.score - way.score) * UNIT) / LIKELIHOOD_WEIGHT;

/** Of all that may have been said, the share that has the word in this place. */
function shareOfWays(word: WordHeard, ways: readonly WayHeard[], best: WayHeard): number {
  let all = 0;
  let having = 0;
  for (const way of ways) {
    const weight = Math.exp(-behind(way, best));
    all += weight;
    if (way.words.some((one) => one.word === word.word && one.from < word.to && one.to > word.from)) having += weight;
  }
  return having / all;
}

/** How well somebody called says nothing of what was said then: its sound is left out. */
function evidenceOf(best: WayHeard, ahead: number, phones: Decoded): Evidence {
  const call = callBefore(best.words);
  const frames = Math.max(1, phones.frames - (call ? call.to - call.from : 0));
  const ofPhones = scoreWithout(phones, call);
  return { overPhones: (best.score - (call?.score ?? 0) - ofPhones) / frames, ahead };
}

/** The call that something was said after; undefined where nobody called, or only called. */
function callBefore([first, ...rest]: readonly WordHeard[]): WordHeard | undefined {
  return first && rest.length > 0 && isCall(first.word) ? first : undefined;
}

/** The score of the row of phones but for a stretch of it; what lies across its ends counts by its part. */
function scoreWithout({ score, words = [] }: Decoded, stretch: WordHeard | undefined): number {
  if (!stretch) return score;
  const from = stretch.from / FRAMES_A_SECOND;
  const to = stretch.to / FRAMES_A_SECOND;
  const within = words.reduce((sum, { at, lasts, score: own }) => {
    const shared = Math.max(0, Math.min(at + lasts, to) - Math.max(at, from));
    return sum + own * (shared / lasts);
  }, 0);
  return score - within / (UNIT / 1024);
}

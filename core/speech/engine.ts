/**
 * The speech engine behind one small door: an acoustic model, a dictionary and a word network go in as bytes and text,
 * sound goes in as samples, words with their scores come out. The engine is a C library compiled to WebAssembly; its
 * package's own wrapper reads files and URLs by itself, so this one speaks to the compiled functions below it: then page,
 * worker and server hand over what they have. Nothing here reads a file or knows where it runs.
 */

import { graphIn, textAt } from "./search-memory.ts";
import type { WordGraph } from "./word-graph.ts";

/** What is used of the compiled module (`soundswallower`, made by its factory). */
export interface EngineModule {
  readonly HEAPU8: Uint8Array;
  readonly HEAP32: Int32Array;
  [compiled: `_${string}`]: (...numbers: number[]) => number;
}

/** An acoustic model's files, and the settings of the front end it was trained with. */
export interface AcousticModel {
  features: Readonly<Record<string, string | number | boolean>>;
  mdef: Uint8Array;
  means: Uint8Array;
  variances: Uint8Array;
  sendump: Uint8Array;
  transitionMatrices: Uint8Array;
  noiseDictionary: Uint8Array;
}

/** A word heard: where it lies in the sound, and how well it fits (natural log, per word). */
export interface HeardWord {
  word: string;
  /** seconds from the start of the utterance */
  at: number;
  lasts: number;
  score: number;
}

/** The best path through the network. */
export interface Decoded {
  /** nothing where no path reached the network's end */
  words: HeardWord[] | undefined;
  /** log score of the whole path, acoustic and network together */
  score: number;
  /** frames of 10 ms */
  frames: number;
}

/** Settings of the search, by the engine's own names. */
export type EngineSettings = Readonly<Record<string, string | number | boolean>>;

const SAMPLES_A_SECOND = 16_000;

/** One decoder. Utterances go through `begin`, `feed` as often as wanted, `end`. */
export class Engine {
  readonly #module: EngineModule;
  readonly #decoder: number;
  /** the bytes of the files it was given: the engine reads some of them where they lie as long as it lives, and frees none */
  readonly #files: number[] = [];

  /**
   * `dictionary` is lines of "word P H O N E S"; `network` a finite-state grammar as text.
   * Throws where the engine refuses any of them; its own message goes to the console of the module.
   */
  constructor(
    module: EngineModule,
    model: AcousticModel,
    dictionary: string,
    network: string,
    settings: EngineSettings = {},
  ) {
    this.#module = module;
    const config = { samprate: SAMPLES_A_SECOND, loglevel: "FATAL", ...model.features, ...settings };
    const text = this.#textIn(JSON.stringify(config));
    this.#decoder = call(module, "_decoder_create", call(module, "_config_parse_json", 0, text));
    call(module, "_free", text);
    if (this.#decoder === 0) throw new Error("the speech engine could not be made with these settings");
    this.#ready(model, dictionary, network);
  }

  #ready(model: AcousticModel, dictionary: string, network: string): void {
    const d = this.#decoder;
    const m = this.#module;
    const must = (name: `_${string}`, ...numbers: number[]): number => {
      const back = call(m, name, ...numbers);
      if (back < 0) throw new Error(`the speech engine refused at ${name.slice(1)}`);
      return back;
    };
    const there = (name: `_${string}`, ...numbers: number[]): number => {
      const back = call(m, name, ...numbers);
      if (back === 0) throw new Error(`the speech engine refused at ${name.slice(1)}`);
      return back;
    };
    must("_decoder_init_cleanup", d);
    there("_decoder_init_fe", d);
    there("_decoder_init_feat_s3file", d, 0);
    there("_decoder_init_acmod_pre", d);
    const mdef = this.#file(model.mdef);
    call(m, "_set_mdef", d, there("_bin_mdef_read_s3file", mdef, 0));
    call(m, "_s3file_free", mdef);
    const matrices = this.#file(model.transitionMatrices);
    const floor = 1e-4;
    call(m, "_set_tmat", d, there("_tmat_init_s3file", matrices, there("_decoder_logmath", d), floor));
    call(m, "_s3file_free", matrices);
    must("_load_gmm", d, this.#file(model.means), this.#file(model.variances), 0, this.#file(model.sendump));
    must("_decoder_init_acmod_post", d);
    const words = this.#file(ascii(dictionary));
    there("_decoder_init_dict_s3file", d, words, this.#file(model.noiseDictionary));
    this.listenFor(network);
  }

  /** Listens for another network from the next utterance on. Every word of it must be in the dictionary. */
  listenFor(network: string): void {
    const file = this.#file(ascii(network));
    if (call(this.#module, "_decoder_init_grammar_s3file", this.#decoder, file, 0) < 0)
      throw new Error("the speech engine refused the word network");
  }

  begin(): void {
    if (call(this.#module, "_decoder_start_utt", this.#decoder) < 0) throw new Error("an utterance is under way");
  }

  /** Sound as it comes, 16,000 samples a second within ±1. `whole` says that it is all of the utterance. */
  feed(samples: Float32Array, whole = false): void {
    const m = this.#module;
    const at = call(m, "_malloc", samples.byteLength);
    m.HEAPU8.set(new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength), at);
    const back = call(m, "_decoder_process_float32", this.#decoder, at, samples.length, 0, whole ? 1 : 0);
    call(m, "_free", at);
    if (back < 0) throw new Error("the speech engine could not take the sound");
  }

  /** The words so far; they may change until the end. */
  get partial(): string {
    const at = call(this.#module, "_decoder_hyp", this.#decoder, 0);
    return at === 0 ? "" : textAt(this.#module.HEAPU8, at);
  }

  end(): void {
    if (call(this.#module, "_decoder_end_utt", this.#decoder) < 0) throw new Error("no utterance is under way");
  }

  /** The best path; after the end of an utterance, until the next one begins. */
  best(): Decoded {
    const m = this.#module;
    const place = call(m, "_malloc", 4);
    const text = call(m, "_decoder_hyp", this.#decoder, place);
    const score = m.HEAP32[place >> 2] as number;
    call(m, "_free", place);
    if (text === 0) return { words: undefined, score, frames: 0 };
    const result = JSON.parse(textAt(m.HEAPU8, call(m, "_decoder_result_json", this.#decoder, 0, 0)));
    return { words: result.w.map(asWord), score, frames: Math.round(result.d * 100) };
  }

  /** Every word that the search came past; after the end of an utterance, until the next one begins. */
  graph(): WordGraph {
    return graphIn(this.#module.HEAPU8, this.#decoder);
  }

  free(): void {
    call(this.#module, "_decoder_free", this.#decoder);
    for (const at of this.#files.splice(0)) call(this.#module, "_free", at);
  }

  #textIn(text: string): number {
    const bytes = ascii(text);
    const at = call(this.#module, "_malloc", bytes.length + 1);
    this.#module.HEAPU8.set(bytes, at);
    this.#module.HEAPU8[at + bytes.length] = 0;
    return at;
  }

  /** Bytes as the engine's kind of file. */
  #file(bytes: Uint8Array): number {
    const at = call(this.#module, "_malloc", bytes.length + 1);
    if (at === 0) throw new Error("no memory left for the speech engine");
    this.#module.HEAPU8.set(bytes, at);
    this.#module.HEAPU8[at + bytes.length] = 0;
    this.#files.push(at);
    return call(this.#module, "_s3file_init", at, bytes.length);
  }
}

const asWord = (one: { t: string; b: number; d: number; p: number }): HeardWord => ({
  word: one.t,
  at: one.b,
  lasts: one.d,
  score: Math.log(one.p),
});

/** Dictionaries, networks and settings are plain ASCII. */
function ascii(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) bytes[i] = text.charCodeAt(i);
  return bytes;
}

function call(module: EngineModule, name: `_${string}`, ...numbers: number[]): number {
  return (module[name] as (...numbers: number[]) => number)(...numbers);
}

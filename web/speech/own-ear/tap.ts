/**
 * Runs beside the sound card: gathers what the microphone gives and hands it to the ear's worker, past the page, so that a
 * busy page loses no sound.
 */
declare const registerProcessor: (name: string, made: new () => object) => void;
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}

/** Samples handed over at once: about 20 ms. */
const BLOCK = 1024;

class Tap extends AudioWorkletProcessor {
  #out: MessagePort | undefined;
  #block = new Float32Array(BLOCK);
  #filled = 0;

  constructor() {
    super();
    this.port.onmessage = (event: MessageEvent<MessagePort>) => {
      this.#out = event.data;
    };
  }

  /** The first input's first channel, 128 samples at a time by the standard. True: call me again. */
  process([input]: Float32Array[][]): boolean {
    const samples = input?.[0];
    if (!samples || !this.#out) return true;
    for (const sample of samples) {
      this.#block[this.#filled++] = sample;
      if (this.#filled < BLOCK) continue;
      this.#out.postMessage(this.#block, [this.#block.buffer]);
      this.#block = new Float32Array(BLOCK);
      this.#filled = 0;
    }
    return true;
  }
}

registerProcessor("tap", Tap);

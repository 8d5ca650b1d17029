/** What the engine listens at, samples a second. */
export const EAR_RATE = 16_000;

/** Zero crossings of the sinc on either side: the steeper the filter, the less of what lies above is folded in. */
const REACH = 12;

/**
 * Brings sound of any rate to the engine's, block after block, by a windowed sinc (Hann) that also takes away what the
 * lower of the two rates cannot hold. Source: Smith, "Digital Audio Resampling", CCRMA, Stanford.
 */
export class Resampler {
  readonly #step: number;
  readonly #cut: number;
  #kept = new Float32Array(0);
  /** where the next sample lies, in samples of `#kept` */
  #next = 0;

  constructor(rate: number) {
    this.#step = rate / EAR_RATE;
    this.#cut = Math.min(1, EAR_RATE / rate) * 0.97;
    this.#next = 0;
  }

  push(block: Float32Array): Float32Array {
    if (this.#step === 1) return block;
    const sound = new Float32Array(this.#kept.length + block.length);
    sound.set(this.#kept);
    sound.set(block, this.#kept.length);
    const reach = REACH / this.#cut;
    const count = Math.max(0, Math.floor((sound.length - reach - this.#next) / this.#step));
    const out = new Float32Array(count);
    for (let i = 0; i < count; i++) out[i] = this.#at(sound, this.#next + i * this.#step, reach);
    const next = this.#next + count * this.#step;
    const drop = Math.max(0, Math.floor(next - reach));
    this.#kept = sound.slice(drop);
    this.#next = next - drop;
    return out;
  }

  /** What is still held back, as if silence followed. */
  end(): Float32Array {
    return this.push(new Float32Array(Math.ceil((2 * REACH) / this.#cut)));
  }

  #at(sound: Float32Array, place: number, reach: number): number {
    const from = Math.max(0, Math.ceil(place - reach));
    const to = Math.min(sound.length - 1, Math.floor(place + reach));
    let sum = 0;
    for (let i = from; i <= to; i++) {
      const x = (i - place) * this.#cut;
      const window = 0.5 + 0.5 * Math.cos((Math.PI * (i - place)) / reach);
      sum += (sound[i] as number) * window * (x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x));
    }
    return sum * this.#cut;
  }
}

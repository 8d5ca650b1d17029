/** Frames of nothing but room, at the start, that the noise is first known from: a third of a second. */
const FIRST_FRAMES = 40;
/** How much of what the last frame told of speech still counts; nearer to 1, weak sounds at a word's end are lost. */
const OF_LAST_FRAME = 0.95;
/** How much of the known noise is kept from frame to frame where nobody speaks. Faster, it takes speech for noise. */
const OF_KNOWN_NOISE = 0.98;
const LEAST_GAIN = 0.12;

/**
 * The noise beneath speech, frame after frame, learnt where speech is unlikely: by the log-spectral amplitude estimator of
 * Ephraim & Malah (IEEE Trans. ASSP 33, 1985) with their decision-directed signal-to-noise ratio (ASSP 32, 1984).
 */
export class KnownNoise {
  /** power, by bin of the spectrum */
  readonly power: Float64Array;
  readonly #speech: Float64Array;
  #frames = 0;

  constructor(bins: number) {
    this.power = new Float64Array(bins);
    this.#speech = new Float64Array(bins);
  }

  /** Takes the next frame's power in. */
  hear(frame: Float64Array): void {
    this.#frames++;
    if (this.#frames <= FIRST_FRAMES) {
      for (let k = 0; k < frame.length; k++) {
        const known = this.power[k] as number;
        this.power[k] = known + ((frame[k] as number) - known) / this.#frames;
      }
      return;
    }
    for (let k = 0; k < frame.length; k++) this.#follow(k, frame[k] as number);
  }

  #follow(k: number, power: number): void {
    const noise = Math.max(this.power[k] as number, 1e-12);
    const posterior = Math.min(power / noise, 1e4);
    const before = (this.#speech[k] as number) / noise;
    const prior = Math.max(OF_LAST_FRAME * before + (1 - OF_LAST_FRAME) * Math.max(posterior - 1, 0), 3e-3);
    const v = (prior / (1 + prior)) * posterior;
    const gain = Math.max(LEAST_GAIN, Math.min(1, (prior / (1 + prior)) * Math.exp(0.5 * exponentialIntegral(v))));
    this.#speech[k] = gain * gain * power;
    // Speech is likely where the ratio says so; elsewhere the noise follows what is heard.
    const likelihood = Math.exp(Math.min(v, 50)) / (1 + prior);
    const speech = likelihood / (likelihood + 1);
    const keep = OF_KNOWN_NOISE + (1 - OF_KNOWN_NOISE) * speech;
    this.power[k] = keep * noise + (1 - keep) * power;
  }
}

/** E1(x), x > 0. Abramowitz & Stegun, Handbook of Mathematical Functions, 5.1.53 and 5.1.56. */
export function exponentialIntegral(x: number): number {
  if (x < 1e-8) return exponentialIntegral(1e-8);
  if (x <= 1)
    return (
      -Math.log(x) -
      0.57721566 +
      x * (0.99999193 + x * (-0.24991055 + x * (0.05519968 + x * (-0.00976004 + x * 0.00107857))))
    );
  const over = x * (x * (x * (x + 8.5733287401) + 18.059016973) + 8.6347608925) + 0.2677737343;
  const under = x * (x * (x * (x + 9.5733223454) + 25.6329561486) + 21.0996530827) + 3.9584969228;
  return (over / under) * (Math.exp(-x) / x);
}

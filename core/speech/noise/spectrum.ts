import { fourier } from "../fourier.ts";
import { EAR_RATE } from "../resample.ts";

/** Samples a frame, and from one frame to the next: 32 and 8 ms. */
export const SIZE = 512;
export const HOP = SIZE / 4;
export const BINS = SIZE / 2 + 1;
/** Bands of equal width to the ear: on the mel scale of O'Shaughnessy, Speech Communication (1987), 60 Hz to 7.8 kHz. */
export const BANDS = 40;

const WINDOW = Float64Array.from({ length: SIZE }, (_, i) => Math.sin((Math.PI * (i + 0.5)) / SIZE));
const mel = (hertz: number) => 1127 * Math.log(1 + hertz / 700);
const hertz = (mels: number) => 700 * (Math.exp(mels / 1127) - 1);
/** The bin where each band is at its height, with the ends of the first and the last. */
const HEIGHTS = Array.from({ length: BANDS + 2 }, (_, i) => {
  const from = mel(60);
  return (hertz(from + ((mel(7800) - from) * i) / (BANDS + 1)) * SIZE) / EAR_RATE;
});

/** One frame as it sounds: what it is made of, to be weakened here and there and put back. */
export interface Spectrum {
  re: Float64Array;
  im: Float64Array;
}

/** The spectrum of the frame that begins at a sample. */
export function spectrumAt(sound: ArrayLike<number>, at: number): Spectrum {
  const re = Float64Array.from(WINDOW, (window, i) => window * (sound[at + i] as number));
  const im = new Float64Array(SIZE);
  fourier(re, im);
  return { re, im };
}

export function powerOf({ re, im }: Spectrum, into: Float64Array): void {
  for (let k = 0; k < BINS; k++) into[k] = (re[k] as number) ** 2 + (im[k] as number) ** 2;
}

/** Adds the frame, weakened by a gain a bin, to the sound that overlapping frames make together. */
export function addFrame({ re, im }: Spectrum, gains: Float64Array, sum: Float64Array): void {
  for (let k = 0; k < BINS; k++) {
    const gain = gains[k] as number;
    re[k] = (re[k] as number) * gain;
    im[k] = (im[k] as number) * gain;
    if (k > 0 && k < SIZE / 2) {
      re[SIZE - k] = re[k] as number;
      im[SIZE - k] = -(im[k] as number);
    }
  }
  fourier(re, im, true);
  // squared, the windows of the four frames over a sample come to two
  for (let i = 0; i < SIZE; i++) sum[i] = (sum[i] as number) + ((re[i] as number) * (WINDOW[i] as number)) / 2;
}

/** Which bins a band takes in, and with what weight: a triangle from the height before it to the height after it. */
const TRIANGLES = Array.from({ length: BANDS }, (_, band) => {
  const [low, height, high] = HEIGHTS.slice(band, band + 3) as [number, number, number];
  const bins = Array.from({ length: BINS }, (_, k) => ({
    k,
    weight: Math.min((k - low) / (height - low), (high - k) / (high - height)),
  })).filter(({ weight }) => weight > 0);
  // a band between two bins takes the nearest
  return bins.length > 0 ? bins : [{ k: Math.round(height), weight: 1 }];
});

/** The power in each band. */
export function inBands(power: Float64Array, into: Float32Array): void {
  for (let band = 0; band < BANDS; band++) {
    let sum = 0;
    for (const { k, weight } of TRIANGLES[band] as { k: number; weight: number }[])
      sum += weight * (power[k] as number);
    into[band] = sum;
  }
}

/** Between which bands each bin lies, and how near it is to the upper one. */
const PLACES = Array.from({ length: BINS }, (_, k) => {
  const above = HEIGHTS.slice(1, -1).findIndex((height) => height > k);
  if (above === 0) return { below: 0, above: 0, near: 0 };
  if (above < 0) return { below: BANDS - 1, above: BANDS - 1, near: 0 };
  const [low, high] = HEIGHTS.slice(above, above + 2) as [number, number];
  return { below: above - 1, above, near: (k - low) / (high - low) };
});

/** A gain a band as a gain a bin, on a line from one band's height to the next. */
export function toBins(gains: Float32Array, into: Float64Array): void {
  for (let k = 0; k < BINS; k++) {
    const { below, above, near } = PLACES[k] as (typeof PLACES)[number];
    into[k] = (gains[below] as number) * (1 - near) + (gains[above] as number) * near;
  }
}

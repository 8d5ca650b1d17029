import { EAR_RATE } from "../../../core/speech/resample.ts";
import type { Luck } from "../learning/luck.ts";

type Noise = (length: number, luck: Luck) => Float32Array;

/** What sounds where valves are serviced, as far as it can be made: all of the same loudness, 1. */
const NOISES: readonly Noise[] = [
  (n, luck) => coloured(n, luck, 1),
  (n, luck) => coloured(n, luck, luck.between(0, 2)),
  // gas or air escaping
  (n, luck) => hiss(n, luck, luck.between(800, 3000)),
  // a motor or a generator
  (n, luck) => sum([hum(n, luck), 1], [coloured(n, luck, 1), 0.4]),
  // a compressor
  (n, luck) => sum([beating(coloured(n, luck, 1), luck.between(2, 12), 0.45, luck), 1], [hum(n, luck), 0.5]),
  // wind in gusts
  (n, luck) => sum([beating(coloured(n, luck, 2), luck.between(0.2, 1), 0.4, luck), 1], [coloured(n, luck, 1), 0.2]),
  // tools put down, and knocked
  (n, luck) => sum([knocks(n, luck, 2.5), 1], [coloured(n, luck, 1), 0.6]),
  // a workshop: all of it
  workshop,
  workshop,
];

export function someNoise(length: number, luck: Luck): Float32Array {
  return evened(luck.one(NOISES)(length, luck));
}

function workshop(n: number, luck: Luck): Float32Array {
  const hissing = hiss(n, luck, luck.between(1000, 2500));
  return sum([hum(n, luck), 0.8], [hissing, 0.8], [knocks(n, luck, 1.5), 0.5], [coloured(n, luck, 1), 0.3]);
}

function evened(sound: Float32Array): Float32Array {
  const loud = Math.sqrt(sound.reduce((power, x) => power + x * x, 0) / sound.length) + 1e-9;
  return sound.map((x) => x / loud);
}

function sum(...parts: [Float32Array, number][]): Float32Array {
  const even = parts.map(([sound, share]) => [evened(sound), share] as const);
  return Float32Array.from({ length: parts[0]?.[0].length ?? 0 }, (_, i) =>
    even.reduce((all, [sound, share]) => all + share * (sound[i] as number), 0),
  );
}

/** Hiss whose power falls with the frequency to this power: 0 white, 1 pink, 2 brown. */
function coloured(n: number, luck: Luck, slope: number): Float32Array {
  // a row of first-order low passes an octave apart, weighted so that together they fall with the slope
  const poles = Array.from({ length: 9 }, (_, k) => {
    const corner = 20 * 2 ** k;
    return { keep: Math.exp((-2 * Math.PI * corner) / EAR_RATE), weight: corner ** ((1 - slope) / 2), state: 0 };
  });
  return Float32Array.from({ length: n }, () => {
    let out = 0;
    for (const pole of poles) {
      pole.state = pole.keep * pole.state + Math.sqrt(1 - pole.keep ** 2) * luck.between(-1.73, 1.73);
      out += pole.weight * pole.state;
    }
    return out;
  });
}

/** White above a frequency. */
function hiss(n: number, luck: Luck, from: number): Float32Array {
  const keep = Math.exp((-2 * Math.PI * from) / EAR_RATE);
  let low = 0;
  let lower = 0;
  return Float32Array.from({ length: n }, () => {
    const white = luck.normal();
    low = keep * low + (1 - keep) * white;
    const high = white - low;
    lower = keep * lower + (1 - keep) * high;
    return high - lower;
  });
}

function hum(n: number, luck: Luck): Float32Array {
  const base = luck.between(25, 130);
  const tones = Array.from({ length: 12 }, (_, k) => ({
    loud: luck.between(0.2, 1) / (k + 1),
    turn: (2 * Math.PI * base * (k + 1)) / EAR_RATE,
    start: luck.between(0, 2 * Math.PI),
  }));
  return Float32Array.from({ length: n }, (_, i) =>
    tones.reduce((all, { loud, turn, start }) => all + loud * Math.sin(turn * i + start), 0),
  );
}

function beating(sound: Float32Array, hertz: number, depth: number, luck: Luck): Float32Array {
  const start = luck.between(0, 2 * Math.PI);
  return sound.map((x, i) => x * (1 - depth + depth * Math.sin((2 * Math.PI * hertz * i) / EAR_RATE + start)));
}

function knocks(n: number, luck: Luck, aSecond: number): Float32Array {
  const out = new Float32Array(n);
  const many = Math.max(1, Math.round((aSecond * n * luck.between(0.4, 1.6)) / EAR_RATE));
  for (let knock = 0; knock < many; knock++) {
    const at = Math.floor(luck.between(0, n));
    const lasts = Math.min(n - at, Math.round(EAR_RATE * luck.between(0.03, 0.4)));
    const dies = luck.between(8, 60);
    const loud = luck.between(0.3, 1);
    const rings = Array.from({ length: 4 }, () => ({ loud: luck.between(0.3, 1.5), hertz: luck.between(300, 5000) }));
    for (let i = 0; i < lasts; i++) {
      const t = i / EAR_RATE;
      let x = luck.normal() * Math.exp(-3 * dies * t);
      for (const ring of rings) x += ring.loud * Math.sin(2 * Math.PI * ring.hertz * t) * Math.exp(-dies * t);
      out[at + i] = (out[at + i] as number) + loud * x;
    }
  }
  return out;
}

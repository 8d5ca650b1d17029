import type { Tone } from "../state/loop.ts";

/**
 * Five short signs for ears and skin, told apart without a word: by how many notes there are, which way they go, and
 * for hazards by loudness and a two-tone that nothing else has. Made in code, so that they are there offline.
 */
export interface Note {
  /** start and length in seconds */
  at: number;
  long: number;
  hz: number;
  /** 0 to 1 */
  loud: number;
}

const note = (at: number, long: number, hz: number, loud = 0.5): Note => ({ at, long, hz, loud });

export const TONES: Record<Tone, readonly Note[]> = {
  // one short note: speak
  listening: [note(0, 0.09, 880, 0.35)],
  // two, going up: it is written down
  understood: [note(0, 0.08, 660), note(0.09, 0.13, 990)],
  // three alike, as of one who waits for an answer
  doubtful: [note(0, 0.08, 587), note(0.13, 0.08, 587), note(0.26, 0.08, 587)],
  // one long, low, falling
  not_understood: [note(0, 0.12, 330), note(0.12, 0.22, 220)],
  // high and low, twice, loud
  hazard: [note(0, 0.15, 1175, 1), note(0.15, 0.15, 784, 1), note(0.3, 0.15, 1175, 1), note(0.45, 0.15, 784, 1)],
};

/** Milliseconds of buzz and pause, by turns. */
export const BUZZES: Record<Tone, readonly number[]> = {
  listening: [30],
  understood: [60],
  doubtful: [70, 60, 70, 60, 70],
  not_understood: [300],
  hazard: [400, 120, 400, 120, 400],
};

export interface Sounder {
  sound(tone: Tone): void;
  /** browsers let a page sound only after a person touched it: called at the first touch or key */
  wake(): void;
}

/** Sounds the tones on this device, and buzzes where it can; silent where it can do neither. */
export function sounder(): Sounder {
  let context: AudioContext | undefined;
  const ready = (): AudioContext | undefined => {
    if (!("AudioContext" in globalThis)) return undefined;
    context ??= new AudioContext({ latencyHint: "interactive" });
    // a browser suspends it while nobody has touched the page, and again when the page was long away
    if (context.state !== "running") void context.resume();
    return context;
  };
  return {
    wake: () => void ready(),
    sound(tone) {
      navigator.vibrate?.([...BUZZES[tone]]);
      const now = ready();
      if (now) for (const one of TONES[tone]) play(now, one);
    },
  };
}

/** A triangle wave is heard through machinery where a sine is not; the ends are rounded, or they would click. */
function play(context: AudioContext, { at, long, hz, loud }: Note): void {
  const start = context.currentTime + at;
  const gain = new GainNode(context, { gain: 0 });
  gain.gain.setValueAtTime(0, start);
  gain.gain.linearRampToValueAtTime(loud, start + 0.008);
  gain.gain.setValueAtTime(loud, start + long - 0.02);
  gain.gain.linearRampToValueAtTime(0, start + long);
  const source = new OscillatorNode(context, { type: "triangle", frequency: hz });
  source.connect(gain).connect(context.destination);
  source.start(start);
  source.stop(start + long);
}

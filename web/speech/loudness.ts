/**
 * Whether it is too loud here to be understood, out of how loud it was. A recogniser needs the voice well over the
 * noise: the limits are common practice for speech recognition in noise, no source, and meant to err on the quiet side.
 */
export const CLEAR_DB = 15;
export const HARD_DB = 8;
/** Below this nothing arrives at all: a muted or covered microphone. */
const SILENT_DB = -75;
/** A floor over this is a loud place, whoever speaks. */
const LOUD_FLOOR_DB = -35;

export interface Loudness {
  is: "waiting" | "silent" | "no_voice" | "clear" | "hard" | "too_loud";
  /** dB of full scale between the words */
  noise: number;
  /** dB of full scale of the loudest tenth: the voice, where there is one */
  voice: number;
}

/** `levels`: RMS in dB of full scale, 20 a second, of the last seconds. */
export function judgeLoudness(levels: readonly number[]): Loudness {
  const sorted = [...levels].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? SILENT_DB;
  // a microphone that gives nothing between two words has a gate in it: no room is as still as that
  const [noise, voice] = [Math.max(at(0.2), SILENT_DB), at(0.95)];
  const over = voice - noise;
  if (levels.length < 40) return { is: "waiting", noise, voice };
  if (voice < SILENT_DB) return { is: "silent", noise, voice };
  if (over >= CLEAR_DB) return { is: "clear", noise, voice };
  if (over >= HARD_DB) return { is: "hard", noise, voice };
  return { is: noise > LOUD_FLOOR_DB ? "too_loud" : "no_voice", noise, voice };
}

export function loudnessWords({ is, noise, voice }: Loudness): string {
  const over = Math.round(voice - noise);
  switch (is) {
    case "waiting":
      return "Listening. Say: seat worn one side, flipped it.";
    case "silent":
      return "No sound arrives. The microphone may be covered or switched off.";
    case "no_voice":
      return "Quiet here, and no voice yet. Say: seat worn one side, flipped it.";
    case "clear":
      return `Good. Your voice stands ${over} dB over the noise.`;
    case "hard":
      return `Loud here: your voice stands only ${over} dB over the noise. Come closer to the microphone, or type.`;
    case "too_loud":
      return "Too loud here to hear you. Type, or use a headset with a boom.";
  }
}

/** RMS of one stretch of samples, in dB of full scale. */
export function levelDb(samples: ArrayLike<number>): number {
  let sum = 0;
  for (let at = 0; at < samples.length; at++) sum += (samples[at] ?? 0) ** 2;
  return 10 * Math.log10(sum / Math.max(1, samples.length) + 1e-10);
}

import type { Heard, Hearing } from "./hearing.ts";
import { EAR_RATE, Resampler } from "./resample.ts";
import { Framer, TalkSpotter } from "./talk-spans.ts";
import type { Recording } from "./wave.ts";

/** Room before and after what somebody says, seconds. */
const ROOM = 0.4;
/** Speech this far above the room needs no noise taken off it, dB. */
const CLEAN = 40;
/** Recordings up to here are taken for one phrase, pauses and all, seconds. */
const ONE_PHRASE = 12;
const PIECE = EAR_RATE / 10;
/** A moment without speech, as short as the pads of a tightly cut recording. */
const TONE = EAR_RATE / 5;
/** -75 dB */
const FAINT = 10 ** (-75 / 20);

/** What was said in a recording, phrase after phrase; none where nobody talks in it. */
export function hearRecording(hearing: Hearing, { samples, rate }: Recording): Heard[] {
  const sound = evened(inEarRate(samples, rate));
  const { spans, floor, speech } = talkIn(sound);
  const noisy = speech - floor < CLEAN;
  return joined(spans, sound.length).map(({ from, to }) => {
    hearing.begin({ noisy });
    const phrase = withRoom(sound, from, to);
    for (let at = 0; at < phrase.length; at += PIECE) hearing.feed(phrase.subarray(at, at + PIECE));
    return hearing.end();
  });
}

function inEarRate(samples: Float32Array, rate: number): Float32Array {
  const resampler = new Resampler(rate);
  const parts = [resampler.push(samples), rate === EAR_RATE ? new Float32Array(0) : resampler.end()];
  const all = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

/** The loudest tenth of a second at the same level in every recording: the engine's first guess of it is fixed. */
function evened(sound: Float32Array): Float32Array {
  let loudest = 0;
  for (let at = 0; at < sound.length; at += PIECE) {
    let power = 0;
    const end = Math.min(sound.length, at + PIECE);
    for (let i = at; i < end; i++) power += (sound[i] as number) ** 2;
    loudest = Math.max(loudest, power / PIECE);
  }
  const gain = Math.min(30, 0.12 / Math.sqrt(loudest + 1e-12));
  return sound.map((sample) => sample * gain);
}

interface Span {
  from: number;
  to: number;
}

function talkIn(sound: Float32Array): { spans: Span[]; floor: number; speech: number } {
  const spotter = new TalkSpotter();
  const spans: Span[] = [];
  const levels: number[] = [];
  let at = 0;
  let open: number | undefined;
  for (const frame of new Framer().push(sound)) {
    const event = spotter.frame(frame);
    levels.push(spotter.level.now);
    at += frame.length;
    if (event === "begins") open = at;
    else if (event === "ends" && open !== undefined) {
      spans.push({ from: open, to: at });
      open = undefined;
    }
  }
  if (open !== undefined) spans.push({ from: open, to: sound.length });
  levels.sort((a, b) => a - b);
  const share = (p: number) => levels[Math.min(levels.length - 1, Math.floor(p * levels.length))] ?? -90;
  return { spans, floor: share(0.08), speech: share(0.92) };
}

/** A short recording is one phrase, whatever pauses are in it. */
function joined(spans: readonly Span[], length: number): Span[] {
  const [first] = spans;
  if (!first || length > ONE_PHRASE * EAR_RATE) return [...spans];
  return [{ from: 0, to: length }];
}

/** The span with room around it: what was recorded there, and beyond the recording's ends more of its own room. */
function withRoom(sound: Float32Array, from: number, to: number): Float32Array {
  const room = Math.round(ROOM * EAR_RATE);
  const start = from - room;
  const tone = roomTone(sound);
  return Float32Array.from({ length: to - from + 2 * room }, (_, i) => {
    const place = start + i;
    return place >= 0 && place < sound.length
      ? (sound[place] as number)
      : (tone[forthAndBack(i, tone.length)] as number);
  });
}

/** The quietest moment of a recording: what its room sounds like. Of a quiet that no room has, a faint hiss. */
function roomTone(sound: Float32Array): Float32Array {
  let quietest = { at: 0, power: Number.POSITIVE_INFINITY };
  for (let at = 0; at + TONE <= sound.length; at += PIECE / 2) {
    let power = 0;
    for (let i = at; i < at + TONE; i++) power += (sound[i] as number) ** 2;
    if (power < quietest.power) quietest = { at, power };
  }
  let state = 1;
  return sound.slice(quietest.at, quietest.at + TONE).map((sample) => {
    // a row of numbers without pattern, the same each time
    state = (state * 48_271) % 2_147_483_647;
    return sample + FAINT * (state / 1_073_741_823.5 - 1);
  });
}

/** Played forwards, then backwards, and so on: no click where it is joined. */
function forthAndBack(i: number, length: number): number {
  const place = i % (2 * length);
  return place < length ? place : 2 * length - 1 - place;
}

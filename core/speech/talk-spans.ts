import type { MayBeAll } from "./may-be-all.ts";
import { EAR_RATE } from "./resample.ts";

/** Frames of 10 ms. */
const FRAME = EAR_RATE / 100;
/** This much louder than the room is somebody talking, dB. */
const ABOVE = 7;
/** A slow talker's longest pause inside a phrase, frames. */
const PAUSE = 75;
/**
 * The same where it is known what was said: short where that may be all, shorter where it likely is, long where something
 * must still come. The engine Kaldi ends by the first and the last of these as well (its online-endpoint.h, rules 2 and 3:
 * half a second and a second). The ear wants some quiet behind a phrase, so none is shorter.
 */
const PAUSE_AT_END = 50;
const PAUSE_AT_LIKELY_END = 40;
const PAUSE_WITHIN = 100;
/** Shorter than this is an impact, frames. */
const SHORTEST = 8;
/** Nobody says one phrase for longer, frames. */
const LONGEST = 2000;
/** No room is quieter than this, dB: a microphone that is starting or muted gives bare zeros, and any hiss would be talk. */
const STILL = -75;

export type TalkEvent = "begins" | "ends" | undefined;

/**
 * Tells when somebody begins and ends talking, from 10 ms frames at 16,000 samples a second. The room's level falls at once
 * and rises slowly, so that a compressor that starts is taken for room within seconds and a talker is not. Levels are taken
 * above 300 Hz, where motors hum less than people.
 */
export class TalkSpotter {
  #room: number | undefined;
  #loud = 0;
  #quiet = 0;
  #since = 0;
  #talking = false;
  #low = 0;
  #before = 0;

  /** Levels of the room and of the last frame, dB below full scale. */
  level = { room: -60, now: -90 };

  get talking(): boolean {
    return this.#talking;
  }

  /** `mayBeAll` is asked, twice a pause at most, whether what was said so far may be all of it. */
  frame(samples: Float32Array, mayBeAll?: () => MayBeAll): TalkEvent {
    const now = Math.max(STILL, this.#loudness(samples));
    const room = this.#room ?? now;
    // dB a frame: up 4 a second while quiet, half of that while somebody talks; down at once
    this.#room = now < room ? room + 0.3 * (now - room) : room + Math.min(now - room, this.#talking ? 0.02 : 0.04);
    this.level = { room: this.#room, now };
    const voice = now > this.#room + ABOVE;
    this.#loud = voice ? this.#loud + 1 : Math.max(0, this.#loud - 1);
    this.#quiet = voice ? 0 : this.#quiet + 1;
    this.#since++;
    if (!this.#talking && this.#loud >= SHORTEST) {
      this.#talking = true;
      this.#since = 0;
      return "begins";
    }
    if (this.#talking && (this.#since >= LONGEST || this.#isSilent(mayBeAll))) {
      this.#talking = false;
      this.#loud = 0;
      return "ends";
    }
    return undefined;
  }

  #isSilent(mayBeAll?: () => MayBeAll): boolean {
    if (!mayBeAll) return this.#quiet >= PAUSE;
    if (this.#quiet === PAUSE_AT_LIKELY_END) return mayBeAll() === "likely";
    if (this.#quiet === PAUSE_AT_END) return mayBeAll() !== "no";
    return this.#quiet >= PAUSE_WITHIN;
  }

  #loudness(samples: Float32Array): number {
    let power = 0;
    for (const sample of samples) {
      // two one-pole high passes at 300 Hz, one after the other
      this.#low += 0.11 * (sample - this.#low);
      const once = sample - this.#low;
      this.#before += 0.11 * (once - this.#before);
      const twice = once - this.#before;
      power += twice * twice;
    }
    return 10 * Math.log10(power / Math.max(1, samples.length) + 1e-12);
  }
}

/** Cuts sound into frames of 10 ms, keeping what is left over for the next block. */
export class Framer {
  #kept = new Float32Array(0);

  push(block: Float32Array): Float32Array[] {
    const sound = new Float32Array(this.#kept.length + block.length);
    sound.set(this.#kept);
    sound.set(block, this.#kept.length);
    const frames: Float32Array[] = [];
    let at = 0;
    for (; at + FRAME <= sound.length; at += FRAME) frames.push(sound.subarray(at, at + FRAME));
    this.#kept = sound.slice(at);
    return frames;
  }
}

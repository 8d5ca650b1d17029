import type { Sound } from "./clip.ts";

/** The sound of phrases, recorded beside a recogniser that hands over none. */
export interface PhraseRecorder {
  open(): void;
  /** leaves the microphone; what is not cut yet is forgotten */
  close(): void;
  /** the sound until now, from the last cut or the last half minute; the next phrase begins here */
  cut(): Promise<Sound | undefined>;
}

/** A stretch is forgotten after the next one is full: a phrase gets from one to two of them, silence none. */
const STRETCH_MS = 15_000;

/**
 * Whether a microphone can be recorded while the browser's recogniser has it. On phones it cannot (from memory): one of
 * the two hears nothing, and words come before sound.
 */
const sharesMicrophone = () => !/Android|iPhone|iPad/i.test(navigator.userAgent);

export function phraseRecorder(): PhraseRecorder | undefined {
  if (!("MediaRecorder" in globalThis) || !navigator.mediaDevices || !sharesMicrophone()) return undefined;
  let wanted = false;
  let stream: MediaStream | undefined;
  let current: Stretch | undefined;
  let before: Stretch | undefined;
  let timer: ReturnType<typeof setInterval> | undefined;
  /** the microphone takes its time: it may come for an opening that was shut meanwhile */
  let turn = 0;

  async function begin(mine: number): Promise<void> {
    let came: MediaStream;
    try {
      came = await navigator.mediaDevices.getUserMedia({ audio: true });
    } catch {
      // without a microphone there is no sound to keep; the ear itself says what is wrong with it
      if (mine === turn) wanted = false;
      return;
    }
    if (mine !== turn) return leave(came);
    stream = came;
    current = record(came);
    timer = setInterval(() => {
      if (!stream) return;
      before = current;
      before?.stop();
      current = record(stream);
    }, STRETCH_MS);
  }

  function release(): void {
    clearInterval(timer);
    current?.stop();
    current = before = undefined;
    if (stream) leave(stream);
    stream = undefined;
  }

  return {
    open() {
      if (wanted) return;
      wanted = true;
      void begin(++turn);
    },
    close() {
      wanted = false;
      turn++;
      release();
    },
    async cut() {
      const stretches = [before, current];
      current?.stop();
      before = undefined;
      current = wanted && stream ? record(stream) : undefined;
      const pieces = await Promise.all(stretches.flatMap((one) => (one ? [one.samples()] : [])));
      const samples = new Float32Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
      let at = 0;
      for (const piece of pieces) {
        samples.set(piece, at);
        at += piece.length;
      }
      return samples.length ? { samples: withoutSilence(samples), rate: RATE } : undefined;
    },
  };
}

function leave(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}

const RATE = 16_000;

interface Stretch {
  stop(): void;
  /** after it was stopped */
  samples(): Promise<Float32Array>;
}

function record(stream: MediaStream): Stretch {
  const recorder = new MediaRecorder(stream);
  const parts: Blob[] = [];
  const ended = new Promise<void>((resolve) => {
    recorder.ondataavailable = (event) => parts.push(event.data);
    recorder.onstop = () => resolve();
    recorder.onerror = () => resolve();
  });
  recorder.start();
  return {
    stop() {
      if (recorder.state !== "inactive") recorder.stop();
    },
    async samples() {
      await ended;
      const bytes = await new Blob(parts).arrayBuffer();
      if (!bytes.byteLength) return new Float32Array();
      try {
        return (await new OfflineAudioContext(1, 1, RATE).decodeAudioData(bytes)).getChannelData(0);
      } catch {
        // stopped before there was sound in it
        return new Float32Array();
      }
    },
  };
}

const FRAME = RATE / 50;
const MARGIN = RATE * 0.3;

/** Without what is far quieter than the loudest of it before the first and after the last word. */
function withoutSilence(samples: Float32Array): Float32Array {
  const loud: number[] = [];
  for (let at = 0; at < samples.length; at += FRAME) {
    const frame = samples.subarray(at, at + FRAME);
    loud.push(Math.sqrt(frame.reduce((sum, one) => sum + one * one, 0) / frame.length));
  }
  const enough = Math.max(...loud) * 0.08;
  const first = loud.findIndex((one) => one >= enough);
  const last = loud.findLastIndex((one) => one >= enough);
  if (first < 0) return samples;
  return samples.slice(Math.max(0, first * FRAME - MARGIN), (last + 1) * FRAME + MARGIN);
}

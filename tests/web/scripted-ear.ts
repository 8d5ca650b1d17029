import type { Page } from "playwright-core";
import { TONES } from "../../web/speech/tones.ts";

/**
 * Put into a page before it starts: a recogniser that hears what the test says and a voice that only writes down what
 * it is given, for a headless browser has neither; and a record of the notes that the real audio graph is told to sound.
 */
export const SCRIPTED_EAR = `
  const running = new Set();
  globalThis.scripted = { running, spoken: [], notes: [] };
  // without it the page cannot hear by itself and takes the browser's ear, which this one is
  globalThis.AudioWorkletNode = undefined;
  class ScriptedRecognition {
    processLocally = false;
    start() { running.add(this); setTimeout(() => this.onstart?.(), 5); }
    stop() { if (running.delete(this)) setTimeout(() => this.onend?.(), 5); }
    abort() { this.stop(); }
  }
  for (const name of ["SpeechRecognition", "webkitSpeechRecognition"])
    Object.defineProperty(globalThis, name, { value: ScriptedRecognition, configurable: true, writable: true });
  globalThis.scripted.hear = (transcript, confidence) => {
    for (const one of running) {
      one.onspeechend?.();
      const result = Object.assign([{ transcript, confidence }], { isFinal: true });
      one.onresult?.({ resultIndex: 0, results: [result] });
    }
  };
  Object.defineProperty(globalThis, "speechSynthesis", { value: {
    cancel() {},
    speak(one) {
      globalThis.scripted.spoken.push({ text: one.text, running: running.size });
      setTimeout(() => one.onend?.(), 30);
    },
  } });
  const start = OscillatorNode.prototype.start;
  OscillatorNode.prototype.start = function (...rest) {
    globalThis.scripted.notes.push(this.frequency.value);
    return start.apply(this, rest);
  };
`;

interface Scripted {
  running: Set<unknown>;
  spoken: { text: string; running: number }[];
  notes: number[];
  hear(text: string, confidence: number): void;
}
type Scene = typeof globalThis & { scripted: Scripted };

/** Says it to the page once it listens: while it speaks, it does not. */
export async function hearIn(page: Page, text: string, confidence = 0.9): Promise<void> {
  await page.waitForFunction(() => (globalThis as Scene).scripted.running.size > 0);
  await page.evaluate(([said, sure]) => (globalThis as Scene).scripted.hear(said as string, sure as number), [
    text,
    confidence,
  ] as const);
}

/** What the page has said aloud, and how many recognisers ran when it began to. */
export const spokenIn = (page: Page) => page.evaluate(() => (globalThis as Scene).scripted.spoken);

/** The tones sounded so far, by the notes they are made of. */
export async function tonesIn(page: Page): Promise<string[]> {
  const notes = await page.evaluate(() => (globalThis as Scene).scripted.notes);
  const tones: string[] = [];
  for (let at = 0; at < notes.length; ) {
    const found = Object.entries(TONES)
      .sort(([, a], [, b]) => b.length - a.length)
      .find(([, tone]) => tone.every((note, n) => Math.abs(note.hz - (notes[at + n] ?? 0)) < 1));
    tones.push(found?.[0] ?? `? ${notes[at]}`);
    at += found?.[1].length ?? 1;
  }
  return tones;
}

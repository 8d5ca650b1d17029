import type { Recognition, RecognitionResultEvent } from "../../../web/speech/recognition.ts";

/**
 * A recogniser that hears what the test says, behind the same interface as the browser's: a headless browser has no
 * speech service, and the ear must be tried against the whole of the interface.
 */
export class ScriptedRecognition implements Recognition {
  static made: ScriptedRecognition[] = [];
  static reset(): void {
    ScriptedRecognition.made = [];
  }
  static get latest(): ScriptedRecognition {
    const latest = ScriptedRecognition.made.at(-1);
    if (!latest) throw new Error("nobody listened yet");
    return latest;
  }

  lang = "";
  continuous = false;
  interimResults = false;
  onstart: Recognition["onstart"] = null;
  onend: Recognition["onend"] = null;
  onerror: Recognition["onerror"] = null;
  onresult: Recognition["onresult"] = null;
  onspeechend: Recognition["onspeechend"] = null;
  onnomatch: Recognition["onnomatch"] = null;
  running = false;
  /** words spoken but not yet recognised when stop() comes: a recogniser still delivers them */
  pending = "";

  constructor() {
    ScriptedRecognition.made.push(this);
  }
  start(): void {
    this.running = true;
    this.onstart?.();
  }
  stop(): void {
    if (this.pending) this.hear(this.pending, true);
    this.pending = "";
    this.end();
  }
  abort(): void {
    this.end();
  }
  end(): void {
    if (!this.running) return;
    this.running = false;
    this.onend?.();
  }
  fail(error: string): void {
    this.onerror?.({ error });
    this.end();
  }
  hear(transcript: string, isFinal: boolean, confidence = 0.9): void {
    const result = { isFinal, length: 1, 0: { transcript, confidence } };
    const event: RecognitionResultEvent = { resultIndex: 0, results: [result] };
    this.onresult?.(event);
  }
}

import type { OnClip } from "./clip.ts";

/**
 * The ear's interface: the part of the W3C SpeechRecognition (Web Speech API, draft community group report) that the
 * page uses. Whatever hears, the browser's own or an engine of ours, stands behind this; the page does not know which.
 */
export interface Recognition {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  maxAlternatives?: number;
  onstart: (() => void) | null;
  onend: (() => void) | null;
  onerror: ((event: { error: string; message?: string }) => void) | null;
  onresult: ((event: RecognitionResultEvent) => void) | null;
  /** sound that was speech has ended; what it was follows as a result */
  onspeechend: (() => void) | null;
  /** speech was heard and no words were found in it */
  onnomatch: ((event: unknown) => void) | null;
  /** ours alone: the sound of a phrase, before its final result; an ear that hears by itself calls it */
  onclip?: OnClip | null;
  start(): void;
  /** ends listening; what was heard until now still comes as a result */
  stop(): void;
  /** ends listening and throws away what was heard */
  abort(): void;
}
export interface RecognitionResultEvent {
  resultIndex: number;
  results: ArrayLike<{ isFinal: boolean; length: number; [index: number]: { transcript: string; confidence: number } }>;
}
export interface RecognitionMaker {
  new (): Recognition;
  /** it calls `onclip`: nothing else needs to record */
  readonly givesClips?: boolean;
}

/**
 * The browser's own recogniser, where it names one. That the name is there does not mean that it can hear: a browser
 * without a speech service has it too and answers with an error, so only trying tells, and the ear listens to `onerror`.
 */
export function browserRecognition(): RecognitionMaker | undefined {
  const named = globalThis as unknown as Record<string, RecognitionMaker | undefined>;
  return named.SpeechRecognition ?? named.webkitSpeechRecognition;
}

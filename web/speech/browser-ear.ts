import type { Recognition, RecognitionMaker } from "./recognition.ts";

/** A browser's recogniser as far as it may be kept on the device: later parts of the Web Speech API, which few have yet. */
interface OnDevice extends Recognition {
  processLocally?: boolean;
  phrases?: unknown;
}
type PhraseMaker = new (phrase: string, boost: number) => unknown;

/** How much likelier a phrase of the site is than any other words, of 0 to 10: natural log, by the API's draft. */
const BOOST = 3;

/**
 * The browser's own recogniser, told to hear on this device and to expect these phrases. One that cannot be told so would
 * send sound away: it fails with `sends-away` before it starts, unless `maySend`.
 */
export function browserEar(named: RecognitionMaker, maySend: boolean, phrases: readonly string[]): RecognitionMaker {
  function Made(): Recognition {
    const made: OnDevice = new named();
    if (maySend) return made;
    if (!("processLocally" in made)) {
      made.start = () =>
        queueMicrotask(() => {
          made.onerror?.({ error: "sends-away" });
          made.onend?.();
        });
      made.stop = () => {};
      made.abort = () => {};
      return made;
    }
    made.processLocally = true;
    const { SpeechRecognitionPhrase } = globalThis as { SpeechRecognitionPhrase?: PhraseMaker };
    if (SpeechRecognitionPhrase && "phrases" in made)
      made.phrases = phrases.map((phrase) => new SpeechRecognitionPhrase(phrase, BOOST));
    return made;
  }
  // what a constructor returns is what `new` gives
  return Made as unknown as RecognitionMaker;
}

import type { SiteWords } from "../../core/speech/ear-words.ts";
import { spokenTag } from "../../core/speech/spoken-tag.ts";
import type { Settings } from "../state/state.ts";
import { browserEar } from "./browser-ear.ts";
import type { RecognitionMaker } from "./recognition.ts";

export interface Ears {
  /** our own, where the browser has what it is made of */
  own: RecognitionMaker | undefined;
  browser: RecognitionMaker | undefined;
}

/**
 * The ear that this device chose, looked up each time one is made: our own where nothing was chosen. None where there is
 * neither: whoever asks is told so.
 */
export function chosenEar(
  { own, browser }: Ears,
  chosen: () => Settings["ear"],
  site: () => SiteWords,
): RecognitionMaker | undefined {
  if (!own && !browser) return undefined;
  const choose = (): RecognitionMaker => {
    const ear = chosen() ?? "own";
    if (own && (ear === "own" || !browser)) return own;
    const phrases = [...site().taught, ...site().tags.flatMap(spokenTag)].map((way) => way.replaceAll("L_", ""));
    return browserEar(browser as RecognitionMaker, ear === "browser_sends", phrases);
  };
  function Chosen() {
    return new (choose())();
  }
  return Object.defineProperty(Chosen, "givesClips", {
    get: () => choose().givesClips === true,
  }) as unknown as RecognitionMaker;
}

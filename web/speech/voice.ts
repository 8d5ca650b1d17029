import type { Ear } from "./ear.ts";

export interface Voice {
  /** cuts off whatever is being said and says this as soon as the ear is shut: nothing queues, hazards least of all */
  /** `done` is told once it has been said, or cannot be; not where something else cut it off */
  say(text: string, done?: () => void): void;
  quiet(): void;
}

/** Slowest speech there is, per character, and a start-up wait: some platforms never say that they finished. */
const MS_PER_CHARACTER = 130;
const START_MS = 3000;
const RING_MS = 120;

/** The read-back voice. It hushes the ear while it speaks, so that the recogniser never hears it. */
export function voice(ear: Ear): Voice {
  const synthesis = "speechSynthesis" in globalThis ? globalThis.speechSynthesis : undefined;
  let turn = 0;

  async function speak(text: string, done?: () => void): Promise<void> {
    const mine = ++turn;
    if (!synthesis || !text) return done?.();
    synthesis.cancel();
    await ear.hush();
    if (mine !== turn) return;
    await new Promise<void>((resolve) => {
      const saying = new SpeechSynthesisUtterance(text);
      saying.lang = "en-US";
      saying.onend = () => resolve();
      saying.onerror = () => resolve();
      setTimeout(resolve, START_MS + text.length * MS_PER_CHARACTER);
      synthesis.speak(saying);
    });
    if (mine !== turn) return;
    // the room still rings for a moment, and a recogniser would take that for words
    await new Promise((resolve) => setTimeout(resolve, RING_MS));
    if (mine !== turn) return;
    ear.unhush();
    done?.();
  }

  return {
    say: (text, done) => void speak(text, done),
    quiet() {
      turn++;
      synthesis?.cancel();
      ear.unhush();
    },
  };
}

import type { Ear } from "./ear.ts";

export interface Voice {
  /** cuts off whatever is being said and says this as soon as the ear is shut: nothing queues, hazards least of all */
  say(text: string): void;
  quiet(): void;
}

/** Slowest speech there is, per character, and a start-up wait: some platforms never say that they finished. */
const MS_PER_CHARACTER = 130;
const START_MS = 3000;

/** The read-back voice. It hushes the ear while it speaks, so that the recogniser never hears it. */
export function voice(ear: Ear): Voice {
  const synthesis = "speechSynthesis" in globalThis ? globalThis.speechSynthesis : undefined;
  let turn = 0;

  async function speak(text: string): Promise<void> {
    const mine = ++turn;
    if (!synthesis || !text) return;
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
    if (mine === turn) ear.unhush();
  }

  return {
    say: (text) => void speak(text),
    quiet() {
      turn++;
      synthesis?.cancel();
      ear.unhush();
    },
  };
}

import type { Page } from "playwright-core";

/**
 * Gives a page an ear for the test to speak into, before it is opened: a headless browser has no speech service. The
 * microphone beside it is the browser's own, which beeps. No voice reads back, or the ear would be shut while it speaks.
 */
export async function withVoice(page: Page): Promise<void> {
  await page.addInitScript(() => {
    class Spoken {
      static latest: Spoken | undefined;
      onstart: (() => void) | null = null;
      onend: (() => void) | null = null;
      onresult: ((event: object) => void) | null = null;
      running = false;
      processLocally = false;
      start() {
        Spoken.latest = this;
        this.running = true;
        this.onstart?.();
      }
      stop() {
        if (this.running) this.onend?.();
        this.running = false;
      }
      abort() {
        this.stop();
      }
      hear(transcript: string) {
        const result = { isFinal: true, length: 1, 0: { transcript, confidence: 0.9 } };
        this.onresult?.({ resultIndex: 0, results: [result] });
      }
    }
    // without the last of them the page cannot hear by itself and takes the browser's ear, which this one is
    Object.assign(globalThis, {
      SpeechRecognition: Spoken,
      webkitSpeechRecognition: Spoken,
      AudioWorkletNode: undefined,
    });
    Object.defineProperty(globalThis, "speechSynthesis", { value: undefined });
  });
}

/** Says words into the open ear. */
export async function hear(page: Page, words: string): Promise<void> {
  await page.waitForFunction(() => {
    const { SpeechRecognition } = globalThis as unknown as { SpeechRecognition: { latest?: { running: boolean } } };
    return SpeechRecognition.latest?.running;
  });
  await page.evaluate((said) => {
    const named = globalThis as unknown as { SpeechRecognition: { latest: { hear(words: string): void } } };
    named.SpeechRecognition.latest.hear(said);
  }, words);
}

/** By the key; on a busy machine a press may last as long as one that is held, and the ear shuts with it. */
export async function openEar(page: Page): Promise<void> {
  await page.locator(".pad").waitFor();
  for (let turn = 0; turn < 5; turn++) {
    await page.keyboard.press("F2");
    await page.waitForTimeout(300);
    if (await page.locator(".pad-open").count()) return;
  }
  throw new Error("the key does not open the ear");
}

export async function shutEar(page: Page): Promise<void> {
  await page.keyboard.press("F2");
  await page.locator(".pad-closed").waitFor();
}

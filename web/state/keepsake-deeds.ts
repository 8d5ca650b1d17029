import type { Encoded, Sound } from "../speech/clip.ts";
import type { KeepsakeShelf } from "../storage/keepsake-shelf.ts";
import type { Room } from "../storage/room.ts";
import type { Answer } from "../sync/ask.ts";
import type { CardKeepsake } from "./keepsake.ts";
import { lastFinding } from "./seen.ts";
import type { CardPhrase, Outbox } from "./state.ts";
import type { Store } from "./store.ts";
import { instantHere } from "./time-words.ts";

/** What keeping sound and photographs needs from the rooms that touch the world. */
export interface KeepsakeHands {
  shelf: Pick<KeepsakeShelf, "keep" | "bytes" | "ofJob">;
  room: Pick<Room, "write">;
  encode(sound: Sound): Promise<Encoded | undefined>;
  fetchPhoto(id: string): Promise<Answer<Blob>>;
  counts(): Promise<Partial<Outbox>>;
  /** sends what waits */
  flush(): void;
  /** says it after the tone that all is well; "" is the tone alone */
  speak(text: string): void;
  newId(): string;
  now(): Date;
}

/** A photograph sized for keeping. */
export interface Picture {
  bytes: ArrayBuffer;
  type: string;
  width: number;
  height: number;
}

export interface KeepsakeDeeds {
  /** whether the sound of phrases is wanted here: by this device, and by the site of the job or the one chosen */
  wantsSound(): boolean;
  /** keeps the sound of a phrase, once it has come */
  keepClip(phrase: CardPhrase, sound: Promise<Sound | undefined>): Promise<void>;
  openCamera(): void;
  shutCamera(): void;
  /** keeps a photograph of what the camera was opened for; what is wrong, in words, where it could not be */
  keepPhoto(picture: Picture): Promise<string | undefined>;
  /** a photograph of the job at hand, from this device, else from the server */
  photo(id: string): Promise<Answer<Blob>>;
  /** shows what the job at hand has, after it was taken up again */
  recall(): Promise<void>;
}

export function keepsakeDeeds(store: Store, hands: KeepsakeHands): KeepsakeDeeds {
  function wantsSound(): boolean {
    const { settings, card, sites } = store.state();
    const site = card ? card.site : settings.site;
    const keeping = sites.find((one) => one.site === site)?.keeping;
    return settings.keepSound !== false && keeping?.clips !== "none";
  }

  /** Shown after it is on the disk, and not before. */
  async function keep(row: CardKeepsake, bytes: ArrayBuffer): Promise<void> {
    await hands.room.write(bytes.byteLength, () => hands.shelf.keep(row, bytes));
    store.happen({ is: "keepsake", keepsake: row });
    store.happen({ is: "outbox", outbox: await hands.counts() });
    hands.flush();
  }

  return {
    wantsSound,
    async keepClip(phrase, coming) {
      try {
        const sound = await coming;
        // words that are on no device say so themselves, and their sound is not kept without them
        const words = store.state().phrases.find((one) => one.id === phrase.id);
        if (!sound || !wantsSound() || words?.delivery === "not_kept") return;
        const clip = await hands.encode(sound);
        if (!clip) return;
        const { id: said, job, saidAt: at } = phrase;
        const { type, seconds, bytes } = clip;
        const row = { id: hands.newId(), kind: "clip", job, phrase: said, at, seconds, type } as const;
        await keep({ ...row, size: bytes.byteLength, delivery: "waiting" }, bytes);
      } catch (problem) {
        store.happen({ is: "noticed", notice: `The words are kept, their sound is not: ${wordsOf(problem)}.` });
      }
    },
    openCamera() {
      if (store.state().card) store.happen({ is: "camera", camera: { phrase: lastFinding(store.state())?.id } });
    },
    shutCamera() {
      store.happen({ is: "camera" });
    },
    async keepPhoto({ bytes, type, width, height }) {
      const { card, camera } = store.state();
      if (!card || !camera) return "there is no job to keep it with";
      try {
        const row = { id: hands.newId(), kind: "photo", job: card.id, phrase: camera.phrase } as const;
        const about = { at: instantHere(hands.now()), type, width, height, size: bytes.byteLength };
        await keep({ ...row, ...about, delivery: "waiting" }, bytes);
        hands.speak(store.state().settings.readBack === "tones" ? "" : "Photo kept.");
        return undefined;
      } catch (problem) {
        return wordsOf(problem);
      }
    },
    async photo(id) {
      const bytes = await hands.shelf.bytes(id);
      const type = store.state().keepsakes.find((one) => one.id === id)?.type;
      return bytes ? { ok: true, value: new Blob([bytes], { type }) } : hands.fetchPhoto(id);
    },
    async recall() {
      const { card } = store.state();
      if (card) store.happen({ is: "keepsakes", keepsakes: await hands.shelf.ofJob(card.id) });
    },
  };
}

function wordsOf(problem: unknown): string {
  return problem instanceof Error ? problem.message : String(problem);
}

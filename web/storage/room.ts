/** How full the device's store is, and making room in it. */

export interface Room {
  /**
   * Writes; where the store is full, lets go of what the server has and writes once more. Rejects with words to act on
   * where there is no room even then.
   */
  write<T>(bytes: number, put: () => Promise<T>): Promise<T>;
  /** Whether sound or a photograph of this size may be taken: words always keep the last of the store for themselves. */
  hasFor(bytes: number): Promise<boolean>;
}

export interface RoomHands {
  /** as `navigator.storage.estimate`; absent where the browser does not say */
  estimate?(): Promise<{ usage?: number; quota?: number }>;
  letGo(wanted: number): Promise<number>;
  /** the store ran full, or has room again */
  tell(full: boolean): void;
}

/** The last part of the store, which only words may fill: some hundred thousand phrases. */
const FOR_WORDS = 0.05;
const MOST_FOR_WORDS = 100_000_000;
/** Let go of more than is asked for, or each phrase would have to ask again. */
const AT_ONCE = 4_000_000;

export const STORE_FULL =
  "this device’s store is full. Take it where there is a network, so that it can send and make room";

export function roomOn({ estimate, letGo, tell }: RoomHands): Room {
  async function left(): Promise<number> {
    const { usage, quota } = (await estimate?.()) ?? {};
    if (usage === undefined || quota === undefined) return Number.POSITIVE_INFINITY;
    return quota - usage - Math.min(quota * FOR_WORDS, MOST_FOR_WORDS);
  }
  return {
    async write(bytes, put) {
      try {
        return await put();
      } catch (problem) {
        if (!isFull(problem)) throw problem;
        const freed = await letGo(bytes + AT_ONCE);
        tell(true);
        if (freed === 0) throw new Error(STORE_FULL, { cause: problem });
        try {
          const written = await put();
          tell(false);
          return written;
        } catch (still) {
          throw isFull(still) ? new Error(STORE_FULL, { cause: still }) : still;
        }
      }
    },
    async hasFor(bytes) {
      const short = bytes - (await left());
      if (short <= 0) {
        tell(false);
        return true;
      }
      // what the browser counts follows later than what was let go of: trust the count of our own
      const room = (await letGo(short + AT_ONCE)) >= short;
      tell(!room);
      return room;
    },
  };
}

function isFull(problem: unknown): boolean {
  return problem instanceof Error && problem.name === "QuotaExceededError";
}

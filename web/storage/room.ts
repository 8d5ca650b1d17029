/** How full the device's store is, and making room in it. */

export interface Room {
  /** Writes words; where the store is full, by what the server has already, then by what is set aside for words. */
  writeWords<T>(put: () => Promise<T>): Promise<T>;
  /** Writes so many bytes of sound or of a photograph; where the store is full, by what the server has already. */
  write<T>(bytes: number, put: () => Promise<T>): Promise<T>;
}

export interface RoomHands {
  /** as `navigator.storage.estimate`; absent where the browser does not say */
  estimate?(): Promise<{ usage?: number; quota?: number }>;
  /** lets go of at least so many bytes that were sent; gives how many it could */
  letGo(wanted: number): Promise<number>;
  /** sets room aside for words; false where there is none */
  setReserve(): Promise<boolean>;
  /** gives up what is set aside for words; false where nothing is any more */
  giveUpReserve(): Promise<boolean>;
  /** the store ran full, or has room again */
  tell(full: boolean): void;
}

/**
 * Before the browser itself refuses, where it says truly how much there is: browsers that hide the size of the disk
 * name a quota that the store never reaches, and only the refusal tells.
 */
const FULL_ENOUGH = 0.95;
/** Let go of more than is asked for, or each phrase would have to ask again. */
const AT_ONCE = 4_000_000;

export const STORE_FULL =
  "this device’s store is full. Take it where there is a network, so that it can send and make room";

export function roomOn({ estimate, letGo, setReserve, giveUpReserve, tell }: RoomHands): Room {
  function full(cause?: unknown): Error {
    tell(true);
    return new Error(STORE_FULL, { cause });
  }

  /** Tries again as long as room can be made. */
  async function write<T>(put: () => Promise<T>, makeRoom: () => Promise<boolean>): Promise<T> {
    for (;;) {
      try {
        return await put();
      } catch (problem) {
        if (!isFull(problem)) throw problem;
        if (await makeRoom()) continue;
        throw full(problem);
      }
    }
  }
  return {
    writeWords: (put) => write(put, async () => (await letGo(AT_ONCE)) > 0 || (await giveUpReserve())),
    async write(bytes, put) {
      const { usage = 0, quota = Number.POSITIVE_INFINITY } = (await estimate?.()) ?? {};
      const short = usage + bytes - quota * FULL_ENOUGH;
      if (short > 0 && (await letGo(short + AT_ONCE)) < short) throw full();
      // words first: nothing else takes room before theirs is set aside again
      while (!(await setReserve())) if ((await letGo(bytes + AT_ONCE)) === 0) throw full();
      const written = await write(put, async () => (await letGo(bytes + AT_ONCE)) > 0);
      tell(false);
      return written;
    },
  };
}

export function isFull(problem: unknown): boolean {
  return problem instanceof Error && problem.name === "QuotaExceededError";
}

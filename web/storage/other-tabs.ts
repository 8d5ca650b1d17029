import type { Shelf } from "./shelf.ts";

/**
 * The other tabs of this device, which have the same store: `changed` is called when one of them wrote to a job, once
 * for all that was written meanwhile, and what this gives tells them that we did.
 */
export function otherTabs(changed: () => Promise<void>): () => void {
  const channel = new BroadcastChannel("handsfull-jobs");
  let looking = false;
  let again = false;
  channel.onmessage = async () => {
    again = true;
    if (looking) return;
    looking = true;
    while (again) {
      again = false;
      await changed();
    }
    looking = false;
  };
  return () => channel.postMessage("changed");
}

/** The same shelf, which tells whenever a job or a phrase on it became another. */
export function telling(shelf: Shelf, tell: () => void): Shelf {
  const then =
    <Given extends unknown[], Result>(write: (...given: Given) => Promise<Result>) =>
    async (...given: Given): Promise<Result> => {
      const result = await write(...given);
      tell();
      return result;
    };
  return {
    ...shelf,
    keepPhrase: then(shelf.keepPhrase),
    markSeen: then(shelf.markSeen),
    closeJob: then(shelf.closeJob),
    markDelivered: then(shelf.markDelivered),
    markRefused: then(shelf.markRefused),
    askAgain: then(shelf.askAgain),
  };
}

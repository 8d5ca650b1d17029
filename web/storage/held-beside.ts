import { inOrderSaid } from "../state/order-said.ts";
import { noShelf } from "./no-shelf.ts";
import { isFull } from "./room.ts";
import type { Shelf } from "./shelf.ts";

/**
 * The shelf, and beside it what the device's store would not take, held in this page: nobody is told that it is kept,
 * but while the page is open it is sent like everything else.
 */
export function heldBeside(shelf: Shelf): Shelf {
  const held = noShelf("its store refused");
  /** what the page holds and the store does not */
  const only = new Set<string>();

  async function hold(id: string, put: () => Promise<void>, instead: () => Promise<void>): Promise<void> {
    try {
      await put();
      only.delete(id);
    } catch (problem) {
      only.add(id);
      // it refuses as well, having taken it: it too can promise nothing
      await instead().catch((same: unknown) => same);
      throw problem;
    }
  }
  return {
    ...shelf,
    keepJob: (card) =>
      hold(
        card.id,
        () => shelf.keepJob(card),
        () => held.keepJob(card),
      ),
    keepPhrase: (phrase) =>
      hold(
        phrase.id,
        () => shelf.keepPhrase(phrase),
        () => held.keepPhrase(phrase),
      ),
    async job(id) {
      const [kept, here] = await Promise.all([shelf.job(id), held.job(id)]);
      const card = kept?.card ?? here?.card;
      const more = held.phrasesOf(id).filter((one) => only.has(one.id));
      return card && { card, phrases: [...(kept?.phrases ?? []), ...more].sort(inOrderSaid) };
    },
    async waiting(limit) {
      const [kept, here] = await Promise.all([shelf.waiting(limit), held.waiting(limit)]);
      const more = here.phrases.filter((one) => only.has(one.id)).slice(0, limit - kept.phrases.length);
      const jobs = new Map([...here.jobs.filter((one) => only.has(one.id)), ...kept.jobs].map((one) => [one.id, one]));
      for (const { job: id } of more) {
        const found = jobs.has(id) ? undefined : await shelf.job(id);
        if (found) jobs.set(id, { ...found.card, delivery: "kept" });
      }
      return { jobs: [...jobs.values()], phrases: [...kept.phrases, ...more] };
    },
    async markDelivered(jobs, phrases) {
      const marked = await held.markDelivered(
        jobs.filter((id) => only.has(id)),
        phrases.filter((one) => only.has(one.id)),
      );
      const kept = await shelf.markDelivered(
        jobs.filter((id) => !only.has(id)),
        phrases.filter((one) => !only.has(one.id)),
      );
      return [...marked, ...kept];
    },
    markRefused: (kind, id, problem) => (only.has(id) ? held : shelf).markRefused(kind, id, problem),
    async refused() {
      const [kept, here] = await Promise.all([shelf.refused(), held.refused()]);
      return { jobs: [...kept.jobs, ...here.jobs], phrases: [...kept.phrases, ...here.phrases] };
    },
    async askAgain() {
      await held.askAgain();
      await shelf.askAgain();
    },
    async counts() {
      const [kept, here] = await Promise.all([shelf.counts(), held.counts()]);
      const { phrases } = await held.waiting(Number.POSITIVE_INFINITY);
      return {
        ...kept,
        waiting: kept.waiting + phrases.filter((one) => only.has(one.id)).length,
        refused: kept.refused + here.refused,
        lastKeptAt: [kept.lastKeptAt ?? "", here.lastKeptAt ?? ""].sort().at(-1) || undefined,
      };
    },
    keepValve: (known) => shelf.keepValve(known).catch(doWithout),
    keepListed: (valves, sites) => shelf.keepListed(valves, sites).catch(doWithout),
    async setLastKeptAt(at) {
      await held.setLastKeptAt(at);
      // of a store that is full: what was sent counts as sent all the same
      if (only.size === 0) await shelf.setLastKeptAt(at);
    },
  };
}

/** What the server has, and gives again where there is a network: on a full device nothing of anybody's is lost by it. */
function doWithout(problem: unknown): void {
  if (!isFull(problem)) throw problem;
  console.info("What the server told is not kept on this device: its store is full.");
}

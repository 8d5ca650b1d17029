import { StoreBusy, StoreFull } from "../../db/failures.ts";
import type { Store } from "../../db/open.ts";
import type { RecentJobs } from "../../reading/keep-reading.ts";
import { type Delivered, type Delivery, keepAll } from "./store.ts";

/** A request holds at most 200 phrases and 200 jobs: a statement's values stay well below what the database takes. */
const MOST_TOGETHER = 200;

interface Gathered {
  deliveries: Delivery[];
  weight: number;
  answers: Promise<Delivered[]>;
}

/**
 * Keeps what devices send and answers once it is on the disk. Requests that come while others are being written are
 * gathered and written as one: fifty devices that say a phrase each cost little more than one that sends fifty.
 */
export function makeDeliver({ store, recent }: { store: Store; recent: RecentJobs }) {
  let open: Gathered | undefined;

  async function write(deliveries: () => readonly Delivery[]): Promise<Delivered[]> {
    const { answers, read } = await store.write((tx) => keepAll(tx, recent, deliveries()));
    for (const [job, what] of read) recent.set(job, what);
    return answers;
  }

  function gather(): Gathered {
    const mine: Gathered = { deliveries: [], weight: 0, answers: Promise.resolve([]) };
    mine.answers = write(() => {
      // from its first statement on nobody may join
      if (open === mine) open = undefined;
      return mine.deliveries;
    }).finally(() => {
      // turned away before it began: the next must not be turned away with it
      if (open === mine) open = undefined;
    });
    return mine;
  }

  return async function deliver(sent: Delivery["sent"], who: Delivery["who"]): Promise<Delivered> {
    const weight = sent.phrases.length + sent.jobs.length;
    if (!open || (open.weight > 0 && open.weight + weight > MOST_TOGETHER)) open = gather();
    const mine = open;
    const place = mine.deliveries.push({ sent, who }) - 1;
    mine.weight += weight;
    try {
      return (await mine.answers)[place] as Delivered;
    } catch (cause) {
      if (cause instanceof StoreBusy || cause instanceof StoreFull || mine.deliveries.length === 1) throw cause;
      // whatever broke was perhaps another's: each by itself then
      return (await write(() => [{ sent, who }]))[0] as Delivered;
    }
  };
}

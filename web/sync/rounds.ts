/** Why a round of sending ended before everything was sent. */
export interface Trouble {
  /** in words, for a person */
  why: string;
  /** how long the server asked to be left alone, in milliseconds */
  waitMs?: number;
}

export interface RoundHands {
  /** runs the work when no other tab is sending the same */
  alone(work: () => Promise<void>): Promise<void>;
  later(work: () => void, ms: number): void;
  chance(): number;
  /** milliseconds of any clock that only goes forward */
  ticks(): number;
}

/** A server that asks for more than this is mistaken, or something else answered in its place. */
const LONGEST_WAIT_MS = 600_000;

/**
 * Makes what sends in rounds. Call what it returns whenever there may be something to send: calls while a round runs
 * fold into one, a round that met trouble comes again by itself, and a server that asked for time is given it.
 * `work` sends all it can and says what stopped it; `after` hears how each round ended.
 */
export function rounds(
  at: RoundHands,
  work: () => Promise<Trouble | undefined>,
  after: (trouble: Trouble | undefined) => Promise<void>,
): () => Promise<void> {
  let running = false;
  let asked = false;
  let failures = 0;
  let comesAgain = false;
  let notBefore = 0;

  function comeAgain(ms: number): void {
    // one at a time: each phrase said without a network would start another for ever
    if (comesAgain) return;
    comesAgain = true;
    at.later(() => {
      comesAgain = false;
      void go();
    }, ms);
  }

  async function go(): Promise<void> {
    asked = true;
    if (running) return;
    const wait = notBefore - at.ticks();
    if (wait > 0) return comeAgain(wait);
    running = true;
    try {
      while (asked) {
        asked = false;
        let trouble: Trouble | undefined;
        await at.alone(async () => {
          try {
            trouble = await work();
          } catch (problem) {
            // the device's own store failed: what was said is on the screen; say so and try again
            trouble = { why: `this device’s store cannot be read (${wordsOf(problem)})` };
          }
        });
        await after(trouble).catch((problem: unknown) => {
          trouble ??= { why: wordsOf(problem) };
        });
        failures = trouble ? failures + 1 : 0;
        if (!trouble) continue;
        const asksMs = Math.min(trouble.waitMs ?? 0, LONGEST_WAIT_MS);
        if (asksMs > 0) notBefore = at.ticks() + asksMs;
        if (asksMs > 0) asked = false;
        comeAgain(Math.max(asksMs, backoffMs(failures - 1, at.chance())));
      }
    } finally {
      running = false;
    }
  }
  return go;
}

/** Wait before the next try: doubling from one second to a minute; `chance` in 0..1 keeps devices apart. */
export function backoffMs(failures: number, chance: number): number {
  const full = Math.min(60_000, 1000 * 2 ** Math.min(failures, 6));
  return full / 2 + (full / 2) * chance;
}

function wordsOf(problem: unknown): string {
  return problem instanceof Error ? problem.message : String(problem);
}

import type { Context } from "hono";
import type { Who } from "./access.ts";
import { addressOf, isLoopback } from "./accounts/this-machine.ts";
import { Refusal } from "./errors.ts";
import { RATES } from "./limits.ts";
import type { Metrics } from "./metrics.ts";

/**
 * How much one caller may ask, and all of them at once. Whoever is turned away keeps what he has and is told when to
 * come again; the page obeys (web/sync/rounds.ts).
 */
export interface BackPressure {
  /** a call of somebody known: answers what to do when it is over, or refuses */
  enter(who: Who): () => void;
  /** a call of nobody known, counted against where it comes from: guesses are cheap to make */
  guessed(c: Context): void;
  open(): number;
}

interface Bucket {
  left: number;
  at: number;
}

export function makeBackPressure(metrics: Metrics, ticks: () => number = () => performance.now()): BackPressure {
  const buckets = new Map<string, Bucket>();
  const open = new Map<string, number>();
  let all = 0;

  /** Takes one from the bucket of that name; answers the seconds until there is one again. */
  function take(key: string, { perSecond, burst }: { perSecond: number; burst: number }): number {
    const now = ticks();
    const bucket = buckets.get(key) ?? { left: burst, at: now };
    bucket.left = Math.min(burst, bucket.left + ((now - bucket.at) / 1000) * perSecond);
    bucket.at = now;
    // addresses are without end, and what is remembered of them is not: whoever was longest away goes first
    buckets.delete(key);
    buckets.set(key, bucket);
    const [oldest] = buckets.keys();
    if (buckets.size > RATES.mostRemembered && oldest !== undefined) buckets.delete(oldest);
    if (bucket.left < 1) return Math.max(1, Math.ceil((1 - bucket.left) / perSecond));
    bucket.left--;
    return 0;
  }

  function turnAway(status: 429 | 503, why: string, seconds: number, detail: string): never {
    metrics.count("handsfull_turned_away", { why });
    throw new Refusal(status, detail, { headers: { "retry-after": String(seconds) } });
  }

  return {
    enter(who) {
      if (all >= RATES.openAtAll) turnAway(503, "all", 2, "Too many ask at once. Send it again in a moment.");
      const mine = open.get(who.by) ?? 0;
      if (mine >= RATES.openEach) turnAway(429, "open", 1, `${MANY} Wait for some of their answers.`);
      // whoever sits at the machine itself while nobody is enrolled could stop it anyway; nobody is counted by address
      const waitS = who.by === "open" || who.by === "nobody" ? 0 : take(who.by, RATES.known);
      if (waitS > 0) turnAway(429, "rate", waitS, `${MANY} Wait ${waitS} s, and send several phrases at a time.`);
      open.set(who.by, mine + 1);
      all++;
      return () => {
        const left = (open.get(who.by) ?? 1) - 1;
        if (left > 0) open.set(who.by, left);
        else open.delete(who.by);
        all--;
      };
    },
    guessed(c) {
      const waitS = take(`from ${callerAddress(c)}`, RATES.unknown);
      if (waitS > 0) turnAway(429, "unknown", waitS, `${MANY} Wait ${waitS} s.`);
    },
    open: () => all,
  };
}

const MANY = "Too many calls come from you at once.";

/** Where a call comes from: behind a proxy on this machine, what the proxy itself saw. */
function callerAddress(c: Context): string {
  const address = addressOf(c);
  const passedOn = c.req.header("x-forwarded-for")?.split(",").at(-1)?.trim();
  return isLoopback(address) && passedOn ? passedOn.slice(0, 64) : address;
}

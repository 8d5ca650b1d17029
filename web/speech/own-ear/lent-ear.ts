import type { Ear } from "../ear.ts";
import type { Listener, OwnEar } from "./own-ear.ts";

/** The page's own ear, lent to a screen that hears for itself: meanwhile nothing that is said gets to the bench. */
export interface LentEar {
  load(): void;
  listen(listener: Listener): void;
  /** what was said until now still comes, then `stopped` */
  stop(): void;
  /** what was said until now is forgotten */
  abort(): void;
  giveBack(): void;
  /** which acoustic model it hears by; not known before it is here */
  wide(): boolean | undefined;
}

export function lentEar(own: OwnEar, bench: Pick<Ear, "hush" | "unhush">): LentEar {
  let turn = 0;
  const abort = () => {
    turn++;
    own.abort();
  };
  return {
    load: () => own.load(),
    listen(listener) {
      const mine = ++turn;
      void bench.hush().then(() => {
        if (mine === turn) own.listen(listener);
      });
    },
    stop: () => own.stop(),
    abort,
    giveBack() {
      abort();
      bench.unhush();
    },
    wide: () => own.wide,
  };
}

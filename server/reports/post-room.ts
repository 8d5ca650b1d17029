import type { Log } from "../log.ts";
import { makeOutbox, type Post } from "../mail/outbox.ts";
import type { Issuing } from "./issue.ts";
import { runSchedule } from "./schedule.ts";

/** Looks at the clock and into the outbox again and again, for as long as the server runs. */
export interface PostRoom {
  /** sees to what a killed outbox left, then begins */
  open(): void;
  /** looks now rather than at the next turn */
  wake(): void;
  /** resolves once what was handed over has been answered, or after a few seconds */
  stop(): Promise<void>;
}

/** Often enough that a report handed in by a command, or a site's hour, does not wait long. */
const EVERY_MS = 5_000;
const LONGEST_STOP_MS = 8_000;

export function makePostRoom(given: Issuing & { log: Log; post: Post }): PostRoom {
  const outbox = makeOutbox(given);
  let stopped = false;
  let timer: NodeJS.Timeout | undefined;
  let opened = false;
  let begun = false;
  let asked = false;
  let running: Promise<void> | undefined;

  async function turns(): Promise<void> {
    while (asked && !stopped) {
      asked = false;
      try {
        if (!begun) await outbox.begin();
        begun = true;
        await runSchedule(given);
        await outbox.work();
      } catch (cause) {
        // the next turn tries again; what was written down before stands
        given.log.error("reports could not be seen to", { problem: String(cause) });
      }
    }
    running = undefined;
    if (!stopped) timer = setTimeout(wake, EVERY_MS);
  }
  function wake(): void {
    asked = true;
    clearTimeout(timer);
    if (opened && !stopped) running ??= turns();
  }

  return {
    open() {
      opened = true;
      wake();
    },
    wake,
    async stop() {
      stopped = true;
      clearTimeout(timer);
      outbox.stop();
      await Promise.race([running, new Promise((late) => setTimeout(late, LONGEST_STOP_MS).unref())]);
    },
  };
}

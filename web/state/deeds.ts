import { type Hands, problemWords } from "./hands.ts";
import { type JobDeeds, jobDeeds } from "./job-deeds.ts";
import type { KeepsakeDeeds } from "./keepsake-deeds.ts";
import type { Turn } from "./loop.ts";
import { type SayDeeds, sayDeeds } from "./say-deeds.ts";
import { standingAlert } from "./seen.ts";
import type { Settings } from "./state.ts";
import type { Store } from "./store.ts";
import { type WordDeeds, wordDeeds } from "./word-deeds.ts";

export type { Hands } from "./hands.ts";

/** Everything a person can do on the screens. */
export interface Deeds
  extends Pick<JobDeeds, "start" | "close" | "reopen" | "recall" | "catchUp">,
    Pick<SayDeeds, "say" | "overhear" | "hearOnce" | "reply" | "undo" | "askToClose" | "startWithStray">,
    WordDeeds {
  keepsakes: KeepsakeDeeds;
  seenAlert(): Promise<void>;
  keepAgain(id: string): Promise<void>;
  askAgain(): Promise<void>;
  set(settings: Partial<Settings>): void;
  dropStray(): void;
  takeNewer(): void;
  /** tells the loop of a pad or key pressed, let go or tapped */
  turned(now: Turn): void;
}

export function deeds(store: Store, hands: Hands): Deeds {
  const jobs = jobDeeds(store, hands);
  const { start, close, reopen, recall, catchUp, keep } = jobs;

  function set(settings: Partial<Settings>): void {
    store.happen({ is: "set", settings });
    if (settings.readBack === "tones") hands.quiet();
    if (settings.handsFree !== undefined) hands.turned({ is: "hands_free", on: settings.handsFree });
    // another site has words of its own
    if ("site" in settings) hands.sendWords();
    hands.shelf.keepSettings(store.state().settings).catch((problem: unknown) => {
      store.happen({ is: "noticed", notice: `This device does not keep the setting: ${problemWords(problem)}` });
    });
  }

  return {
    keepsakes: hands.keepsakes,
    start,
    close,
    reopen,
    recall,
    catchUp,
    set,
    ...sayDeeds(store, hands, jobs, set),
    ...wordDeeds(store, hands),
    async seenAlert() {
      const alert = standingAlert(store.state());
      if (!alert) return;
      hands.quiet();
      store.happen({ is: "alert_seen", id: alert.phrase.id });
      await hands.shelf.markSeen(alert.phrase.id);
    },
    async keepAgain(id) {
      const phrase = store.state().phrases.find((one) => one.id === id);
      if (phrase) await keep(phrase);
    },
    async askAgain() {
      await hands.shelf.askAgain();
      hands.flush();
    },
    dropStray() {
      store.happen({ is: "strayed" });
    },
    takeNewer: hands.takeNewer,
    turned: hands.turned,
  };
}

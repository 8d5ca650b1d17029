import type { Ear } from "../speech/ear.ts";
import type { Deeds } from "./deeds.ts";
import { type Act, type Tone, type Turn, turn } from "./loop.ts";
import type { Store } from "./store.ts";

/** What the loop needs from the rooms that make it heard. */
export interface TalkHands {
  ear: Pick<Ear, "open" | "close">;
  voice: { say(text: string, done: () => void): void; quiet(): void };
  sound(tone: Tone): void;
  deeds(): Pick<Deeds, "say" | "overhear">;
  later(work: () => void, ms: number): void;
}

/** Runs the loop: tells it what happens, keeps how it stands in the store, does what it says. */
export function talk(store: Store, hands: TalkHands): (now: Turn) => void {
  let wait = 0;

  function happen(now: Turn): void {
    const [loop, acts] = turn(store.state().loop, now);
    store.happen({ is: "turned", loop });
    for (const act of acts) perform(act);
  }

  function perform(act: Act): void {
    if (act.do === "open") hands.ear.open();
    else if (act.do === "close") hands.ear.close();
    else if (act.do === "hush") hands.voice.quiet();
    else if (act.do === "tone") hands.sound(act.tone);
    else if (act.do === "say") hands.voice.say(act.text, () => happen({ is: "spoken" }));
    else if (act.do === "take") void hands.deeds().say(act.text, "heard", act.confidence, act.sound);
    else if (act.do === "overhear") void hands.deeds().overhear(act);
    else if (act.do === "wait") {
      const mine = ++wait;
      hands.later(() => {
        if (mine === wait) happen({ is: "quiet" });
      }, act.ms);
    }
  }

  return happen;
}

import type { EarView } from "../state/state.ts";
import type { Sound } from "./clip.ts";
import type { Recognition, RecognitionMaker } from "./recognition.ts";
import { NO_EAR, troubleWords } from "./trouble.ts";

export interface Ear {
  open(): void;
  close(): void;
  /** stops hearing while the page speaks; settles when nothing more will be heard */
  hush(): Promise<void>;
  /** hears again, if it was open when hushed */
  unhush(): void;
}

export interface WayHeard {
  text: string;
  /** not known of every recogniser */
  confidence: number | undefined;
}

export interface EarTells {
  view(ear: Partial<EarView>): void;
  /** `ways`: how it may have been said, the likeliest first; `sound`: of this phrase, where the recogniser gives it */
  phrase(ways: readonly [WayHeard, ...WayHeard[]], sound: Sound | undefined): void;
  /** somebody stopped speaking: the phrase is on its way */
  ended?(): void;
  /** somebody spoke, and no words were found in it */
  garbled?(): void;
}

/** How long a recogniser may take to say that it ended: some never do. */
const END_WAIT_MS = 1500;
const MOST_WAYS = 8;
const QUICK_MS = 1000;
const MOST_QUICK_ENDS = 20;

type Result = Parameters<NonNullable<Recognition["onresult"]>>[0]["results"][number];

function waysOf(result: Result): WayHeard[] {
  return Array.from(result, ({ transcript, confidence }) => ({
    text: transcript.trim(),
    // a confidence of 0 is how some browsers say that they have none
    confidence: confidence > 0 && confidence <= 1 ? confidence : undefined,
  })).filter(({ text }) => text !== "");
}

/**
 * Listens phrase by phrase on whatever recogniser it is given, and keeps listening until closed: browsers end a
 * recognition at each silence, so an end that nobody asked for starts the next one.
 */
export function ear(make: RecognitionMaker | undefined, tells: EarTells): Ear {
  let wanted = false;
  let hushed = false;
  let recognition: Recognition | undefined;
  let ended: (() => void)[] = [];
  /** ends in a row that came at once: a recogniser that cannot run must not be started in a tight loop */
  let quickEnds = 0;
  let startedAt = 0;

  function start(): void {
    if (!make || recognition || !wanted || hushed) return;
    const current = new make();
    recognition = current;
    current.lang = "en-US";
    current.continuous = true;
    current.interimResults = true;
    current.maxAlternatives = MOST_WAYS;
    let sound: Sound | undefined;
    current.onclip = (samples, rate) => {
      sound = { samples, rate };
    };
    current.onstart = () => tells.view({ state: "open", trouble: undefined });
    current.onresult = (event) => {
      if (recognition !== current) return;
      let hearing = "";
      for (let index = event.resultIndex; index < event.results.length; index++) {
        const result = event.results[index];
        const best = result?.[0];
        if (!result || !best) continue;
        const text = best.transcript.trim();
        if (!result.isFinal) hearing += ` ${text}`;
        else {
          const [way, ...others] = waysOf(result);
          if (way) tells.phrase([way, ...others], sound);
          if (way) sound = undefined;
        }
      }
      tells.view({ hearing: hearing.trim() });
    };
    current.onerror = (event) => {
      const trouble = troubleWords(event.error);
      if (!trouble) return;
      wanted = false;
      tells.view({ trouble });
    };
    current.onspeechend = () => {
      if (recognition === current) tells.ended?.();
    };
    current.onnomatch = () => {
      if (recognition === current) tells.garbled?.();
    };
    current.onend = () => finished(current);
    startedAt = performance.now();
    tells.view({ state: "opening", hearing: "" });
    try {
      current.start();
    } catch (problem) {
      // the platform throws where the microphone is still held by an earlier recognition
      wanted = false;
      tells.view({ trouble: troubleWords(problem instanceof Error ? problem.name : "unknown") });
      finished(current);
    }
  }

  function finished(which: Recognition): void {
    if (recognition !== which) return;
    recognition = undefined;
    for (const told of ended) told();
    ended = [];
    // one that ran for a while ended at a silence, however often: who listens hands-free may be silent for an hour
    quickEnds = performance.now() - startedAt < QUICK_MS ? quickEnds + 1 : 0;
    if (wanted && !hushed && quickEnds <= MOST_QUICK_ENDS) setTimeout(start, Math.min(quickEnds * 100, 1000));
    else {
      if (!hushed) wanted = false;
      tells.view({ state: hushed && wanted ? "hushed" : "closed", hearing: "" });
    }
  }

  return {
    open() {
      if (!make) {
        tells.view({ state: "closed", trouble: NO_EAR });
        return;
      }
      wanted = true;
      quickEnds = 0;
      tells.view({ trouble: undefined });
      start();
    },
    close() {
      wanted = false;
      if (recognition) recognition.stop();
      else tells.view({ state: "closed", hearing: "" });
    },
    hush() {
      hushed = true;
      const current = recognition;
      if (!current) return Promise.resolve();
      return new Promise((resolve) => {
        ended.push(resolve);
        setTimeout(() => {
          if (recognition !== current) return;
          current.abort();
          finished(current);
        }, END_WAIT_MS);
        // stop, not abort: what the person said until this moment must still arrive
        current.stop();
      });
    },
    unhush() {
      hushed = false;
      if (wanted) start();
      else tells.view({ state: "closed" });
    },
  };
}

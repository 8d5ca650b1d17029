import type { Sound } from "../speech/clip.ts";

/**
 * The loop at the bench, as a machine without a page: speak, understood, said back, next. Something happens; the loop
 * says how it stands then and what is to be done about it. It opens no microphone and makes no sound itself.
 */

/** Held longer than this, pad and key listen only while held; let go sooner, they stay on until the next press. */
export const HOLD_MS = 500;
/** How long it goes on listening after the call word, or for the answer to a question, without a word being said. */
export const AWAKE_MS = 12_000;
/** How long after letting go the words just said may still arrive. */
export const TRAIL_MS = 2500;

/** What the phrase came to, in the one sign that tone and buzz give. */
export type Mood = "understood" | "doubtful" | "not_understood" | "hazard";
export type Tone = Mood | "listening";

export interface Loop {
  /** by pad, key or headset: held while pressed, on until pressed again, or shut */
  mic: "shut" | "held" | "on";
  /** listens for the call word even while shut */
  handsFree: boolean;
  /** called, or asked something: what is said within a while is meant */
  awake: boolean;
  /** the recogniser runs */
  open: boolean;
  /** the page is speaking, and hears nothing */
  speaking: boolean;
  /** the next opening is told by its tone: somebody waits to speak */
  announce: boolean;
  /** the phrase under way came by ear: its question may be answered by ear */
  byEar: boolean;
  pressed?: { at: number; was: "shut" | "on" };
}

export const RESTING: Loop = {
  mic: "shut",
  handsFree: false,
  awake: false,
  open: false,
  speaking: false,
  announce: false,
  byEar: false,
};

/** A phrase as the ear gives it. */
export interface Heard {
  text: string;
  confidence?: number;
  /** its sound, where that is to be had */
  sound?: Promise<Sound | undefined>;
}

/** What can happen. `at` in milliseconds of any steady clock. */
export type Turn =
  | { is: "pressed"; at: number }
  | { is: "let_go"; at: number }
  /** a press that has no end: a screen reader's, a headset's button */
  | { is: "tapped" }
  | { is: "hands_free"; on: boolean }
  | { is: "opened" }
  | { is: "shut"; trouble?: boolean }
  | ({ is: "heard"; call: string } & Heard)
  /** sound that was speech, and no words in it */
  | { is: "garbled" }
  | { is: "answered"; mood?: Mood; say?: string; asks?: boolean }
  | { is: "spoken" }
  | { is: "quiet" };

/** What is to be done. */
export type Act =
  | { do: "open" }
  | { do: "close" }
  | { do: "hush" }
  | { do: "tone"; tone: Tone }
  | { do: "say"; text: string }
  | ({ do: "take" } & Heard)
  /** said to nobody here: only a hazard in it counts */
  | ({ do: "overhear" } & Heard)
  /** tell me when nothing was said for so long; the latest wait replaces the one before */
  | { do: "wait"; ms: number };

export function turn(loop: Loop, now: Turn): [Loop, Act[]] {
  switch (now.is) {
    case "pressed":
      return pressed(loop, now.at);
    case "let_go":
      return letGo(loop, now.at);
    case "tapped":
      return loop.mic === "shut" ? opening({ ...loop, mic: "on" }) : closing(loop);
    case "hands_free":
      if (now.on) return [{ ...loop, handsFree: true }, loop.open ? [] : [{ do: "open" }]];
      return loop.mic === "shut"
        ? closing({ ...loop, handsFree: false })
        : [{ ...loop, handsFree: false, awake: false }, []];
    case "opened":
      return [{ ...loop, open: true, announce: false }, loop.announce ? [{ do: "tone", tone: "listening" }] : []];
    case "shut":
      // while it speaks the ear is shut and opens again by itself
      if (!now.trouble) return [{ ...loop, open: false, mic: loop.speaking ? loop.mic : "shut" }, []];
      return [
        { ...RESTING, handsFree: loop.handsFree, speaking: loop.speaking },
        loop.mic === "shut" ? [] : [{ do: "tone", tone: "not_understood" }],
      ];
    case "heard":
      return heard(loop, now);
    case "garbled":
      return isListening(loop) && !loop.speaking ? [loop, [{ do: "tone", tone: "not_understood" }]] : [loop, []];
    case "answered":
      return answered(loop, now);
    case "spoken":
      return loop.announce
        ? [{ ...loop, speaking: false, awake: true }, listenForAnswer(loop)]
        : [{ ...loop, speaking: false }, loop.awake ? [{ do: "wait", ms: AWAKE_MS }] : []];
    case "quiet":
      if (!loop.awake) return [loop, []];
      return loop.mic === "shut" && !loop.handsFree ? closing(loop) : [{ ...loop, awake: false }, []];
  }
}

/** Whether what is said now is meant for the log. */
export const isListening = (loop: Loop): boolean => loop.mic !== "shut" || loop.awake;

function pressed(loop: Loop, at: number): [Loop, Act[]] {
  if (loop.pressed) return [loop, []];
  if (loop.mic === "on")
    return [{ ...loop, speaking: false, pressed: { at, was: "on" } }, loop.speaking ? [{ do: "hush" }] : []];
  return opening({ ...loop, mic: "held", pressed: { at, was: "shut" } });
}

function letGo(loop: Loop, at: number): [Loop, Act[]] {
  const { pressed: press, ...rest } = loop;
  if (!press) return [loop, []];
  if (press.was === "shut" && at - press.at <= HOLD_MS)
    return [{ ...rest, mic: loop.mic === "shut" ? "shut" : "on" }, []];
  return closing(rest);
}

/** Somebody wants to speak: the page falls silent and listens. */
function opening(loop: Loop): [Loop, Act[]] {
  const acts: Act[] = loop.open && !loop.speaking ? [{ do: "tone", tone: "listening" }] : [{ do: "open" }];
  // wanted first: an ear that nobody wants open is told shut when the page falls silent
  if (loop.speaking) acts.push({ do: "hush" });
  return [{ ...loop, speaking: false, announce: !(loop.open && !loop.speaking) }, acts];
}

function closing(loop: Loop): [Loop, Act[]] {
  const shut: Loop = { ...loop, mic: "shut", announce: false };
  // hands-free the ear stays open for the word; what was just said is still on its way
  if (loop.handsFree) return [{ ...shut, awake: true }, [{ do: "wait", ms: TRAIL_MS }]];
  // told to close it is as good as closed: who presses again at once must have it opened again
  return [{ ...shut, awake: false, open: false }, [{ do: "close" }]];
}

function heard(loop: Loop, { call, text, confidence, sound }: Extract<Turn, { is: "heard" }>): [Loop, Act[]] {
  // the page's own voice, where a recogniser still delivers it
  if (loop.speaking) return [loop, []];
  const after = loop.handsFree ? afterCall(text, call) : undefined;
  if (after === undefined && loop.handsFree && !isListening(loop))
    return [loop, [{ do: "overhear", text, confidence, sound }]];
  const waiting: Act[] = loop.handsFree || loop.awake ? [{ do: "wait", ms: AWAKE_MS }] : [];
  const awake = loop.handsFree || loop.awake;
  if (after === "") return [{ ...loop, awake }, [{ do: "tone", tone: "listening" }, ...waiting]];
  return [{ ...loop, awake, byEar: true }, [{ do: "take", text: after ?? text, confidence, sound }, ...waiting]];
}

function answered(loop: Loop, now: Extract<Turn, { is: "answered" }>): [Loop, Act[]] {
  const acts: Act[] = now.mood ? [{ do: "tone", tone: now.mood }] : [];
  const announce = now.asks === true && loop.byEar;
  const next: Loop = { ...loop, byEar: false, announce };
  if (now.say) return [{ ...next, speaking: true }, [...acts, { do: "say", text: now.say }]];
  if (!announce) return [next, acts];
  return [{ ...next, awake: true }, [...acts, ...listenForAnswer(next)]];
}

/** A question was asked of somebody whose hands are full: the answer is waited for with the ear open. */
function listenForAnswer(loop: Loop): Act[] {
  return loop.open ? [{ do: "wait", ms: AWAKE_MS }] : [{ do: "open" }, { do: "wait", ms: AWAKE_MS }];
}

/** What follows the call word; undefined where it was not said, "" where nothing follows. */
export function afterCall(text: string, call: string): string | undefined {
  const wanted = letters(call);
  if (!wanted) return undefined;
  const oneWord = wanted.length >= 8 && !/\s/.test(call.trim());
  const words = [...text.matchAll(/\S+/g)].map((found) => ({
    word: letters(found[0]),
    to: found.index + found[0].length,
  }));
  let after: string | undefined;
  for (let from = 0; from < words.length; from++) {
    let joined = "";
    for (let to = from; to < words.length && joined.length < wanted.length + 2; to++) {
      joined += words[to]?.word ?? "";
      // recognisers write an unknown word as one they know: near is near enough where somebody begins to speak, but for
      // a call of plain words ("for the job" is not "for the log")
      const near = from <= 1 && words[from - 1]?.word !== "a" && oneWord && within(joined, wanted, 2);
      if (joined === wanted || near) after = text.slice(words[to]?.to).replace(/^[\s,.:;!?]+/, "");
      if (joined === wanted) break;
    }
  }
  return after;
}

const letters = (text: string): string => text.toLowerCase().replaceAll(/[^a-z0-9]/g, "");

/** Whether one word becomes the other by at most `most` letters put in, left out or changed. */
function within(a: string, b: string, most: number): boolean {
  let row = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(changed, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return (row[b.length] ?? 0) <= most;
}

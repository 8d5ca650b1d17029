import { describe, expect, test } from "vitest";
import { reads } from "./in-short.ts";

/**
 * Ways of saying one thing, each tried with several parts, conditions, verbs and measures: a rule that holds for one
 * word and not for the next shows here. X a part, C a condition, H a thing found, V Ved Ving Vp a verb, Q a measure,
 * N its number. Common speech, no source.
 */
const PARTS = [
  ["seat ring", "seat"],
  ["stem", "stem"],
  ["lower diaphragm", "lower_diaphragm"],
  ["packing nut", "packing_nut"],
] as const;
const CONDITIONS = [
  ["worn", "worn"],
  ["rusty", "corroded"],
  ["beat up", "damaged"],
  ["pitted", "pitted"],
] as const;
const THINGS = [
  ["rust", "corroded"],
  ["pitting", "pitted"],
  ["scoring", "scored"],
] as const;
const VERBS = [
  ["replace", "replaced", "replacing", "replaced", "replaced"],
  ["clean up", "cleaned up", "cleaning up", "cleaned up", "cleaned"],
  ["take off", "took off", "taking off", "taken off", "removed"],
  ["lap", "lapped", "lapping", "lapped", "lapped"],
] as const;
const PRESSURES = [
  ["upstream", "upstream_pressure"],
  ["signal", "signal_pressure"],
  ["supply pressure", "supply_pressure"],
] as const;

const SAID_OF: Record<string, readonly string[]> = {
  "": ["the X turned out to be C", "X is definitely C", "X I'd call C", "X's gotten C", "on this one the X is C"],
  slight: ["X is a touch C", "X is a tad C", "X is just a hair C", "X is hardly C"],
  severe: ["X is mighty C", "X is C real bad"],
  absent: ["X isn't the least bit C", "I wouldn't call the X C", "X is nowhere near C", "X doesn't appear to be C"],
  unsure: ["X is probably C", "I'm guessing the X is C", "can't swear to it but the X is C", "X is most likely C"],
  one_side: ["X is C on one side"],
  "@left": ["X is C on the left side"],
};

const FOUND_ON: Record<string, readonly string[]> = {
  "": ["H showing on the X", "X shows H", "X has H on it"],
  slight: ["H just starting on the X", "X has a trace of H", "H starting on the X"],
  "slight @top": ["H starting at the top of the X"],
  severe: ["tons of H on the X", "plenty of H on the X"],
  absent: ["no H anywhere on the X", "not a bit of H on the X", "no real H on the X", "never saw any H on the X"],
  unsure: ["X might've got H on it", "could be H on the X"],
};

const DONE_TO: Record<string, readonly string[]> = {
  done: [
    "ended up Ving the X",
    "wound up Ving the X",
    "turned around and Ved the X",
    "took the time to V the X",
    "I'm done Ving the X",
    "been Ving the X",
    "had to V the X",
  ],
  needed: ["gotta V the X", "need to V the X", "X needs Vp", "plan on Ving the X"],
  declined: [
    "held off Ving the X",
    "passed on Ving the X",
    "forgot to V the X",
    "meant to V the X but never got to it",
    "was gonna V the X but didn't",
    "wanted to V the X but ran out of time",
  ],
};

const MEASURED: Record<string, readonly string[]> = {
  "N psi": ["Q's down to N psi", "Q's a solid N psi", "Q is N psi", "N psi on the Q"],
  "about N psi": ["Q's N psi or so", "Q's somewhere around N psi"],
  "min N psi": ["Q's N psi or better", "Q's at least N psi"],
  "max N psi": ["max Q N psi", "Q's no more than N psi"],
};
const NUMBERS = [
  ["ninety", "90"],
  ["a buck twenty", "120"],
  ["six point two five", "6.25"],
  ["anywhere from nine to eleven", "9..11"],
  ["eighty or ninety", "80..90"],
  ["ten up to twelve", "10..12"],
] as const;

const frames = (table: Record<string, readonly string[]>) =>
  Object.entries(table).flatMap(([key, all]) => all.map((frame) => [frame, key] as const));
const line = (...words: string[]) => words.filter(Boolean).join(" ");
const fill = (frame: string, words: Record<string, string>) =>
  frame.replace(/\b(?:Ved|Ving|Vp|[XCHVQN])\b/g, (hole) => words[hole] ?? hole);

describe("said of a part", () => {
  test.each(frames(SAID_OF))("%s (%s)", (frame, key) => {
    for (const [X, part] of PARTS)
      for (const [C, code] of CONDITIONS)
        expect([fill(frame, { X, C }), ...reads(fill(frame, { X, C }))]).toEqual([
          fill(frame, { X, C }),
          line("finding", part, code, key),
        ]);
  });
});

describe("found on a part", () => {
  test.each(frames(FOUND_ON))("%s (%s)", (frame, key) => {
    for (const [X, part] of PARTS)
      for (const [H, code] of THINGS)
        expect([fill(frame, { X, H }), ...reads(fill(frame, { X, H }))]).toEqual([
          fill(frame, { X, H }),
          line("finding", part, code, key),
        ]);
  });
});

describe("done to a part", () => {
  test.each(frames(DONE_TO))("%s (%s)", (frame, status) => {
    for (const [X, part] of PARTS)
      for (const [V, Ved, Ving, Vp, code] of VERBS) {
        const said = fill(frame, { X, V, Ved, Ving, Vp });
        expect([said, ...reads(said)]).toEqual([said, line("work", part, code, status)]);
      }
  });
});

describe("read from a gauge", () => {
  test.each(frames(MEASURED))("%s (%s)", (frame, shown) => {
    for (const [Q, quantity] of PRESSURES)
      for (const [N, value] of NUMBERS) {
        // "a solid" and "at least" take one number, and no range
        if (value.includes("..") && /solid|least|more|max|better|so$|around|down to/.test(frame)) continue;
        if (N.startsWith("a ") && /\ba\b/.test(frame)) continue;
        const said = fill(frame, { Q, N });
        expect([said, ...reads(said)]).toEqual([said, line("reading", quantity, shown.replace("N", value))]);
      }
  });
});

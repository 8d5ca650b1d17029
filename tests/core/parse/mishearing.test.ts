import { describe, expect, test } from "vitest";
import { listen, startListening } from "../../../core/index.ts";
import { knownConfusions, respell } from "../../../core/parse/mishearing.ts";
import { splitWords } from "../../../core/parse/words.ts";
import { CONFUSIONS } from "../../../core/vocabulary/confusions.ts";
import { lexicon } from "../../../core/vocabulary/lexicon.ts";
import { Pattern } from "../../../core/vocabulary/notation.ts";
import { bare } from "../../corpora/corpus.ts";
import { EVERYDAY_ALIKES } from "./everyday-alikes.ts";
import { ALSO } from "./misheard-also.ts";

/**
 * Examples that are too short to be believed by themselves: a phrase made of nothing but corrections is no witness for
 * any of them. In the company of a word that was heard as it is they are read.
 */
const IN_COMPANY: Record<string, string> = {
  "has a neck in it": "seat has a neck in it",
  "shall test past": "shall test past at sixty psi",
  "strokes fool": "valve strokes fool",
  "bubble tite": "seat is bubble tite at sixty psi",
  "thirty pounce on the seat": "leaking at thirty pounce on the seat",
  "down scream": "down scream pressure is forty psi",
  "killer pascals": "two hundred killer pascals upstream",
  "veil closed": "lcv 213 veil closed",
  "shower service": "lcv 213 is in shower service",
  "candy service": "this valve is in candy service",
  "fool travel both ways": "valve goes fool travel both ways",
  "several service": "this valve is several service",
  "ten thousands of wear": "ten thousands of wear on the stem",
  "on the in let side": "plug's worn on the in let side",
  "out let sighed": "seat's worn on the out let sighed",
  "up her diaphragm": "up her diaphragm is torn",
  "ballots diaphragm": "ballots diaphragm is torn",
};

const read = (say: string): string[] => listen(startListening(), say).entries.map(bare);

/** What was heard is itself a way of saying something: which one was meant is open, and either reading is allowed. */
const AMBIGUOUS = new Set([
  "diaphragm play is bent",
  "plug is scrapped up",
  "stroke test filled",
  "worn one side slipped it",
  "up her diaphragm",
]);

describe("every known confusion", () => {
  for (const { mean, example } of CONFUSIONS) {
    const said = IN_COMPANY[example] ?? example;
    if (AMBIGUOUS.has(example)) continue;
    test(`${mean}: ${said}`, () => {
      const words = splitWords(said).map((word) => word.text);
      const meant = respell(words, knownConfusions(words, lexicon())).words.join(" ");
      expect(read(said)).not.toEqual([]);
      expect(read(said)).toEqual(read(meant));
    });
  }
});

describe("a second phrase of every known confusion, and an everyday one", () => {
  for (const [heard, said, leaves] of ALSO) {
    test(heard, () => {
      expect(read(heard)).not.toEqual([]);
      expect(read(heard)).toEqual(read(said));
    });
    test(`leaves alone: ${leaves}`, () => expect(read(leaves)).toEqual([]));
  }

  /** Whether the words of a row stand anywhere in a phrase, one or many of a thing. */
  const holds = (hear: string, phrase: string): boolean => {
    const pattern = new Pattern(hear);
    const words = splitWords(phrase).map((word) => word.text);
    const singulars = words.map((word) => (word.length > 2 && word.endsWith("s") ? word.slice(0, -1) : word));
    return words.some((_, at) => pattern.match(words, at) > at || pattern.match(singulars, at) > at);
  };
  for (const { hear, mean, example } of CONFUSIONS)
    test(`${mean}, as in ${example}`, () => {
      expect(ALSO.some(([heard]) => heard !== example && holds(hear, heard))).toBe(true);
      expect(ALSO.some(([, , leaves]) => holds(hear, leaves))).toBe(true);
    });
});

describe("words by their sound alone", () => {
  const SOUNDS: [say: string, reads: string][] = [
    ["the diafragm is torn", "the diaphragm is torn"],
    ["packing nut is gauled", "packing nut is galled"],
    ["replaced the bonnit gasket", "replaced the bonnet gasket"],
    ["stem is korroded", "stem is corroded"],
    ["the actuwator is leaking", "the actuator is leaking"],
    ["solinoid is stuck", "solenoid is stuck"],
    ["breathur is plugged", "breather is plugged"],
    ["the yoak is cracked", "the yoke is cracked"],
  ];
  for (const [say, reads] of SOUNDS)
    test(say, () => {
      expect(read(say)).not.toEqual([]);
      expect(read(say)).toEqual(read(reads));
    });
});

describe("everyday words that sound like the trade's", () => {
  const EVERYDAY = [
    "take a seat",
    "spring break",
    "packing up the truck",
    "the stamp on the letter",
    "a cup of tea",
    "guess what the boss said",
    "my sole is worn through on these boots",
    "turn up the heat",
    "what a pain in the neck",
    "he rode a horse",
    "see you at the bonfire",
    "the plane was late",
    "grab me a soda",
    "my knee is killing me",
    "bread and butter",
    "put the trailer in the barn",
  ];
  for (const say of EVERYDAY) test(say, () => expect(read(say)).toEqual([]));

  test("nor while a job is under way", () => {
    const before = ["the seat is worn", "replaced the bonnet gasket"].reduce(listen, startListening());
    const logged = [...EVERYDAY, ...EVERYDAY_ALIKES].filter(
      (say) => listen(before, say).entries.length !== before.entries.length,
    );
    expect(logged).toEqual([]);
    expect(EVERYDAY_ALIKES.filter((say) => read(say).length > 0)).toEqual([]);
  });
});

describe("words that are known to sound like the trade's", () => {
  const KNOWN: [say: string, reads: string][] = [
    ["lower how sing is dented", "lower housing is dented"],
    ["act you waiter is leaking at the stem", "actuator is leaking at the stem"],
    ["stem is pitted in side", "stem is pitted inside"],
    ["we cant ice a late this thing", "we cant isolate this thing"],
    ["i all ready replaced the plug", "i already replaced the plug"],
    ["threads are in tacked", "threads are intact"],
    ["cage has a hair line crack", "cage has a hairline crack"],
    ["the pack in is leaking and the strain or is plugged", "the packing is leaking and the strainer is plugged"],
  ];
  for (const [say, reads] of KNOWN)
    test(say, () => {
      expect(read(say)).not.toEqual([]);
      expect(read(say)).toEqual(read(reads));
    });
});

test("where nothing is strange, nothing is put right", () => {
  for (const say of ["seat worn one side, flipped", "replaced the bonnet gasket", "stem is bent"]) {
    const words = splitWords(say).map((word) => word.text);
    expect(respell(words, knownConfusions(words, lexicon())).words, say).toEqual(words);
  }
});

test("a word put right points at the words that were heard", () => {
  const reading = listen(startListening(), "bottom die a fram is torn").phrases[0];
  expect(reading?.entries.map(bare)).toEqual(['{"condition":"torn","part":"lower_diaphragm","type":"finding"}']);
  expect(reading?.marks.find((one) => one.as === "part")?.at).toEqual([0, 17]);
});

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { derivedSounds } from "../../../core/speech/derived-sound.ts";
import { readDictionary, soundsFrom } from "../../../core/speech/dictionary.ts";
import { earWords, writtenWord } from "../../../core/speech/ear-words.ts";
import {
  BEGIN,
  chanceOf,
  counted,
  END,
  EveryHistory,
  languageModel,
  START,
} from "../../../core/speech/language-model.ts";
import { letterSound } from "../../../core/speech/letter-sound.ts";
import { OWN_SOUNDS } from "../../../core/speech/sounds.ts";
import { spokenTag } from "../../../core/speech/spoken-tag.ts";
import { spokenWords } from "../../../core/speech/spoken-words.ts";
import { DICTIONARY_FILE } from "../../../server/ear/model-files.ts";

const dictionary = readDictionary(readFileSync(DICTIONARY_FILE, "utf8"));
const soundsOf = soundsFrom(dictionary, OWN_SOUNDS);

describe("the language model", () => {
  const lines = ["seat is worn", "seat is fine", "seat is worn", "stem is bent", "plug worn"].map((line) =>
    line.split(" "),
  );
  const shape = { classes: { PART: ["seat", "stem", "cage"] }, unsaid: new Map([["galled", 1]]), unsaidShare: 0.1 };
  const model = languageModel(counted([{ lines, weight: 1 }], shape));
  test("shares out one whole after each history", () => {
    const tokens = [...(model.after.get("")?.next.keys() ?? [])];
    for (const history of [START, "", "is", "PART", `${BEGIN} PART`, "PART is"]) {
      const sum = tokens.reduce((all, token) => all + chanceOf(token, history, model.after), 0);
      expect(sum).toBeCloseTo(1, 9);
    }
  });
  test("has what was seen likelier than what was not, and nothing impossible", () => {
    expect(chanceOf("PART", START, model.after)).toBeGreaterThan(chanceOf("plug", START, model.after));
    expect(chanceOf("plug", START, model.after)).toBeGreaterThan(chanceOf("bent", START, model.after));
    expect(chanceOf("galled", START, model.after)).toBeGreaterThan(0);
    expect(chanceOf(END, "", model.after)).toBeGreaterThan(0);
  });
  test("shares out one whole with no history left out", () => {
    const every = new EveryHistory(counted([{ lines, weight: 1 }], shape));
    const words = ["seat", "stem", "cage", "plug", "is", "worn", "fine", "bent", "galled", END];
    for (const before of [
      [BEGIN, BEGIN],
      [BEGIN, "seat"],
      ["seat", "is"],
      ["cage", "worn"],
    ] as const) {
      const sum = words.reduce((all, word) => all + every.chanceOf(word, before), 0);
      expect(sum).toBeCloseTo(1, 9);
    }
  });
  test("a word that was never said is as good as the others of its class", () => {
    const share = (word: string) => model.classes.get(word)?.share ?? 0;
    expect(share("cage")).toBeGreaterThan(0.1);
    expect(share("seat") + share("stem") + share("cage")).toBeCloseTo(1, 12);
  });
});

describe("words as they are said", () => {
  test.each([
    ["FV one oh one", "L_f L_v one oh one"],
    ["put a new o-ring in", "put a new O_ring in"],
    ["all four O rings", "all four O_rings"],
    ["the o o ring's flat", "the L_o O_ring's flat"],
    ["I had a look at L V two", "i had a look at L_l L_v two"],
    ["forty cc a minute", "forty L_c L_c a minute"],
    ["it's the seat's edge, isn't it", "it's the seat's edge isn't it"],
  ])("%s", (phrase, words) => {
    expect(spokenWords(phrase).join(" ")).toBe(words);
  });
  test.each([
    ["FV-101", ["L_f L_v one oh one", "L_f L_v one zero one"]],
    ["LV-212", ["L_l L_v two one two", "L_l L_v two twelve"]],
    ["XV 12", ["L_x L_v twelve", "L_x L_v one two"]],
  ])("the tag %s", (tag, ways) => {
    expect(spokenTag(tag)).toEqual(ways);
  });
});

describe("sounds of words that nothing tells but their letters", () => {
  test.each([
    ["kimble", "K IH M B AH L"],
    ["flange", "F L AE N JH"],
    ["simmer", "S IH M ER"],
    ["studded", "S T AH D IH D"],
    ["knurling", "N ER L IH NG"],
    ["gauges2", ""],
  ])("%s", (word, sound) => expect(letterSound(word)).toBe(sound));
  // the dictionary that comes with the engine package, the CMU Pronouncing Dictionary's
  test("are the dictionary's own in four phones of five", () => {
    const words = [...dictionary.keys()].filter((word) => /^[a-z]{4,}$/.test(word)).filter((_, at) => at % 50 === 0);
    let wrong = 0;
    let phones = 0;
    for (const word of words) {
      const listed = (dictionary.get(word) ?? []).map((sound) => sound.split(" "));
      wrong += Math.min(...listed.map((sound) => apart(letterSound(word).split(" "), sound)));
      phones += listed[0]?.length ?? 0;
    }
    expect(wrong / phones).toBeLessThan(0.2);
  });
});

/** How many phones must be put in, left out or changed to make one row of them the other. */
function apart(a: readonly string[], b: readonly string[]): number {
  let row = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (const [i, one] of a.entries()) {
    const next = [i + 1];
    for (const [j, other] of b.entries())
      next.push(Math.min((row[j] ?? 0) + (one === other ? 0 : 1), (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    row = next;
  }
  return row[b.length] ?? 0;
}

describe("sounds of words that the dictionary lacks", () => {
  test.each([
    ["retorqued", "R IY T AO R K T"],
    ["handwheel", "HH AE N D W IY L"],
    ["positioners", "P AH Z IH SH AH N ER Z"],
  ])("%s", (word, sound) => {
    expect(soundsOf(word)).toContain(sound);
  });
  // CMU Pronouncing Dictionary, as shipped with the engine: words it does have, made without looking them up.
  test("plurals, pasts and -ing made from their stems are the dictionary's own in nine of ten", () => {
    const stems =
      "gasket valve spring hinge bench scratch crack torque flange notch plate drill weld grind brush hose patch pump rod seal strap thread wash wedge".split(
        " ",
      );
    const forms = stems
      .flatMap((stem) => ["s", "es", "ed", "d", "ing"].map((end) => `${stem}${end}`))
      .filter((word) => dictionary.has(word));
    expect(forms.length).toBeGreaterThan(40);
    const right = forms.filter((word) => {
      const without = new Map(dictionary);
      without.delete(word);
      return derivedSounds(word, without).some((sound) => dictionary.get(word)?.includes(sound));
    });
    expect(right.length / forms.length).toBeGreaterThan(0.9);
  });
});

describe("what the ear listens for", () => {
  const words = earWords(soundsOf, { tags: ["FV-101"], taught: ["the donut is torn"], accepted: [] });
  test("every word of it has a sound", () => {
    expect(words.unheard).toEqual([]);
    const listed = new Set(words.dictionary.split("\n").map((line) => line.split(" ")[0]));
    for (const line of words.network.split("\n")) {
      const word = /^TRANSITION \d+ \d+ \S+ (\S+)$/.exec(line)?.[1];
      if (word) expect(listed.has(word)).toBe(true);
    }
  });
  test("the site's tags are words of their own, written as the site writes them", () => {
    expect(words.dictionary).toContain("T_FV-101 EH F V IY W AH N OW W AH N");
    expect(writtenWord("T_FV-101")).toBe("FV-101");
  });
  test.each([
    ["seat worn on one side", "seat worn on one"],
    ["bonnet bolts torqued to twenty eight foot pounds", "bonnet bolts torqued to twenty eight foot"],
    ["replaced the packing", "replaced the"],
    ["no leak at sixty psi", "no leak at"],
    ["starting on T_FV-101", "starting on"],
    ["yes", "there is a"],
  ])("'%s' may be all of a phrase, '%s' is not", (whole, broken) => {
    expect(words.mayBeAll(whole.split(" "))).not.toBe("no");
    expect(words.mayBeAll(broken.split(" "))).toBe("no");
  });
  test("the call alone may be all, and stands before a phrase as if it were not there", () => {
    const called = earWords(soundsOf, { tags: [], taught: [], accepted: [], call: "For the log" });
    expect(called.mayBeAll(["C_for_the_log"])).toBe("maybe");
    expect(called.mayBeAll(["C_for_the_log", "flipped", "it"])).toBe("likely");
    expect(called.mayBeAll(["C_for_the_log", "torqued", "to"])).toBe("no");
    expect(called.mayBeAll([])).toBe("no");
  });
  test("a taught word is among them, and one that no dictionary has, and what calls", () => {
    expect(words.network).toContain(" donut");
    const own = earWords(soundsOf, { tags: [], taught: ["the flumwick"], accepted: [], call: "Hey Grabnit" });
    expect(own.dictionary).toMatch(/^flumwick F L AH M W IH K$/m);
    expect(own.dictionary).toMatch(/^C_hey_grabnit HH EY G R AE B N IH T$/m);
    expect(own.network).toMatch(/^TRANSITION \d+ \d+ \S+ C_hey_grabnit$/m);
    expect(own.unheard).toEqual([]);
  });
});

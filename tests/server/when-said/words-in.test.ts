import fc from "fast-check";
import { expect, it } from "vitest";
import { lookedFor, wordsIn } from "../../../server/when-said/words-in.ts";

it("words are listed in small letters with their signs, each once", () => {
  expect(wordsIn(" Cage worn,  cage\tCRACKED 100%\n")).toEqual(["cage", "worn,", "cracked", "100%"]);
  expect(wordsIn("  ")).toEqual([]);
});

it("whatever stands in a phrase and has no space in it stands in a listed word, as far as it is looked for", () => {
  const letters = fc.constantFrom(..."aBé ß𝄞%_\\., 1½\t".split(/(?:)/u));
  const texts = fc.array(letters, { minLength: 1, maxLength: 300 }).map((all) => all.join(""));
  // long words are common among these: a space is one sign of many
  const longer = fc.array(fc.constantFrom(..."aé𝄞".split(/(?:)/u)), { minLength: 35, maxLength: 130 });
  const all = fc.oneof(
    texts,
    longer.map((one) => one.join("")),
  );
  fc.assert(
    fc.property(all, fc.nat(), fc.integer({ min: 1, max: 60 }), (text, at, length) => {
      const said = [...text.toLowerCase()];
      const from = at % said.length;
      const wanted = said
        .slice(from, from + length)
        .join("")
        .split(/\s/)[0] as string;
      fc.pre(wanted !== "");
      const words = wordsIn(text);
      expect(words.filter((word) => word.includes(lookedFor(wanted))).length).toBeGreaterThan(0);
    }),
    { numRuns: 2_000 },
  );
});

it("no listed word is longer than a key may be, nor holds half a letter", () => {
  const [first = "", ...rest] = wordsIn("𝄞".repeat(5_000));
  expect([first, ...rest].every((word) => [...word].length <= 40 && !/\p{Surrogate}/u.test(word))).toBe(true);
  // the same piece over and over is one
  expect(rest).toHaveLength(0);
});

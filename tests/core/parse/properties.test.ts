import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Entry, listen, startListening } from "../../../core/index.ts";
import { splitWords } from "../../../core/parse/words.ts";
import { bare } from "../../corpora/corpus.ts";
import { chance } from "../../fuzz/chance.ts";
import { POOLS, randomPhrase } from "../../fuzz/phrases.ts";
import { tryPhrase } from "../../fuzz/promises.ts";

/**
 * The run's share of `npm run fuzz`: the same promises, fewer phrases and a fixed seed.
 */
const RUNS = 10_000;

const token = fc.oneof(...POOLS.map((pool) => fc.constantFrom(...pool)));
const tokens = fc.array(token, { maxLength: 12 }).map((list) => list.join(" "));
const spoken = fc.nat().map((seed) => randomPhrase(chance(seed)));
const phrase = fc.oneof(tokens, spoken);

test("ten thousand random phrases keep every promise of the reader", { timeout: 400_000 }, () => {
  fc.assert(
    fc.property(fc.array(phrase, { maxLength: 2 }), phrase, fc.nat(), (said, next, seed) => {
      const session = said.reduce(listen, startListening());
      const broken = tryPhrase(session, said, next, chance(seed));
      expect(broken).toEqual([]);
    }),
    { numRuns: RUNS, seed: 20_260_304 },
  );
});

test("any text at all is kept: what is read, what is unread and what is plain lie within it", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 200 }), (text) => {
      const reading = listen(startListening(), text).phrases[0];
      expect(reading?.text).toBe(text);
      for (const { at, text: words } of reading?.unread ?? []) expect(words).toBe(text.slice(...at));
      for (const { at } of [...(reading?.marks ?? []), ...(reading?.entries ?? [])])
        expect(at && at[0] >= 0 && at[0] <= at[1] && at[1] <= text.length).toBe(true);
      if (text.trim() !== "" && splitWords(text).length === 0)
        expect(reading?.unread.map((one) => one.text)).toEqual([text]);
    }),
    { numRuns: 3000, seed: 20_260_304 },
  );
});

describe("a taught word", () => {
  const read = (say: string, taught: Parameters<typeof startListening>[0]): string[] =>
    listen(startListening(taught), say).entries.map(bare);
  const word = fc.stringMatching(/^[b-df-hj-np-tv-xz][aeiou][b-df-hj-np-tv-xz][aeiou][bcdfgklmprt]{1,2}$/);

  test("is a part at once, and only where it was taught", () => {
    fc.assert(
      fc.property(word, (name) => {
        fc.pre(listen(startListening(), name).unread.length > 0);
        const taught = [{ say: name, as: { part: "plug" } }] as const;
        expect(read(`the ${name} is worn`, taught)).toEqual(read("the plug is worn", []));
        expect(read(`replaced both ${name}s`, taught)).toEqual(read("replaced both plugs", []));
      }),
      { numRuns: 30, seed: 1 },
    );
    expect(read("the gizzard is worn", [])).not.toEqual(read("the plug is worn", []));
  });
  test("is a condition, or work in all its forms", () => {
    const condition = [{ say: "crudded up", as: { condition: "fouled" } }] as const;
    expect(read("the cage is crudded up", condition)).toEqual(read("the cage is fouled", []));
    const work = [{ say: "zizz", as: { work: "lapped" } }] as const;
    expect(read("zizzed the seat", work)).toEqual(read("lapped the seat", []));
    expect(read("seat's worn, needs zizzing", work)).toEqual(read("seat's worn, needs lapping", []));
  });
});

/**
 * Long phrases, counted in what is read and not in seconds: how the time grows with the length is measured by
 * `npm run bench`, on a quiet machine.
 */
describe("a hostile phrase of 100 kB", () => {
  const of = (text: string): string => text.repeat(Math.ceil(100_000 / text.length)).slice(0, 100_000);
  const HOSTILE: [name: string, text: string][] = [
    ["one letter", of("a")],
    ["one word", of("seat ")],
    ["numbers", of("one hundred and ")],
    ["tags", of("l c v two one three ")],
    ["turns", of("scratch that correction ")],
    ["findings", of("seat is worn one side and ")],
    ["misheard", of("die a fram is a roded ")],
    ["strange words", of("blorft gnarl ")],
    ["negations", of("no not never ")],
    ["points and strokes", of("1/2.3,4-5 ")],
    ["no words", of("?! ")],
  ];
  for (const [name, text] of HOSTILE)
    test(`${name}: ends, and is kept whole`, { timeout: 20_000 }, () => {
      expect(splitWords(text).length).toBeLessThanOrEqual(2000);
      const reading = listen(startListening(), text).phrases[0];
      expect(reading?.text).toBe(text);
      // what no word was read of is still shown: the text, an unread stretch of it, or its entries
      const shown: (Entry | { at: [number, number] })[] = [
        ...(reading?.entries ?? []),
        ...(reading?.unread ?? []),
        ...(reading?.marks ?? []),
      ];
      expect(shown.length).toBeGreaterThan(0);
    });
});

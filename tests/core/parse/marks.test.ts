import { describe, expect, test } from "vitest";
import { listen, type Mark, type PhraseReading, startListening } from "../../../core/index.ts";
import { say } from "./in-short.ts";

const read = (text: string): PhraseReading => listen(startListening(), text).phrases[0] as PhraseReading;
const marked = ({ text, marks }: PhraseReading): string[] =>
  marks
    .filter((one) => one.as !== "plain")
    .map(({ at, as, code }) => `${text.slice(...at)}=${as}${code ? `:${code}` : ""}`);

describe("what each stretch was taken for", () => {
  const TABLE: [text: string, ...marks: string[]][] = [
    [
      "Seat's worn one side, flipped.",
      "Seat's=part:seat",
      "worn=condition:worn",
      "one side=detail",
      "flipped=work:flipped",
    ],
    ["LCV-213 two inch", "LCV-213=valve:LCV-213", "two=number", "inch=number"],
    ["holding at sixty psi", "holding=test", "sixty=number", "psi=number"],
    ["strokes full", "strokes full=test:stroke"],
    ["smell gas", "smell gas=hazard:gas"],
    ["read it back", "read it back=command:read_back"],
    ["seat is worn, blorft", "seat=part:seat", "worn=condition:worn", "blorft=unread"],
    ["put a new gasket in", "put=work", "gasket=part:gasket"],
  ];
  for (const [text, ...marks] of TABLE)
    test(text, () => expect(marked(read(text))).toEqual(expect.arrayContaining(marks)));
});

describe("marks stand in order, apart from each other, within the phrase", () => {
  for (const text of [
    "uh seat's worn one side and, well, blorft the plug is pitted, flipped it",
    "LCV-213 two inch fail closed",
    "blorft",
    "seat is worn scratch that plug is worn",
    "torqued to 28, no wait, 30 foot pounds",
  ])
    test(text, () => {
      let end = 0;
      for (const { at } of read(text).marks) {
        expect(at[0]).toBeGreaterThanOrEqual(end);
        end = at[1];
      }
      expect(end).toBeLessThanOrEqual(text.length);
    });
});

describe("what was not understood comes back with its place", () => {
  const TABLE: [text: string, ...unread: string[]][] = [
    ["seat is worn, blorft", "blorft"],
    ["blorft the gnarl", "blorft the gnarl"],
    ["the fandangle on the plug is worn", "fandangle"],
    ["seat's worn and flipped it"],
    ["uh well you know"],
    ["… ?!", "… ?!"],
    [""],
  ];
  for (const [text, ...unread] of TABLE)
    test(JSON.stringify(text), () => {
      const reading = read(text);
      const nothing = reading.entries.length === 0 && text !== "";
      expect(reading.unread.map((one) => one.text)).toEqual(nothing ? [text] : unread);
      for (const { at, text: words } of reading.unread) expect(text.slice(...at)).toBe(words);
    });
  test("a phrase of which nothing was made is kept whole", () => {
    const text = "Did you see the game on Sunday?";
    expect(read(text)).toMatchObject({
      entries: [],
      unread: [{ text, at: [0, text.length] }],
      marks: [{ as: "unread" }] satisfies Partial<Mark>[],
    });
  });
});

describe("where an entry came from", () => {
  test("its own words, its place, its rule, how sure", () => {
    const [worn, flipped] = read("Uh, seat's worn one side, flipped it").entries;
    expect(worn).toMatchObject({ words: "seat's worn one side", at: [4, 24], rule: "finding_is", phrase: 0 });
    expect(flipped?.rule).toBe("work_done");
    for (const one of [worn, flipped]) expect(one?.confidence).toBeGreaterThan(0.9);
  });
  test("a later phrase is named by its number", () => {
    expect(say("seat's worn", "lunch at noon", "flipped it").entries.map((one) => one.phrase)).toEqual([0, 2]);
  });
  test("a word put right and words left over make it less sure", () => {
    const sure = read("bonnet casket is leaking").entries[0]?.confidence ?? 0;
    expect(sure).toBeLessThan(read("bonnet gasket is leaking").entries[0]?.confidence ?? 0);
    expect(read("bonnet gasket is leaking blorft").entries[0]?.confidence).toBeLessThan(
      read("bonnet gasket is leaking").entries[0]?.confidence ?? 0,
    );
  });
});

describe("one question at most", () => {
  const asks = (...phrases: string[]): string[] => say(...phrases).ask.map((one) => one.question);
  test("what unit, of a number on bolts", () => expect(asks("bonnet bolts thirty")).toHaveLength(1));
  test("which part, where none was ever named", () => expect(asks("worn on one side")).toEqual(["Which part?"]));
  test("none where the trade would not ask", () => {
    for (const phrase of [
      "seat worn one side",
      "torqued to 28",
      "holding at sixty",
      "strokes full",
      "lunch at noon",
      "smell gas",
    ])
      expect(asks(phrase), phrase).toEqual([]);
  });
  test("answered, it is asked no more", () => {
    expect(asks("worn on one side", "the seat")).toEqual([]);
    expect(asks("bonnet bolts thirty", "foot pounds")).toEqual([]);
    expect(asks("bonnet bolts thirty", "yeah")).toEqual([]);
  });
});

describe("alerts and what a phrase touched", () => {
  test("a hazard scratched leaves the entries, not the alert", () => {
    const session = say("smell gas", "scratch that");
    expect(session.entries).toEqual([]);
    expect(session.phrases[0]?.alerts).toHaveLength(1);
    expect(session.phrases[1]?.touched).toEqual([0]);
  });
  test("a hazard is heard with the ears shut", () => {
    expect(say("stop listening", "smell gas").phrases[1]?.alerts).toHaveLength(1);
  });
  test("a correction tells which phrase it put right", () => {
    expect(say("seat's worn", "plug's pitted", "correction, scored").phrases[2]?.touched).toEqual([1]);
  });
});

import { describe, expect, it } from "vitest";
import { glossary } from "../../../core/index.ts";
import { findWords } from "../../../web/parts/find-words.ts";

const LINES = glossary();
const names = (asked: string) => findWords(LINES, asked).map((line) => `${line.kind} ${line.code}`);

describe("a search of the words", () => {
  it("finds everything where nothing is asked", () => expect(names("  ")).toHaveLength(LINES.length));
  it("finds a word by its beginning, the named before the mentioned", () => {
    const found = names("diaph");
    expect(found[0]).toBe("part diaphragm");
    expect(found).toContain("part upper_diaphragm");
    expect(found.indexOf("part diaphragm")).toBeLessThan(found.indexOf("part spring"));
  });
  it("finds a word by another way of saying it", () => expect(names("gouged")).toContain("condition scored"));
  it("finds by all the words asked, in any order", () => expect(names("nut jam")).toContain("part lock_nut"));
  it("finds the words of one failure mechanism", () => expect(names("2.2")).toContain("condition corroded"));
  it("hears no apostrophes and no capitals", () => expect(names("WON'T move")).toContain("condition seized"));
  it("finds nothing where no word answers", () => expect(names("xylophone")).toEqual([]));
});

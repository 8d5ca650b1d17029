import { describe, expect, it } from "vitest";
import { siteWords } from "../../../web/speech/site-words.ts";
import { firstState } from "../../../web/state/next.ts";
import { saidAndUnderstood } from "../../../web/state/said-before.ts";

describe("the words of a site, for the ear", () => {
  const state = {
    ...firstState({ screen: "bench" }),
    valves: [
      { tag: "LCV-9", site: "north" },
      { tag: "FV-1", site: "south" },
    ],
    saidBefore: [
      { site: "north", text: "seat worn bottom side" },
      { site: "south", text: "cage is caked" },
      { text: "stem fine" },
    ],
  };
  const at = (site: string | undefined) => siteWords({ ...state, settings: { ...state.settings, site } });
  it("are its tags and what was said there before, and what belongs to no site", () => {
    expect(at("north")).toMatchObject({ tags: ["LCV-9"], accepted: ["seat worn bottom side", "stem fine"] });
    expect(at(undefined)).toMatchObject({ tags: ["FV-1", "LCV-9"] });
  });
  it("are the same value as long as nothing of them changed: the ear takes seconds to learn others", () => {
    expect(siteWords({ ...state, valves: [...state.valves] })).toBe(siteWords(state));
  });
});

describe("what was said before counts as how people speak", () => {
  it.each([
    ["seat worn on one side", undefined, true],
    ["seat worn on one side", 0.95, true],
    ["seat worn on one side", 0.3, false],
    ["seat leak at 28 psi", undefined, false],
    ["seat worn by the flumwick", undefined, false],
    ["how was your weekend", undefined, false],
  ])("%s, %s", (text, confidence, counts) => {
    expect(saidAndUnderstood({ text, confidence })).toBe(counts);
  });
});

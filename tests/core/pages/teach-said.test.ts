import { describe, expect, it } from "vitest";
import { type TaughtWord, teachSaid } from "../../../core/index.ts";

describe("a word taught in a sentence", () => {
  it.each<[string, string, TaughtWord["as"]]>([
    ["'donut' is the cage o-ring", "donut", { part: "cage_o_ring" }],
    ["“Donut” means cage O-ring.", "donut", { part: "cage_o_ring" }],
    ["a donut is what we call a cage o ring", "donut", { part: "cage_o_ring" }],
    ["the doohickey is the positioner", "doohickey", { part: "positioner" }],
    ["wallered is worn", "wallered", { condition: "worn", form: "is" }],
    ["zorched means lapped", "zorched", { work: "lapped" }],
  ])("%s", (sentence, say, as) => {
    expect(teachSaid(sentence)).toEqual({ ok: true, value: { say, as } });
  });

  it.each([
    ["donut", /Say it as/],
    ["donut is", /Say it as/],
    ["donut is the flux capacitor", /glossary/],
    ["donut is the cage o-ring that leaks", /glossary/],
    ["seat is the plug", /read already/],
    ["gas is the cage", /.+/],
  ])("not: %s", (sentence, why) => {
    const answer = teachSaid(sentence);
    expect(answer).toMatchObject({ ok: false, problem: expect.stringMatching(why) });
  });
});

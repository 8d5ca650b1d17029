import { describe, expect, it } from "vitest";
import { listen, meaningOf, startListening, type TaughtWord, teach } from "../../../core/index.ts";
import { taughtWordSchema } from "../../../core/shapes/taught-word.ts";

function words(...taught: [string, TaughtWord["as"]][]): TaughtWord[] {
  return taught.map(([say, as]) => {
    const answer = teach(say, as);
    if (!answer.ok) throw new Error(answer.problem);
    return answer.value;
  });
}

describe("a word that is taught", () => {
  it.each<[string, TaughtWord["as"], string, object]>([
    ["Doohickey", { part: "positioner" }, "the doohickey is bent", { part: "positioner", condition: "bent" }],
    ["top hat", { part: "upper_housing" }, "top hat's cracked", { part: "upper_housing", condition: "cracked" }],
    ["gommed", { condition: "worn" }, "seat is gommed", { part: "seat", condition: "worn" }],
    ["zorch", { work: "lapped" }, "zorched the seat", { part: "seat", work: "lapped", status: "done" }],
  ])("%s is read at once", (say, as, phrase, entry) => {
    const heard = listen(startListening(words([say, as])), phrase);
    expect(heard.entries).toEqual([expect.objectContaining(entry)]);
    expect(heard.unread).toEqual([]);
    // and not without it
    expect(listen(startListening(), phrase).entries).not.toEqual([expect.objectContaining(entry)]);
  });

  it("is kept as it is heard and fits its shape", () => {
    const [word] = words(["  Bob's-Thing ", { part: "cage" }]);
    expect(word).toEqual({ say: "bobs thing", as: { part: "cage" } });
    expect(taughtWordSchema.safeParse(word).success).toBe(true);
    expect(meaningOf({ condition: "ok" })).toBe("good");
  });
});

describe("a word that is not taught", () => {
  it.each([
    ["", /in letters/],
    ["!!", /in letters/],
    ["12", /figures and tags/],
    ["x", /word or a short name/],
    ["one two three four five six", /5 words at most/],
    ["the", /means nothing by itself/],
    ["seat", /read already: seat/],
    ["worn out", /read already: worn/],
    ["gas alarm", /hazard/],
    ["scratch that", /correction/],
    ["stop listening", /command/],
  ])("%s", (say, why) => {
    const answer = teach(say, { part: "plug" });
    expect(answer.ok ? "taught" : answer.problem).toMatch(why);
  });

  it("is one that is taught already", () => {
    const before = words(["doohickey", { part: "positioner" }]);
    const answer = teach("Doohickey", { part: "plug" }, before);
    expect(answer.ok ? "taught" : answer.problem).toBe("“doohickey” is taught already, for positioner.");
  });
});

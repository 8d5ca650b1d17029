import { describe, expect, it } from "vitest";
import { consequences, contradictions, type Entry, listen, type PastJob, startListening } from "../../../core/index.ts";

/** What phrases say against each other, as a person reads it. */
function against(say: readonly string[], history: PastJob[] = [], family?: string): string[] {
  let heard = startListening();
  for (const text of say) heard = listen(heard, text);
  const after = consequences(family ? { family } : {}, history, heard.entries, "2026-03-04");
  return contradictions(heard.entries, after.followUps).map(
    ({ entry, why }) => `${wordsOf(heard.entries, entry)}: ${why}`,
  );
}
const wordsOf = (entries: readonly Entry[], at: number) => entries[at]?.words ?? "";

const FLIPPED: PastJob[] = [
  { on: "2026-01-04", entries: [{ type: "work", work: "flipped", status: "done", part: "seat" }] },
];

describe("what a job says against itself", () => {
  it.each<[string, string[], RegExp]>([
    ["replaced, and the old one put back", ["replaced the seat", "put the old seat back in"], /reused/],
    ["replaced, and left", ["replaced the cage", "didn't replace the cage"], /left in/],
    ["replaced, and still to be replaced", ["replaced the cage", "cage needs replacing"], /need replacing/],
    ["replaced, and to be ordered", ["replaced the cage", "order a cage"], /to be ordered/],
    ["replaced, then thrown away", ["replaced the cage", "pitched the cage"], /fitted/],
    ["found bad, then fine", ["cage is cracked", "cage looks good"], /fine, and found faulty/],
  ])("%s", (_, say, why) => {
    const found = against(say);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(why);
  });

  it("against the record: flipped again, or a seat that does not reverse", () => {
    expect(against(["seat worn one side", "flipped it"], FLIPPED)[0]).toMatch(/record has it flipped/);
    expect(against(["seat worn one side", "flipped it"], [], "globe_control")[0]).toMatch(/does not reverse/);
  });
});

describe("near misses that it leaves alone", () => {
  it.each<[string, string[]]>([
    ["owed, then done", ["seat needs replacing", "replaced the seat"]],
    ["left, then done after all", ["leaving the seat for now", "went ahead and replaced the seat"]],
    ["taken out, then a new one in", ["removed the cage", "replaced the cage"]],
    ["bad, mended, then fine", ["cage is cracked", "replaced the cage", "cage looks good"]],
    ["failed, then passed", ["leaking by at sixty psi", "tightened the bonnet bolts", "holding at sixty psi"]],
    ["two parts", ["replaced the cage", "put the old seat back in"]],
    ["the first flip", ["seat worn one side", "flipped it"]],
  ])("%s", (_, say) => {
    expect(against(say)).toEqual([]);
  });
});

import { describe, expect, it } from "vitest";
import { consequences, doubtfulPhrases, listen, markDoubtful, startListening } from "../../../core/index.ts";

/** What was heard doubtfully is kept and marked, and settles nothing. */
const session = (...said: [text: string, confidence?: number][]) => {
  let heard = startListening();
  for (const [text] of said) heard = listen(heard, text);
  return markDoubtful(
    heard.entries,
    doubtfulPhrases(heard.phrases, (phrase) => said[phrase]?.[1]),
  );
};
const follow = (...said: [text: string, confidence?: number][]) =>
  consequences({ family: "balanced_dump", size_in: 2 }, [], session(...said), "2026-03-04");

describe("a phrase heard doubtfully", () => {
  it("keeps its entries, marked", () => {
    expect(session(["seat worn one side", 0.4])).toMatchObject([{ condition: "worn", part: "seat", doubtful: true }]);
    expect(session(["seat worn one side", 0.9])[0]).not.toHaveProperty("doubtful");
  });

  it("has its fault looked at again, not mended", () => {
    const sure = follow(["diaphragm plate cracked"]).followUps.find((one) => one.part === "diaphragm_plate");
    const doubted = follow(["diaphragm plate cracked", 0.3]).followUps.find((one) => one.part === "diaphragm_plate");
    expect(sure?.do).toBe("replace");
    expect(doubted?.do).toBe("inspect");
  });

  it("settles no test and no work, and judges no figure", () => {
    const owed = (...said: [string, number?][]) =>
      follow(["replaced the seat"], ...said).followUps.map((one) => one.test);
    expect(owed(["no leak at sixty psi"])).not.toContain("seat_leak");
    expect(owed(["no leak at sixty psi", 0.3])).toContain("seat_leak");
    expect(follow(["bonnet bolts torqued to forty", 0.3]).checks).toEqual([]);
    expect(follow(["bonnet bolts torqued to forty", 0.95]).checks).toHaveLength(1);
    expect(follow(["replaced the plug", 0.3]).parts.used).toEqual([]);
  });

  it("never waits with a hazard", () => {
    expect(session(["I smell gas", 0.1])[0]).not.toHaveProperty("doubtful");
    expect(follow(["I smell gas", 0.1]).followUps[0]?.rule).toBe("hazard_stop");
  });

  it("counts as said once it was put right in words heard well", () => {
    const entries = session(["bonnet bolts torqued to thirty five", 0.3], ["correction, twenty eight", 0.9]);
    expect(entries).toMatchObject([{ value: 28 }]);
    expect(entries[0]).not.toHaveProperty("doubtful");
  });

  it("makes what it amends doubtful too", () => {
    expect(session(["bonnet bolts torqued to thirty five"], ["correction, twenty eight", 0.3])).toMatchObject([
      { value: 28, doubtful: true },
    ]);
  });
});

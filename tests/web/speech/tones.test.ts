import { describe, expect, it } from "vitest";
import { BUZZES, type Note, TONES } from "../../../web/speech/tones.ts";

/** What an ear tells apart: how many notes, which way they go, how long it is in tenths of a second, how loud. */
const shape = (notes: readonly Note[]) => {
  const ends = notes.map((one) => one.at + one.long);
  const way = notes.slice(1).map((one, at) => Math.sign(one.hz - (notes[at]?.hz ?? 0)));
  return JSON.stringify([notes.length, way, Math.round(Math.max(...ends) * 10)]);
};

describe("the tones", () => {
  it("are told apart by ear, and the buzzes by hand", () => {
    const shapes = Object.values(TONES).map(shape);
    expect(new Set(shapes).size).toBe(shapes.length);
    const buzzes = Object.values(BUZZES).map((buzz) => JSON.stringify(buzz));
    expect(new Set(buzzes).size).toBe(buzzes.length);
  });
  it("are over before one would speak again, and none is as loud as a hazard's", () => {
    for (const [name, notes] of Object.entries(TONES)) {
      expect(Math.max(...notes.map((one) => one.at + one.long)), name).toBeLessThanOrEqual(0.7);
      if (name !== "hazard")
        expect(Math.max(...notes.map((one) => one.loud)), name).toBeLessThan(TONES.hazard[0]?.loud ?? 0);
    }
  });
  it("lie where a small speaker sounds and a worn ear hears", () => {
    for (const note of Object.values(TONES).flat()) {
      expect(note.hz).toBeGreaterThanOrEqual(200);
      expect(note.hz).toBeLessThanOrEqual(2000);
    }
  });
});

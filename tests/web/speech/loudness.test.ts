import { describe, expect, it } from "vitest";
import { judgeLoudness, levelDb, loudnessWords } from "../../../web/speech/loudness.ts";

/** Six seconds, a third of them speech, at these levels. */
const place = (noise: number, voice: number) =>
  Array.from({ length: 120 }, (_, at) => (at % 3 === 0 ? voice : noise) + (at % 5) / 10);

describe("how loud it is", () => {
  it.each([
    [place(-60, -25), "clear"],
    [place(-40, -30), "hard"],
    [place(-20, -18), "too_loud"],
    [place(-60, -58), "no_voice"],
    [place(-95, -95), "silent"],
    [place(-60, -25).slice(0, 20), "waiting"],
  ])("%#: %s", (levels, is) => {
    const judged = judgeLoudness(levels as number[]);
    expect(judged.is).toBe(is);
    expect(loudnessWords(judged)).toMatch(/\.$/);
  });
  it("says to type where it is too loud", () => {
    expect(loudnessWords(judgeLoudness(place(-20, -18)))).toMatch(/Type/);
  });
  it("never judges louder noise as better, the voice being the same", () => {
    const rank = ["too_loud", "no_voice", "hard", "clear"];
    const found = Array.from({ length: 50 }, (_, at) => rank.indexOf(judgeLoudness(place(-70 + at, -20)).is));
    expect(found).toEqual([...found].sort((a, b) => b - a));
  });
  it("measures a full sine as 3 dB under full scale", () => {
    expect(levelDb(Float32Array.from({ length: 4800 }, (_, at) => Math.sin(at / 10)))).toBeCloseTo(-3.01, 1);
    expect(levelDb(new Float32Array(100))).toBeLessThan(-90);
  });
});

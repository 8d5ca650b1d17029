import { describe, expect, it } from "vitest";
import { readRecordedSet } from "../../../server/commands/recorded-set.ts";

const HEAD = { is: "record_set", version: 1, at: "2026-03-04T10:00:00-07:00", of: 40, wide: true };
const PHRASE = { is: "phrase", wanted: "seat worn", times: 2, heard: "seat worn", confidence: 0.9, wav: "UklGRg==" };
const TALK = { is: "other_talk", heard: "", confidence: 0, wav: "UklGRg==" };
const text = (...lines: unknown[]) => lines.map((line) => `${JSON.stringify(line)}\n`).join("");

describe("a file of recordings", () => {
  it("is a head, phrases and other talk", () => {
    expect(readRecordedSet(text(HEAD, PHRASE, TALK))).toEqual({
      ok: true,
      value: { head: HEAD, phrases: [PHRASE], talk: [TALK] },
    });
  });

  it.each([
    ["nothing", "", /first line does not say/],
    ["phrases without a head", text(PHRASE), /first line does not say/],
    ["no JSON", `${text(HEAD)}seat worn\n`, /^line 2 is none that the page saves/],
    ["another kind of line", text(HEAD, PHRASE, { is: "song" }), /^line 3 is none/],
    ["a confidence of 2", text(HEAD, { ...PHRASE, confidence: 2 }), /^line 2 .*confidence/],
    ["sound that is no base64", text(HEAD, { ...PHRASE, wav: "%%%" }), /^line 2 .*wav/],
    ["a later version", text({ ...HEAD, version: 2 }), /^line 1 .*version/],
  ])("is not %s, and says which line", (_, file, problem) => {
    expect(readRecordedSet(file)).toEqual({ ok: false, problem: expect.stringMatching(problem) });
  });
});

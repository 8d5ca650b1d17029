import { beforeEach, describe, expect, it, vi } from "vitest";
import { ear } from "../../../web/speech/ear.ts";
import { NO_EAR } from "../../../web/speech/trouble.ts";
import type { EarView } from "../../../web/state/state.ts";
import { ScriptedRecognition } from "./scripted-recognition.ts";

function listening() {
  const heard: [string, number | undefined][] = [];
  const view: EarView = { state: "closed", hearing: "" };
  const it = ear(ScriptedRecognition, {
    view: (now) => Object.assign(view, now),
    phrase: ([{ text, confidence }]) => void heard.push([text, confidence]),
  });
  return { it, heard, view };
}

beforeEach(() => ScriptedRecognition.reset());

describe("the ear", () => {
  it("shows what is being heard and gives each settled phrase once, with its confidence where there is one", () => {
    const { it, heard, view } = listening();
    it.open();
    expect(view.state).toBe("open");
    ScriptedRecognition.latest.hear("seat wor", false);
    expect(view.hearing).toBe("seat wor");
    ScriptedRecognition.latest.hear(" seat worn ", true);
    ScriptedRecognition.latest.hear("flipped it", true, 0);
    expect(heard).toEqual([
      ["seat worn", 0.9],
      ["flipped it", undefined],
    ]);
    expect(view.hearing).toBe("");
  });

  it("goes on after a silence ended the recognition, until it is closed", async () => {
    const { it, view } = listening();
    it.open();
    ScriptedRecognition.latest.fail("no-speech");
    await vi.waitFor(() => expect(ScriptedRecognition.made).toHaveLength(2));
    expect(view.trouble).toBeUndefined();
    it.close();
    expect(view.state).toBe("closed");
    expect(ScriptedRecognition.latest.running).toBe(false);
  });

  it.each(["network", "not-allowed", "service-not-allowed", "audio-capture", "something-new"])(
    "says %s in words, stops, and tries again when asked",
    (error) => {
      const { it, view } = listening();
      it.open();
      ScriptedRecognition.latest.fail(error);
      expect(view.state).toBe("closed");
      expect(view.trouble).toMatch(/type/i);
      expect(ScriptedRecognition.made).toHaveLength(1);
      it.open();
      expect(view).toMatchObject({ state: "open", trouble: undefined });
    },
  );

  it("says so where there is no recogniser at all", () => {
    const view: Partial<EarView> = {};
    ear(undefined, { view: (now) => void Object.assign(view, now), phrase: () => {} }).open();
    expect(view.trouble).toBe(NO_EAR);
  });

  it("hushed, still gives what was said before, hears nothing during, and listens again after", async () => {
    const { it, heard, view } = listening();
    it.open();
    const before = ScriptedRecognition.latest;
    before.pending = "and the cage";
    await it.hush();
    expect(heard).toEqual([["and the cage", 0.9]]);
    expect(view.state).toBe("hushed");
    before.hear("the page's own voice", true);
    expect(heard).toHaveLength(1);
    expect(before.running).toBe(false);
    it.unhush();
    expect(ScriptedRecognition.latest).not.toBe(before);
    expect(view.state).toBe("open");
  });

  it("does not open after hushing if it was not open before", async () => {
    const { it, view } = listening();
    await it.hush();
    it.unhush();
    expect(view.state).toBe("closed");
    expect(ScriptedRecognition.made).toHaveLength(0);
  });
});

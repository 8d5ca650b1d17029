import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { ear } from "../../../web/speech/ear.ts";
import { voice } from "../../../web/speech/voice.ts";
import { ScriptedRecognition } from "./scripted-recognition.ts";

interface Utterance {
  text: string;
  onend: (() => void) | null;
}
let spoken: Utterance[] = [];

beforeEach(() => {
  ScriptedRecognition.reset();
  spoken = [];
  // Node has no voice: what is tried here is the turn-taking with the ear
  vi.stubGlobal(
    "SpeechSynthesisUtterance",
    class {
      onend = null;
      constructor(readonly text: string) {}
    },
  );
  vi.stubGlobal("speechSynthesis", {
    cancel: () => undefined,
    speak: (one: Utterance) => void spoken.push(one),
  });
});
afterEach(() => vi.unstubAllGlobals());

const open = () => {
  const listening = ear(ScriptedRecognition, { view: () => {}, phrase: () => {} });
  listening.open();
  return voice(listening);
};

it("never speaks while the recogniser runs, and gives the word back afterwards", async () => {
  const speaking = open();
  speaking.say("seat worn, one side");
  await vi.waitFor(() => expect(spoken).toHaveLength(1));
  expect(ScriptedRecognition.made.every((one) => !one.running)).toBe(true);
  spoken[0]?.onend?.();
  await vi.waitFor(() => expect(ScriptedRecognition.latest.running).toBe(true));
});

it("lets the latest saying win, so that a hazard waits for nothing", async () => {
  const speaking = open();
  speaking.say("seat worn, one side");
  speaking.say("Stop. Stop. gas.");
  await vi.waitFor(() => expect(spoken.map((one) => one.text)).toEqual(["Stop. Stop. gas."]));
  spoken[0]?.onend?.();
  await vi.waitFor(() => expect(ScriptedRecognition.latest.running).toBe(true));
});

it("says nothing and keeps listening where there is no voice", async () => {
  vi.stubGlobal("speechSynthesis", undefined);
  const speaking = open();
  speaking.say("seat worn");
  await Promise.resolve();
  expect(ScriptedRecognition.latest.running).toBe(true);
});

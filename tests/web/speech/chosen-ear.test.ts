import { beforeEach, describe, expect, it } from "vitest";
import { NO_SITE } from "../../../core/speech/ear-words.ts";
import { chosenEar } from "../../../web/speech/chosen-ear.ts";
import { ear } from "../../../web/speech/ear.ts";
import type { EarView, Settings } from "../../../web/state/state.ts";
import { ScriptedRecognition } from "./scripted-recognition.ts";

class OwnOne extends ScriptedRecognition {
  static readonly givesClips = true;
}
/** Later browsers can be told to hear on the device. */
class TellableOne extends ScriptedRecognition {
  processLocally = false;
}

beforeEach(() => ScriptedRecognition.reset());

function opened(browser: typeof ScriptedRecognition | undefined, chosen: Settings["ear"], own = true) {
  const view: EarView = { state: "closed", hearing: "" };
  const make = chosenEar(
    { own: own ? OwnOne : undefined, browser },
    () => chosen,
    () => NO_SITE,
  );
  const listening = ear(make, { view: (now) => Object.assign(view, now), phrase: () => {} });
  listening.open();
  return { view, make, listening };
}

describe("the chosen ear", () => {
  it("is our own where nothing was chosen, and where the browser has none", () => {
    expect(opened(ScriptedRecognition, undefined).make?.givesClips).toBe(true);
    expect(ScriptedRecognition.latest).toBeInstanceOf(OwnOne);
    opened(undefined, "browser_sends");
    expect(ScriptedRecognition.latest).toBeInstanceOf(OwnOne);
  });

  it("does not start a browser's that would send sound away, and says so in words", async () => {
    const { view, make } = opened(ScriptedRecognition, "browser");
    await expect.poll(() => view.state).toBe("closed");
    expect(view.trouble).toMatch(/Nothing was sent/);
    expect(ScriptedRecognition.latest.running).toBe(false);
    expect(make?.givesClips).toBe(false);
  });

  it("nor where our own cannot run and nothing was chosen", async () => {
    const { view } = opened(ScriptedRecognition, undefined, false);
    await expect.poll(() => view.trouble).toMatch(/Nothing was sent/);
    expect(ScriptedRecognition.latest.running).toBe(false);
  });

  it("starts it where the person chose that sound may go", () => {
    expect(opened(ScriptedRecognition, "browser_sends").view.state).toBe("open");
    expect(ScriptedRecognition.latest.running).toBe(true);
  });

  it("tells a browser's that can hear on the device to do so", () => {
    expect(opened(TellableOne, "browser").view.state).toBe("open");
    expect(ScriptedRecognition.latest).toMatchObject({ running: true, processLocally: true });
  });

  it("is none where there is neither", () => {
    expect(
      chosenEar(
        { own: undefined, browser: undefined },
        () => "own",
        () => NO_SITE,
      ),
    ).toBeUndefined();
  });
});

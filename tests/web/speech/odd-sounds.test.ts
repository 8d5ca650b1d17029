import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hear } from "../../../core/index.ts";
import type { Hearing } from "../../../core/speech/hearing.ts";
import { TalkSpotter } from "../../../core/speech/talk-spans.ts";
import { decodeWave } from "../../../core/speech/wave.ts";
import { openEar } from "../../../server/ear/open-ear.ts";
import type { TurnTells } from "../../../web/speech/own-ear/messages.ts";
import { PhraseListener } from "../../../web/speech/own-ear/phrase-listener.ts";
import { CAN_SPEAK, saidAloud, soxSound } from "../../server/ear/said-aloud.ts";

/** As many samples as the microphone's tap hands over at once. */
const BLOCK = 1024;
const SAID = "stem is bent";

/** One ear for all of them, as a page has one all day: what one sound leaves behind must not spoil the next. */
describe.skipIf(!CAN_SPEAK)("sounds that are no phrase, at the page's ear (made by sox and flite)", () => {
  let hearing: Hearing;
  beforeAll(async () => {
    hearing = await openEar(() => {});
  }, 120_000);
  afterAll(() => hearing?.free());

  function toldOf(file: string): TurnTells[] {
    const read = decodeWave(new Uint8Array(readFileSync(file)));
    if (!read.ok) throw new Error(read.problem);
    const { samples, rate } = read.value;
    const told: TurnTells[] = [];
    const tell = (one: TurnTells) => void (one.is === "level" || told.push(one));
    const listener = new PhraseListener({ hearing, rate, interim: true, spotter: new TalkSpotter(), tell });
    for (let at = 0; at < samples.length; at += BLOCK) listener.push(samples.subarray(at, at + BLOCK));
    listener.stop();
    // no more sound comes, as from a microphone that was let go of
    listener.cut();
    return told;
  }
  const heardIn = (file: string) => toldOf(file).flatMap((one) => (one.is === "heard" ? [one.text] : []));
  /** The phrase with room around it, changed by sox. */
  function changed(...effects: string[]): string {
    const file = saidAloud(SAID);
    const out = file.replace(".wav", ".changed.wav");
    execFileSync("sox", [
      "-R",
      file,
      ...effects.slice(0, -1),
      out,
      "pad",
      "1",
      "1",
      ...(effects.at(-1) ?? "").split(" "),
    ]);
    return out;
  }

  test.each([
    ["a muted microphone", 48_000, ["trim", "0", "60"]],
    ["ten minutes of a motor's hum", 16_000, ["synth", "600", "sine", "60", "sine", "120", "tremolo", "0.2", "30"]],
    ["a compressor", 44_100, ["synth", "12", "brownnoise", "tremolo", "3", "60", "gain", "-12"]],
    ["a tone driven into clipping", 48_000, ["synth", "4", "square", "300", "gain", "12"]],
    ["blows of a hammer", 48_000, ["synth", "0.03", "pinknoise", "pad", "0.6", "0.4", "repeat", "20"]],
  ] as const)(
    "%s leaves no finding",
    (_name, rate, effects) => {
      const say = heardIn(soxSound(rate, ...effects));
      expect(hear({ id: "odd", say }).entries).toEqual([]);
    },
    240_000,
  );

  test.each([8_000, 22_050, 44_100, 48_000])(
    "a phrase at %d samples a second is heard, or at the rate of a telephone at least not taken for another finding",
    (rate) => {
      const say = heardIn(changed("-r", String(rate), "gain 0"));
      if (rate > 8_000) expect(say).toEqual([SAID]);
      const entries = hear({ id: "rate", say }).entries;
      for (const entry of entries) expect(entry).toMatchObject({ type: "finding", condition: "bent", part: "stem" });
    },
    60_000,
  );

  test("a phrase shouted into clipping is heard as it was said or not at all, and the next is heard as ever", () => {
    const entries = hear({ id: "clipped", say: heardIn(changed("gain 12")) }).entries;
    for (const entry of entries) expect(entry).toMatchObject({ type: "finding", condition: "bent", part: "stem" });
    expect(heardIn(changed("gain 0"))).toEqual([SAID]);
  }, 60_000);
});

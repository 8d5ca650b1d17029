import { describe, expect, test } from "vitest";
import { fourier } from "../../../core/speech/fourier.ts";
import type { MayBeAll } from "../../../core/speech/may-be-all.ts";
import { EAR_RATE, Resampler } from "../../../core/speech/resample.ts";
import { Framer, TalkSpotter } from "../../../core/speech/talk-spans.ts";

const tone = (hertz: number, rate: number, seconds: number, loud = 0.3) =>
  Float32Array.from(
    { length: Math.round(rate * seconds) },
    (_, i) => loud * Math.sin((2 * Math.PI * hertz * i) / rate),
  );
/** The same hiss each time, within ±1. */
function hiss(length: number, loud: number): Float32Array {
  let state = 7;
  return Float32Array.from({ length }, () => {
    state = (state * 48_271) % 2_147_483_647;
    return loud * (state / 1_073_741_823.5 - 1);
  });
}
const rms = (sound: Float32Array) => Math.sqrt(sound.reduce((sum, x) => sum + x * x, 0) / sound.length);
const decibels = (a: number, b: number) => 20 * Math.log10(a / b);

describe("the Fourier transform", () => {
  test("of a tone in the middle of a bin is that bin, and going back gives the tone", () => {
    const re = Float64Array.from({ length: 64 }, (_, i) => Math.cos((2 * Math.PI * 5 * i) / 64));
    const im = new Float64Array(64);
    const given = re.slice();
    fourier(re, im);
    for (let k = 0; k < 64; k++)
      expect(Math.hypot(re[k] ?? 0, im[k] ?? 0)).toBeCloseTo(k === 5 || k === 59 ? 32 : 0, 9);
    fourier(re, im, true);
    for (let i = 0; i < 64; i++) expect(re[i]).toBeCloseTo(given[i] ?? 0, 12);
  });
});

describe("the resampler", () => {
  test.each([8_000, 22_050, 44_100, 48_000])(
    "keeps a tone of 1 kHz from %d samples a second, in whatever pieces",
    (rate) => {
      const sound = tone(1000, rate, 1);
      const resampler = new Resampler(rate);
      const out: number[] = [];
      for (let at = 0; at < sound.length; at += 777) out.push(...resampler.push(sound.subarray(at, at + 777)));
      out.push(...resampler.end());
      expect(Math.abs(out.length - EAR_RATE)).toBeLessThan(80);
      const wanted = tone(1000, EAR_RATE, 1);
      let worst = 0;
      for (let i = 200; i < 15_500; i++) worst = Math.max(worst, Math.abs((out[i] ?? 0) - (wanted[i] ?? 0)));
      expect(worst).toBeLessThan(0.005);
    },
  );
  test("takes away what the ear's rate cannot hold", () => {
    const resampler = new Resampler(48_000);
    expect(
      decibels(rms(resampler.push(tone(11_000, 48_000, 1)).subarray(200)), rms(tone(11_000, 48_000, 1))),
    ).toBeLessThan(-40);
  });
});

describe("the talk spotter", () => {
  const events = (sound: Float32Array, mayBeAll?: () => MayBeAll) => {
    const spotter = new TalkSpotter();
    return new Framer().push(sound).flatMap((frame, i) => {
      const event = spotter.frame(frame, mayBeAll);
      return event ? [[event, Math.round(i / 10) / 10] as const] : [];
    });
  };
  const room = (seconds: number) => hiss(EAR_RATE * seconds, 0.003);
  const along = (...parts: Float32Array[]) => {
    const all = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
    let at = 0;
    for (const part of parts) {
      all.set(part, at);
      at += part.length;
    }
    return all;
  };
  test("hears talk begin and end, and waits out the pause of a slow talker", () => {
    const said = tone(700, EAR_RATE, 0.6);
    const heard = events(along(room(1), said, room(0.6), said, room(2)));
    expect(heard.map(([event]) => event)).toEqual(["begins", "ends"]);
    expect(heard[0]?.[1]).toBeCloseTo(1.1, 0);
    expect(heard[1]?.[1]).toBeCloseTo(3.5, 0);
  });
  test("waits less where what was said is likely all, half a second where it may be, and a whole one where more must come", () => {
    const said = tone(700, EAR_RATE, 0.6);
    const pausing = along(room(1), said, room(0.8), said, room(2));
    const ends = (mayBeAll: () => MayBeAll) =>
      events(pausing, mayBeAll)
        .filter(([event]) => event === "ends")
        .map(([, at]) => at);
    expect(ends(() => "likely")).toEqual([2, 3.4]);
    expect(ends(() => "maybe")).toEqual([2.1, 3.5]);
    expect(ends(() => "no")).toEqual([4]);
    // asked twice a pause: it costs something to say
    let asked = 0;
    events(pausing, () => (++asked > 99 ? "maybe" : "no"));
    expect(asked).toBe(4);
  });
  test("takes a short blow for none, and a compressor for the room after a while", () => {
    expect(events(along(room(1), tone(700, EAR_RATE, 0.05), room(2)))).toEqual([]);
    const compressor = events(along(room(1), hiss(EAR_RATE * 20, 0.03), room(1)));
    expect(compressor.at(-1)?.[0]).toBe("ends");
    expect(compressor.at(-1)?.[1]).toBeLessThan(15);
  });
});
